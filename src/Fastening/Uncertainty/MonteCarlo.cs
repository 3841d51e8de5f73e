using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>Propagation of distributions by drawing the inputs at random, after JCGM 101:2008 §7.</summary>
/// <remarks>
/// Draws come in fixed blocks with a seed each, so that the answer depends on seed and number of draws, never on the number of threads.
/// Correlated inputs are drawn through a Gaussian copula: the coefficient is that of the normal numbers behind them, which for two
/// rectangular inputs exceeds their own by up to 2 %. An input whose u has degrees of freedom is drawn as Student's t of scale u, a bounded
/// one with limits of doubtful width (<see cref="UncertaintyContribution.WithDegreesOfFreedom"/>). JCGM 101:2008 §7.2 recommends 10⁴/(1 − p) draws or more.
/// </remarks>
/// <example><code>MonteCarloResult result = new MonteCarlo().Run(budget);
/// Range&lt;double&gt; interval = result.ShortestInterval(0.95);</code></example>
public sealed class MonteCarlo
{
    /// <summary>Draws of one block, the unit of work and of the adaptive stop.</summary>
    internal const int BlockLength = 16384;

    private const int BlocksInARound = 8;

    /// <summary>A million draws with seed 1, on as many threads as there are processors.</summary>
    /// <example><code>MonteCarloResult result = new MonteCarlo().Run(budget);     // a million draws, seed 1</code></example>
    public MonteCarlo()
    {
        Draws = 1_000_000;
        Seed = 1;
        Threads = Math.Min(Environment.ProcessorCount, (int)Domains.Threads.High);
    }

    private MonteCarlo(MonteCarlo source)
    {
        Draws = source.Draws;
        Seed = source.Seed;
        Threads = source.Threads;
        SignificantDigits = source.SignificantDigits;
    }

    /// <summary>Number of draws; with an adaptive stop the most that are made.</summary>
    public int Draws { get; private init; }

    /// <summary>Seed: another one gives another answer, within the sampling error.</summary>
    public ulong Seed { get; private init; }

    /// <summary>Number of threads; it changes the time, not the answer.</summary>
    public int Threads { get; private init; }

    /// <summary>Digits of the standard uncertainty that the adaptive stop secures; null without one.</summary>
    public int? SignificantDigits { get; private init; }

    /// <summary>The same with another number of draws.</summary>
    /// <param name="draws">1 000 to 10⁸; each takes 8 bytes.</param>
    /// <returns>A new setting.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="draws"/> is outside its domain.</exception>
    /// <example><code>MonteCarloResult quick = new MonteCarlo().WithDraws(20_000).Run(budget);</code></example>
    public MonteCarlo WithDraws(int draws) => new(this) { Draws = (int)Domains.Draws.Check(draws) };

    /// <summary>The same with another seed.</summary>
    /// <param name="seed">Any number.</param>
    /// <returns>A new setting.</returns>
    /// <example><code>MonteCarloResult again = new MonteCarlo().WithSeed(7).Run(budget);     // other draws of the same inputs</code></example>
    public MonteCarlo WithSeed(ulong seed) => new(this) { Seed = seed };

    /// <summary>The same with another number of threads.</summary>
    /// <param name="threads">1 to 1024.</param>
    /// <returns>A new setting.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="threads"/> is outside its domain.</exception>
    /// <example><code>MonteCarloResult result = new MonteCarlo().WithThreads(2).Run(budget);</code></example>
    public MonteCarlo WithThreads(int threads) => new(this) { Threads = (int)Domains.Threads.Check(threads) };

    /// <summary>
    /// The same with a stop as soon as the mean, the standard uncertainty and the ends of the symmetric 95 % interval are stable to half a
    /// unit of that digit of the standard uncertainty (JCGM 101:2008 §7.9); looked at every 131 072 draws.
    /// </summary>
    /// <param name="significantDigits">1 to 4; JCGM 101 takes 1 or 2. Each digit more takes a hundred times the draws: raise them as well.</param>
    /// <returns>A new setting.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="significantDigits"/> is outside its domain.</exception>
    /// <example><code>MonteCarloResult result = new MonteCarlo().WithDraws(5_000_000).WithAdaptiveStop(significantDigits: 2).Run(budget);
    /// if (result.IsStable == false) Console.WriteLine("five million draws were too few");</code></example>
    public MonteCarlo WithAdaptiveStop(int significantDigits) =>
        new(this) { SignificantDigits = (int)Domains.SignificantDigits.Check(significantDigits) };

    /// <summary>Draws the inputs of a budget and gathers its results.</summary>
    /// <param name="budget">The budget; its function is called from several threads at once.</param>
    /// <returns>The results.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="budget"/> is null.</exception>
    /// <exception cref="InvalidOperationException">
    /// The measurement function gave no finite number for a draw, or a correlated input has limits of doubtful width and is no rectangle.
    /// </exception>
    /// <example><code>MonteCarloResult result = new MonteCarlo().Run(budget);</code></example>
    public MonteCarloResult Run(UncertaintyBudget budget) => Run(budget, null, CancellationToken.None);

    /// <summary>Draws the inputs of a budget and gathers its results; reports its progress, and can be cancelled.</summary>
    /// <param name="budget">The budget; its function is called from several threads at once.</param>
    /// <param name="progress">Told the share of the draws made so far, 0 to 1, rising; may be null.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <returns>The results.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="budget"/> is null.</exception>
    /// <exception cref="InvalidOperationException">
    /// The measurement function gave no finite number for a draw, or a correlated input has limits of doubtful width and is no rectangle.
    /// </exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    /// <example><code>using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(20));
    /// MonteCarloResult result = new MonteCarlo().WithDraws(50_000_000).Run(budget, progress: null, patience.Token);</code></example>
    public MonteCarloResult Run(UncertaintyBudget budget, IProgress<double>? progress, CancellationToken cancellation)
    {
        var run = new MonteCarloRun(Guard.NotNull(budget), this, progress, cancellation);
        if (SignificantDigits is not int digits) return new(budget, run.Draw(Draws), Threads, isStable: null);
        int round = BlocksInARound * BlockLength;
        var stability = new StabilityCheck(digits);
        while (true)
        {
            int length = (int)Math.Min(Draws, (long)run.Length + round);
            double[] values = run.Draw(length);
            if (stability.IsStable(values, Threads)) return new(budget, values, Threads, isStable: true);
            if (length == Draws) return new(budget, values, Threads, isStable: false);
        }
    }
}
