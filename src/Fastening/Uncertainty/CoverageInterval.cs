using Fastening.Internals;

namespace Fastening;

/// <summary>An interval that holds the result with a stated probability.</summary>
/// <example><code>CoverageInterval interval = result.ShortestInterval(0.95);
/// Console.WriteLine(interval);     // 48.3847 … 71.0304 (95 %)</code></example>
public sealed class CoverageInterval
{
    internal CoverageInterval(double low, double high, double coverageProbability)
    {
        Low = low;
        High = high;
        CoverageProbability = coverageProbability;
    }

    /// <summary>Lower end, in the unit of the result.</summary>
    public double Low { get; }

    /// <summary>Upper end, in the unit of the result.</summary>
    public double High { get; }

    /// <summary>The probability.</summary>
    public double CoverageProbability { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Low:G6} … {High:G6} ({Si.Ratio(CoverageProbability):0.####})");
}
