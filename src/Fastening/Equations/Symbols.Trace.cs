namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Shortest safe window.</summary>
    public static Symbol SafeWindow { get; } = new("W", SymbolUnit.Time, "shortest window without a false alarm", 1e-6, 1e6);

    /// <summary>Step of a recorded angle.</summary>
    public static Symbol AngleResolution { get; } = new("q_theta", SymbolUnit.Angle, "step of the recorded angle", 1e-5, 1);

    /// <summary>Limit of the rate of rotation.</summary>
    public static Symbol RateLimit { get; } = new("omega_L", SymbolUnit.RotationRate, "limit of the rate of rotation", 1e-3, 1e3);

    /// <summary>Sampling interval.</summary>
    public static Symbol SamplingInterval { get; } = new("Delta_t", SymbolUnit.Time, "longest age of an angle when it is stamped", 1e-6, 1);

    /// <summary>Margin below the limit.</summary>
    public static Symbol RateMargin { get; } = new("s_L", SymbolUnit.Ratio, "share of the limit by which the true rate stays below it", 0.01, 0.9);
}
