using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.Uncertainty;

/// <summary>Limits that are known to so much only: drawn first, then the value between them (JCGM 101:2008 §6.4.3, from memory).</summary>
public class DoubtfulWidthTests
{
    private const int Draws = 400_000;

    /// <summary>The distribution function by integrating the density of 6.4.3.2, and V = w²/3 + d²/9 of 6.4.3.3; alone and through the copula.</summary>
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.10)]
    [InlineData(0.50)]
    [InlineData(0.70)]
    public void A_rectangle_of_doubtful_width_is_a_curvilinear_trapezoid(double doubt)
    {
        const double Half = 2;
        UncertaintyContribution x = UncertaintyContribution.Rectangular("x", 5, Half).WithDoubt(Ratio.FromDecimalFractions(doubt));
        MonteCarloResult alone = Run(UncertaintyBudget.Of("y", "", v => v["x"], x));
        MonteCarloResult paired = Run(UncertaintyBudget.Of("y", "", v => v["x"], x, UncertaintyContribution.Normal("z", 0, 1)).WithCorrelations(("x", "z", 0.7)));
        double deviation = Math.Sqrt(Half * Half / 3 + Math.Pow(doubt * Half, 2) / 9);
        foreach (MonteCarloResult result in new[] { alone, paired })
        {
            Assert.InRange(Distance(result, value => Below(value - 5, Half, doubt * Half)), 0, 1.95 / Math.Sqrt(Draws));
            Close.To(deviation, result.StandardUncertainty, 0.006);
            Assert.InRange(result.Values.ToArray().Max(), 5 + Half, 5 + Half * (1 + doubt));
        }
    }

    /// <summary>Limits a ± d drawn by another generator than the library's, then the value between them: equal quantiles.</summary>
    [Theory]
    [InlineData("triangular")]
    [InlineData("trapezoidal")]
    [InlineData("arcsine")]
    public void Other_bounded_inputs_draw_their_limits_first_too(string shape)
    {
        const double Doubt = 0.5;
        UncertaintyContribution plain = shape switch
        {
            "triangular" => UncertaintyContribution.Triangular("x", 0, 1),
            "arcsine" => UncertaintyContribution.Arcsine("x", 0, 1),
            _ => UncertaintyContribution.Trapezoidal("x", 0, 1, Ratio.FromPercent(40)),
        };
        UncertaintyContribution doubtful = plain.WithDoubt(Ratio.FromDecimalFractions(Doubt));
        MonteCarloResult result = Run(UncertaintyBudget.Of("y", "", v => v["x"], doubtful));

        // Variance of a product of independent factors with means 1 and 0: E[w²] V(z), E[w²] = 1 + q²/3.
        Close.To(plain.StandardUncertainty * Math.Sqrt(1 + Doubt * Doubt / 3), result.StandardUncertainty, 0.006);
        double[] whole = Run(UncertaintyBudget.Of("y", "", v => v["x"], plain)).Values.ToArray();
        var other = new Random(7);
        double[] mixed = [.. whole.Select(z => z * (1 + Doubt * (2 * other.NextDouble() - 1)))];
        Array.Sort(mixed);
        foreach (double p in new[] { 0.01, 0.1, 0.3, 0.5, 0.8, 0.975 })
        {
            double share = result.ProbabilityBelow(mixed[(int)(p * Draws)]);
            Assert.InRange(share, p - 5 * Math.Sqrt(2 * p * (1 - p) / Draws), p + 5 * Math.Sqrt(2 * p * (1 - p) / Draws));
        }
    }

    /// <summary>The quantile of the copula put back into the integral of the density, to the far ends.</summary>
    [Theory]
    [InlineData(1e-4)]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.7)]
    public void Quantiles_of_the_curvilinear_trapezoid(double doubt)
    {
        foreach (double tail in new[] { 0.5, 0.4, 0.2, 0.1, 0.03, 1e-3, 1e-6 })
        {
            double x = CurvilinearTrapezoid.FromTail(tail, doubt);
            Assert.InRange(x, 0, 1 + doubt);
            Close.To(tail, Below(-x, 1, doubt), 1e-7);
        }

        Assert.InRange(CurvilinearTrapezoid.FromTail(1e-18, doubt), (1 + doubt) * (1 - 1e-7), 1 + doubt);
        Assert.Equal(1 + doubt, CurvilinearTrapezoid.FromTail(0, doubt));
    }

    [Fact]
    public void What_is_drawn_is_said_and_what_cannot_be_drawn_is_refused_by_name()
    {
        UncertaintyContribution rectangle = UncertaintyContribution.Rectangular("x", 0, 0.05);
        Close.To(Math.Sqrt(0.05 * 0.05 / 3 + 0.025 * 0.025 / 9), rectangle.WithDoubt(Ratio.FromPercent(50)).DrawnStandardDeviation!.Value);
        Assert.Equal(rectangle.StandardUncertainty, rectangle.DrawnStandardDeviation);
        UncertaintyContribution cycling = UncertaintyContribution.Arcsine("cycle", 0, 1).WithDegreesOfFreedom(8), z = UncertaintyContribution.Normal("z", 0, 1);
        UncertaintyBudget pair = UncertaintyBudget.Of("y", "", x => x[0] + x[1], cycling, z);
        Assert.Equal(Draws, Run(pair).Draws);
        Assert.Contains("cycle is arcsine of doubtful width and correlated", Assert.Throws<InvalidOperationException>(
            () => Run(pair.WithCorrelations(("cycle", "z", 0.5)))).Message, StringComparison.Ordinal);
    }

    private static MonteCarloResult Run(UncertaintyBudget budget) => new MonteCarlo().WithDraws(Draws).Run(budget);

    private static double Distance(MonteCarloResult result, Func<double, double> below)
    {
        double[] sorted = result.Values.ToArray();
        Array.Sort(sorted);
        return sorted.Where((_, i) => i % 3701 == 0).Select((value, n) => Math.Abs(below(value) - (3701 * n + 0.5) / sorted.Length)).Max();
    }

    /// <summary>Simpson over the density ln((w + d)/max(|x|, w − d))/(4 d), the flat and the curved part apart.</summary>
    private static double Below(double x, double w, double d)
    {
        if (x > 0) return 1 - Below(-x, w, d);
        double Density(double t) => Math.Log((w + d) / Math.Max(Math.Abs(t), w - d)) / (4 * d);
        double low = Math.Max(x, -(w + d));
        return Simpson(Density, -(w + d), Math.Min(low, -(w - d))) + (low > -(w - d) ? Simpson(Density, -(w - d), low) : 0);
    }

    private static double Simpson(Func<double, double> f, double low, double high)
    {
        const int N = 400;
        double h = (high - low) / N, sum = f(low) + f(high);
        for (int i = 1; i < N; i++) sum += (i % 2 == 1 ? 4 : 2) * f(low + i * h);
        return sum * h / 3;
    }
}
