namespace Fastening.Equations;

/// <summary>Stress in the bolt while it is being tightened: tension and torsion together.</summary>
/// <remarks>SI doubles in and out, no checks. The torsional section modulus is plastic (VDI 2230 from 2001) or elastic (older VDI, JIS), by name.</remarks>
internal static class StressEquations
{
    /// <summary>The governing diameter: the smaller of stress diameter and waist.</summary>
    public static double SectionDiameter(double d_s, double d_T) => Math.Min(d_s, d_T);

    /// <summary>d_0 = min(d_s, d_T).</summary>
    public static Equation<Func<double, double, double>> SectionDiameterEquation { get; } = Equation.Define(
        SectionDiameter, "stress.section-diameter", Symbols.SectionDiameter, "min(d_s, d_T)", "VDI 2230-1:2015 §5.5.1 (from memory)",
        Symbols.StressDiameter, Symbols.WaistDiameter);

    /// <summary>Area of the governing cross-section.</summary>
    public static double SectionArea(double d_0) => Math.PI / 4 * (d_0 * d_0);

    /// <summary>A_0 = (π/4) d_0².</summary>
    public static Equation<Func<double, double>> SectionAreaEquation { get; } = Equation.Define(
        SectionArea, "stress.section-area", Symbols.SectionArea, "pi/4*d_0^2", "VDI 2230-1:2015 §5.5.1 (from memory)", Symbols.SectionDiameter);

    /// <summary>Torsional section modulus with the whole section at yield.</summary>
    public static double PlasticSectionModulus(double d_0) => Math.PI * (d_0 * d_0 * d_0) / 12;

    /// <summary>W_p = π d_0³/12.</summary>
    public static Equation<Func<double, double>> PlasticSectionModulusEquation { get; } = Equation.Define(
        PlasticSectionModulus, "stress.plastic-section-modulus", Symbols.SectionModulus, "pi*d_0^3/12", "VDI 2230-1:2015 §5.5.1 (from memory)",
        Symbols.SectionDiameter);

    /// <summary>Torsional section modulus with only the surface at yield.</summary>
    public static double ElasticSectionModulus(double d_0) => Math.PI * (d_0 * d_0 * d_0) / 16;

    /// <summary>W_p = π d_0³/16.</summary>
    public static Equation<Func<double, double>> ElasticSectionModulusEquation { get; } = Equation.Define(
        ElasticSectionModulus, "stress.elastic-section-modulus", Symbols.SectionModulus, "pi*d_0^3/16",
        "VDI 2230:1986; Machinery's Handbook 31st ed. (2020)", Symbols.SectionDiameter);

    /// <summary>Torque that twists the shank: thread torque and prevailing torque, without the bearing share.</summary>
    public static double ShankTorque(double lambda_th, double F, double M_p) => lambda_th * F + M_p;

    /// <summary>M_T = λ_th F + M_p.</summary>
    public static Equation<Func<double, double, double, double>> ShankTorqueEquation { get; } = Equation.Define(
        ShankTorque, "stress.shank-torque", Symbols.ShankTorque, "lambda_th*F + M_p", "VDI 2230-1:2015 §5.5.1 (from memory) (without M_p); derived",
        Symbols.ThreadArm, Symbols.Preload, Symbols.PrevailingTorque);

    /// <summary>Tensile stress.</summary>
    public static double TensileStress(double F, double A_0) => F / A_0;

    /// <summary>σ = F/A_0.</summary>
    public static Equation<Func<double, double, double>> TensileStressEquation { get; } = Equation.Define(
        TensileStress, "stress.tensile", Symbols.TensileStress, "F/A_0", "VDI 2230-1:2015 §5.5.1 (from memory)", Symbols.Preload, Symbols.SectionArea);

    /// <summary>Torsional stress.</summary>
    public static double TorsionalStress(double M_T, double W_p) => M_T / W_p;

    /// <summary>τ = M_T/W_p.</summary>
    public static Equation<Func<double, double, double>> TorsionalStressEquation { get; } = Equation.Define(
        TorsionalStress, "stress.torsional", Symbols.TorsionalStress, "M_T/W_p", "VDI 2230-1:2015 §5.5.1 (from memory)", Symbols.ShankTorque, Symbols.SectionModulus);

    /// <summary>Equivalent stress by distortion energy (von Mises).</summary>
    public static double EquivalentStress(double sigma, double tau) => Math.Sqrt(sigma * sigma + 3 * (tau * tau));

