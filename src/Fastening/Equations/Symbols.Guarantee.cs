namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Lower limit of what the fastener must get.</summary>
    public static Symbol LeastFastenerTorque { get; } = new("M_lo", SymbolUnit.Torque, "least torque permitted at the fastener", 1e-3, 1e5);

    /// <summary>Upper limit of what the fastener must get.</summary>
    public static Symbol GreatestFastenerTorque { get; } = new("M_hi", SymbolUnit.Torque, "greatest torque permitted at the fastener", 1e-3, 1e5);

    /// <summary>Lowest setting that is still safe against the lower limit.</summary>
    public static Symbol LowestSetting { get; } = new("S_lo", SymbolUnit.Torque, "lowest guaranteed setting of the wrench", 1e-3, 1e5);

    /// <summary>Highest setting that is still safe against the upper limit.</summary>
    public static Symbol HighestSetting { get; } = new("S_hi", SymbolUnit.Torque, "highest guaranteed setting of the wrench", 1e-3, 1e5);

    /// <summary>Permitted deviation of a wrench, (shown − true)/true.</summary>
    public static Symbol WrenchAccuracy { get; } = new("a_w", SymbolUnit.Ratio, "permitted deviation of the wrench, (shown - true)/true", 0, 0.5);

    /// <summary>Expanded relative uncertainty of a calibration.</summary>
    public static Symbol CalibrationUncertainty { get; } = new("W_k", SymbolUnit.Ratio, "expanded relative uncertainty of the calibration", 0, 0.4);

    /// <summary>Largest deviation for which a setting is still guaranteed.</summary>
    public static Symbol LargestDeviation { get; } = new("a_max", SymbolUnit.Ratio, "largest deviation, accuracy and uncertainty together", -1, 1);
}
