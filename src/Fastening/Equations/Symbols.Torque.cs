namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Flank factor: normal force on the flank over axial force.</summary>
    public static Symbol FlankFactor { get; } = new("c", SymbolUnit.Ratio, "flank factor", 1, 1.5);

    /// <summary>Mean diameter at which thread friction acts.</summary>
    public static Symbol MeanThreadDiameter { get; } = new("d_m", SymbolUnit.Length, "mean diameter of the thread friction", 8e-4, 0.2);

    /// <summary>Coefficient of friction in the thread.</summary>
    public static Symbol ThreadFriction { get; } = new("mu_th", SymbolUnit.Ratio, "coefficient of friction in the thread", 0, 2);

    /// <summary>Coefficient of friction under the turned head or nut.</summary>
    public static Symbol BearingFriction { get; } = new("mu_b", SymbolUnit.Ratio, "coefficient of friction at the bearing surface", 0, 2);

    /// <summary>Outer diameter of the bearing surface.</summary>
    public static Symbol BearingOuterDiameter { get; } = new("D_o", SymbolUnit.Length, "outer diameter of the bearing surface", 1e-3, 0.5);

    /// <summary>Inner diameter of the bearing surface.</summary>
    public static Symbol BearingInnerDiameter { get; } = new("D_i", SymbolUnit.Length, "inner diameter of the bearing surface", 5e-4, 0.4);

    /// <summary>Effective diameter of bearing friction.</summary>
    public static Symbol BearingDiameter { get; } = new("D_b", SymbolUnit.Length, "effective diameter of the bearing friction", 1e-3, 0.5);

    /// <summary>Included angle of a conical seat; 180° is flat.</summary>
    public static Symbol SeatAngle { get; } = new("gamma", SymbolUnit.Angle, "included angle of the seat (180° is flat)", 10 * Degree, Math.PI);

    /// <summary>Radius of a spherical seat.</summary>
    public static Symbol SphereRadius { get; } = new("R_s", SymbolUnit.Length, "radius of the spherical seat", 6e-4, 1);

    /// <summary>Pitch share of the torque per unit preload.</summary>
    public static Symbol PitchArm { get; } = new("lambda_P", SymbolUnit.Arm, "pitch torque per unit preload", 3e-5, 0.02);

    /// <summary>Thread torque per unit preload.</summary>
    public static Symbol ThreadArm { get; } = new("lambda_th", SymbolUnit.Arm, "thread torque per unit preload", 3e-5, 0.1);

    /// <summary>Loosening torque of the thread per unit preload, signed.</summary>
    public static Symbol LooseningThreadArm { get; } = new("lambda_L", SymbolUnit.Arm, "loosening torque of the thread per unit preload", -0.02, 0.1);

    /// <summary>Loosening torque of thread and bearing per unit preload, signed.</summary>
    public static Symbol LooseningArm { get; } = new("kappa_L", SymbolUnit.Arm, "loosening torque per unit preload", -0.02, 0.3);

    /// <summary>Bearing torque per unit preload.</summary>
    public static Symbol BearingArm { get; } = new("lambda_b", SymbolUnit.Arm, "bearing torque per unit preload", 0, 0.2);

    /// <summary>Tightening torque per unit preload.</summary>
    public static Symbol TorqueArm { get; } = new("kappa", SymbolUnit.Arm, "tightening torque per unit preload", 3e-5, 0.3);

    /// <summary>Nut factor (torque coefficient) K.</summary>
    public static Symbol NutFactor { get; } = new("K", SymbolUnit.Ratio, "nut factor", 0.02, 2);

    /// <summary>Preload in the bolt.</summary>
    public static Symbol Preload { get; } = new("F", SymbolUnit.Force, "preload", 1, 1e6);

    /// <summary>Tightening torque.</summary>
    public static Symbol TighteningTorque { get; } = new("M", SymbolUnit.Torque, "tightening torque", 1e-3, 1e5);

    /// <summary>Prevailing torque.</summary>
    public static Symbol PrevailingTorque { get; } = new("M_p", SymbolUnit.Torque, "prevailing torque", 0, 1e3);

    /// <summary>Loosening torque, signed: negative must be held.</summary>
    public static Symbol LooseningTorque { get; } = new("M_L", SymbolUnit.Torque, "loosening torque (negative: must be held)", -1e5, 1e5);

    /// <summary>Part of the tightening torque that stretches the bolt.</summary>
    public static Symbol PitchTorque { get; } = new("M_GSt", SymbolUnit.Torque, "pitch torque: the part that stretches the bolt", 0, 1e5);

    /// <summary>Part of the tightening torque lost to friction in the thread.</summary>
    public static Symbol ThreadFrictionTorque { get; } = new("M_GR", SymbolUnit.Torque, "thread friction torque", 0, 1e5);

    /// <summary>Part of the tightening torque lost to friction under the head or nut.</summary>
    public static Symbol BearingFrictionTorque { get; } = new("M_K", SymbolUnit.Torque, "bearing friction torque", 0, 1e5);

    /// <summary>Share of the torque that stretches the bolt.</summary>
    public static Symbol PitchShare { get; } = new("e_M", SymbolUnit.Ratio, "share of the torque that stretches the bolt", 0, 1);
}
