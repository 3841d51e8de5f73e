using Fastening.Internals;

namespace Fastening;

/// <summary>The friction to reckon with: the lowest and the highest pair of coefficients.</summary>
/// <remarks>At a given torque the lowest friction gives the highest preload, and the other way round.</remarks>
/// <example><code>var range = new FrictionRange(
///     low: new FrictionCoefficients(thread: 0.10, bearing: 0.09),
///     high: new FrictionCoefficients(thread: 0.16, bearing: 0.14));</code></example>
public sealed class FrictionRange
{
    /// <summary>States the range.</summary>
    /// <param name="low">The lowest coefficients.</param>
    /// <param name="high">The highest coefficients; neither below its counterpart in <paramref name="low"/>.</param>
    /// <exception cref="ArgumentNullException">An end is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A coefficient of <paramref name="high"/> is below its counterpart.</exception>
    /// <example><code>new FrictionRange(low: new FrictionCoefficients(thread: 0.10, bearing: 0.09), high: new FrictionCoefficients(thread: 0.16, bearing: 0.14))</code></example>
    public FrictionRange(FrictionCoefficients low, FrictionCoefficients high)
    {
        Low = Guard.NotNull(low);
        High = Guard.NotNull(high);
        if (high.Thread < low.Thread) Guard.RefuseAgainst(nameof(high), high.Thread, Print.Text($"at least the low thread friction, {low.Thread}"));
        if (high.Bearing < low.Bearing) Guard.RefuseAgainst(nameof(high), high.Bearing, Print.Text($"at least the low bearing friction, {low.Bearing}"));
    }

    /// <summary>The lowest coefficients.</summary>
    public FrictionCoefficients Low { get; }

    /// <summary>The highest coefficients.</summary>
    public FrictionCoefficients High { get; }

    /// <summary>Values outside the ranges in which such values are published; empty when there are none.</summary>
    public IReadOnlyList<PlausibilityRemark> Remarks => PlausibilityRemark.Join(Low.Remarks, High.Remarks);

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"µ_th {Low.Thread:0.####}…{High.Thread:0.####}, µ_b {Low.Bearing:0.####}…{High.Bearing:0.####}{PlausibilityRemark.Mention(Remarks)}");
}
