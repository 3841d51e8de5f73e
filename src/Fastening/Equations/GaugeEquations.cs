namespace Fastening.Equations;

/// <summary>The study of a gauge: repeatability, reproducibility, variation of the parts.</summary>
/// <remarks>Common practice (AIAG, Measurement Systems Analysis, 4th ed., from memory). Readings of any quantity: lengths are counted in their unit.</remarks>
internal static class GaugeEquations
{
    private const string Source = "AIAG MSA, 4th ed. (2010), common practice, from memory";

    /// <summary>Root mean square of the mean range of a number of subgroups.</summary>
    public static double RangeRootMeanSquare(double d2_R, double d3_R, double g_sub) => Math.Sqrt(d2_R * d2_R + d3_R * d3_R / g_sub);

    /// <summary>d2* = √(d2² + d3²/g).</summary>
    public static Equation<Func<double, double, double, double>> RangeRootMeanSquareEquation { get; } = Equation.Define(
        RangeRootMeanSquare, "gauge.range-root-mean-square", Symbols.RangeRootMeanSquare, "sqrt(d2_R*d2_R + d3_R*d3_R/g_sub)",
        "Patnaik 1950 (from memory); derived", Symbols.RangeMean, Symbols.RangeDeviation, Symbols.SubgroupCount);

    /// <summary>Repeatability from the mean range of the trials.</summary>
    public static double Repeatability(double R_q, double d2_R) => R_q / d2_R;

    /// <summary>EV = R̄/d2.</summary>
    public static Equation<Func<double, double, double>> RepeatabilityEquation { get; } = Equation.Define(
        Repeatability, "gauge.repeatability", Symbols.Repeatability, "R_q/d2_R", Source, Symbols.AverageRange, Symbols.RangeMean);

    /// <summary>Reproducibility from the range of the means of the appraisers, without the repeatability that is in them.</summary>
    public static double Reproducibility(double R_m_q, double d2s_R, double EV, double n_m) =>
        Math.Sqrt(Math.Max(0, R_m_q / d2s_R * (R_m_q / d2s_R) - EV * EV / n_m));

    /// <summary>AV = √max(0, (R/d2*)² − EV²/n).</summary>
    public static Equation<Func<double, double, double, double, double>> ReproducibilityEquation { get; } = Equation.Define(
        Reproducibility, "gauge.reproducibility", Symbols.Reproducibility, "sqrt(max(0, R_m_q/d2s_R*(R_m_q/d2s_R) - EV*EV/n_m))", Source,
        Symbols.RangeOfMeans, Symbols.RangeRootMeanSquare, Symbols.Repeatability, Symbols.ReadingsPerMean);

    /// <summary>Repeatability and reproducibility together.</summary>
    public static double GaugeVariation(double EV, double AV) => Math.Sqrt(EV * EV + AV * AV);

    /// <summary>GRR = √(EV² + AV²).</summary>
    public static Equation<Func<double, double, double>> GaugeVariationEquation { get; } = Equation.Define(
        GaugeVariation, "gauge.variation", Symbols.GaugeVariation, "sqrt(EV*EV + AV*AV)", Source, Symbols.Repeatability, Symbols.Reproducibility);

    /// <summary>Total variation of the study.</summary>
    public static double TotalVariation(double GRR, double PV) => Math.Sqrt(GRR * GRR + PV * PV);

    /// <summary>TV = √(GRR² + PV²).</summary>
    public static Equation<Func<double, double, double>> TotalVariationEquation { get; } = Equation.Define(
        TotalVariation, "gauge.total-variation", Symbols.TotalVariation, "sqrt(GRR*GRR + PV*PV)", Source, Symbols.GaugeVariation, Symbols.PartVariation);

    /// <summary>Categories that the gauge can distinguish, not yet cut to a whole number.</summary>
    public static double DistinctCategories(double PV, double GRR) => 1.41 * PV / GRR;

    /// <summary>n_dc = 1.41 PV/GRR.</summary>
    public static Equation<Func<double, double, double>> DistinctCategoriesEquation { get; } = Equation.Define(
        DistinctCategories, "gauge.distinct-categories", Symbols.DistinctCategories, "1.41*PV/GRR", Source, Symbols.PartVariation, Symbols.GaugeVariation);
}
