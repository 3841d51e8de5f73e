using Fastening.Internals;

namespace Fastening;

/// <summary>Where the axial load enters the clamped parts: the factor n, known, or known between two values.</summary>
/// <remarks>
/// n is the share of the parts' compliance that lies between the points where the load enters (VDI 2230-1:2015 §5.2.2, from memory): 1 under head and nut,
/// 0 at the interface. It is rarely known, and no single value is on the safe side: a high n loads the bolt, a low n opens the joint. So nothing
/// is assumed. With a range each answer takes the end that is the worst for it, which is exact: every check is monotonic or convex in n.
/// </remarks>
/// <example><code>LoadIntroduction.Of(0.4)
/// LoadIntroduction.Between(0.3, 0.7)      // credible, not known
/// LoadIntroduction.WorstCase              // anything from 0 to 1</code></example>
public sealed class LoadIntroduction
{
    private LoadIntroduction(double low, double high)
    {
        Low = low;
        High = high;
    }

    /// <summary>Nothing is known: 0 to 1, the worst end for each check.</summary>
    public static LoadIntroduction WorstCase { get; } = new(0, 1);

    /// <summary>Lowest credible factor: the worst for residual clamp, leak and slip under a pulling load.</summary>
    public double Low { get; }

    /// <summary>Highest credible factor: the worst for the force in the bolt and its fatigue under a pulling load.</summary>
    public double High { get; }

    /// <summary>Whether one factor is known.</summary>
    public bool IsKnown => Low == High;

    /// <summary>A known factor.</summary>
    /// <param name="factor">n, 0 to 1.</param>
    /// <returns>The load introduction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside 0 to 1.</exception>
    /// <example><code>LoadIntroduction.Of(1)     // under head and nut, as textbooks take it</code></example>
    public static LoadIntroduction Of(double factor)
    {
        Domains.LoadIntroduction.Check(factor);
        return new LoadIntroduction(factor, factor);
    }

    /// <summary>A credible range.</summary>
    /// <param name="low">Lowest credible n, 0 to 1.</param>
    /// <param name="high">Highest credible n, at least <paramref name="low"/>, to 1.</param>
    /// <returns>The load introduction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A factor is outside 0 to 1, or high is less than low.</exception>
    /// <example><code>LoadIntroduction.Between(0.3, 0.7)</code></example>
    public static LoadIntroduction Between(double low, double high)
    {
        Domains.LoadIntroduction.Check(low);
        Domains.LoadIntroduction.Check(high);
        if (high < low) Guard.RefuseAgainst(nameof(high), high, $"at least low, {Guard.Show(low)}");
        return new LoadIntroduction(low, high);
    }

    /// <inheritdoc />
    public override string ToString() => IsKnown
        ? Print.Text($"n {Low:0.###}")
        : Print.Text($"n {Low:0.###}…{High:0.###}, the worst for each check");
}
