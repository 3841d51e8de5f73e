namespace Fastening.Equations;

/// <summary>The bolt as a spring: section by section, with the substitution lengths of VDI 2230, or as the textbooks have it.</summary>
/// <remarks>SI doubles in and out, no checks. The two ways are never mixed in one bolt: the textbook form has neither head nor nut.</remarks>
internal static class BoltComplianceEquations
{
    /// <summary>Elastic resilience of a straight section.</summary>
    public static double SectionResilience(double l_i, double E_Y, double A_i) => l_i / (E_Y * A_i);

    /// <summary>δ_i = l_i/(E A_i).</summary>
    public static Equation<Func<double, double, double, double>> SectionResilienceEquation { get; } = Equation.Define(
        SectionResilience, "bolt.section-resilience", Symbols.SectionResilience, "l_i/(E_Y*A_i)", "VDI 2230-1:2015 §5.1.1 (from memory); Hooke's law",
        Symbols.SectionLength, Symbols.YoungsModulus, Symbols.BoltSectionArea);

    /// <summary>Substitute length of head, engaged thread or nut.</summary>
    public static double SubstitutionLength(double c_l, double d) => c_l * d;

    /// <summary>l_i = c_l d: 0.5 hexagon head, 0.4 socket head, 0.5 engaged thread, 0.4 nut, 0.33 tapped part.</summary>
    public static Equation<Func<double, double, double>> SubstitutionLengthEquation { get; } = Equation.Define(
        SubstitutionLength, "bolt.substitution-length", Symbols.SectionLength, "c_l*d", "VDI 2230-1:2015 §5.1.1 (from memory)",
        Symbols.SubstitutionFactor, Symbols.NominalDiameter);

    /// <summary>Elastic resilience of the bolt with one section more; start from 0.</summary>
    public static double BoltResilience(double delta_0, double delta_i) => delta_0 + delta_i;

    /// <summary>δ_S = δ_0 + δ_i.</summary>
    public static Equation<Func<double, double, double>> BoltResilienceEquation { get; } = Equation.Define(
        BoltResilience, "bolt.resilience", Symbols.BoltResilience, "delta_0 + delta_i", "VDI 2230-1:2015 §5.1.1 (from memory): springs in series",
        Symbols.ResilienceBefore, Symbols.SectionResilience);

    /// <summary>Cross-section of a round section.</summary>
    public static double SectionArea(double d_l) => Math.PI / 4 * (d_l * d_l);

    /// <summary>A_i = (π/4) d_l².</summary>
    public static Equation<Func<double, double>> SectionAreaEquation { get; } = Equation.Define(
        SectionArea, "bolt.section-area", Symbols.BoltSectionArea, "pi/4*d_l^2", "geometry", Symbols.BoltSectionDiameter);

    /// <summary>Diameter of the round section of an area.</summary>
    public static double RoundDiameter(double A_i) => Math.Sqrt(4 * A_i / Math.PI);

    /// <summary>d_l = √(4 A_i/π).</summary>
    public static Equation<Func<double, double>> RoundDiameterEquation { get; } = Equation.Define(
        RoundDiameter, "bolt.round-diameter", Symbols.BoltSectionDiameter, "sqrt(4*A_i/pi)", "geometry", Symbols.BoltSectionArea);

    /// <summary>Length of the shank in the grip.</summary>
    public static double ShankLength(double l_b, double l_g, double l_K) => Math.Min(l_b - l_g, l_K);

    /// <summary>l_d = min(l_b − l_g, l_K).</summary>
    public static Equation<Func<double, double, double, double>> ShankLengthEquation { get; } = Equation.Define(
        ShankLength, "bolt.shank-length", Symbols.ShankLength, "min(l_b - l_g, l_K)", "geometry; Shigley 9th ed. (2011) Table 8-7",
        Symbols.BoltLength, Symbols.BoltThreadedLength, Symbols.Grip, "l_b - 1.01*l_g");

    /// <summary>Length of the thread in the grip.</summary>
    public static double FreeThreadLength(double l_K, double l_d) => l_K - l_d;

