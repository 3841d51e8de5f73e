namespace Fastening.Equations;

/// <summary>Scatter of the preload: tightening factor and ± share, and the lowest and highest preload they leave.</summary>
internal static class ScatterEquations
{
    /// <summary>Tightening factor of a scatter.</summary>
    public static double TighteningFactor(double s_F) => (1 + s_F) / (1 - s_F);

    /// <summary>α_A = (1 + s_F)/(1 − s_F).</summary>
    public static Equation<Func<double, double>> TighteningFactorEquation { get; } = Equation.Define(
        TighteningFactor, "scatter.tightening-factor", Symbols.TighteningFactor, "(1 + s_F)/(1 - s_F)", "VDI 2230-1:2015 §5.4.3 (from memory); derived", Symbols.Scatter);

    /// <summary>Scatter that belongs to a tightening factor.</summary>
    public static double Scatter(double alpha_A) => (alpha_A - 1) / (alpha_A + 1);

    /// <summary>s_F = (α_A − 1)/(α_A + 1).</summary>
    public static Equation<Func<double, double>> ScatterEquation { get; } = Equation.Define(
        Scatter, "scatter.share", Symbols.Scatter, "(alpha_A - 1)/(alpha_A + 1)", "VDI 2230-1:2015 §5.4.3 (from memory); derived", Symbols.TighteningFactor);

    /// <summary>Highest preload of a scatter about the nominal one.</summary>
    public static double HighestPreload(double s_F, double F) => (1 + s_F) * F;

    /// <summary>F_max = (1 + s_F) F.</summary>
    public static Equation<Func<double, double, double>> HighestPreloadEquation { get; } = Equation.Define(
        HighestPreload, "scatter.highest-preload", Symbols.HighestPreload, "(1 + s_F)*F", "NASA TM-106943 (1995); NASA-STD-5020",
        Symbols.Scatter, Symbols.Preload);

    /// <summary>Lowest preload of a scatter about the nominal one.</summary>
    public static double LowestPreload(double s_F, double F) => (1 - s_F) * F;

    /// <summary>F_min = (1 − s_F) F.</summary>
    public static Equation<Func<double, double, double>> LowestPreloadEquation { get; } = Equation.Define(
        LowestPreload, "scatter.lowest-preload", Symbols.LowestPreload, "(1 - s_F)*F", "NASA TM-106943 (1995); NASA-STD-5020",
        Symbols.Scatter, Symbols.Preload);

    /// <summary>Lowest preload after a relaxation that is a share of what remains.</summary>
    public static double RelaxedPreloadOfTm106943(double s_F, double F, double q_r) => (1 - s_F) * F / (1 + q_r);

    /// <summary>F_min = (1 − s_F) F/(1 + q_r).</summary>
    public static Equation<Func<double, double, double, double>> RelaxedPreloadOfTm106943Equation { get; } = Equation.Define(
        RelaxedPreloadOfTm106943, "scatter.relaxed-preload-tm106943", Symbols.LowestPreload, "(1 - s_F)*F/(1 + q_r)", "NASA TM-106943 (1995) eqs. (14)-(16)",
        Symbols.Scatter, Symbols.Preload, Symbols.Relaxation);

    /// <summary>Lowest preload after a relaxation that is a share of the lowest preload before it.</summary>
    public static double RelaxedPreload(double s_F, double F, double q_r) => (1 - s_F) * F * (1 - q_r);

    /// <summary>F_min = (1 − s_F) F (1 − q_r).</summary>
    public static Equation<Func<double, double, double, double>> RelaxedPreloadEquation { get; } = Equation.Define(
        RelaxedPreload, "scatter.relaxed-preload", Symbols.LowestPreload, "(1 - s_F)*F*(1 - q_r)", "NASA-STD-5020 (the relaxation from memory)",
        Symbols.Scatter, Symbols.Preload, Symbols.Relaxation);

    /// <summary>Lowest preload when the highest is the one that is known.</summary>
    public static double LowestFromHighest(double F_max, double alpha_A) => F_max / alpha_A;

    /// <summary>F_min = F_max/α_A.</summary>
    public static Equation<Func<double, double, double>> LowestFromHighestEquation { get; } = Equation.Define(
        LowestFromHighest, "scatter.lowest-from-highest", Symbols.LowestPreload, "F_max/alpha_A", "VDI 2230-1:2015 §5.4.3 (from memory)",
        Symbols.HighestPreload, Symbols.TighteningFactor);
}
