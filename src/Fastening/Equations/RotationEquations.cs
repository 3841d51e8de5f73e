namespace Fastening.Equations;

/// <summary>Rotation of the fastener in time.</summary>
/// <remarks>SI doubles in and out, no checks.</remarks>
internal static class RotationEquations
{
    /// <summary>Mean rate of a stroke.</summary>
    public static double Rate(double theta_r, double t) => theta_r / t;

    /// <summary>ω = θ_r/t.</summary>
    public static Equation<Func<double, double, double>> RateEquation { get; } = Equation.Define(
        Rate, "rotation.rate", Symbols.RotationRate, "theta_r/t", "definition", Symbols.Rotation, Symbols.Duration);
}
