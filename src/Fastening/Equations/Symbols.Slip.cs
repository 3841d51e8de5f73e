namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Transverse load.</summary>
    public static Symbol TransverseLoad { get; } = new("F_Q", SymbolUnit.Force, "transverse load", 0, 1e6);

    /// <summary>Torque about the axis of the bolt.</summary>
    public static Symbol InterfaceTorque { get; } = new("M_Y", SymbolUnit.Torque, "torque about the axis of the bolt", 0, 1e5);

    /// <summary>Number of faces that share the transverse load.</summary>
    public static Symbol SlipFaces { get; } = new("q_F", SymbolUnit.Count, "number of faces that share the transverse load", 1, 20);

    /// <summary>Number of faces that share the torque.</summary>
    public static Symbol TorqueFaces { get; } = new("q_M", SymbolUnit.Count, "number of faces that share the torque", 1, 20);

    /// <summary>Lowest coefficient of friction of the interface.</summary>
    public static Symbol InterfaceFriction { get; } = new("mu_T", SymbolUnit.Ratio, "lowest coefficient of friction of the interface", 0.01, 2);

    /// <summary>Radius at which friction holds the torque.</summary>
    public static Symbol FrictionRadius { get; } = new("r_a", SymbolUnit.Length, "radius at which friction holds the torque", 1e-3, 1);

    /// <summary>Clamp force that holds the transverse load.</summary>
    public static Symbol ClampForTransverseLoad { get; } = new("F_KF", SymbolUnit.Force, "clamp force that holds the transverse load", 0, 1e8);

    /// <summary>Clamp force that holds the torque.</summary>
    public static Symbol ClampForTorque { get; } = new("F_KM", SymbolUnit.Force, "clamp force that holds the torque", 0, 1e10);

    /// <summary>Clamp force required against slip.</summary>
    public static Symbol ClampAgainstSlip { get; } = new("F_KQ", SymbolUnit.Force, "clamp force required against slip", 0, 1e8);

    /// <summary>Clamp force required for sealing or function.</summary>
    public static Symbol StatedClamp { get; } = new("F_KP", SymbolUnit.Force, "clamp force required for sealing or function", 0, 1e8);

    /// <summary>Design preload of a structural bolt.</summary>
    public static Symbol DesignPretension { get; } = new("F_pC", SymbolUnit.Force, "design preload of a structural bolt", 1, 1e6);

    /// <summary>Tension applied to the bolt.</summary>
    public static Symbol AppliedTension { get; } = new("F_t", SymbolUnit.Force, "tension applied to the bolt", 0, 1e6);

    /// <summary>Preload that is left for friction.</summary>
    public static Symbol PretensionLeft { get; } = new("F_c", SymbolUnit.Force, "preload that is left for friction", 0, 1e6);

    /// <summary>Factor of the shape of the holes.</summary>
    public static Symbol HoleFactor { get; } = new("k_s", SymbolUnit.Ratio, "factor of the shape of the holes", 0.1, 1);

    /// <summary>Number of friction planes.</summary>
    public static Symbol FrictionPlanes { get; } = new("n_f", SymbolUnit.Count, "number of friction planes", 1, 20);

    /// <summary>Partial safety factor.</summary>
    public static Symbol PartialFactor { get; } = new("gamma_M", SymbolUnit.Ratio, "partial safety factor", 0.5, 3);

    /// <summary>Design slip resistance.</summary>
    public static Symbol SlipResistance { get; } = new("F_sRd", SymbolUnit.Force, "design slip resistance", 0, 1e7);
}
