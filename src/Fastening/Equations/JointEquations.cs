namespace Fastening.Equations;

/// <summary>Bolt and clamped parts together: load factor, and rotation against preload.</summary>
/// <remarks>SI doubles in and out, no checks.</remarks>
internal static class JointEquations
{
    /// <summary>Elastic resilience of bolt and clamped parts together.</summary>
    public static double Resilience(double delta_S, double delta_P) => delta_S + delta_P;

    /// <summary>δ = δ_S + δ_P.</summary>
    public static Equation<Func<double, double, double>> ResilienceEquation { get; } = Equation.Define(
        Resilience, "joint.resilience", Symbols.JointResilience, "delta_S + delta_P", "VDI 2230-1:2015 §5.1 (from memory)", Symbols.BoltResilience, Symbols.PartsResilience);

    /// <summary>Share of a load under head and nut that the bolt takes.</summary>
    public static double LoadFactor(double delta_S, double delta_P) => delta_P / (delta_S + delta_P);

    /// <summary>Φ_K = δ_P/(δ_S + δ_P).</summary>
    public static Equation<Func<double, double, double>> LoadFactorEquation { get; } = Equation.Define(
        LoadFactor, "joint.load-factor", Symbols.LoadFactor, "delta_P/(delta_S + delta_P)",
        "VDI 2230-1:2015 §5.3.1 (from memory); Shigley 9th ed. (2011), joint constant C", Symbols.BoltResilience, Symbols.PartsResilience);

    /// <summary>Rotation that gains a preload.</summary>
    public static double Rotation(double F_g, double delta, double P_h) => 2 * Math.PI * F_g * delta / P_h;

    /// <summary>θ_r = 2π F_g δ/P_h.</summary>
    public static Equation<Func<double, double, double, double>> RotationEquation { get; } = Equation.Define(
        Rotation, "joint.rotation", Symbols.Rotation, "2*pi*F_g*delta/P_h", "derived: one lead per turn", Symbols.PreloadGain, Symbols.JointResilience, Symbols.Lead);

    /// <summary>Preload that a rotation gains.</summary>
    public static double PreloadGain(double theta_r, double P_h, double delta) => theta_r * P_h / (2 * Math.PI * delta);

    /// <summary>F_g = θ_r P_h/(2π δ).</summary>
    public static Equation<Func<double, double, double, double>> PreloadGainEquation { get; } = Equation.Define(
        PreloadGain, "joint.preload-gain", Symbols.PreloadGain, "theta_r*P_h/(2*pi*delta)", "derived: one lead per turn",
        Symbols.Rotation, Symbols.Lead, Symbols.JointResilience);
}
