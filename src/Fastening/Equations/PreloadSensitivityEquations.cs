namespace Fastening.Equations;

/// <summary>How much the preload changes with torque, friction and nut factor: first derivatives of F = (M − M_p)/κ.</summary>
internal static class PreloadSensitivityEquations
{
    /// <summary>Change of the preload with the torque at the fastener; with the prevailing torque it is the same, negative.</summary>
    public static double PreloadPerTorque(double kappa) => 1 / kappa;

    /// <summary>∂F/∂M = 1/κ.</summary>
    public static Equation<Func<double, double>> PreloadPerTorqueEquation { get; } = Equation.Define(
        PreloadPerTorque, "sensitivity.preload-per-torque", Symbols.PreloadPerTorque, "1/kappa", "derived", Symbols.TorqueArm);

    /// <summary>Change of the preload with the friction in the thread.</summary>
    public static double PreloadPerThreadFriction(double F, double r_th, double kappa) => -F * r_th / kappa;

    /// <summary>∂F/∂µ_th = −F r_th/κ.</summary>
    public static Equation<Func<double, double, double, double>> PreloadPerThreadFrictionEquation { get; } = Equation.Define(
        PreloadPerThreadFriction, "sensitivity.preload-per-thread-friction", Symbols.PreloadPerCoefficient, "-F*r_th/kappa", "derived",
        Symbols.Preload, Symbols.ThreadFrictionRadius, Symbols.TorqueArm);

    /// <summary>Change of the preload with the friction at the bearing surface.</summary>
    public static double PreloadPerBearingFriction(double F, double r_b, double kappa) => -F * r_b / kappa;

    /// <summary>∂F/∂µ_b = −F r_b/κ.</summary>
    public static Equation<Func<double, double, double, double>> PreloadPerBearingFrictionEquation { get; } = Equation.Define(
        PreloadPerBearingFriction, "sensitivity.preload-per-bearing-friction", Symbols.PreloadPerCoefficient, "-F*r_b/kappa", "derived",
        Symbols.Preload, Symbols.BearingFrictionRadius, Symbols.TorqueArm);

    /// <summary>Change of the preload with the nut factor.</summary>
    public static double PreloadPerNutFactor(double F, double K) => -F / K;

    /// <summary>∂F/∂K = −F/K.</summary>
    public static Equation<Func<double, double, double>> PreloadPerNutFactorEquation { get; } = Equation.Define(
        PreloadPerNutFactor, "sensitivity.preload-per-nut-factor", Symbols.PreloadPerCoefficient, "-F/K", "derived", Symbols.Preload, Symbols.NutFactor);

    /// <summary>Thread torque per unit preload and unit friction, exact form: the slope of the arm over the friction.</summary>
    public static double ExactThreadRadius(double c, double mu_th, double d_m, double phi)
    {
        double tangent = Math.Tan(phi), rest = 1 - c * mu_th * tangent;
        return c * d_m / 2 * (1 + tangent * tangent) / (rest * rest);
    }

    /// <summary>r_th = (c d_m/2)(1 + tan² φ)/(1 − c µ_th tan φ)².</summary>
    public static Equation<Func<double, double, double, double, double>> ExactThreadRadiusEquation { get; } = Equation.Define(
        ExactThreadRadius, "sensitivity.exact-thread-radius", Symbols.ThreadFrictionRadius, "c*d_m/2*(1 + tan(phi)^2)/(1 - c*mu_th*tan(phi))^2",
        "derived", Symbols.FlankFactor, Symbols.ThreadFriction, Symbols.MeanThreadDiameter, Symbols.LeadAngle, "0.99 - c*mu_th*tan(phi)");
}
