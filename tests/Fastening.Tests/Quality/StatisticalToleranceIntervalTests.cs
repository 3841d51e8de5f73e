using Fastening.Quality;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Fastening.Tests.Quality;

public class StatisticalToleranceIntervalTests
{
    [Theory]
    [InlineData(3, 0.9, 0.95)]
    [InlineData(12, 0.95, 0.9)]
    [InlineData(40, 0.8, 0.6)]
    public void Two_sided_factor_by_quadrature_over_the_deviation(int count, double share, double confidence)
    {
        // The other order: for each standard deviation, the means whose interval k s still holds the share; midpoints instead of Gauss.
        double k = StatisticalToleranceInterval.TwoSidedFactor(count, Ratio.FromDecimalFractions(share), confidence);
        const int Steps = 40_000;
        double probability = 0, top = 1 + 9 / Math.Sqrt(2.0 * (count - 1));
        for (int i = 0; i < Steps; i++)
        {
            double s = (i + 0.5) * top / Steps;
            double density = 2 * s * (count - 1) * ChiSquared.PDF(count - 1, s * s * (count - 1));
            probability += density * top / Steps * (2 * Normal.CDF(0, 1, FurthestMean(k * s, share) * Math.Sqrt(count)) - 1);
        }

        Assert.Equal(confidence, probability, 2e-6);
    }

    [Theory]
    [InlineData(6, 0.9, 0.95, 1)]
    [InlineData(15, 0.99, 0.9, 2)]
    public void Both_factors_hold_what_they_promise_in_a_simulation(int count, double share, double confidence, int seed)
    {
        const int Draws = 100_000;
        double one = StatisticalToleranceInterval.OneSidedFactor(count, Ratio.FromDecimalFractions(share), confidence);
        double two = StatisticalToleranceInterval.TwoSidedFactor(count, Ratio.FromDecimalFractions(share), confidence);
        var random = new Random(seed);
        double[] mean = new double[Draws], chi = new double[Draws];
        Normal.Samples(random, mean, 0, 1 / Math.Sqrt(count));
        ChiSquared.Samples(random, chi, count - 1);
        int heldByOne = 0, heldByTwo = 0;
        for (int i = 0; i < Draws; i++)
        {
            double s = Math.Sqrt(chi[i] / (count - 1));
            if (Normal.CDF(0, 1, mean[i] + one * s) >= share) heldByOne++;
            if (Normal.CDF(0, 1, mean[i] + two * s) - Normal.CDF(0, 1, mean[i] - two * s) >= share) heldByTwo++;
        }

        double sampling = Math.Sqrt(confidence * (1 - confidence) / Draws);
        Assert.InRange((heldByOne / (double)Draws - confidence) / sampling, -4, 4);
        Assert.InRange((heldByTwo / (double)Draws - confidence) / sampling, -4, 4);
    }

    [Fact]
    public void One_sided_factor_of_two_readings_has_a_closed_form_at_the_median()
    {
        // p = 0.5: the factor is that of a confidence limit of the mean, Student's t over √n; for n = 2, tan(π(γ − ½))/√2.
        Close.To(Math.Tan(Math.PI * 0.45) / Math.Sqrt(2), StatisticalToleranceInterval.OneSidedFactor(2, Ratio.FromPercent(50), 0.95), 1e-11);
        Close.To(StudentT.InvCDF(0, 1, 11, 0.9) / Math.Sqrt(12), StatisticalToleranceInterval.OneSidedFactor(12, Ratio.FromPercent(50), 0.9), 1e-10);
    }

    [Theory]
    [InlineData(5, 0.95, 0.90)]
    [InlineData(12, 0.90, 0.95)]
    [InlineData(100, 0.99, 0.99)]
    public void Howe_stays_within_a_percent(int count, double share, double confidence)
    {
        double exact = StatisticalToleranceInterval.TwoSidedFactor(count, Ratio.FromDecimalFractions(share), confidence);
        double howe = StatisticalToleranceInterval.HoweFactor(count, Ratio.FromDecimalFractions(share), confidence);
        Assert.NotEqual(exact, howe);
        Assert.InRange(howe / exact, 0.99, 1.01);
    }

