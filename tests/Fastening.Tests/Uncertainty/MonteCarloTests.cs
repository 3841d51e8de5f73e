using Fastening.Quality;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Fastening.Tests.Uncertainty;

public class MonteCarloTests
{
    private const int Draws = 400_000;

    private static readonly UncertaintyBudget Mixed = UncertaintyBudget.Of(
        "y", "", x => x["a"] * x["b"] + x["c"] - x["d"],
        UncertaintyContribution.Normal("a", 2, 0.1).WithDegreesOfFreedom(6),
        UncertaintyContribution.Rectangular("b", 3, 0.5),
        UncertaintyContribution.Arcsine("c", 0, 0.2),
        UncertaintyContribution.Trapezoidal("d", 1, 0.3, Ratio.FromPercent(40)))
        .WithCorrelations(("b", "d", 0.6));

    public static TheoryData<string, UncertaintyContribution, Func<double, double>> Distributions => new()
    {
        { "normal", UncertaintyContribution.Normal("x", 5, 2), z => Normal.CDF(5, 2, z) },
        { "Student", UncertaintyContribution.Normal("x", 5, 2).WithDegreesOfFreedom(4.5), z => StudentT.CDF(5, 2, 4.5, z) },
        { "readings", UncertaintyContribution.FromReadings("x", [4, 5, 6, 5]), z => StudentT.CDF(5, Math.Sqrt(2.0 / 3 / 4), 3, z) },
        { "rectangular", UncertaintyContribution.Rectangular("x", 5, 2), z => Clamp((z - 3) / 4) },
        { "triangular", UncertaintyContribution.Triangular("x", 5, 2), z => Triangular.CDF(3, 7, 5, z) },
        { "arcsine", UncertaintyContribution.Arcsine("x", 5, 2), z => Math.Abs(z - 5) >= 2 ? (z > 5 ? 1 : 0) : 0.5 + Math.Asin((z - 5) / 2) / Math.PI },
        { "trapezoidal", UncertaintyContribution.Trapezoidal("x", 5, 2, Ratio.FromPercent(40)), z => Trapezoid((z - 5) / 2, 0.4) },
    };

    /// <summary>The largest distance of two distribution functions (Kolmogorov–Smirnov): 1.95/√M in one run of a thousand.</summary>
    [Theory]
    [MemberData(nameof(Distributions))]
    public void Draws_follow_the_distribution(string name, UncertaintyContribution input, Func<double, double> below)
    {
        MonteCarloResult alone = Run(UncertaintyBudget.Of(name, "", x => x[0], input));
        Assert.InRange(Distance(alone, below), 0, 1.95 / Math.Sqrt(Draws));

        // Correlated inputs take another way: through the normal distribution and the quantile.
        if (input.Distribution == UncertaintyDistribution.Readings) return;
        UncertaintyBudget pair = UncertaintyBudget.Of(name, "", x => x["x"], UncertaintyContribution.Normal("y", 0, 1), input).WithCorrelations(("x", "y", 0.7));
        MonteCarloResult paired = new MonteCarlo().WithDraws(40_000).Run(pair);
        Assert.InRange(Distance(paired, below), 0, 1.95 / Math.Sqrt(40_000));
    }

    [Fact]
    public void The_far_tail_of_the_normal_distribution_is_there()
    {
        MonteCarloResult result = new MonteCarlo().WithDraws(4_000_000).Run(UncertaintyBudget.Of("y", "", x => x[0], UncertaintyContribution.Normal("x", 0, 1)));
        foreach (double z in new[] { 2.5, 3.0, 3.442, 3.6, 4.0 })
        {
            double expected = Normal.CDF(0, 1, -z), error = Math.Sqrt(expected / result.Draws);
            Assert.InRange(result.ProbabilityAbove(z), expected - 4.5 * error, expected + 4.5 * error);
            Assert.InRange(result.ProbabilityBelow(-z), expected - 4.5 * error, expected + 4.5 * error);
        }
    }

