using Fastening.Internals;
using Fastening.Quality;

namespace Fastening.Tests.Uncertainty;

public class StudentTests
{
    /// <summary>Closed forms (Johnson, Kotz and Balakrishnan 1995, ch. 28): ν = 1 cot(π s), ν = 2 (1 − 2 s)/√(2 s (1 − s)), s = (1 − p)/2.</summary>
    [Theory]
    [InlineData(0.001)]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.6827)]
    [InlineData(0.95)]
    [InlineData(0.999)]
    [InlineData(0.999999)]
    public void Coverage_factors_of_one_and_two_degrees_of_freedom(double p)
    {
        double s = (1 - p) / 2;
        Close.To(Math.Tan(Math.PI * p / 2), Of(1).CoverageFactor(p), 1e-9);
        Close.To(p / Math.Sqrt(2 * s * (1 - s)), Of(2).CoverageFactor(p), 1e-12);
        Assert.InRange(Of(1.4).InterpolatedCoverageFactor(p), Of(2).CoverageFactor(p), Of(1).CoverageFactor(p));
    }

    /// <summary>A correlated Student input of few degrees of freedom goes through the quantile: half its draws lie below it, one in forty beyond t(0.975).</summary>
    [Theory]
    [InlineData(1, 12.706)]
    [InlineData(2, 4.303)]
    [InlineData(3, 3.182)]
    public void Correlated_inputs_of_few_degrees_of_freedom_can_be_drawn(double freedom, double t975)
    {
        UncertaintyBudget pair = UncertaintyBudget.Of(
            "y", "", x => x["x"], UncertaintyContribution.Normal("z", 0, 1), UncertaintyContribution.Normal("x", 5, 2).WithDegreesOfFreedom(freedom))
            .WithCorrelations(("x", "z", 0.7));
        MonteCarloResult result = new MonteCarlo().WithDraws(200_000).Run(pair);
        Assert.InRange(result.ProbabilityBelow(5), 0.495, 0.505);
        Assert.InRange(result.ProbabilityAbove(5 + 2 * t975), 0.0235, 0.0265);
    }

    /// <summary>Roots of the regularised incomplete beta function by bisection in 60 digits (mpmath), which shares no code with the library.</summary>
    [Theory]
    [InlineData(1.3, 0.4995, 0.0014996908012755472)]
    [InlineData(1.3, 0.3, 0.67397272163555228)]
    [InlineData(1.3, 0.025, 7.5005293255620334)]
    [InlineData(1.3, 0.0005, 153.26589277350301)]
    [InlineData(1.3, 5e-07, 31127.640516139563)]
    [InlineData(1.3, 1e-13, 4427922917.7495032)]
    [InlineData(2.5, 0.4995, 0.0013819462870835818)]
    [InlineData(2.5, 0.3, 0.59730773825231749)]
    [InlineData(2.5, 0.025, 3.5746548420036831)]
    [InlineData(2.5, 0.0005, 18.277893528130648)]
    [InlineData(2.5, 5e-07, 290.523061599015)]
    [InlineData(2.5, 1e-13, 138922.82827866489)]
    [InlineData(3, 0.4995, 0.0013603500825973626)]
    [InlineData(3, 0.3, 0.58438972743981871)]
    [InlineData(3, 0.025, 3.1824463052837095)]
    [InlineData(3, 0.0005, 12.923978636687483)]
    [InlineData(3, 5e-07, 130.15458955835795)]
    [InlineData(3, 1e-13, 22257.698184310489)]
    [InlineData(4.5, 0.4995, 0.0013243395283629966)]
    [InlineData(4.5, 0.3, 0.5635058039393779)]
    [InlineData(4.5, 0.025, 2.6589123472044037)]
    [InlineData(4.5, 0.0005, 7.580740499372559)]
    [InlineData(4.5, 5e-07, 36.27623594543997)]
    [InlineData(4.5, 1e-13, 1119.2029147450487)]
    [InlineData(10, 0.4995, 0.001284989406456591)]
    [InlineData(10, 0.3, 0.54152803875501569)]
    [InlineData(10, 0.025, 2.2281388519862747)]
    [InlineData(10, 0.0005, 4.5868938587026359)]
    [InlineData(10, 5e-07, 10.516489956914905)]
    [InlineData(10, 1e-13, 51.07937651753813)]
    [InlineData(16, 0.4995, 0.0012730384383821875)]
    [InlineData(16, 0.3, 0.53501045290130798)]
    [InlineData(16, 0.025, 2.1199052992212546)]
    [InlineData(16, 0.0005, 4.0149963271840555)]
    [InlineData(16, 5e-07, 7.6415113263034252)]
    [InlineData(16, 1e-13, 22.129432457711193)]
    [InlineData(49.7, 0.4995, 0.0012596343296218312)]
    [InlineData(49.7, 0.3, 0.52778083604455227)]
    [InlineData(49.7, 0.025, 2.0088595526749056)]
    [InlineData(49.7, 0.0005, 3.4973221408332764)]
    [InlineData(49.7, 5e-07, 5.5778046811606971)]
    [InlineData(49.7, 1e-13, 9.9548750979398614)]
    [InlineData(1000, 0.4995, 0.0012536278336585243)]
    [InlineData(1000, 0.3, 0.52456770730922693)]
    [InlineData(1000, 0.025, 1.9623390808264085)]
    [InlineData(1000, 0.0005, 3.3002826484239129)]
    [InlineData(1000, 5e-07, 4.922289523429588)]
    [InlineData(1000, 1e-13, 7.4510437316684335)]
    public void Quantiles_have_their_digits(double freedom, double tail, double t) => Close.To(t, StudentCurve.FromTail(tail, freedom), 2e-13);

    [Theory]
    [InlineData(0.4)]
    [InlineData(0.1)]
    [InlineData(1e-6)]
    [InlineData(1e-16)]
    [InlineData(1e-100)]
    [InlineData(1e-300)]
    public void Tails_that_only_logarithms_hold(double tail)
    {
        Close.To(1 / Math.Tan(Math.PI * tail), StudentCurve.FromTail(tail, 1), 1e-12);
        Close.To((1 - 2 * tail) / Math.Sqrt(2 * tail * (1 - tail)), StudentCurve.FromTail(tail, 2), 1e-12);
        foreach (double freedom in new[] { 1, 1.7, 3, 8, 40, 999, 1e6 })
        {
            Close.To(tail, StudentCurve.Above(StudentCurve.FromTail(tail, freedom), freedom), 1e-12 * Math.Max(1, freedom / 100), scale: tail);
        }
    }

    /// <summary>z + (z³ + z)/(4ν) + (5z⁵ + 16z³ + 3z)/(96ν²): Abramowitz and Stegun 26.7.5, whose next term is below 10⁻¹⁶ here.</summary>
    [Theory]
    [InlineData(0.025, 1.959963984540054)]
    [InlineData(0.15865525393145707, 1)]
    [InlineData(2.866515718791939e-7, 5)]
    public void Many_degrees_of_freedom_come_to_the_normal_curve(double tail, double z)
    {
        foreach (double freedom in new[] { 2e5, 1e6, 1.1e6, 1e9, 1e15 })
        {
            double t = z + (Math.Pow(z, 3) + z) / (4 * freedom) + (5 * Math.Pow(z, 5) + 16 * Math.Pow(z, 3) + 3 * z) / (96 * freedom * freedom);
            Close.To(t, StudentCurve.FromTail(tail, freedom), 3e-13);
        }
    }

    /// <summary>Which width u is: the draws against moments and quantiles of t by quadrature of its density, alone and correlated.</summary>
    [Theory]
    [InlineData(5.0)]
    [InlineData(12.5)]
    public void The_draws_have_the_width_that_was_named(double freedom)
    {
        UncertaintyContribution byScale = UncertaintyContribution.StudentByScale("x", 5, 2, freedom);
        UncertaintyContribution byDeviation = UncertaintyContribution.StudentByStandardDeviation("x", 5, 2, freedom);
        (double deviation, double above) = Quadrature(freedom, 2.5);
        foreach ((UncertaintyContribution x, double scale) in new[] { (byScale, 2), (byDeviation, 2 / deviation) })
        {
            Close.To(scale * deviation, x.DrawnStandardDeviation!.Value, 1e-6);
            foreach (MonteCarloResult result in new[] { Alone(x), Paired(x) })
            {
                Close.To(scale * deviation, result.StandardUncertainty, 0.02);
                Assert.InRange(result.ProbabilityAbove(5 + 2.5 * scale), above - 5 * Math.Sqrt(above / 300_000), above + 5 * Math.Sqrt(above / 300_000));
            }
        }

        Assert.Equal(2, UncertaintyBudget.Of("y", "", v => v[0], byScale).StandardUncertainty, 1e-9);
        Assert.Equal(freedom, UncertaintyBudget.Of("y", "", v => v[0], byScale).EffectiveDegreesOfFreedom!.Value, 1e-9);
        Assert.Equal(2, UncertaintyBudget.Of("y", "", v => v[0], byDeviation).StandardUncertainty, 1e-9);
        Assert.Equal(double.PositiveInfinity, UncertaintyBudget.Of("y", "", v => v[0], byDeviation).EffectiveDegreesOfFreedom);
        Assert.Contains("u its standard deviation", string.Join("\n", UncertaintyBudget.Of("y", "", v => v[0], byDeviation).Remarks), StringComparison.Ordinal);
        Assert.Contains("u its scale", UncertaintyContribution.Normal("x", 5, 2).WithDegreesOfFreedom(freedom).ToString(), StringComparison.Ordinal);
    }

    /// <summary>A normal input whose u has degrees of freedom is Student's t by its scale, draw for draw; so are readings.</summary>
    [Fact]
    public void A_normal_input_with_degrees_of_freedom_is_Student_by_scale()
    {
        UncertaintyContribution named = UncertaintyContribution.StudentByScale("x", 5, 2, 7), normal = UncertaintyContribution.Normal("x", 5, 2).WithDegreesOfFreedom(7);
        Assert.Equal(Alone(named).Values.ToArray(), Alone(normal).Values.ToArray());
        Assert.Equal(UncertaintyDistribution.StudentByScale, normal.Distribution);
        Close.To(2 * Math.Sqrt(7.0 / 5), normal.DrawnStandardDeviation!.Value);
        Close.To(Math.Sqrt(2.0 / 3 / 4) * Math.Sqrt(3), UncertaintyContribution.FromReadings("x", [4, 5, 6, 5]).DrawnStandardDeviation!.Value);
        Assert.Null(UncertaintyContribution.FromReadings("x", [4, 5, 6]).DrawnStandardDeviation);
        Assert.Equal(2, UncertaintyContribution.Normal("x", 5, 2).DrawnStandardDeviation);
        Assert.Throws<ArgumentOutOfRangeException>(() => UncertaintyContribution.StudentByStandardDeviation("x", 5, 2, 2));
        Assert.Throws<InvalidOperationException>(() => UncertaintyContribution.StudentByStandardDeviation("x", 5, 2, 3).WithDoubt(UnitsNet.Ratio.FromPercent(10)));
    }

    private static MonteCarloResult Alone(UncertaintyContribution x) => new MonteCarlo().WithDraws(300_000).Run(UncertaintyBudget.Of("y", "", v => v["x"], x));

    private static MonteCarloResult Paired(UncertaintyContribution x) => new MonteCarlo().WithDraws(300_000).Run(
        UncertaintyBudget.Of("y", "", v => v["x"], x, UncertaintyContribution.Normal("z", 0, 1)).WithCorrelations(("x", "z", -0.6)));

    /// <summary>Standard deviation of t and its tail, by the substitution t = √ν tan φ: the density becomes cos φ to the power ν − 1.</summary>
    private static (double Deviation, double Above) Quadrature(double freedom, double beyond)
    {
        const int N = 400_000;
        double mass = 0, square = 0, tail = 0;
        for (int i = 0; i < N; i++)
        {
            double phi = Math.PI / 2 * (i + 0.5) / N, density = Math.Pow(Math.Cos(phi), freedom - 1), t = Math.Sqrt(freedom) * Math.Tan(phi);
            mass += density;
            square += density * t * t;
            if (t > beyond) tail += density;
        }

        return (Math.Sqrt(square / mass), tail / mass / 2);
    }

    private static UncertaintyBudget Of(double freedom) =>
        UncertaintyBudget.Of("y", "", x => x[0], UncertaintyContribution.Normal("x", 0, 1).WithDegreesOfFreedom(freedom));
}