    [Fact]
    public void Factors_grow_with_share_and_confidence_and_shrink_with_readings_to_the_normal_quantile()
    {
        foreach (Func<int, Ratio, double, double> factorOf in new Func<int, Ratio, double, double>[]
            { StatisticalToleranceInterval.OneSidedFactor, StatisticalToleranceInterval.TwoSidedFactor, StatisticalToleranceInterval.HoweFactor })
        {
            double factor(int count, double share, double confidence) => factorOf(count, Ratio.FromDecimalFractions(share), confidence);
            Assert.True(factor(8, 0.9, 0.95) < factor(8, 0.95, 0.95) && factor(8, 0.9, 0.95) < factor(8, 0.9, 0.99));
            Assert.True(factor(8, 0.9, 0.95) > factor(9, 0.9, 0.95) && factor(9, 0.9, 0.95) > factor(2000, 0.9, 0.95));
        }

        Close.To(Normal.InvCDF(0, 1, 0.9), StatisticalToleranceInterval.OneSidedFactor(100_000, Ratio.FromPercent(90), 0.5), 1e-5);
        Close.To(Normal.InvCDF(0, 1, 0.95), StatisticalToleranceInterval.TwoSidedFactor(100_000, Ratio.FromPercent(90), 0.5), 1e-5);
    }

    [Fact]
    public void Every_corner_of_the_domain_has_a_finite_factor()
    {
        foreach (int count in new[] { 2, 3, 100_000 })
        {
            foreach (double share in new[] { 0.5, 0.9999 })
            {
                foreach (double confidence in new[] { 0.5, 0.9999 })
                {
                    double one = StatisticalToleranceInterval.OneSidedFactor(count, Ratio.FromDecimalFractions(share), confidence);
                    double two = StatisticalToleranceInterval.TwoSidedFactor(count, Ratio.FromDecimalFractions(share), confidence);
                    double howe = StatisticalToleranceInterval.HoweFactor(count, Ratio.FromDecimalFractions(share), confidence);
                    Assert.True(one is >= -1e-9 and < 1e9 && two is > 0 and < 1e9 && howe is > 0 and < 1e9, $"{count}, {share}, {confidence}: {one}, {two}, {howe}");
                    Assert.True(two > one);
                    Assert.Equal(confidence, NoncentralT.Below(one * Math.Sqrt(count), count - 1, Normal.InvCDF(0, 1, share) * Math.Sqrt(count)), 1e-9);
                }
            }
        }
    }

    [Fact]
    public void Intervals_stand_around_the_mean()
    {
        SampleStatistics<Force> sample = SampleStatistics.FromSummary(10, Force.FromKilonewtons(34.18), Force.FromKilonewtons(2.88));
        StatisticalToleranceInterval<Force> both = StatisticalToleranceInterval.TwoSided(sample, Ratio.FromPercent(90), 0.95);
        double k = StatisticalToleranceInterval.TwoSidedFactor(10, Ratio.FromPercent(90), 0.95);
        Close.To(34.18 - k * 2.88, both.Low!.Value.Kilonewtons);
        Close.To(34.18 + k * 2.88, both.High!.Value.Kilonewtons);
        StatisticalToleranceInterval<Force> above = StatisticalToleranceInterval.Above(sample, Ratio.FromPercent(99), 0.9);
        StatisticalToleranceInterval<Force> below = StatisticalToleranceInterval.Below(sample, Ratio.FromPercent(99), 0.9);
        Assert.Null(above.High);
        Assert.Null(below.Low);
        Close.To(34.18 * 2, above.Low!.Value.Kilonewtons + below.High!.Value.Kilonewtons);
        Close.To(StatisticalToleranceInterval.OneSidedFactor(10, Ratio.FromPercent(99), 0.9), (34.18 - above.Low!.Value.Kilonewtons) / 2.88);
        Close.To(StatisticalToleranceInterval.HoweFactor(10, Ratio.FromPercent(90), 0.95), StatisticalToleranceInterval.TwoSidedByHowe(sample, Ratio.FromPercent(90), 0.95).Factor);
        CommaCulture.Run(() => Assert.Matches(@"^25\.95\d\d … 42\.40\d\d kN holds 90 % with 95 % confidence$", both.ToString()));
        CommaCulture.Run(() => Assert.Matches(@"^above \d+\.\d{3,5} kN holds 99 % with 90 % confidence$", above.ToString()));
        CommaCulture.Run(() => Assert.Matches(@"^below \d+\.\d{3,5} kN holds 99 % with 90 % confidence$", below.ToString()));
    }