    [Fact]
    public void The_answer_does_not_depend_on_the_number_of_threads()
    {
        MonteCarlo settings = new MonteCarlo().WithDraws(100_003).WithSeed(42);
        MonteCarloResult one = settings.WithThreads(1).Run(Mixed);
        foreach (int threads in new[] { 2, 4, 7 })
        {
            MonteCarloResult more = settings.WithThreads(threads).Run(Mixed);
            Assert.Equal(one.Values.ToArray(), more.Values.ToArray());
            Assert.Equal(one.Mean, more.Mean);
            Assert.Equal(one.StandardUncertainty, more.StandardUncertainty);
            Assert.Equal(one.ShortestInterval(0.9).High, more.ShortestInterval(0.9).High);
            Assert.Equal(one.SymmetricInterval(0.9).Low, more.SymmetricInterval(0.9).Low);
        }

        MonteCarlo adaptive = new MonteCarlo().WithDraws(3_000_000).WithAdaptiveStop(2);
        Assert.Equal(adaptive.WithThreads(1).Run(Mixed).Values.ToArray(), adaptive.WithThreads(3).Run(Mixed).Values.ToArray());
        Assert.NotEqual(one.Values.ToArray(), settings.WithSeed(43).Run(Mixed).Values.ToArray());
        Assert.Equal(one.Values.ToArray().AsSpan(0, 50_000).ToArray(), settings.WithDraws(50_000).Run(Mixed).Values.ToArray());
    }

    /// <summary>Against a plain sort of all draws, with ties, far outliers and odd counts.</summary>
    [Theory]
    [InlineData(1000, 0.95)]
    [InlineData(1001, 0.5)]
    [InlineData(20_011, 0.99)]
    [InlineData(150_000, 0.6827)]
    [InlineData(150_000, 0.9999)]
    public void Intervals_are_those_of_the_sorted_draws(int draws, double p)
    {
        Func<InputValues, double>[] functions = [x => x[0], x => Math.Round(x[0], 1), x => x[0] / x[1], x => 3, x => Math.Pow(x[0] / x[1], 9), x => -Math.Abs(x[0]), x => Math.Abs(x[0])];
        foreach (Func<InputValues, double> function in functions)
        {
            MonteCarloResult result = new MonteCarlo().WithDraws(draws).Run(UncertaintyBudget.Of(
                "y", "", function, UncertaintyContribution.Normal("a", 1, 1), UncertaintyContribution.Normal("b", 0, 1)));
            double[] sorted = result.Values.ToArray();
            Array.Sort(sorted);
            int q = (int)Math.Floor(p * draws + 0.5), r = (draws - q + 1) / 2;
            int best = Enumerable.Range(1, draws - q).MinBy(i => sorted[i + q - 1] - sorted[i - 1]);

            Assert.Equal(sorted[r - 1], result.SymmetricInterval(p).Low);
            Assert.Equal(sorted[r + q - 1], result.SymmetricInterval(p).High);
            Assert.Equal(sorted[best - 1], result.ShortestInterval(p).Low);
            Assert.Equal(sorted[best + q - 1], result.ShortestInterval(p).High);
            Assert.Equal(sorted[0], result.Quantile(0));
            Assert.Equal(sorted[^1], result.Quantile(1));
            Close.To((sorted[(draws - 1) / 2] + sorted[draws / 2]) / 2, result.Median);
        }
    }

    [Theory]
    [InlineData(0.8)]
    [InlineData(-1)]
    [InlineData(1)]
    public void Correlation_comes_out_as_it_went_in(double r)
    {
        UncertaintyBudget normal = UncertaintyBudget.Of(
            "y", "", x => x[0] - 2 * x[1], UncertaintyContribution.Normal("a", 0, 2), UncertaintyContribution.Normal("b", 0, 3)).WithCorrelations(("a", "b", r));
        Close.To(Math.Sqrt(4 + 36 - 24 * r), Run(normal).StandardUncertainty, 0.006);

        // The normal numbers behind two rectangular inputs have r; the inputs have (6/π) asin(r/2) (Pearson 1907).
        UncertaintyBudget even = UncertaintyBudget.Of(
            "y", "", x => x[0] - 2 * x[1], UncertaintyContribution.Rectangular("a", 0, 2), UncertaintyContribution.Rectangular("b", 0, 3)).WithCorrelations(("a", "b", r));
        double own = 6 / Math.PI * Math.Asin(r / 2);
        Close.To(Math.Sqrt((4 + 36 - 24 * own) / 3), Run(even).StandardUncertainty, 0.006);
    }

