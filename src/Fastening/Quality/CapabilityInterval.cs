using Fastening.Internals;

namespace Fastening;

/// <summary>An interval that holds the true index with a stated confidence, the rest shared equally between its two sides.</summary>
/// <example><code>CapabilityInterval interval = capability.Cpk.Interval(0.95);</code></example>
public sealed class CapabilityInterval
{
    internal CapabilityInterval(double lower, double upper, double confidence)
    {
        Lower = lower;
        Upper = upper;
        Confidence = confidence;
    }

    /// <summary>Lower end.</summary>
    public double Lower { get; }

    /// <summary>Upper end.</summary>
    public double Upper { get; }

    /// <summary>Confidence, as a share of 1.</summary>
    public double Confidence { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Lower:0.###} … {Upper:0.###} ({Si.Ratio(Confidence):0.##})");
}
