using Fastening.Quality;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Fastening.Tests.Quality;

/// <summary>The noncentral t against a series that shares no code with it, its closed cases, and draws.</summary>
public class NoncentralTTests
{
    [Theory]
    [InlineData(1, 0.4, 1.3)]
    [InlineData(2, 3.1, 2.2)]
    [InlineData(4, 12, 3.7)]
    [InlineData(7, 0.9, -1.4)]
    [InlineData(19, 8.2, 6.1)]
    [InlineData(42, 12.29, 8.4)]
    [InlineData(42.7, 15, 8.4)]
    [InlineData(300, 21, 22.5)]
    [InlineData(2, 900, 5.2)]
    [InlineData(1.1, 300, 5)]
    [InlineData(1.2, 1, 1)]
    [InlineData(1.2, 25, 3)]
    [InlineData(1.5, 0.3, 1)]
    [InlineData(1.5, 4.5, 2)]
    [InlineData(1.8, 0.8, -0.5)]
    [InlineData(2.7, 2.5, 2)]
    [InlineData(3.3, 3.3, -0.5)]
    [InlineData(7.7, 60, 40)]
    [InlineData(20.3, 9.5, 9)]
    public void Series_of_incomplete_beta_functions(double freedom, double t, double shift) =>
        Close.To(Series(t, freedom, shift), NoncentralT.Below(t, freedom, shift), 1e-11, scale: 1);

    /// <summary>Quadrature with 25 digits in another language (mpmath), at the fractional degrees of freedom that mean ranges have.</summary>
    [Theory]
    [InlineData(-1.3, 1.2, 0.0, 0.1946369020237397)]
    [InlineData(1.0, 1.2, 1.0, 0.4322569187440433)]
    [InlineData(1.0, 1.5, 0.0, 0.7744323163616448)]
    [InlineData(-0.8, 1.5, 0.3, 0.1821382767631636)]
    [InlineData(0.3, 1.5, 1.0, 0.2311360259575227)]
    [InlineData(-1.6, 1.5, 2.0, 0.002612691847521409)]
    [InlineData(4.5, 1.5, 2.0, 0.7455774830641244)]
    [InlineData(25.0, 1.2, 3.0, 0.9346920855022237)]
    [InlineData(300.0, 1.1, 5.0, 0.9910186570612451)]
    [InlineData(0.8, 1.8, -0.5, 0.8688634018604692)]
    [InlineData(12.0, 4.5, 9.0, 0.705566760360795)]
    [InlineData(60.0, 7.7, 40.0, 0.8885952000064389)]
    [InlineData(9.5, 20.3, 9.0, 0.5791296246873668)]
    public void Fractional_degrees_of_freedom_keep_their_digits(double t, double freedom, double shift, double expected) =>
        Close.To(expected, NoncentralT.Below(t, freedom, shift), 2e-13, scale: 1);

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(24)]
    [InlineData(5000)]
    public void Without_a_shift_it_is_students(double freedom)
    {
        foreach (double t in new[] { -40, -2.3, -0.1, 0, 0.7, 1.9, 5, 80 })
        {
            Close.To(StudentT.CDF(0, 1, freedom, t), NoncentralT.Below(t, freedom, 0), 1e-11, scale: 1);
        }
    }

    [Fact]
    public void At_zero_it_is_the_normal_tail()
    {
        foreach (double shift in new[] { -6.1, -0.3, 0.8, 4 }) Close.To(Normal.CDF(0, 1, -shift), NoncentralT.Below(0, 6, shift), 1e-13, scale: 1);
    }

    [Theory]
    [InlineData(1, 1.5, 30)]
    [InlineData(9, -2.5, 10)]
    [InlineData(400, 60, 600)]
    public void Both_orders_of_integration_meet_where_they_change(double freedom, double shift, double around)
    {
        _ = around;
        double change = Math.Sqrt(2 * freedom);
        Close.To(NoncentralT.Below(change * (1 - 1e-12), freedom, shift), NoncentralT.Below(change * (1 + 1e-12), freedom, shift), 1e-11, scale: 1);
    }

    [Fact]
    public void Many_degrees_of_freedom_come_down_to_the_normal()
    {
        // ν = 10⁵: mean t ≈ δ(1 + 3/4ν), deviation √(1 + δ²/2ν).
        double shift = 300, deviation = Math.Sqrt(1 + shift * shift / 2e5);
        foreach (double z in new[] { -2.0, 0, 1.5 })
        {
            Assert.Equal(Normal.CDF(0, 1, z), NoncentralT.Below(shift * (1 + 0.75e-5) + z * deviation, 1e5, shift), 2e-3);
        }
    }

    [Fact]
    public void Draws_fall_as_it_says()
    {
        const int Draws = 300_000;
        var random = new Random(8);
        double[] z = new double[Draws], chi = new double[Draws];
        Normal.Samples(random, z, 0, 1);
        ChiSquared.Samples(random, chi, 6);
        int below = Enumerable.Range(0, Draws).Count(i => (z[i] + 2.4) / Math.Sqrt(chi[i] / 6) <= 3.3);
        double expected = NoncentralT.Below(3.3, 6, 2.4);
        Assert.InRange((below - Draws * expected) / Math.Sqrt(Draws * expected * (1 - expected)), -4, 4);
    }

    [Fact]
    public void It_rises_with_t_and_falls_with_the_shift_between_nothing_and_all()
    {
        foreach (double freedom in new[] { 1, 2.5, 30, 1e4, 1e6 })
        {
            double before = 0;
            for (double t = -1e4; t <= 1e4; t += 313)
            {
                double now = NoncentralT.Below(t, freedom, 2);
                Assert.InRange(now, before - 1e-12, 1 + 1e-12);
                Assert.True(NoncentralT.Below(t, freedom, 2.5) <= now + 1e-12);
                before = now;
            }
        }
    }

    /// <summary>Lenth's series (AS 243): Poisson-weighted incomplete beta functions; for t ≥ 0.</summary>
    private static double Series(double t, double freedom, double shift)
    {
        double x = t * t / (t * t + freedom), half = shift * shift / 2, sum = 0;
        for (int j = 0; j < 2000; j++)
        {
            double p = Math.Exp(-half + (half == 0 ? 0 : j * Math.Log(half)) - SpecialFunctions.GammaLn(j + 1)) / 2;
            double q = shift / Math.Sqrt(2) * Math.Exp(-half + (half == 0 ? 0 : j * Math.Log(half)) - SpecialFunctions.GammaLn(j + 1.5)) / 2;
            sum += p * SpecialFunctions.BetaRegularized(j + 0.5, freedom / 2, x) + q * SpecialFunctions.BetaRegularized(j + 1, freedom / 2, x);
        }

        return Normal.CDF(0, 1, -shift) + sum;
    }
}
