using Fastening.Equations;
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
    private const string Lowest = "lowest load introduction factor", Highest = "highest load introduction factor";

    private readonly StatedNumber _low, _high;

    private LoadIntroduction(StatedNumber low, StatedNumber high)
    {
        _low = low;
        _high = high;
    }

    /// <summary>Nothing is known: 0 to 1, the worst end for each check.</summary>
    public static LoadIntroduction WorstCase { get; } = new(new StatedNumber(0, Lowest), new StatedNumber(1, Highest));

    /// <summary>Lowest credible factor: the worst for residual clamp, leak and slip under a pulling load.</summary>
    public double Low => Si.Number(_low.Term);

    /// <summary>Highest credible factor: the worst for the force in the bolt and its fatigue under a pulling load.</summary>
    public double High => Si.Number(_high.Term);

    internal Term LowTerm => _low.Term;

    internal Term HighTerm => _high.Term;

    /// <summary>Whether one factor is known.</summary>
    public bool IsKnown => _low.Value == _high.Value;

    /// <summary>A known factor.</summary>
    /// <param name="factor">n, 0 to 1.</param>
    /// <returns>The load introduction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside 0 to 1.</exception>
    /// <example><code>LoadIntroduction.Of(1)     // under head and nut, as textbooks take it</code></example>
    public static LoadIntroduction Of(double factor)
    {
        var stated = new StatedNumber(Domains.LoadIntroduction.Check(factor), "load introduction factor");
        return new LoadIntroduction(stated, stated);
    }

    /// <summary>A credible range.</summary>
    /// <param name="low">Lowest credible n, 0 to 1.</param>
    /// <param name="high">Highest credible n, at least <paramref name="low"/>, to 1.</param>
    /// <returns>The load introduction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A factor is outside 0 to 1, or high is less than low.</exception>
    /// <example><code>LoadIntroduction.Between(0.3, 0.7)</code></example>
    public static LoadIntroduction Between(double low, double high)
    {
        StatedNumber least = new(Domains.LoadIntroduction.Check(low), Lowest), most = new(Domains.LoadIntroduction.Check(high), Highest);
        if (high < low) Guard.RefuseAgainst(nameof(high), high, $"at least low, {Guard.Show(low)}");
        return new LoadIntroduction(least, most);
    }

    /// <inheritdoc />
    public override string ToString() => IsKnown
        ? Print.Text($"n {_low.Value:0.###}")
        : Print.Text($"n {_low.Value:0.###}…{_high.Value:0.###}, the worst for each check");
}
