namespace Fastening.Equations;

/// <summary>Efficiency of a power screw, and the friction at which it is self-locking.</summary>
internal static class PowerScrewEquations
{
    /// <summary>Efficiency: the torque that would do without friction over the torque that is needed, collar included, prevailing torque not.</summary>
    public static double Efficiency(double lambda_P, double kappa) => lambda_P / kappa;

    /// <summary>e = λ_P/κ.</summary>
    public static Equation<Func<double, double, double>> EfficiencyEquation { get; } = Equation.Define(
        Efficiency, "screw.efficiency", Symbols.Efficiency, "lambda_P/kappa", "Shigley 9th ed. (2011) eq. (8-4)",
        Symbols.PitchArm, Symbols.TorqueArm, "kappa - lambda_P");

    /// <summary>Thread friction at and above which the load cannot turn the thread.</summary>
    public static double HoldingFriction(double c, double phi) => Math.Tan(phi) / c;

    /// <summary>µ_h = tan φ/c.</summary>
    public static Equation<Func<double, double, double>> HoldingFrictionEquation { get; } = Equation.Define(
        HoldingFriction, "screw.holding-friction", Symbols.HoldingFriction, "tan(phi)/c", "Shigley 9th ed. (2011) eq. (8-3), with flank factor",
        Symbols.FlankFactor, Symbols.LeadAngle);
}
