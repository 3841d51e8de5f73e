namespace Fastening.Equations;

/// <summary>How long a window must be for a quantised angle.</summary>
/// <remarks>SI doubles in and out, no checks.</remarks>
internal static class SafeWindowEquations
{
    /// <summary>Shortest window in which no turn at (1 − s)·ω_L reads above ω_L.</summary>
    public static double SafeWindow(double q_theta, double omega_L, double Delta_t, double s_L) =>
        (q_theta + (1 - s_L) * omega_L * Delta_t) / (s_L * omega_L);

    /// <summary>W = (q_θ + (1 − s_L) ω_L Δ_t)/(s_L ω_L).</summary>
    public static Equation<Func<double, double, double, double, double>> SafeWindowEquation { get; } = Equation.Define(
        SafeWindow, "rotation.safe-window", Symbols.SafeWindow, "(q_theta + (1 - s_L)*omega_L*Delta_t)/(s_L*omega_L)",
        "derived: two readings of a quantised angle, each up to one sampling interval old",
        Symbols.AngleResolution, Symbols.RateLimit, Symbols.SamplingInterval, Symbols.RateMargin);
}
