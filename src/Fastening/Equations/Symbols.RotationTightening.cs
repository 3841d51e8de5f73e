namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Rotation per unit preload.</summary>
    public static Symbol RotationPerPreload { get; } = new("r", SymbolUnit.RotationPerForce, "rotation per unit preload", 1e-8, 1e-2);

    /// <summary>Rotation per unit preload, before a twist is added.</summary>
    public static Symbol RotationPerPreloadBefore { get; } = new(
        "r_0", SymbolUnit.RotationPerForce, "rotation per unit preload before this twist", 1e-8, 1e-2);

    /// <summary>Preload at the snug torque.</summary>
    public static Symbol SnugPreload { get; } = new("F_snug", SymbolUnit.Force, "preload at the snug torque", 1, 1e6);

    /// <summary>Rotation read at the tool.</summary>
    public static Symbol ToolRotation { get; } = new("theta_t", SymbolUnit.Angle, "rotation read at the tool", 0, 100);

    /// <summary>Torque at the end of a rotation.</summary>
    public static Symbol EndTorque { get; } = new("M_end", SymbolUnit.Torque, "torque at the end of the rotation", 0, 1e5);

    /// <summary>Torque at the start of a rotation.</summary>
    public static Symbol StartTorque { get; } = new("M_start", SymbolUnit.Torque, "torque at the start of the rotation", 0, 1e5);

    /// <summary>Slope of torque over rotation.</summary>
    public static Symbol ElasticSlope { get; } = new("s_M", SymbolUnit.TorsionalStiffness, "elastic slope of torque over rotation", 1e-3, 1e7);

    /// <summary>Relative standard uncertainty of the compliance of bolt and clamped parts.</summary>
    public static Symbol ComplianceUncertainty { get; } = new(
        "w_delta", SymbolUnit.Ratio, "relative standard uncertainty of the compliance of bolt and clamped parts", 0, 1);

    /// <summary>Relative standard uncertainty of the rotation per unit preload.</summary>
    public static Symbol RotationPerPreloadUncertainty { get; } = new(
        "w_r", SymbolUnit.Ratio, "relative standard uncertainty of the rotation per unit preload", 0, 1);

    /// <summary>Standard uncertainty of the preload at the snug torque.</summary>
    public static Symbol SnugPreloadUncertainty { get; } = new(
        "u_snug", SymbolUnit.Force, "standard uncertainty of the preload at the snug torque", 0, 1e6);

    /// <summary>Standard uncertainty of the rotation.</summary>
    public static Symbol RotationUncertainty { get; } = new("u_theta", SymbolUnit.Angle, "standard uncertainty of the rotation", 0, 1);

    /// <summary>Standard uncertainty of the preload.</summary>
    public static Symbol PreloadUncertainty { get; } = new("u_F", SymbolUnit.Force, "standard uncertainty of the preload", 0, 1e6);

    /// <summary>Share of the torque at the end of a rotation at which the rotation begins.</summary>
    public static Symbol TorqueShare { get; } = new("x_M", SymbolUnit.Ratio, "share of the torque at the end at which the rotation begins", 0.01, 0.99);

    /// <summary>Resilience of bolt and parts together, as calculated.</summary>
    public static Symbol CalculatedJointResilience { get; } = new(
        "delta_c", SymbolUnit.Resilience, "resilience of bolt and clamped parts as calculated", 1e-12, 2e-6);

    /// <summary>Greatest relative error of the stiffness of the joint.</summary>
    public static Symbol StiffnessError { get; } = new("e_k", SymbolUnit.Ratio, "greatest relative error of the stiffness", 0, 0.9);
}
