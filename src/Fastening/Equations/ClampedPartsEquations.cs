using MathNet.Numerics;

namespace Fastening.Equations;

/// <summary>The clamped parts as a spring: pieces of a cone, sleeves, the deformation cone of VDI 2230, and the fit by Wileman.</summary>
/// <remarks>SI doubles in and out, no checks. Logarithms are taken of 1 + x from x, so that a thin piece costs no digits.</remarks>
internal static class ClampedPartsEquations
{
    /// <summary>Elastic resilience of a piece of a cone around a hole.</summary>
    public static double FrustumResilience(double E_Y, double d_h, double phi_c, double D_c, double l_i)
    {
        double tangent = Math.Tan(phi_c);
        return SpecialFunctions.Log1p(4 * d_h * l_i * tangent / ((D_c - d_h) * (D_c + 2 * l_i * tangent + d_h))) / (Math.PI * E_Y * d_h * tangent);
    }

    /// <summary>δ_i = ln(1 + 4 d_h l_i tan φ/((D_c − d_h)(D_c + 2 l_i tan φ + d_h)))/(π E d_h tan φ).</summary>
    public static Equation<Func<double, double, double, double, double, double>> FrustumResilienceEquation { get; } = Equation.Define(
        FrustumResilience, "parts.frustum-resilience", Symbols.SectionResilience,
        "ln(1 + 4*d_h*l_i*tan(phi_c)/((D_c - d_h)*(D_c + 2*l_i*tan(phi_c) + d_h)))/(pi*E_Y*d_h*tan(phi_c))",
        "Shigley 9th ed. (2011) eq. (8-19), written with 1 + x; derived",
        Symbols.YoungsModulus, Symbols.HoleDiameter, Symbols.ConeAngle, Symbols.ConeDiameter, Symbols.SectionLength,
        "min(D_c - 1.01*d_h, min(l_i - 0.01*D_c, 50*d_h - D_c))");

    /// <summary>Elastic resilience of a sleeve.</summary>
    public static double SleeveResilience(double l_i, double E_Y, double D_A, double d_h) => 4 * l_i / (Math.PI * E_Y * ((D_A - d_h) * (D_A + d_h)));

    /// <summary>δ_i = 4 l_i/(π E (D_A² − d_h²)).</summary>
    public static Equation<Func<double, double, double, double, double>> SleeveResilienceEquation { get; } = Equation.Define(
        SleeveResilience, "parts.sleeve-resilience", Symbols.SectionResilience, "4*l_i/(pi*E_Y*((D_A - d_h)*(D_A + d_h)))",
        "VDI 2230-1:2015 §5.1.2 (from memory); Hooke's law", Symbols.SectionLength, Symbols.YoungsModulus, Symbols.PartsDiameter, Symbols.HoleDiameter, "D_A - 1.01*d_h");

    /// <summary>Elastic resilience of the clamped parts with one piece more; start from 0.</summary>
    public static double PartsResilience(double delta_0, double delta_i) => delta_0 + delta_i;

    /// <summary>δ_P = δ_0 + δ_i.</summary>
    public static Equation<Func<double, double, double>> PartsResilienceEquation { get; } = Equation.Define(
        PartsResilience, "parts.resilience", Symbols.PartsResilience, "delta_0 + delta_i", "VDI 2230-1:2015 §5.1.2 (from memory): springs in series",
        Symbols.ResilienceBefore, Symbols.SectionResilience);

    /// <summary>Grip per bearing diameter.</summary>
    public static double GripRatio(double l_K, double d_W) => l_K / d_W;

    /// <summary>β_L = l_K/d_W.</summary>
    public static Equation<Func<double, double, double>> GripRatioEquation { get; } = Equation.Define(
        GripRatio, "parts.grip-ratio", Symbols.GripRatio, "l_K/d_W", "VDI 2230-1:2015 §5.1.2.1 (from memory)", Symbols.Grip, Symbols.ConeBearingDiameter);

    /// <summary>Outside diameter of the parts per bearing diameter.</summary>
    public static double DiameterRatio(double D_A, double d_W) => D_A / d_W;

    /// <summary>y = D_A/d_W.</summary>
    public static Equation<Func<double, double, double>> DiameterRatioEquation { get; } = Equation.Define(
        DiameterRatio, "parts.diameter-ratio", Symbols.DiameterRatio, "D_A/d_W", "VDI 2230-1:2015 §5.1.2.1 (from memory)",
        Symbols.PartsDiameter, Symbols.ConeBearingDiameter);

