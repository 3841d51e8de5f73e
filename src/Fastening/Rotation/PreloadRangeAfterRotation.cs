using Fastening.Internals;

namespace Fastening;

/// <summary>Lowest and highest preload after a snug torque and a rotation.</summary>
/// <example><code>PreloadRangeAfterRotation range = tightening.PreloadRangeAt(Angle.FromDegrees(60), friction);
/// Console.WriteLine(range);      // 62.1 … 69.4 kN, elastic</code></example>
public sealed class PreloadRangeAfterRotation
{
    internal PreloadRangeAfterRotation(PreloadAfterRotation lowest, PreloadAfterRotation highest)
    {
        Lowest = lowest;
        Highest = highest;
        Range = new PreloadRange(Si.Of(lowest.Preload), Si.Of(highest.Preload));
        SnugRange = new PreloadRange(Si.Of(lowest.SnugPreload), Si.Of(highest.SnugPreload));
    }

    /// <summary>The corner of the lowest preload: highest friction.</summary>
    public PreloadAfterRotation Lowest { get; }

    /// <summary>The corner of the highest preload: lowest friction.</summary>
    public PreloadAfterRotation Highest { get; }

    /// <summary>Both preloads by the elastic line, and their ratio.</summary>
    public PreloadRange Range { get; }

    /// <summary>Lowest and highest preload after snugging alone.</summary>
    public PreloadRange SnugRange { get; }

    /// <summary>Whether even the highest preload is within the elastic limit.</summary>
    public bool IsElastic => Highest.IsElastic;

    /// <inheritdoc />
    public override string ToString() => $"{Range}, {(IsElastic ? "elastic" : "the highest past the elastic limit: the joint yields before")}";
}