    /// <summary>A difference of joint readings is Student's t with the scale of the combined readings and ν = n − 1.</summary>
    [Fact]
    public void Joint_readings_are_drawn_together()
    {
        double[] a = [1.02, 0.97, 1.10, 1.05, 0.99, 1.01, 1.04], b = [2.05, 1.90, 2.25, 2.04, 1.99, 2.03, 2.1];
        UncertaintyBudget budget = UncertaintyBudget.Of("y", "", x => 2 * x["a"] - x["b"], UncertaintyContribution.FromJointReadings(("a", a), ("b", b)));
        UncertaintyContribution combined = UncertaintyContribution.FromReadings("y", [.. a.Zip(b, (x, y) => 2 * x - y)]);
        double distance = Distance(Run(budget), z => StudentT.CDF(combined.Value, combined.StandardUncertainty, 6, z));
        Assert.InRange(distance, 0, 1.95 / Math.Sqrt(Draws));
    }

    [Fact]
    public void The_adaptive_stop_stops_when_it_may_and_says_when_it_could_not()
    {
        MonteCarloResult coarse = new MonteCarlo().WithDraws(10_000_000).WithAdaptiveStop(1).Run(Mixed);
        MonteCarloResult never = new MonteCarlo().WithDraws(140_000).WithAdaptiveStop(4).Run(Mixed);
        Assert.True(coarse.IsStable);
        Assert.Equal(8 * 16384, coarse.Draws);
        Assert.False(never.IsStable);
        Assert.Equal(140_000, never.Draws);
        Assert.Null(Run(Mixed).IsStable);
    }

    [Fact]
    public void Progress_rises_to_the_end_and_a_run_can_be_cancelled()
    {
        var seen = new Seen();
        new MonteCarlo().WithDraws(200_000).Run(Mixed, seen, CancellationToken.None);
        Assert.Equal(13, seen.Shares.Count);
        Assert.Equal(seen.Shares.Order(), seen.Shares);
        Assert.Equal(1, seen.Shares[^1]);

        using var source = new CancellationTokenSource();
        var cancels = new Seen { Then = source.Cancel };
        Assert.Throws<OperationCanceledException>(() => new MonteCarlo().WithThreads(1).Run(Mixed, cancels, source.Token));
        Assert.True(cancels.Shares.Count < 5, "it went on");
    }

    [Fact]
    public void A_function_that_fails_says_where()
    {
        UncertaintyContribution x = UncertaintyContribution.Normal("x", 3, 1);
        string message = Assert.Throws<InvalidOperationException>(() => Run(UncertaintyBudget.Of("y", "", v => Math.Log(v["x"]), x))).Message;
        Assert.Matches(@"gives NaN at x = -0\.\d+\.", message);
        Assert.Throws<DivideByZeroException>(() => Run(UncertaintyBudget.Of("y", "", v => throw new DivideByZeroException(), x)));
        Assert.Contains("two of the 1000 draws", Assert.Throws<ArgumentOutOfRangeException>(
            () => new MonteCarlo().WithDraws(1000).Run(UncertaintyBudget.Of("y", "", v => v[0], x)).SymmetricInterval(0.9999)).Message, StringComparison.Ordinal);
    }

    private static MonteCarloResult Run(UncertaintyBudget budget) => new MonteCarlo().WithDraws(Draws).Run(budget);

    private static double Distance(MonteCarloResult result, Func<double, double> below)
    {
        double[] sorted = result.Values.ToArray();
        Array.Sort(sorted);
        return sorted.Where((_, i) => i % 37 == 0).Select((value, n) => Math.Abs(below(value) - (37 * n + 0.5) / sorted.Length)).Max();
    }

    private static double Clamp(double share) => Math.Min(Math.Max(share, 0), 1);

    /// <summary>By integrating the density of a trapezoid of unit half width.</summary>
    private static double Trapezoid(double z, double flat)
    {
        double top = 1 / (1 + flat), edge = Math.Min(Math.Max(z, -1), 1);
        double ramp = Math.Min(edge, -flat) + 1, level = Math.Min(Math.Max(edge + flat, 0), 2 * flat), fall = Math.Max(edge - flat, 0);
        return top * (ramp * ramp / (2 * (1 - flat)) + level + fall - fall * fall / (2 * (1 - flat)));
    }

    private sealed class Seen : IProgress<double>
    {
        public List<double> Shares { get; } = [];

        public Action? Then { get; init; }

        public void Report(double value)
        {
            Shares.Add(value);
            Then?.Invoke();
        }
    }
}
