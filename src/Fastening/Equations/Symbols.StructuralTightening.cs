namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Mean k-value of a structural assembly, declared by its maker (class K2).</summary>
    public static Symbol MeanNutFactor { get; } = new("K_m", SymbolUnit.Ratio, "mean k-value of the assembly, class K2", 0.1, 0.23);

    /// <summary>Reference torque of EN 1090-2.</summary>
    public static Symbol ReferenceTorque { get; } = new("M_r", SymbolUnit.Torque, "reference torque", 1e-3, 1e5);

    /// <summary>Torque of the first tightening step.</summary>
    public static Symbol FirstTorque { get; } = new("M_1", SymbolUnit.Torque, "torque of the first step", 1e-3, 1e5);

    /// <summary>Torque of the second tightening step.</summary>
    public static Symbol FinalTorque { get; } = new("M_2", SymbolUnit.Torque, "torque of the second step", 1e-3, 1e5);
}
