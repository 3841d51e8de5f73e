using Fastening.Internals;
using Fastening.Quality;

namespace Fastening;

/// <summary>What the two limits of a scattering input mean: anything between them alike, mostly the middle, or so many standard deviations.</summary>
/// <example><code>inputs.WithFrictionShape(ScatterShape.Normal(coverageFactor: 2))   // the range holds 95 % of the joints</code></example>
public sealed class ScatterShape
{
    private readonly UncertaintyDistribution _distribution;
    private readonly double _coverageFactor;

    private ScatterShape(UncertaintyDistribution distribution, double coverageFactor)
    {
        _distribution = distribution;
        _coverageFactor = coverageFactor;
    }

    /// <summary>Anything between the limits alike, nothing beyond: what limits alone say (JCGM 101:2008 §6.4.2).</summary>
    public static ScatterShape Rectangular { get; } = new(UncertaintyDistribution.Rectangular, 1);

    /// <summary>Most often in the middle, nothing beyond the limits.</summary>
    public static ScatterShape Triangular { get; } = new(UncertaintyDistribution.Triangular, 1);

    /// <summary>Normal, the limits being so many standard deviations either side of the middle; values beyond them occur.</summary>
    /// <param name="coverageFactor">k, 0.01 to 100: 2 when the limits hold 95 %, 3 when they hold 99.7 %.</param>
    /// <returns>The shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverageFactor"/> is outside its domain.</exception>
    /// <example><code>ScatterShape shape = ScatterShape.Normal(coverageFactor: 3);     // the limits hold 99.7 %</code></example>
    public static ScatterShape Normal(double coverageFactor) =>
        new(UncertaintyDistribution.Normal, Domains.CoverageFactor.Check(coverageFactor));

    /// <inheritdoc />
    public override string ToString() => _distribution == UncertaintyDistribution.Normal
        ? Print.Text($"normal, limits at ±{_coverageFactor:0.###} standard deviations")
        : _distribution == UncertaintyDistribution.Triangular ? "triangular" : "rectangular";

    internal UncertaintyContribution Between(string name, double low, double high)
    {
        double middle = low + (high - low) / 2, half = (high - low) / 2;
        return _distribution switch
        {
            UncertaintyDistribution.Rectangular => UncertaintyContribution.Rectangular(name, middle, half),
            UncertaintyDistribution.Triangular => UncertaintyContribution.Triangular(name, middle, half),
            _ => UncertaintyContribution.Normal(name, middle, half / _coverageFactor),
        };
    }
}
