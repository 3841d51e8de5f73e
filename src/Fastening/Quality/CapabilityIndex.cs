using Fastening.Equations;
using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>A capability index as estimated from readings, and how far the true one may be from it.</summary>
/// <remarks>
/// The bounds hold for normal readings of a steady process. They are exact but for two cases: Bissell's approximation for the smaller of two
/// indices (its one-sided 95 % bound at 25 readings covers 94.7 % when one limit is active and 97 % when the process is centred), and a standard
/// deviation from ranges or from the mean of standard deviations, whose degrees of freedom are equivalent ones.
/// </remarks>
/// <example><code>double least = capability.Cpk.LowerBound(0.95);     // the true C_pk is above this, with 95 % confidence</code></example>
public sealed class CapabilityIndex
{
    private readonly Func<Term> _index;
    private readonly double _value;
    private readonly int _count;

    internal CapabilityIndex(Func<Term> index, CapabilityBound boundMethod, int count, double degreesOfFreedom)
    {
        _index = index;
        _value = index().Value;
        BoundMethod = boundMethod;
        DegreesOfFreedom = degreesOfFreedom;
        _count = count;
    }

    /// <summary>The index as estimated.</summary>
    public double Value => Recording.IsOn ? Si.Number(_index()) : _value;

    /// <summary>How its bounds are found.</summary>
    public CapabilityBound BoundMethod { get; }

    /// <summary>Degrees of freedom of its standard deviation; not whole when they are equivalent ones.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>The index that the true one exceeds with a confidence.</summary>
    /// <param name="confidence">0.5 to 0.9999, one-sided.</param>
    /// <returns>The lower bound.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its domain.</exception>
    /// <example><code>double least = capability.Cpk.LowerBound(confidence: 0.95);</code></example>
    public double LowerBound(double confidence) => At(Domains.Confidence.Check(confidence));

    /// <summary>The index that the true one falls short of with a confidence.</summary>
    /// <param name="confidence">0.5 to 0.9999, one-sided.</param>
    /// <returns>The upper bound.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its domain.</exception>
    /// <example><code>double most = capability.Cpk.UpperBound(confidence: 0.95);</code></example>
    public double UpperBound(double confidence) => At(1 - Domains.Confidence.Check(confidence));

    /// <summary>The interval that holds the true index with a confidence.</summary>
    /// <param name="confidence">0.5 to 0.9999, two-sided.</param>
    /// <returns>The interval, with half of the rest on either side.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its domain.</exception>
    /// <example><code>Range&lt;double&gt; interval = capability.Cpk.Interval(confidence: 0.95);</code></example>
    public Range<double> Interval(double confidence)
    {
        double rest = (1 - Domains.Confidence.Check(confidence)) / 2;
        return new((At(1 - rest), At(rest)));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{_value:0.###}");

    /// <summary>The index that the true one exceeds with a probability.</summary>
    private double At(double probability) => BoundMethod switch
    {
        CapabilityBound.ChiSquared => CapabilityEquations.PotentialBound(
            _value, ChiSquaredTail.Quantile(1 - probability, DegreesOfFreedom), DegreesOfFreedom),
        CapabilityBound.Bissell => _value - NormalCurve.Quantile(probability) * BissellDeviation,
        _ => ByNoncentralT(probability),
    };

    private double BissellDeviation => CapabilityEquations.BissellDeviation(_count, _value, DegreesOfFreedom);

    /// <summary>The true index C at which 3√n times the estimate is exceeded with the rest of the probability.</summary>
    private double ByNoncentralT(double probability)
    {
        double scale = 3 * Math.Sqrt(_count);
        return MonotoneRoot.Of(
            index => probability - NoncentralT.Below(scale * _value, DegreesOfFreedom, scale * index),
            _value - NormalCurve.Quantile(probability) * BissellDeviation,
            0.1 * BissellDeviation);
    }
}
