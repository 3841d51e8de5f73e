namespace Fastening.Equations;

/// <summary>Constants of control charts, which follow from three numbers of the normal sample: c4, d2 and d3.</summary>
internal static class ChartEquations
{
    private const string Source = "ISO 7870-2:2013 (from memory); the definition";

    /// <summary>Half width of the chart of means over the mean range.</summary>
    public static double MeanLimitByRange(double d2_R, double n_sub) => 3 / (d2_R * Math.Sqrt(n_sub));

    /// <summary>A2 = 3/(d2 √n).</summary>
    public static Equation<Func<double, double, double>> MeanLimitByRangeEquation { get; } = Equation.Define(
        MeanLimitByRange, "chart.a2", Symbols.MeanLimitByRange, "3/(d2_R*sqrt(n_sub))", Source, Symbols.RangeMean, Symbols.SubgroupSize);

    /// <summary>Half width of the chart of means over the mean standard deviation.</summary>
    public static double MeanLimitByDeviation(double c_4, double n_sub) => 3 / (c_4 * Math.Sqrt(n_sub));

    /// <summary>A3 = 3/(c4 √n).</summary>
    public static Equation<Func<double, double, double>> MeanLimitByDeviationEquation { get; } = Equation.Define(
        MeanLimitByDeviation, "chart.a3", Symbols.MeanLimitByDeviation, "3/(c_4*sqrt(n_sub))", Source, Symbols.DeviationMean, Symbols.SubgroupSize);

    /// <summary>Lower limit of the chart of ranges over the mean range.</summary>
    public static double RangeLowerLimit(double d2_R, double d3_R) => Math.Max(0, 1 - 3 * d3_R / d2_R);

    /// <summary>D3 = max(0, 1 − 3 d3/d2).</summary>
    public static Equation<Func<double, double, double>> RangeLowerLimitEquation { get; } = Equation.Define(
        RangeLowerLimit, "chart.d3", Symbols.RangeLowerLimit, "max(0, 1 - 3*d3_R/d2_R)", Source, Symbols.RangeMean, Symbols.RangeDeviation);

    /// <summary>Upper limit of the chart of ranges over the mean range.</summary>
    public static double RangeUpperLimit(double d2_R, double d3_R) => 1 + 3 * d3_R / d2_R;

    /// <summary>D4 = 1 + 3 d3/d2.</summary>
    public static Equation<Func<double, double, double>> RangeUpperLimitEquation { get; } = Equation.Define(
        RangeUpperLimit, "chart.d4", Symbols.RangeUpperLimit, "1 + 3*d3_R/d2_R", Source, Symbols.RangeMean, Symbols.RangeDeviation);

    /// <summary>Lower limit of the chart of standard deviations over their mean.</summary>
    public static double DeviationLowerLimit(double c_4) => Math.Max(0, 1 - 3 * Math.Sqrt((1 - c_4) * (1 + c_4)) / c_4);

    /// <summary>B3 = max(0, 1 − 3 √((1 − c4)(1 + c4))/c4).</summary>
    public static Equation<Func<double, double>> DeviationLowerLimitEquation { get; } = Equation.Define(
        DeviationLowerLimit, "chart.b3", Symbols.DeviationLowerLimit, "max(0, 1 - 3*sqrt((1 - c_4)*(1 + c_4))/c_4)", Source, Symbols.DeviationMean);

    /// <summary>Upper limit of the chart of standard deviations over their mean.</summary>
    public static double DeviationUpperLimit(double c_4) => 1 + 3 * Math.Sqrt((1 - c_4) * (1 + c_4)) / c_4;

    /// <summary>B4 = 1 + 3 √((1 − c4)(1 + c4))/c4.</summary>
    public static Equation<Func<double, double>> DeviationUpperLimitEquation { get; } = Equation.Define(
        DeviationUpperLimit, "chart.b4", Symbols.DeviationUpperLimit, "1 + 3*sqrt((1 - c_4)*(1 + c_4))/c_4", Source, Symbols.DeviationMean);
}
