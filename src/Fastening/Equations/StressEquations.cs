namespace Fastening.Equations;

/// <summary>Stress in the bolt while it is being tightened: tension and torsion together.</summary>
/// <remarks>SI doubles in and out, no checks. The torsional section modulus is plastic (VDI 2230 from 2001) or elastic (older VDI, JIS), by name.</remarks>
public static class StressEquations
{
    /// <summary>The governing diameter: the smaller of stress diameter and waist.</summary>
    public static double SectionDiameter(double d_s, double d_T) => Math.Min(d_s, d_T);

    /// <summary>d_0 = min(d_s, d_T).</summary>
    public static Equation<Func<double, double, double>> SectionDiameterEquation { get; } = Equation.Define(
        SectionDiameter, "stress.section-diameter", Symbols.SectionDiameter, "min(d_s, d_T)", "VDI 2230-1:2015 §5.4.2",
        Symbols.StressDiameter, Symbols.WaistDiameter);

    /// <summary>Area of the governing cross-section.</summary>
    public static double SectionArea(double d_0) => Math.PI / 4 * (d_0 * d_0);

    /// <summary>A_0 = (π/4) d_0².</summary>
    public static Equation<Func<double, double>> SectionAreaEquation { get; } = Equation.Define(
        SectionArea, "stress.section-area", Symbols.SectionArea, "pi/4*d_0^2", "VDI 2230-1:2015 §5.4.2", Symbols.SectionDiameter);

    /// <summary>Torsional section modulus with the whole section at yield.</summary>
    public static double PlasticSectionModulus(double d_0) => Math.PI * (d_0 * d_0 * d_0) / 12;

    /// <summary>W_p = π d_0³/12.</summary>
    public static Equation<Func<double, double>> PlasticSectionModulusEquation { get; } = Equation.Define(
        PlasticSectionModulus, "stress.plastic-section-modulus", Symbols.SectionModulus, "pi*d_0^3/12", "VDI 2230-1:2015 §5.4.2",
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
        ShankTorque, "stress.shank-torque", Symbols.ShankTorque, "lambda_th*F + M_p", "VDI 2230-1:2015 §5.4.2 (without M_p); derived",
        Symbols.ThreadArm, Symbols.Preload, Symbols.PrevailingTorque);

    /// <summary>Tensile stress.</summary>
    public static double TensileStress(double F, double A_0) => F / A_0;

    /// <summary>σ = F/A_0.</summary>
    public static Equation<Func<double, double, double>> TensileStressEquation { get; } = Equation.Define(
        TensileStress, "stress.tensile", Symbols.TensileStress, "F/A_0", "VDI 2230-1:2015 §5.4.2", Symbols.Preload, Symbols.SectionArea);

    /// <summary>Torsional stress.</summary>
    public static double TorsionalStress(double M_T, double W_p) => M_T / W_p;

    /// <summary>τ = M_T/W_p.</summary>
    public static Equation<Func<double, double, double>> TorsionalStressEquation { get; } = Equation.Define(
        TorsionalStress, "stress.torsional", Symbols.TorsionalStress, "M_T/W_p", "VDI 2230-1:2015 §5.4.2", Symbols.ShankTorque, Symbols.SectionModulus);

    /// <summary>Equivalent stress by distortion energy (von Mises).</summary>
    public static double EquivalentStress(double sigma, double tau) => Math.Sqrt(sigma * sigma + 3 * (tau * tau));

    /// <summary>σ_red = √(σ² + 3τ²).</summary>
    public static Equation<Func<double, double, double>> EquivalentStressEquation { get; } = Equation.Define(
        EquivalentStress, "stress.equivalent", Symbols.EquivalentStress, "sqrt(sigma^2 + 3*tau^2)", "VDI 2230-1:2015 §5.4.2",
        Symbols.TensileStress, Symbols.TorsionalStress);

    /// <summary>The equivalent stress that may be used while tightening.</summary>
    public static double PermittedStress(double nu, double R_p) => nu * R_p;

    /// <summary>σ_lim = ν R_p.</summary>
    public static Equation<Func<double, double, double>> PermittedStressEquation { get; } = Equation.Define(
        PermittedStress, "stress.permitted", Symbols.PermittedStress, "nu*R_p", "VDI 2230-1:2015 §5.4.2", Symbols.Utilisation, Symbols.YieldStrength);

    /// <summary>Preload at which the equivalent stress reaches the permitted stress; without prevailing torque this is F_Mzul of VDI 2230.</summary>
    public static double PermittedPreload(double sigma_lim, double A_0, double W_p, double lambda_th, double M_p)
    {
        double tension = 1 / (A_0 * A_0);
        double torsion = 3 * (lambda_th * lambda_th) / (W_p * W_p);
        double offset = 3 * (M_p * M_p) / (W_p * W_p);
        double root = Math.Sqrt(sigma_lim * sigma_lim * (tension + torsion) - offset * tension);
        return (root - 3 * lambda_th * M_p / (W_p * W_p)) / (tension + torsion);
    }

    /// <summary>The root of (F/A_0)² + 3((λ_th F + M_p)/W_p)² = σ_lim².</summary>
    public static Equation<Func<double, double, double, double, double, double>> PermittedPreloadEquation { get; } = Equation.Define(
        PermittedPreload, "stress.permitted-preload", Symbols.Preload,
        "(sqrt(sigma_lim^2*(1/A_0^2 + 3*lambda_th^2/W_p^2) - 3*M_p^2/(A_0*W_p)^2) - 3*lambda_th*M_p/W_p^2)/(1/A_0^2 + 3*lambda_th^2/W_p^2)",
        "VDI 2230-1:2015 §5.4.2, F_Mzul, with M_p added; derived",
        Symbols.PermittedStress, Symbols.SectionArea, Symbols.SectionModulus, Symbols.ThreadArm, Symbols.PrevailingTorque,
        "0.98*sigma_lim - 1.7320508*M_p/W_p");
}
