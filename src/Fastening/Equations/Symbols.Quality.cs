namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Upper limit of a tolerance window.</summary>
    public static Symbol UpperLimit { get; } = new("T_U", SymbolUnit.Ratio, "upper limit, in the unit of the readings", -1e3, 1e3);

    /// <summary>Lower limit of a tolerance window.</summary>
    public static Symbol LowerLimit { get; } = new("T_L", SymbolUnit.Ratio, "lower limit, in the unit of the readings", -1e3, 1e3);

    /// <summary>Mean of all readings.</summary>
    public static Symbol MeanReading { get; } = new("x_q", SymbolUnit.Ratio, "mean of the readings", -1e3, 1e3);

    /// <summary>Standard deviation of the readings.</summary>
    public static Symbol ReadingDeviation { get; } = new("s_q", SymbolUnit.Ratio, "standard deviation of the readings, in their unit", 1e-3, 1e3);

    /// <summary>Number of readings.</summary>
    public static Symbol ReadingCount { get; } = new("n_q", SymbolUnit.Count, "number of readings", 2, 10000);

    /// <summary>Degrees of freedom of the standard deviation.</summary>
    public static Symbol DeviationFreedom { get; } = new("nu_q", SymbolUnit.Ratio, "degrees of freedom of the standard deviation", 1, 1e4);

    /// <summary>Potential index of the process: width of the window over six standard deviations.</summary>
    public static Symbol PotentialIndex { get; } = new("C_p", SymbolUnit.Ratio, "width of the window over six standard deviations", -1e6, 1e6);

    /// <summary>Index against the upper limit.</summary>
    public static Symbol UpperIndex { get; } = new("C_pu", SymbolUnit.Ratio, "distance of the mean below the upper limit over three standard deviations", -1e6, 1e6);

    /// <summary>Index against the lower limit.</summary>
    public static Symbol LowerIndex { get; } = new("C_pl", SymbolUnit.Ratio, "distance of the mean above the lower limit over three standard deviations", -1e6, 1e6);

    /// <summary>The smaller of the indices against the limits.</summary>
    public static Symbol LeastIndex { get; } = new("C_pk", SymbolUnit.Ratio, "the smaller of the indices against the limits", -1e3, 1e3);

    /// <summary>Standard deviation of an estimated index.</summary>
    public static Symbol IndexDeviation { get; } = new("s_C", SymbolUnit.Ratio, "standard deviation of the estimated index", 1e-6, 1e3);

    /// <summary>Quantile of a distribution of χ².</summary>
    public static Symbol ChiSquaredQuantile { get; } = new("Q_chi", SymbolUnit.Ratio, "quantile of chi-squared", 1e-3, 1e5);

    /// <summary>Confidence bound of an index.</summary>
    public static Symbol IndexBound { get; } = new("C_b", SymbolUnit.Ratio, "confidence bound of the index", -1e6, 1e6);

    /// <summary>Size of a subgroup.</summary>
    public static Symbol SubgroupSize { get; } = new("n_sub", SymbolUnit.Count, "readings in a subgroup", 2, 1000);

    /// <summary>Mean of the standard deviation of a normal sample, over σ.</summary>
    public static Symbol DeviationMean { get; } = new("c_4", SymbolUnit.Ratio, "mean of the standard deviation of a subgroup over that of the population", 0.797, 0.9999);

    /// <summary>Mean of the range of a normal sample, over σ.</summary>
    public static Symbol RangeMean { get; } = new("d2_R", SymbolUnit.Ratio, "mean of the range of a subgroup over the standard deviation of the population", 1.128, 7);

    /// <summary>Standard deviation of the range of a normal sample, over σ.</summary>
    public static Symbol RangeDeviation { get; } = new("d3_R", SymbolUnit.Ratio, "standard deviation of the range of a subgroup over that of the population", 0.4, 0.9);

    /// <summary>Mean of the ranges of the subgroups.</summary>
    public static Symbol AverageRange { get; } = new("R_q", SymbolUnit.Ratio, "mean of the ranges of the subgroups", 1e-3, 1e3);

    /// <summary>Mean of the standard deviations of the subgroups.</summary>
    public static Symbol AverageDeviation { get; } = new("S_q", SymbolUnit.Ratio, "mean of the standard deviations of the subgroups", 1e-3, 1e3);

    /// <summary>Limits of the chart of means, in ranges.</summary>
    public static Symbol MeanLimitByRange { get; } = new("A2_R", SymbolUnit.Ratio, "half width of the chart of means over the mean range", 0, 2);

    /// <summary>Limits of the chart of means, in standard deviations.</summary>
    public static Symbol MeanLimitByDeviation { get; } = new("A3_S", SymbolUnit.Ratio, "half width of the chart of means over the mean standard deviation", 0, 3);

    /// <summary>Lower limit of the chart of ranges.</summary>
    public static Symbol RangeLowerLimit { get; } = new("D3_R", SymbolUnit.Ratio, "lower limit of the chart of ranges over the mean range", 0, 1);

    /// <summary>Upper limit of the chart of ranges.</summary>
    public static Symbol RangeUpperLimit { get; } = new("D4_R", SymbolUnit.Ratio, "upper limit of the chart of ranges over the mean range", 1, 4);

    /// <summary>Lower limit of the chart of standard deviations.</summary>
    public static Symbol DeviationLowerLimit { get; } = new("B3_S", SymbolUnit.Ratio, "lower limit of the chart of standard deviations over their mean", 0, 1);

    /// <summary>Upper limit of the chart of standard deviations.</summary>
    public static Symbol DeviationUpperLimit { get; } = new("B4_S", SymbolUnit.Ratio, "upper limit of the chart of standard deviations over their mean", 1, 4);

    /// <summary>Normal quantile of a share of the population.</summary>
    public static Symbol ShareQuantile { get; } = new("z_P", SymbolUnit.Ratio, "normal quantile of the share of the population", 0, 5);

    /// <summary>Normal quantile of a confidence.</summary>
    public static Symbol ConfidenceQuantile { get; } = new("z_g", SymbolUnit.Ratio, "normal quantile of the confidence", 0, 5);

    /// <summary>First number of Natrella's tolerance factor.</summary>
    public static Symbol NatrellaA { get; } = new("a_N", SymbolUnit.Ratio, "first number of Natrella's tolerance factor", 0.1, 1);

    /// <summary>Second number of Natrella's tolerance factor.</summary>
    public static Symbol NatrellaB { get; } = new("b_N", SymbolUnit.Ratio, "second number of Natrella's tolerance factor", -25, 25);

    /// <summary>Tolerance factor: standard deviations from the mean.</summary>
    public static Symbol ToleranceFactor { get; } = new("k_T", SymbolUnit.Ratio, "tolerance factor: standard deviations from the mean to the limit", 0, 1e6);

    /// <summary>Mean range of a finite number of subgroups, as root mean square.</summary>
    public static Symbol RangeRootMeanSquare { get; } = new("d2s_R", SymbolUnit.Ratio, "root mean square of the mean range of some subgroups over the standard deviation", 1.128, 7);

    /// <summary>Number of subgroups.</summary>
    public static Symbol SubgroupCount { get; } = new("g_sub", SymbolUnit.Count, "number of subgroups", 1, 10000);

    /// <summary>Range of means.</summary>
    public static Symbol RangeOfMeans { get; } = new("R_m_q", SymbolUnit.Ratio, "range of the means of the appraisers", 0, 1e3);

    /// <summary>Readings behind each appraiser's mean.</summary>
    public static Symbol ReadingsPerMean { get; } = new("n_m", SymbolUnit.Count, "readings behind the mean of an appraiser", 2, 10000);

    /// <summary>Repeatability: equipment variation.</summary>
    public static Symbol Repeatability { get; } = new("EV", SymbolUnit.Ratio, "repeatability, as a standard deviation", 1e-3, 1e3);

    /// <summary>Reproducibility: appraiser variation.</summary>
    public static Symbol Reproducibility { get; } = new("AV", SymbolUnit.Ratio, "reproducibility, as a standard deviation", 0, 1e3);

    /// <summary>Repeatability and reproducibility together.</summary>
    public static Symbol GaugeVariation { get; } = new("GRR", SymbolUnit.Ratio, "repeatability and reproducibility together, as a standard deviation", 1e-3, 1e4);

    /// <summary>Variation from part to part.</summary>
    public static Symbol PartVariation { get; } = new("PV", SymbolUnit.Ratio, "variation from part to part, as a standard deviation", 0, 1e3);

    /// <summary>Total variation of the study.</summary>
    public static Symbol TotalVariation { get; } = new("TV", SymbolUnit.Ratio, "total variation of the study, as a standard deviation", 1e-3, 1e4);

    /// <summary>Number of categories that the gauge can distinguish, before it is cut to a whole number.</summary>
    public static Symbol DistinctCategories { get; } = new("n_dc", SymbolUnit.Ratio, "categories that the gauge can distinguish, not yet whole", 0, 1e9);
}
