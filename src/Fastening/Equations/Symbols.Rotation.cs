namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Rotation of the fastener.</summary>
    public static Symbol Rotation { get; } = new("theta_r", SymbolUnit.Angle, "rotation of the fastener", 1e-3, 100);

    /// <summary>Time taken.</summary>
    public static Symbol Duration { get; } = new("t", SymbolUnit.Time, "time taken", 1e-3, 1e4);

    /// <summary>Rate of rotation.</summary>
    public static Symbol RotationRate { get; } = new("omega", SymbolUnit.RotationRate, "rate of rotation", 1e-4, 1e4);
}