    /// <summary>What the remarks of the approximation say, held against the exact factor over the grid they speak of.</summary>
    [Fact]
    public void Natrellas_factor_is_off_by_as_much_as_is_said()
    {
        double[] shares = [0.5, 0.9, 0.99, 0.9999];
        double Off(int count, double share, double confidence) =>
            StatisticalToleranceInterval.NatrellaFactor(count, Ratio.FromDecimalFractions(share), confidence)
                / StatisticalToleranceInterval.OneSidedFactor(count, Ratio.FromDecimalFractions(share), confidence) - 1;
        foreach ((int count, double small) in new[] { (2, 0.385), (3, 0.187), (4, 0.12) })
        {
            Assert.InRange(shares.Min(share => Off(count, share, 0.75)), -small, -small + 0.01);
        }

        Assert.InRange(shares.Max(share => Off(3, share, 0.95)), 0.26, 0.275);
        Assert.All(from share in shares from count in new[] { 20, 50, 1000 } from confidence in new[] { 0.75, 0.9, 0.95 } select Off(count, share, confidence), off => Assert.InRange(Math.Abs(off), 0, 0.02));
    }

    /// <summary>1 + z²/2 is 3 at z = 2: with 3 readings the approximation stands at its pole, and a hair before it would give thousands of standard deviations.</summary>
    [Fact]
    public void Near_its_pole_the_approximation_is_refused()
    {
        double z = 2 * Math.Sqrt(1 - 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => StatisticalToleranceInterval.NatrellaFactor(3, Ratio.FromPercent(90), Fastening.Internals.NormalCurve.Below(z)));
        Assert.Throws<ArgumentOutOfRangeException>(() => StatisticalToleranceInterval.NatrellaFactor(3, Ratio.FromPercent(90), Fastening.Internals.NormalCurve.Below(1.91)));
        Assert.InRange(StatisticalToleranceInterval.NatrellaFactor(3, Ratio.FromPercent(90), Fastening.Internals.NormalCurve.Below(1.89)), 5, 30);
    }

    [Fact]
    public void The_median_lies_in_the_middle_and_not_below_nothing()
    {
        double factor = StatisticalToleranceInterval.OneSidedFactor(2, Ratio.FromPercent(50), 0.5);
        Assert.Equal(0, factor);
        Assert.False(double.IsNegative(factor));
    }

    [Fact]
    public void Readings_without_scatter_are_refused()
    {
        SampleStatistics<Torque> sample = SampleStatistics.FromSummary(10, Torque.FromNewtonMeters(50), Torque.Zero);
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => StatisticalToleranceInterval.TwoSided(sample, Ratio.FromPercent(90), 0.95));
        Assert.Equal("sample", refusal.ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => StatisticalToleranceInterval.Above(sample, Ratio.FromPercent(90), 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => StatisticalToleranceInterval.NatrellaFactor(3, Ratio.FromPercent(90), 0.999));
    }

    /// <summary>How far off the mean may be for mean ± half to hold the share; 0 when it never does. By bisection.</summary>
    private static double FurthestMean(double half, double share)
    {
        double low = 0, high = 12;
        if (2 * Normal.CDF(0, 1, half) - 1 < share) return 0;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (0.5 * (SpecialFunctions.Erf((middle + half) / Math.Sqrt(2)) - SpecialFunctions.Erf((middle - half) / Math.Sqrt(2))) >= share) low = middle;
            else high = middle;
        }

        return low;
    }
}
