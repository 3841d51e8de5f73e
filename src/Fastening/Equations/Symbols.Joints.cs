namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Length of a section of the bolt, or thickness of a piece of the clamped parts.</summary>
    public static Symbol SectionLength { get; } = new("l_i", SymbolUnit.Length, "length of the section", 1e-4, 1);

    /// <summary>Diameter of a section of the bolt.</summary>
    public static Symbol BoltSectionDiameter { get; } = new("d_l", SymbolUnit.Length, "diameter of the section", 7e-4, 0.2);

    /// <summary>Cross-section of a section of the bolt.</summary>
    public static Symbol BoltSectionArea { get; } = new("A_i", SymbolUnit.Area, "cross-section of the section", 3e-7, 0.03);

    /// <summary>Length of a part of the bolt that replaces head, nut or engaged thread in the calculation, per nominal diameter.</summary>
    public static Symbol SubstitutionFactor { get; } = new("c_l", SymbolUnit.Ratio, "substitution length per nominal diameter", 0.2, 0.6);

    /// <summary>Nominal cross-section of the bolt.</summary>
    public static Symbol NominalArea { get; } = new("A_N", SymbolUnit.Area, "cross-section at the nominal diameter", 3e-7, 0.03);

    /// <summary>Length of the shank in the grip.</summary>
    public static Symbol ShankLength { get; } = new("l_d", SymbolUnit.Length, "length of the shank in the grip", 1e-3, 1);

    /// <summary>Length of the thread in the grip.</summary>
    public static Symbol FreeThreadLength { get; } = new("l_t", SymbolUnit.Length, "length of the thread in the grip", 1e-3, 1);

    /// <summary>Length of the bolt.</summary>
    public static Symbol BoltLength { get; } = new("l_b", SymbolUnit.Length, "length of the bolt under its head", 1e-3, 1);

    /// <summary>Threaded length of the bolt.</summary>
    public static Symbol BoltThreadedLength { get; } = new("l_g", SymbolUnit.Length, "threaded length of the bolt", 1e-3, 1);

    /// <summary>Length of the bolt past the grip.</summary>
    public static Symbol LengthBeyondGrip { get; } = new("l_r", SymbolUnit.Length, "length of the bolt past the grip", 0, 1);

    /// <summary>Grip of the parts under the head of a bolt that is screwed into the last of them.</summary>
    public static Symbol PlainGrip { get; } = new("l_h", SymbolUnit.Length, "thickness of the parts above the tapped one", 1e-3, 1);

    /// <summary>Thickness of the tapped part.</summary>
    public static Symbol TappedThickness { get; } = new("l_2", SymbolUnit.Length, "thickness of the tapped part", 1e-3, 1);

    /// <summary>Grip: thickness of everything that is clamped.</summary>
    public static Symbol Grip { get; } = new("l_K", SymbolUnit.Length, "grip", 1e-3, 1);

    /// <summary>Length of the sections, or thickness of the layers, counted so far.</summary>
    public static Symbol GripBefore { get; } = new("l_K0", SymbolUnit.Length, "length before this section or layer", 0, 1);

    /// <summary>Elastic resilience of the sections counted so far.</summary>
    public static Symbol ResilienceBefore { get; } = new("delta_0", SymbolUnit.Resilience, "resilience before this section", 0, 1e-6);

    /// <summary>Elastic resilience of one section.</summary>
    public static Symbol SectionResilience { get; } = new("delta_i", SymbolUnit.Resilience, "resilience of the section", 1e-13, 1e-6);

    /// <summary>Elastic resilience of the bolt.</summary>
    public static Symbol BoltResilience { get; } = new("delta_S", SymbolUnit.Resilience, "resilience of the bolt", 1e-12, 1e-6);

    /// <summary>Elastic resilience of the clamped parts.</summary>
    public static Symbol PartsResilience { get; } = new("delta_P", SymbolUnit.Resilience, "resilience of the clamped parts", 1e-13, 1e-6);

    /// <summary>Elastic resilience of bolt and clamped parts together.</summary>
    public static Symbol JointResilience { get; } = new("delta", SymbolUnit.Resilience, "resilience of bolt and parts together", 1e-12, 2e-6);

    /// <summary>Stiffness of the bolt.</summary>
    public static Symbol BoltStiffness { get; } = new("k_b", SymbolUnit.Stiffness, "stiffness of the bolt", 1e6, 1e12);

    /// <summary>Stiffness of the clamped parts.</summary>
    public static Symbol PartsStiffness { get; } = new("k_m", SymbolUnit.Stiffness, "stiffness of the clamped parts", 1e6, 1e13);

    /// <summary>Elongation of the bolt.</summary>
    public static Symbol Elongation { get; } = new("f_S", SymbolUnit.Length, "elongation of the bolt", 0, 0.1);

    /// <summary>Elongation of the bolt at which the parts separate.</summary>
    public static Symbol ElongationAtSeparation { get; } = new("f_0", SymbolUnit.Length, "elongation of the bolt at which the parts separate", 0, 0.1);

    /// <summary>Gap between the parts.</summary>
    public static Symbol Gap { get; } = new("f_g", SymbolUnit.Length, "gap between the parts", 0, 0.1);

    /// <summary>Bearing diameter of head or nut: where the deformation cone begins.</summary>
    public static Symbol ConeBearingDiameter { get; } = new("d_W", SymbolUnit.Length, "outer diameter of the bearing face", 2e-3, 0.4);

    /// <summary>Hole in the clamped parts.</summary>
    public static Symbol HoleDiameter { get; } = new("d_h", SymbolUnit.Length, "diameter of the hole", 1e-3, 0.2);

    /// <summary>Outside diameter of the clamped parts.</summary>
    public static Symbol PartsDiameter { get; } = new("D_A", SymbolUnit.Length, "outside diameter of the clamped parts", 2e-3, 2);

    /// <summary>Outside diameter of the clamped parts near the interface: D'_A of VDI 2230.</summary>
    public static Symbol InterfaceDiameter { get; } = new("D_If", SymbolUnit.Length, "outside diameter of the clamped parts near the interface (D'_A)", 2e-3, 2);

    /// <summary>Diameter that the deformation cone would reach.</summary>
    public static Symbol LimitingDiameter { get; } = new("D_Gr", SymbolUnit.Length, "greatest diameter of the unlimited cone", 2e-3, 2);

    /// <summary>Diameter that the cone does reach.</summary>
    public static Symbol ConeEndDiameter { get; } = new("D_e", SymbolUnit.Length, "greatest diameter of the cone", 2e-3, 2);

    /// <summary>Diameter of the cone where a piece of it begins.</summary>
    public static Symbol ConeDiameter { get; } = new("D_c", SymbolUnit.Length, "diameter of the cone where the piece begins", 2e-3, 0.5);

    /// <summary>Depth below the bearing face.</summary>
    public static Symbol Depth { get; } = new("z", SymbolUnit.Length, "depth below the bearing face", 0, 1);

    /// <summary>Depth of the layers counted so far.</summary>
    public static Symbol DepthBefore { get; } = new("z_0", SymbolUnit.Length, "depth before this layer", 0, 1);

    /// <summary>Diameter of the cone from below where it enters a layer.</summary>
    public static Symbol LowerConeDiameter { get; } = new("D_l", SymbolUnit.Length, "diameter of the cone from below where it enters the layer", 2e-3, 0.5);

    /// <summary>How much wider a cone gets with depth.</summary>
    public static Symbol ConeGrowth { get; } = new("g_c", SymbolUnit.Ratio, "growth of the diameter of the cone per depth", 0.05, 3);

    /// <summary>Thickness of a layer, or what a cone has left of it.</summary>
    public static Symbol LayerThickness { get; } = new("l_p", SymbolUnit.Length, "thickness of the layer, or what is left of it", 1e-4, 1);

    /// <summary>Length of a piece of a cone in a layer.</summary>
    public static Symbol ConeLength { get; } = new("l_c", SymbolUnit.Length, "length of the cone in the layer", 0, 1);

    /// <summary>Half angle of the cone.</summary>
    public static Symbol ConeAngle { get; } = new("phi_c", SymbolUnit.Angle, "half angle of the cone", 5 * Degree, 60 * Degree);

    /// <summary>Kind of joint: 1 with bolt and nut (two cones), 2 with a tapped part (one cone).</summary>
    public static Symbol JointCoefficient { get; } = new("w", SymbolUnit.Count, "1 for bolt and nut, 2 for a tapped part", 1, 2);

    /// <summary>Grip per bearing diameter.</summary>
    public static Symbol GripRatio { get; } = new("beta_L", SymbolUnit.Ratio, "grip per bearing diameter", 0.5, 10);

    /// <summary>Outside diameter of the parts per bearing diameter.</summary>
    public static Symbol DiameterRatio { get; } = new("y", SymbolUnit.Ratio, "outside diameter per bearing diameter", 1, 10);

    /// <summary>Logarithm that sums the cross-sections of a cone.</summary>
    public static Symbol ConeLogarithm { get; } = new("q_K", SymbolUnit.Ratio, "logarithm of the cone", 1e-3, 20);

    /// <summary>Coefficient of the fit by Wileman, Choudhury and Green.</summary>
    public static Symbol WilemanCoefficient { get; } = new("A_W", SymbolUnit.Ratio, "coefficient of Wileman's fit", 0.7, 0.9);

    /// <summary>Exponent of the fit by Wileman, Choudhury and Green.</summary>
    public static Symbol WilemanExponent { get; } = new("B_W", SymbolUnit.Ratio, "exponent of Wileman's fit", 0.5, 0.7);

    /// <summary>Load factor of a load under head and nut.</summary>
    public static Symbol LoadFactor { get; } = new("Phi_K", SymbolUnit.Ratio, "load factor of a load under head and nut (n = 1)", 0, 1);

    /// <summary>Preload gained.</summary>
    public static Symbol PreloadGain { get; } = new("F_g", SymbolUnit.Force, "preload gained by the rotation", 1, 1e7);
}
