namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Lever length of the wrench, centre of drive to hand.</summary>
    public static Symbol LeverLength { get; } = new("L", SymbolUnit.Length, "lever length, centre of drive to the hand", 0.05, 3);

    /// <summary>Length of an adapter, drive centre to fastener centre.</summary>
    public static Symbol AdapterLength { get; } = new("E", SymbolUnit.Length, "adapter length, centre to centre", 0, 1);

    /// <summary>Angle of an adapter from the line of the handle produced beyond the drive.</summary>
    public static Symbol AdapterAngle { get; } = new("theta", SymbolUnit.Angle, "adapter angle from the line of the handle", -Math.PI, Math.PI);

    /// <summary>Lean of the pull from square to the handle.</summary>
    public static Symbol PullAngle { get; } = new("beta", SymbolUnit.Angle, "lean of the pull from square to the handle", -80 * Degree, 80 * Degree);

    /// <summary>Torque at the fastener over torque at the drive, before an adapter is added.</summary>
    public static Symbol TorqueRatioBefore { get; } = new("rho_0", SymbolUnit.Ratio, "torque ratio before this adapter", 0.01, 20);

    /// <summary>Torque at the fastener over torque at the drive.</summary>
    public static Symbol TorqueRatio { get; } = new("rho", SymbolUnit.Ratio, "torque at the fastener over torque at the drive", 0.01, 20);

    /// <summary>Torque at the fastener.</summary>
    public static Symbol FastenerTorque { get; } = new("M_f", SymbolUnit.Torque, "torque at the fastener", 1e-3, 1e5);

    /// <summary>Torque at the drive of the wrench: what the wrench shows.</summary>
    public static Symbol WrenchTorque { get; } = new("M_w", SymbolUnit.Torque, "torque at the drive, shown by the wrench", 1e-3, 1e5);

    /// <summary>Change of the torque ratio per unit of a length.</summary>
    public static Symbol RatioPerLength { get; } = new("s_l", SymbolUnit.PerLength, "change of the torque ratio per length", -1e3, 1e3);

    /// <summary>Change of the torque ratio per radian.</summary>
    public static Symbol RatioPerAngle { get; } = new("s_a", SymbolUnit.Ratio, "change of the torque ratio per radian", -1e3, 1e3);

    /// <summary>Change of the torque ratio per radian, before an adapter is added.</summary>
    public static Symbol RatioPerAngleBefore { get; } = new("s_0", SymbolUnit.Ratio, "change of the torque ratio per radian before this adapter", -1e3, 1e3);

    /// <summary>Outer diameter of a bar.</summary>
    public static Symbol BarDiameter { get; } = new("d_e", SymbolUnit.Length, "outer diameter of the bar", 2e-3, 0.2);

    /// <summary>Bore of a bar.</summary>
    public static Symbol BarBore { get; } = new("d_i", SymbolUnit.Length, "bore of the bar", 0, 0.2);

    /// <summary>Side of a square or width across flats of a hexagonal bar.</summary>
    public static Symbol AcrossFlats { get; } = new("s", SymbolUnit.Length, "side of the square or width across flats of the hexagon", 2e-3, 0.2);

    /// <summary>Torsion constant of a bar.</summary>
    public static Symbol TorsionConstant { get; } = new("J", SymbolUnit.TorsionConstant, "torsion constant of the bar", 1e-12, 1e-4);

    /// <summary>Length of a bar.</summary>
    public static Symbol BarLength { get; } = new("l", SymbolUnit.Length, "length of the bar", 0, 3);

    /// <summary>Shear modulus.</summary>
    public static Symbol ShearModulus { get; } = new("G", SymbolUnit.Stress, "shear modulus", 1e9, 2e11);

    /// <summary>Torsional compliance of the parts counted so far.</summary>
    public static Symbol ComplianceBefore { get; } = new("c_0", SymbolUnit.TorsionalCompliance, "torsional compliance before this bar", 0, 1);

    /// <summary>Torsional compliance.</summary>
    public static Symbol Compliance { get; } = new("c_t", SymbolUnit.TorsionalCompliance, "torsional compliance", 0, 1);

    /// <summary>Torsional compliance of a bar.</summary>
    public static Symbol BarCompliance { get; } = new("c_b", SymbolUnit.TorsionalCompliance, "torsional compliance of the bar", 1e-7, 1);

    /// <summary>Torsional stiffness of a bar.</summary>
    public static Symbol BarStiffness { get; } = new("k_t", SymbolUnit.TorsionalStiffness, "torsional stiffness of the bar", 1, 1e7);

    /// <summary>Elastic wind-up.</summary>
    public static Symbol WindUp { get; } = new("theta_w", SymbolUnit.Angle, "elastic wind-up", 0, 10);

    /// <summary>Gear ratio of a torque multiplier: turns of the input per turn of the output.</summary>
    public static Symbol GearRatio { get; } = new("i", SymbolUnit.Ratio, "gear ratio of the torque multiplier", 1, 1000);

    /// <summary>Efficiency of a torque multiplier.</summary>
    public static Symbol GearEfficiency { get; } = new("eta", SymbolUnit.Ratio, "efficiency of the torque multiplier", 0.05, 1);

    /// <summary>Torque at the input of a torque multiplier.</summary>
    public static Symbol InputTorque { get; } = new("M_in", SymbolUnit.Torque, "torque at the input of the torque multiplier", 1e-3, 1e5);

    /// <summary>Torque at the output of a torque multiplier.</summary>
    public static Symbol OutputTorque { get; } = new("M_out", SymbolUnit.Torque, "torque at the output of the torque multiplier", 1e-3, 1e6);

    /// <summary>Torque on the reaction arm of a torque multiplier.</summary>
    public static Symbol ReactionTorque { get; } = new("M_R", SymbolUnit.Torque, "torque on the reaction arm", -1e5, 1e6);
}
