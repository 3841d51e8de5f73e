namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Change of the preload per unit of torque.</summary>
    public static Symbol PreloadPerTorque { get; } = new("g_M", SymbolUnit.PerLength, "change of the preload per torque", 1e-3, 1e6);

    /// <summary>Change of the preload per unit of a coefficient of friction, or of the nut factor.</summary>
    public static Symbol PreloadPerCoefficient { get; } = new("g_mu", SymbolUnit.Force, "change of the preload per unit of a coefficient", -1e12, 0);
}
