namespace Fastening.Equations;

/// <summary>Capability of a process: its indices and their confidence bounds.</summary>
/// <remarks>
/// They hold for readings of any quantity: every length of an equation is counted in the unit of the readings, so all of them stand as pure
/// numbers. With the standard deviation within subgroups they are C_p and its kin, with that of all readings P_p and its kin.
/// </remarks>
internal static class CapabilityEquations
{
    /// <summary>Potential index: width of the window over six standard deviations.</summary>
    public static double PotentialIndex(double T_U, double T_L, double s_q) => (T_U - T_L) / (6 * s_q);

    /// <summary>C_p = (T_U − T_L)/(6 s).</summary>
    public static Equation<Func<double, double, double, double>> PotentialIndexEquation { get; } = Equation.Define(
        PotentialIndex, "capability.potential-index", Symbols.PotentialIndex, "(T_U - T_L)/(6*s_q)", "ISO 22514-2:2017 (from memory)",
        Symbols.UpperLimit, Symbols.LowerLimit, Symbols.ReadingDeviation);

    /// <summary>Index against the upper limit.</summary>
    public static double UpperIndex(double T_U, double x_q, double s_q) => (T_U - x_q) / (3 * s_q);

    /// <summary>C_pu = (T_U − x̄)/(3 s).</summary>
    public static Equation<Func<double, double, double, double>> UpperIndexEquation { get; } = Equation.Define(
        UpperIndex, "capability.upper-index", Symbols.UpperIndex, "(T_U - x_q)/(3*s_q)", "ISO 22514-2:2017 (from memory)",
        Symbols.UpperLimit, Symbols.MeanReading, Symbols.ReadingDeviation);

    /// <summary>Index against the lower limit.</summary>
    public static double LowerIndex(double x_q, double T_L, double s_q) => (x_q - T_L) / (3 * s_q);

    /// <summary>C_pl = (x̄ − T_L)/(3 s).</summary>
    public static Equation<Func<double, double, double, double>> LowerIndexEquation { get; } = Equation.Define(
        LowerIndex, "capability.lower-index", Symbols.LowerIndex, "(x_q - T_L)/(3*s_q)", "ISO 22514-2:2017 (from memory)",
        Symbols.MeanReading, Symbols.LowerLimit, Symbols.ReadingDeviation);

    /// <summary>The smaller of the indices against the limits.</summary>
    public static double LeastIndex(double C_pu, double C_pl) => Math.Min(C_pu, C_pl);

    /// <summary>C_pk = min(C_pu, C_pl).</summary>
    public static Equation<Func<double, double, double>> LeastIndexEquation { get; } = Equation.Define(
        LeastIndex, "capability.least-index", Symbols.LeastIndex, "min(C_pu, C_pl)", "ISO 22514-2:2017 (from memory)",
        Symbols.UpperIndex, Symbols.LowerIndex);

    /// <summary>Confidence bound of the potential index: the standard deviation is distributed as χ.</summary>
    public static double PotentialBound(double C_p, double Q_chi, double nu_q) => C_p * Math.Sqrt(Q_chi / nu_q);

    /// <summary>C_b = C_p √(χ²/ν).</summary>
    public static Equation<Func<double, double, double, double>> PotentialBoundEquation { get; } = Equation.Define(
        PotentialBound, "capability.potential-bound", Symbols.IndexBound, "C_p*sqrt(Q_chi/nu_q)", "Montgomery, Introduction to Statistical Quality Control",
        Symbols.PotentialIndex, Symbols.ChiSquaredQuantile, Symbols.DeviationFreedom);

    /// <summary>Standard deviation of an estimated C_pk.</summary>
    public static double BissellDeviation(double n_q, double C_pk, double nu_q) => Math.Sqrt(1 / (9 * n_q) + C_pk * C_pk / (2 * nu_q));

    /// <summary>s_C = √(1/(9 n) + C_pk²/(2 ν)).</summary>
    public static Equation<Func<double, double, double, double>> BissellDeviationEquation { get; } = Equation.Define(
        BissellDeviation, "capability.bissell-deviation", Symbols.IndexDeviation, "sqrt(1/(9*n_q) + C_pk*C_pk/(2*nu_q))", "Bissell 1990, as given by Rodriguez 1992",
        Symbols.ReadingCount, Symbols.LeastIndex, Symbols.DeviationFreedom);

    /// <summary>Standard deviation within subgroups from their mean range.</summary>
    public static double DeviationFromRange(double R_q, double d2_R) => R_q / d2_R;

    /// <summary>s = R̄/d2.</summary>
    public static Equation<Func<double, double, double>> DeviationFromRangeEquation { get; } = Equation.Define(
        DeviationFromRange, "capability.deviation-from-range", Symbols.ReadingDeviation, "R_q/d2_R", "Montgomery, Introduction to Statistical Quality Control",
        Symbols.AverageRange, Symbols.RangeMean);

    /// <summary>Standard deviation within subgroups from the mean of their own.</summary>
    public static double DeviationFromDeviations(double S_q, double c_4) => S_q / c_4;

    /// <summary>s = s̄/c4.</summary>
    public static Equation<Func<double, double, double>> DeviationFromDeviationsEquation { get; } = Equation.Define(
        DeviationFromDeviations, "capability.deviation-from-deviations", Symbols.ReadingDeviation, "S_q/c_4",
        "Montgomery, Introduction to Statistical Quality Control", Symbols.AverageDeviation, Symbols.DeviationMean);
}
