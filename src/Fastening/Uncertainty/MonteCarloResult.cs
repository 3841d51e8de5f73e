using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>What the draws of a Monte Carlo run say about the result.</summary>
/// <remarks>JCGM 101:2008 §7.6 (mean and standard deviation) and §7.7 (coverage intervals).</remarks>
/// <example><code>MonteCarloResult result = new MonteCarlo().Run(budget);
/// Console.WriteLine($"{result.Mean} ± {result.StandardUncertainty}, {result.SymmetricInterval(0.95)}");</code></example>
public sealed class MonteCarloResult
{
    private readonly double[] _values;
    private readonly Lazy<OrderStatistics> _ordered;
    private readonly Lazy<(double Mean, double Deviation)> _moments;

    internal MonteCarloResult(UncertaintyBudget budget, double[] values, int threads, bool? isStable)
    {
        Budget = budget;
        IsStable = isStable;
        _values = values;
        _ordered = new(() => new OrderStatistics(values, threads));
        _moments = new(() => Moments.Of(values));
    }

    /// <summary>The budget whose inputs were drawn.</summary>
    public UncertaintyBudget Budget { get; }

    /// <summary>Number of draws made.</summary>
    public int Draws => _values.Length;

    /// <summary>Whether the adaptive stop found the figures stable before the draws ran out; null without one.</summary>
    public bool? IsStable { get; }

    /// <summary>Mean of the draws, in the unit of the result.</summary>
    public double Mean => _moments.Value.Mean;

    /// <summary>Standard deviation of the draws.</summary>
    public double StandardUncertainty => _moments.Value.Deviation;

    /// <summary>The value that half of the draws exceed.</summary>
    public double Median => Quantile(0.5);

    /// <summary>The draws in the order in which they were made.</summary>
    public ReadOnlyMemory<double> Values => _values;

    /// <summary>The value below which a share of the draws lies.</summary>
    /// <param name="probability">0 to 1.</param>
    /// <returns>Linear between neighbouring draws.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="probability"/> is outside its domain.</exception>
    /// <example><code>double low = result.Quantile(0.01);     // one draw in a hundred is lower</code></example>
    public double Quantile(double probability)
    {
        double place = Domains.Probability.Check(probability) * (Draws - 1);
        int below = Math.Min((int)place, Draws - 2);
        double low = _ordered.Value[below], high = _ordered.Value[below + 1];
        return (1 - (place - below)) * low + (place - below) * high;
    }

    /// <summary>The interval with as many draws below as above it: from y(r) to y(r + q), r = ⌊(M − q + 1)/2⌋.</summary>
    /// <param name="coverageProbability">Coverage probability p, 0.001 to 0.999999.</param>
    /// <returns>The interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverageProbability"/> is outside its domain, or too near to 1 for the number of draws.</exception>
    /// <example><code>Range&lt;double&gt; interval = result.SymmetricInterval(coverageProbability: 0.95);</code></example>
    public Range<double> SymmetricInterval(double coverageProbability)
    {
        Check(coverageProbability);
        int span = Ranks.Span(Draws, coverageProbability);
        (double[] lowest, double[] highest) = _ordered.Value.Tails(Draws - span);
        (int low, _) = Ranks.Symmetric(Draws, coverageProbability);
        return new((lowest[low], highest[low]));
    }

    /// <summary>The shortest interval of the probability: the least y(r + q) − y(r) over all r, the lowest of several alike.</summary>
    /// <param name="coverageProbability">Coverage probability p, 0.001 to 0.999999.</param>
    /// <returns>The interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverageProbability"/> is outside its domain, or too near to 1 for the number of draws.</exception>
    /// <example><code>Range&lt;double&gt; interval = result.ShortestInterval(coverageProbability: 0.95);</code></example>
    public Range<double> ShortestInterval(double coverageProbability)
    {
        Check(coverageProbability);
        int count = Draws - Ranks.Span(Draws, coverageProbability);
        (double[] lowest, double[] highest) = _ordered.Value.Tails(count);
        int best = 0;
        for (int r = 1; r < count; r++)
        {
            if (highest[r] - lowest[r] < highest[best] - lowest[best]) best = r;
        }

        return new((lowest[best], highest[best]));
    }

    /// <summary>Share of the draws below a limit.</summary>
    /// <param name="limit">The limit, in the unit of the result.</param>
    /// <returns>0 to 1. Where it is 0, the probability is below 3/M with 95 % confidence, M being the number of draws.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is outside its domain.</exception>
    /// <example><code>double tooLoose = result.ProbabilityBelow(52);     // of a preload in kN: below 52 kN</code></example>
    public double ProbabilityBelow(double limit)
    {
        Domains.Number.Check(limit);
        long count = 0;
        foreach (double value in _values) count += value < limit ? 1 : 0;
        return (double)count / Draws;
    }

    /// <summary>Share of the draws above a limit.</summary>
    /// <param name="limit">The limit, in the unit of the result.</param>
    /// <returns>0 to 1. Where it is 0, the probability is below 3/M with 95 % confidence, M being the number of draws.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is outside its domain.</exception>
    /// <example><code>double tooTight = result.ProbabilityAbove(75);     // of a preload in kN: above 75 kN</code></example>
    public double ProbabilityAbove(double limit)
    {
        Domains.Number.Check(limit);
        long count = 0;
        foreach (double value in _values) count += value > limit ? 1 : 0;
        return (double)count / Draws;
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"{Budget.Result}: mean {Mean:G6}, u {StandardUncertainty:G4}, {SymmetricInterval(0.95)} (95 %), {Draws} draws");

    private void Check(double coverageProbability)
    {
        Domains.CoverageProbability.Check(coverageProbability);
        if (Draws - Ranks.Span(Draws, coverageProbability) < 2)
        {
            Guard.RefuseAgainst(nameof(coverageProbability), coverageProbability, $"such that two of the {Draws} draws or more lie outside the interval");
        }
    }
}
