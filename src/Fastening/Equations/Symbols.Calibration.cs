namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Torque that the tool is set to or indicates.</summary>
    public static Symbol SetOrIndicatedTorque { get; } = new("X_a", SymbolUnit.Torque, "torque that the tool is set to or indicates", 1e-2, 1e4);

    /// <summary>Torque that the reference device measures.</summary>
    public static Symbol CalibrationReference { get; } = new("X_r", SymbolUnit.Torque, "torque that the reference device measures", 1e-2, 1e4);

    /// <summary>Relative deviation of a tool.</summary>
    public static Symbol ToolDeviation { get; } = new("a_s", SymbolUnit.Ratio, "relative deviation of the tool, positive when it delivers less than it says", -0.5, 0.5);

    /// <summary>Torque that the tool really delivers.</summary>
    public static Symbol DeliveredTorque { get; } = new("M_del", SymbolUnit.Torque, "torque that the tool delivers", 1e-2, 1e4);

    /// <summary>Expanded relative uncertainty of the reference device.</summary>
    public static Symbol ReferenceExpandedUncertainty { get; } = new("W_md", SymbolUnit.Ratio, "expanded relative uncertainty of the reference device, k = 2", 1e-4, 0.1);

    /// <summary>Width of an interval in which a value lies anywhere.</summary>
    public static Symbol CalibrationRange { get; } = new("b_x", SymbolUnit.Torque, "resolution, or range of the means of the groups", 1e-4, 1e2);

    /// <summary>Standard deviation of the reference readings at one point.</summary>
    public static Symbol CalibrationReadingDeviation { get; } = new("s_x", SymbolUnit.Torque, "standard deviation of the reference readings at one point", 1e-4, 1e2);

    /// <summary>Number of readings at one point.</summary>
    public static Symbol CalibrationReadingCount { get; } = new("n_x", SymbolUnit.Count, "number of readings at one point", 2, 100);

    /// <summary>A relative standard uncertainty of a calibration.</summary>
    public static Symbol CalibrationComponent { get; } = new("w_x", SymbolUnit.Ratio, "relative standard uncertainty of one component", 1e-5, 0.1);

    /// <summary>Relative standard uncertainty combined so far.</summary>
    public static Symbol CalibrationCombined { get; } = new("w_c", SymbolUnit.Ratio, "relative standard uncertainty combined so far", 1e-5, 0.1);

    /// <summary>Expanded relative uncertainty of a calibration.</summary>
    public static Symbol CalibrationExpanded { get; } = new("W_x", SymbolUnit.Ratio, "expanded relative uncertainty of the calibration, k = 2", 1e-5, 0.5);

    /// <summary>Systematic part of the reference device.</summary>
    public static Symbol ReferenceSystematic { get; } = new("b_ep", SymbolUnit.Ratio, "systematic relative deviation of the reference device", -0.05, 0.05);

    /// <summary>Relative uncertainty interval of the tool.</summary>
    public static Symbol UncertaintyInterval { get; } = new("W_prime", SymbolUnit.Ratio, "relative uncertainty interval of the tool", 1e-5, 1);
}
