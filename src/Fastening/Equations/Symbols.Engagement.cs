namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Greatest minor diameter of the internal thread, where the external thread is sheared off.</summary>
    public static Symbol GreatestInternalMinorDiameter { get; } = new("K_n", SymbolUnit.Length, "greatest minor diameter of the internal thread", 7e-4, 0.2);

    /// <summary>Greatest pitch diameter of the internal thread.</summary>
    public static Symbol GreatestInternalPitchDiameter { get; } = new("E_n", SymbolUnit.Length, "greatest pitch diameter of the internal thread", 8e-4, 0.2);

    /// <summary>Least major diameter of the external thread, where the internal thread is sheared off.</summary>
    public static Symbol LeastExternalMajorDiameter { get; } = new("D_s", SymbolUnit.Length, "least major diameter of the external thread", 9e-4, 0.2);

    /// <summary>Least pitch diameter of the external thread.</summary>
    public static Symbol LeastExternalPitchDiameter { get; } = new("E_s", SymbolUnit.Length, "least pitch diameter of the external thread", 8e-4, 0.2);

    /// <summary>Engaged length of full thread.</summary>
    public static Symbol EngagedLength { get; } = new("L_e", SymbolUnit.Length, "engaged length of full thread", 5e-4, 0.5);

    /// <summary>Axial thickness of the external thread where it shears.</summary>
    public static Symbol ExternalThickness { get; } = new("t_s", SymbolUnit.Length, "thickness of the external thread where it shears", 1e-4, 0.02);

    /// <summary>Axial thickness of the internal thread where it shears.</summary>
    public static Symbol InternalThickness { get; } = new("t_n", SymbolUnit.Length, "thickness of the internal thread where it shears", 1e-4, 0.02);

    /// <summary>Shear area of the external thread.</summary>
    public static Symbol ExternalShearArea { get; } = new("AS_s", SymbolUnit.Area, "shear area of the external thread", 1e-7, 0.3);

    /// <summary>Shear area of the internal thread.</summary>
    public static Symbol InternalShearArea { get; } = new("AS_n", SymbolUnit.Area, "shear area of the internal thread", 1e-7, 0.3);

    /// <summary>Shear strength of the external thread.</summary>
    public static Symbol ExternalShearStrength { get; } = new("tau_s", SymbolUnit.Stress, "shear strength of the external thread", 1e7, 2e9);

    /// <summary>Shear strength of the internal thread.</summary>
    public static Symbol InternalShearStrength { get; } = new("tau_n", SymbolUnit.Stress, "shear strength of the internal thread", 1e7, 2e9);

    /// <summary>Shear capacity of the internal thread over that of the external thread.</summary>
    public static Symbol StrippingRatio { get; } = new("R_S", SymbolUnit.Ratio, "strength of the internal thread over that of the external thread", 0.4, 2.2);

    /// <summary>Width across flats of the nut.</summary>
    public static Symbol NutWidth { get; } = new("s_w", SymbolUnit.Length, "width across flats of the nut", 1.5e-3, 0.5);

    /// <summary>Factor for the widening of the nut.</summary>
    public static Symbol NutDilationFactor { get; } = new("C_1", SymbolUnit.Ratio, "factor for the widening of the nut", 0.75, 1);

    /// <summary>Factor for the bending of the external thread.</summary>
    public static Symbol ExternalBendingFactor { get; } = new("C_2", SymbolUnit.Ratio, "factor for the bending of the external thread", 0.8, 1.3);

    /// <summary>Factor for the bending of the internal thread.</summary>
    public static Symbol InternalBendingFactor { get; } = new("C_3", SymbolUnit.Ratio, "factor for the bending of the internal thread", 0.8, 1.1);

    /// <summary>Force that breaks the bolt in the thread.</summary>
    public static Symbol BoltBreakingForce { get; } = new("F_mS", SymbolUnit.Force, "force that breaks the bolt", 10, 1e8);

    /// <summary>Greatest tensile strength that the bolt may have.</summary>
    public static Symbol GreatestTensileStrength { get; } = new("R_mmax", SymbolUnit.Stress, "greatest tensile strength of the bolt", 1e8, 3e9);

    /// <summary>Force that breaks a bolt of the greatest tensile strength.</summary>
    public static Symbol GreatestBoltBreakingForce { get; } = new("F_mSmax", SymbolUnit.Force, "force that breaks a bolt of the greatest tensile strength", 10, 1e8);

    /// <summary>Pitches of incomplete thread that do not carry.</summary>
    public static Symbol IncompletePitches { get; } = new("n_i", SymbolUnit.Ratio, "pitches of incomplete thread", 0, 4);

    /// <summary>Length of thread with the incomplete threads.</summary>
    public static Symbol TotalThreadLength { get; } = new("m_ges", SymbolUnit.Length, "length of thread, incomplete threads included", 1e-4, 1);

    /// <summary>Force that strips the external thread.</summary>
    public static Symbol ExternalStripForce { get; } = new("F_mGS", SymbolUnit.Force, "force that strips the external thread", 10, 1e8);

    /// <summary>Force that strips the internal thread.</summary>
    public static Symbol InternalStripForce { get; } = new("F_mGM", SymbolUnit.Force, "force that strips the internal thread", 10, 1e8);

    /// <summary>Least force of the three ways to fail.</summary>
    public static Symbol EngagementFailureForce { get; } = new("F_e", SymbolUnit.Force, "force at which the engagement fails", 10, 1e8);

    /// <summary>Engaged length at which the external thread strips as the bolt breaks.</summary>
    public static Symbol ExternalLeastLength { get; } = new("L_GS", SymbolUnit.Length, "least engaged length for the external thread", 1e-4, 1);

    /// <summary>Engaged length at which the internal thread strips as the bolt breaks.</summary>
    public static Symbol InternalLeastLength { get; } = new("L_GM", SymbolUnit.Length, "least engaged length for the internal thread", 1e-4, 1);

    /// <summary>Least engaged length for the bolt to break before either thread strips.</summary>
    public static Symbol LeastEngagedLength { get; } = new("L_min", SymbolUnit.Length, "least engaged length for the bolt to break first", 1e-4, 1);
}