    /// <summary>l_t = l_K − l_d.</summary>
    public static Equation<Func<double, double, double>> FreeThreadLengthEquation { get; } = Equation.Define(
        FreeThreadLength, "bolt.free-thread-length", Symbols.FreeThreadLength, "l_K - l_d", "geometry; Shigley 9th ed. (2011) Table 8-7",
        Symbols.Grip, Symbols.ShankLength, "l_K - 1.01*l_d");

    /// <summary>Length of the bolt past the grip.</summary>
    public static double BeyondGrip(double l_b, double l_K) => l_b - l_K;

    /// <summary>l_r = l_b − l_K.</summary>
    public static Equation<Func<double, double, double>> BeyondGripEquation { get; } = Equation.Define(
        BeyondGrip, "bolt.beyond-grip", Symbols.LengthBeyondGrip, "l_b - l_K", "geometry", Symbols.BoltLength, Symbols.Grip, "l_b - 1.01*l_K");

    /// <summary>Stiffness of shank and thread in series, neither head nor nut.</summary>
    public static double TextbookStiffness(double A_N, double A_s, double E_Y, double l_t, double l_d) => A_N * A_s * E_Y / (A_N * l_t + A_s * l_d);

    /// <summary>k_b = A_N A_s E/(A_N l_t + A_s l_d).</summary>
    public static Equation<Func<double, double, double, double, double, double>> TextbookStiffnessEquation { get; } = Equation.Define(
        TextbookStiffness, "bolt.textbook-stiffness", Symbols.BoltStiffness, "A_N*A_s*E_Y/(A_N*l_t + A_s*l_d)", "Shigley 9th ed. (2011) eq. (8-17)",
        Symbols.NominalArea, Symbols.StressArea, Symbols.YoungsModulus, Symbols.FreeThreadLength, Symbols.ShankLength);

    /// <summary>Cross-section at the nominal diameter.</summary>
    public static double NominalArea(double d) => Math.PI / 4 * (d * d);

    /// <summary>A_N = (π/4) d².</summary>
    public static Equation<Func<double, double>> NominalAreaEquation { get; } = Equation.Define(
        NominalArea, "bolt.nominal-area", Symbols.NominalArea, "pi/4*d^2", "geometry", Symbols.NominalDiameter);

    /// <summary>Elastic resilience of a bolt of known stiffness.</summary>
    public static double ResilienceOfStiffness(double k_b) => 1 / k_b;

    /// <summary>δ_S = 1/k_b.</summary>
    public static Equation<Func<double, double>> ResilienceOfStiffnessEquation { get; } = Equation.Define(
        ResilienceOfStiffness, "bolt.resilience-of-stiffness", Symbols.BoltResilience, "1/k_b", "definition", Symbols.BoltStiffness);

    /// <summary>Stiffness of a bolt of known resilience.</summary>
    public static double StiffnessOfResilience(double delta_S) => 1 / delta_S;

    /// <summary>k_b = 1/δ_S.</summary>
    public static Equation<Func<double, double>> StiffnessOfResilienceEquation { get; } = Equation.Define(
        StiffnessOfResilience, "bolt.stiffness-of-resilience", Symbols.BoltStiffness, "1/delta_S", "definition", Symbols.BoltResilience);

    /// <summary>Effective grip of a bolt screwed into its last part, as the textbooks take it.</summary>
    public static double TappedGrip(double l_h, double l_2, double d) => l_h + Math.Min(l_2, d) / 2;

    /// <summary>l_K = l_h + min(l_2, d)/2.</summary>
    public static Equation<Func<double, double, double, double>> TappedGripEquation { get; } = Equation.Define(
        TappedGrip, "bolt.tapped-grip", Symbols.Grip, "l_h + min(l_2, d)/2", "Shigley 9th ed. (2011) Table 8-7",
        Symbols.PlainGrip, Symbols.TappedThickness, Symbols.NominalDiameter);

    /// <summary>Elongation of the bolt under a force.</summary>
    public static double Elongation(double F, double delta_S) => F * delta_S;

    /// <summary>f_S = F δ_S.</summary>
    public static Equation<Func<double, double, double>> ElongationEquation { get; } = Equation.Define(
        Elongation, "bolt.elongation", Symbols.Elongation, "F*delta_S", "VDI 2230-1:2015 §5.1.1 (from memory); Hooke's law", Symbols.Preload, Symbols.BoltResilience);
}
