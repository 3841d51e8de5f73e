namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Scatter of the preload, plus and minus, as a share of its mean.</summary>
    public static Symbol Scatter { get; } = new("s_F", SymbolUnit.Ratio, "scatter of the preload, ± share of its mean", 0, 0.95);

    /// <summary>Tightening factor: highest over lowest preload.</summary>
    public static Symbol TighteningFactor { get; } = new("alpha_A", SymbolUnit.Ratio, "tightening factor: highest over lowest preload", 1, 50);

    /// <summary>Highest preload of a scatter.</summary>
    public static Symbol HighestPreload { get; } = new("F_max", SymbolUnit.Force, "highest preload", 1, 1e6);

    /// <summary>Lowest preload of a scatter.</summary>
    public static Symbol LowestPreload { get; } = new("F_min", SymbolUnit.Force, "lowest preload", 1, 1e6);

    /// <summary>Relaxation as a share of the lowest preload.</summary>
    public static Symbol Relaxation { get; } = new("q_r", SymbolUnit.Ratio, "relaxation, as a share of the lowest preload", 0, 0.95);
}