    /// <summary>Outside diameter of the parts at the interface per bearing diameter.</summary>
    public static double InterfaceDiameterRatio(double D_If, double d_W) => D_If / d_W;

    /// <summary>y = D'_A/d_W.</summary>
    public static Equation<Func<double, double, double>> InterfaceDiameterRatioEquation { get; } = Equation.Define(
        InterfaceDiameterRatio, "parts.interface-diameter-ratio", Symbols.DiameterRatio, "D_If/d_W", "VDI 2230-1:2015 §5.1.2.1 (from memory)",
        Symbols.InterfaceDiameter, Symbols.ConeBearingDiameter);

    /// <summary>Half angle of the deformation cone, bolt and nut.</summary>
    public static double ThroughBoltConeAngle(double beta_L, double y) => Math.Atan(0.362 + 0.032 * Math.Log(beta_L / 2) + 0.153 * Math.Log(y));

    /// <summary>φ_D = atan(0.362 + 0.032 ln(β_L/2) + 0.153 ln y).</summary>
    public static Equation<Func<double, double, double>> ThroughBoltConeAngleEquation { get; } = Equation.Define(
        ThroughBoltConeAngle, "parts.through-bolt-cone-angle", Symbols.ConeAngle, "atan(0.362 + 0.032*ln(beta_L/2) + 0.153*ln(y))",
        "VDI 2230-1:2015 §5.1.2.1 (from memory)", Symbols.GripRatio, Symbols.DiameterRatio);

    /// <summary>Half angle of the deformation cone, bolt in a tapped part.</summary>
    public static double TappedConeAngle(double beta_L, double y) => Math.Atan(0.348 + 0.013 * Math.Log(beta_L) + 0.193 * Math.Log(y));

    /// <summary>φ_E = atan(0.348 + 0.013 ln β_L + 0.193 ln y).</summary>
    public static Equation<Func<double, double, double>> TappedConeAngleEquation { get; } = Equation.Define(
        TappedConeAngle, "parts.tapped-cone-angle", Symbols.ConeAngle, "atan(0.348 + 0.013*ln(beta_L) + 0.193*ln(y))",
        "VDI 2230-1:2015 §5.1.2.1 (from memory)", Symbols.GripRatio, Symbols.DiameterRatio);

    /// <summary>Diameter that the deformation cone reaches in parts that are wide enough.</summary>
    public static double LimitingDiameter(double d_W, double w, double l_K, double phi_c) => d_W + w * l_K * Math.Tan(phi_c);

    /// <summary>D_Gr = d_W + w l_K tan φ.</summary>
    public static Equation<Func<double, double, double, double, double>> LimitingDiameterEquation { get; } = Equation.Define(
        LimitingDiameter, "parts.limiting-diameter", Symbols.LimitingDiameter, "d_W + w*l_K*tan(phi_c)", "VDI 2230-1:2015 §5.1.2.1 (from memory)",
        Symbols.ConeBearingDiameter, Symbols.JointCoefficient, Symbols.Grip, Symbols.ConeAngle);

    /// <summary>The logarithm in the resilience of a cone from its first to its last diameter.</summary>
    public static double ConeLogarithm(double d_W, double d_h, double D_e) => SpecialFunctions.Log1p(2 * d_h * (D_e - d_W) / ((d_W - d_h) * (D_e + d_h)));

    /// <summary>q_K = ln((d_W + d_h)(D_e − d_h)/((d_W − d_h)(D_e + d_h))).</summary>
    public static Equation<Func<double, double, double, double>> ConeLogarithmEquation { get; } = Equation.Define(
        ConeLogarithm, "parts.cone-logarithm", Symbols.ConeLogarithm, "ln((d_W + d_h)*(D_e - d_h)/((d_W - d_h)*(D_e + d_h)))", "VDI 2230-1:2015 §5.1.2.1 (from memory)",
        Symbols.ConeBearingDiameter, Symbols.HoleDiameter, Symbols.ConeEndDiameter, "min(d_W - 1.01*d_h, min(D_e - 1.01*d_W, 50*d_h - D_e))");