    /// <summary>σ_red = √(σ² + 3τ²).</summary>
    public static Equation<Func<double, double, double>> EquivalentStressEquation { get; } = Equation.Define(
        EquivalentStress, "stress.equivalent", Symbols.EquivalentStress, "sqrt(sigma^2 + 3*tau^2)", "VDI 2230-1:2015 §5.5.1 (from memory)",
        Symbols.TensileStress, Symbols.TorsionalStress);

    /// <summary>The equivalent stress that may be used while tightening.</summary>
    public static double PermittedStress(double nu, double R_p) => nu * R_p;

    /// <summary>σ_lim = ν R_p.</summary>
    public static Equation<Func<double, double, double>> PermittedStressEquation { get; } = Equation.Define(
        PermittedStress, "stress.permitted", Symbols.PermittedStress, "nu*R_p", "VDI 2230-1:2015 §5.5.1 (from memory)", Symbols.Utilisation, Symbols.YieldStrength);

    /// <summary>Tensile stress per unit preload.</summary>
    public static double TensionPerPreload(double A_0) => 1 / A_0;

    /// <summary>s_σ = 1/A_0.</summary>
    public static Equation<Func<double, double>> TensionPerPreloadEquation { get; } = Equation.Define(
        TensionPerPreload, "stress.tension-per-preload", Symbols.TensionPerPreload, "1/A_0", "VDI 2230-1:2015 §5.5.1 (from memory)", Symbols.SectionArea);

    /// <summary>Torsional stress per unit preload, times √3, as it enters the equivalent stress.</summary>
    public static double TorsionPerPreload(double lambda_th, double W_p) => Math.Sqrt(3) * lambda_th / W_p;

    /// <summary>s_τ = √3 λ_th/W_p.</summary>
    public static Equation<Func<double, double, double>> TorsionPerPreloadEquation { get; } = Equation.Define(
        TorsionPerPreload, "stress.torsion-per-preload", Symbols.TorsionPerPreload, "sqrt(3)*lambda_th/W_p", "VDI 2230-1:2015 §5.5.1 (from memory)",
        Symbols.ThreadArm, Symbols.SectionModulus);

    /// <summary>Torsional stress of the prevailing torque, times √3.</summary>
    public static double PrevailingStress(double M_p, double W_p) => Math.Sqrt(3) * M_p / W_p;

    /// <summary>τ_p = √3 M_p/W_p.</summary>
    public static Equation<Func<double, double, double>> PrevailingStressEquation { get; } = Equation.Define(
        PrevailingStress, "stress.prevailing", Symbols.PrevailingStress, "sqrt(3)*M_p/W_p", "derived", Symbols.PrevailingTorque, Symbols.SectionModulus);

    /// <summary>
    /// Preload at which the equivalent stress reaches the permitted stress: the positive root of (s_σ F)² + (s_τ F + τ_p)² = σ_lim².
    /// Without prevailing torque this is F_Mzul of VDI 2230.
    /// </summary>
    /// <remarks>Written so that nothing is lost where the prevailing torque uses up nearly all of the permitted stress: no two near values are subtracted but σ_lim − τ_p.</remarks>
    public static double PermittedPreload(double sigma_lim, double s_sigma, double s_tau, double tau_p)
    {
        double left = (sigma_lim - tau_p) * (sigma_lim + tau_p);
        double twist = s_tau * sigma_lim;
        return left / (Math.Sqrt(twist * twist + s_sigma * s_sigma * left) + s_tau * tau_p);
    }

    /// <summary>F = (σ_lim − τ_p)(σ_lim + τ_p)/(√((s_τ σ_lim)² + s_σ² (σ_lim − τ_p)(σ_lim + τ_p)) + s_τ τ_p).</summary>
    public static Equation<Func<double, double, double, double, double>> PermittedPreloadEquation { get; } = Equation.Define(
        PermittedPreload, "stress.permitted-preload", Symbols.Preload,
        "(sigma_lim - tau_p)*(sigma_lim + tau_p)/(sqrt((s_tau*sigma_lim)^2 + s_sigma^2*(sigma_lim - tau_p)*(sigma_lim + tau_p)) + s_tau*tau_p)",
        "derived: equivalent stress at its limit, prevailing torque counted; without it F_Mzul, VDI 2230-1:2015 §5.5.1 (from memory)",
        Symbols.PermittedStress, Symbols.TensionPerPreload, Symbols.TorsionPerPreload, Symbols.PrevailingStress, "sigma_lim - tau_p");
}