    /// <summary>Elastic resilience of the deformation cone, one or two of them.</summary>
    public static double ConesResilience(double q_K, double w, double E_Y, double d_h, double phi_c) =>
        2 * q_K / (w * Math.PI * E_Y * d_h * Math.Tan(phi_c));

    /// <summary>δ_P = 2 q_K/(w π E d_h tan φ): parts wide enough for the whole cone.</summary>
    public static Equation<Func<double, double, double, double, double, double>> WholeConesEquation { get; } = Equation.Define(
        ConesResilience, "parts.whole-cones", Symbols.PartsResilience, "2*q_K/(w*pi*E_Y*d_h*tan(phi_c))", "VDI 2230-1:2015 §5.1.2.1 (from memory)",
        Symbols.ConeLogarithm, Symbols.JointCoefficient, Symbols.YoungsModulus, Symbols.HoleDiameter, Symbols.ConeAngle);

    /// <summary>δ_0 = 2 q_K/(w π E d_h tan φ): the cones above and below a sleeve.</summary>
    public static Equation<Func<double, double, double, double, double, double>> LimitedConesEquation { get; } = Equation.Define(
        ConesResilience, "parts.limited-cones", Symbols.ResilienceBefore, "2*q_K/(w*pi*E_Y*d_h*tan(phi_c))", "VDI 2230-1:2015 §5.1.2.1 (from memory)",
        Symbols.ConeLogarithm, Symbols.JointCoefficient, Symbols.YoungsModulus, Symbols.HoleDiameter, Symbols.ConeAngle);

    /// <summary>Length of the sleeve between cones that have reached the outside of the parts.</summary>
    public static double SleeveLength(double l_K, double D_A, double d_W, double w, double phi_c) => l_K - (D_A - d_W) / (w * Math.Tan(phi_c));

    /// <summary>l_i = l_K − (D_A − d_W)/(w tan φ).</summary>
    public static Equation<Func<double, double, double, double, double, double>> SleeveLengthEquation { get; } = Equation.Define(
        SleeveLength, "parts.sleeve-length", Symbols.SectionLength, "l_K - (D_A - d_W)/(w*tan(phi_c))", "VDI 2230-1:2015 §5.1.2.1 (from memory)",
        Symbols.Grip, Symbols.PartsDiameter, Symbols.ConeBearingDiameter, Symbols.JointCoefficient, Symbols.ConeAngle,
        "min(D_A - d_W, w*l_K*tan(phi_c) - 1.01*(D_A - d_W))");

    /// <summary>Stiffness of wide plates of one material by the fit to finite elements.</summary>
    public static double WilemanStiffness(double E_Y, double d, double A_W, double B_W, double l_K) => E_Y * d * A_W * Math.Exp(B_W * d / l_K);

    /// <summary>k_m = E d A e^(B d/l_K).</summary>
    public static Equation<Func<double, double, double, double, double, double>> WilemanStiffnessEquation { get; } = Equation.Define(
        WilemanStiffness, "parts.wileman-stiffness", Symbols.PartsStiffness, "E_Y*d*A_W*exp(B_W*d/l_K)",
        "Wileman, Choudhury and Green, J. Mech. Design 113 (1991); Shigley 9th ed. (2011) eq. (8-23)",
        Symbols.YoungsModulus, Symbols.NominalDiameter, Symbols.WilemanCoefficient, Symbols.WilemanExponent, Symbols.Grip, "4*l_K - d");

    /// <summary>Elastic resilience of parts of known stiffness.</summary>
    public static double ResilienceOfStiffness(double k_m) => 1 / k_m;

    /// <summary>δ_P = 1/k_m.</summary>
    public static Equation<Func<double, double>> ResilienceOfStiffnessEquation { get; } = Equation.Define(
        ResilienceOfStiffness, "parts.resilience-of-stiffness", Symbols.PartsResilience, "1/k_m", "definition", Symbols.PartsStiffness);

    /// <summary>Stiffness of parts of known resilience.</summary>
    public static double StiffnessOfResilience(double delta_P) => 1 / delta_P;

    /// <summary>k_m = 1/δ_P.</summary>
    public static Equation<Func<double, double>> StiffnessOfResilienceEquation { get; } = Equation.Define(
        StiffnessOfResilience, "parts.stiffness-of-resilience", Symbols.PartsStiffness, "1/delta_P", "definition", Symbols.PartsResilience);
}
