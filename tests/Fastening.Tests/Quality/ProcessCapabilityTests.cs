using Fastening.Equations;
using Fastening.Quality;
using Fastening.Tests.Equations;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Fastening.Tests.Quality;

public class ProcessCapabilityTests
{
    private static readonly double[][] Audit = [[49.2, 50.3, 50.9], [49.7, 50.6, 51.4], [49.9, 50.2, 48.8], [51.0, 50.4, 50.7]];

    private static readonly ToleranceWindow<Torque> Window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(47), Torque.FromNewtonMeters(52));

    [Fact]
    public void Indices_by_hand()
    {
        // Means 50.1333, 50.5667, 49.6333, 50.7; ranges 1.7, 1.7, 1.4, 0.6; squared deviations 1.486667, 1.446667, 1.086667, 0.18.
        double mean = 603.1 / 12, pooled = Math.Sqrt((1.486666666666667 + 1.446666666666667 + 1.086666666666667 + 0.18) / 8), range = 5.4 / 4 / (3 / Math.Sqrt(Math.PI));
        ProcessCapability capability = ProcessCapability.Of(Window, Readings(Audit), WithinDeviation.Pooled);
        Close.To(5 / (6 * pooled), capability.Cp!.Value);
        Close.To((52 - mean) / (3 * pooled), capability.Cpk.Value);
        Close.To((mean - 47) / (3 * pooled), capability.Cpl!.Value);
        Close.To((52 - mean) / (3 * pooled), capability.Cpu!.Value);
        Assert.Equal(8, capability.Cpk.DegreesOfFreedom);
        Close.To(5 / (6 * range), ProcessCapability.Of(Window, Readings(Audit), WithinDeviation.MeanRange).Cp!.Value, 1e-11);

        (double exactMean, double overall) = ExactSample.Of([.. Audit.SelectMany(x => x)]);
        Close.To(mean, exactMean);
        Close.To(5 / (6 * overall), capability.Performance.Pp!.Value);
        Close.To((52 - mean) / (3 * overall), capability.Performance.Ppk.Value);
        Close.To((mean - 47) / (3 * overall), capability.Performance.Ppl!.Value);
        Close.To((52 - mean) / (3 * overall), capability.Performance.Ppu!.Value);
        Assert.Equal(11, capability.Performance.Ppk.DegreesOfFreedom);
        Close.To(Normal.CDF(mean, overall, 47) + 1 - Normal.CDF(mean, overall, 52), capability.Performance.ShareOutside.DecimalFractions, 1e-9);
    }

    [Fact]
    public void Estimators_of_the_scatter_within()
    {
        double[] deviations = [.. Audit.Select(group => ExactSample.Of(group).Deviation)];
        double c4 = Math.Sqrt(Math.PI) / 2;
        Close.To(deviations.Average() / c4, Readings(Audit).StandardDeviationWithin(WithinDeviation.MeanStandardDeviation).NewtonMeters, 1e-11);
        SubgroupedReadings<Torque> single = SubgroupedReadings.Individual<Torque>([.. Audit[0].Concat(Audit[1]).Select(x => Torque.FromNewtonMeters(x))]);
        Close.To((1.1 + 0.6 + 1.2 + 0.9 + 0.8) / 5 * Math.Sqrt(Math.PI) / 2, single.StandardDeviationWithin(WithinDeviation.MovingRange).NewtonMeters, 1e-11);
        Assert.Equal((6, 6, 1), (single.Count, single.SubgroupCount, single.SubgroupSize));
        Assert.Equal((12, 4, 3), (Readings(Audit).Count, Readings(Audit).SubgroupCount, Readings(Audit).SubgroupSize));
    }

    [Theory]
    [InlineData(2, 1.00)]
    [InlineData(3, 1.98)]
    [InlineData(4, 2.93)]
    [InlineData(5, 3.83)]
    [InlineData(6, 4.68)]
    [InlineData(8, 6.25)]
    [InlineData(10, 7.68)]
    public void Equivalent_degrees_of_freedom_of_one_range_are_those_of_the_table(int size, double tabulated)
    {
        // Patnaik 1950 / David 1951, as tabulated for the range of one sample; from memory.
        double[] group = [.. Enumerable.Range(0, size).Select(i => 49 + 0.31 * i)];
        Assert.Equal(tabulated, ProcessCapability.Of(Window, Readings([group]), WithinDeviation.MeanRange).Cpk.DegreesOfFreedom, 0.0051);
    }

    [Theory]
    [InlineData(WithinDeviation.MeanRange, 5)]
    [InlineData(WithinDeviation.MeanStandardDeviation, 5)]
    [InlineData(WithinDeviation.MovingRange, 0)]
    public void Equivalent_degrees_of_freedom_are_those_that_the_estimate_scatters_by(WithinDeviation method, int size)
    {
        const int Runs = 20_000, Count = 40;
        var random = new Random(5);
        double sum = 0, squares = 0, freedom = 0;
        double[] draw = new double[Count];
        for (int run = 0; run < Runs; run++)
        {
            Normal.Samples(random, draw, 50, 1);
            double[] column = draw;
            SubgroupedReadings<Torque> readings = size == 0
                ? SubgroupedReadings.Individual<Torque>([.. column.Select(x => Torque.FromNewtonMeters(x))])
                : SubgroupedReadings.Consecutive<Torque>(column, size);
            WithinScatter within = readings.Within(method);
            freedom = within.DegreesOfFreedom;
            sum += within.Deviation;
            squares += within.Deviation * within.Deviation;
        }

        double mean = sum / Runs, relative = squares / Runs / (mean * mean) - 1;
        Assert.Equal(1, mean, 4e-3);
        Assert.Equal(1, 2 * (freedom - 0.25) * relative, 0.05);
        if (method == WithinDeviation.MeanRange) Assert.Equal(0.9 * 8 * 4, freedom, 0.5);
    }

    [Theory]
    [InlineData(0.0, 0.970, 0.008)]
    [InlineData(0.8, 0.947, 0.006)]
    public void Bissells_bound_covers_what_is_said_of_it(double offCentre, double stated, double within)
    {
        // 25 normal readings, true C_pk 4/3: 97 % when centred, 94.7 % when one limit is active.
        double upper = 4 + offCentre, lower = -(offCentre > 0 ? 40 : 4);
        double truth = upper / 3;
        Assert.Equal(stated, Coverage(lower, upper, capability => capability.Ppk.LowerBound(0.95) <= truth, 11), within);
    }

    [Fact]
    public void Exact_bounds_cover_their_confidence()
    {
        // Three times the sampling error of so many runs.
        Assert.Equal(0.95, Coverage(-40, 3.4, capability => capability.Ppu!.LowerBound(0.95) <= 3.4 / 3, 12, 1500), 0.0169);
        Assert.Equal(0.90, Coverage(-40, 3.4, capability => capability.Ppu!.UpperBound(0.90) >= 3.4 / 3, 13, 1500), 0.0232);
        Assert.Equal(0.95, Coverage(-4, 5, capability => Holds(capability.Pp!.Interval(0.95), 9 / 6.0), 14), 0.0033);
    }

    [Fact]
    public void Bounds_of_an_index_against_one_limit_solve_their_own_equation()
    {
        ProcessPerformance performance = ProcessPerformance.Of(ToleranceWindow.AtLeast(Torque.FromNewtonMeters(47)), Sample(12, 50.3, 1.1));
        Assert.Null(performance.Pp);
        Assert.Null(performance.Ppu);
        Assert.Equal(CapabilityBound.NoncentralT, performance.Ppk.BoundMethod);
        Assert.Equal(performance.Ppl!.Value, performance.Ppk.Value);
        double scale = 3 * Math.Sqrt(12);
        Close.To(0.95, NoncentralT.Below(scale * performance.Ppk.Value, 11, scale * performance.Ppk.LowerBound(0.95)), 1e-11);
        Close.To(0.05, NoncentralT.Below(scale * performance.Ppk.Value, 11, scale * performance.Ppk.UpperBound(0.95)), 1e-10);
        Assert.Equal(0, performance.ShareAbove.DecimalFractions);
        ProcessPerformance mirrored = ProcessPerformance.Of(ToleranceWindow.AtMost(Torque.FromNewtonMeters(-47)), Sample(12, -50.3, 1.1));
        Close.To(performance.Ppk.LowerBound(0.9), mirrored.Ppk.LowerBound(0.9), 1e-10);
        Close.To(performance.ShareBelow.DecimalFractions, mirrored.ShareAbove.DecimalFractions);
    }

    [Fact]
    public void Capability_against_one_limit_is_that_of_its_side()
    {
        ProcessCapability both = ProcessCapability.Of(Window, Readings(Audit), WithinDeviation.Pooled);
        ProcessCapability least = ProcessCapability.Of(ToleranceWindow.AtLeast(Window.Lower!.Value), Readings(Audit), WithinDeviation.Pooled);
        ProcessCapability most = ProcessCapability.Of(ToleranceWindow.AtMost(Window.Upper!.Value), Readings(Audit), WithinDeviation.Pooled);
        Assert.Equal((both.Cpl!.Value, both.Cpu!.Value), (least.Cpk.Value, most.Cpk.Value));
        Assert.True(least.Cp is null && least.Cpu is null && most.Cp is null && most.Cpl is null);
        Assert.Equal(both.Cpl.LowerBound(0.9), least.Cpk.LowerBound(0.9));
    }

    [Fact]
    public void Bounds_are_ordered_and_close_in_with_confidence_and_readings()
    {
        ProcessPerformance few = ProcessPerformance.Of(Window, Sample(10, 50.3, 0.6)), many = ProcessPerformance.Of(Window, Sample(5000, 50.3, 0.6));
        foreach ((CapabilityIndex small, CapabilityIndex large) in new[] { (few.Pp!, many.Pp!), (few.Ppk, many.Ppk), (few.Ppl!, many.Ppl!) })
        {
            Assert.True(small.LowerBound(0.99) < small.LowerBound(0.9) && small.LowerBound(0.9) < small.Value);
            Assert.True(small.Value < small.UpperBound(0.9) && small.UpperBound(0.9) < small.UpperBound(0.99));
            Range<double> wide = small.Interval(0.9), narrow = large.Interval(0.9);
            Assert.Equal((small.LowerBound(0.95), small.UpperBound(0.95)), (wide.Low, wide.High), Nearly.Equal);
            Assert.True(narrow.High - narrow.Low < 0.1 * (wide.High - wide.Low) && narrow.Low < large.Value && large.Value < narrow.High);
        }
    }

    [Fact]
    public void Capability_does_not_depend_on_the_unit_or_on_where_zero_is()
    {
        ProcessCapability here = ProcessCapability.Of(Window, Readings(Audit), WithinDeviation.MeanRange);
        SubgroupedReadings<Angle> angles = SubgroupedReadings.Of<Angle>([.. Audit.Select(g => (IReadOnlyList<Angle>)[.. g.Select(x => Angle.FromDegrees(1e6 + 3 * x))])]);
        ToleranceWindow<Angle> window = ToleranceWindow.FromLimits(Angle.FromDegrees(1e6 + 141), Angle.FromDegrees(1e6 + 156));
        ProcessCapability there = ProcessCapability.Of(window, angles, WithinDeviation.MeanRange);
        Close.To(here.Cpk.Value, there.Cpk.Value, 1e-9);
        Close.To(here.Performance.Ppk.LowerBound(0.95), there.Performance.Ppk.LowerBound(0.95), 1e-9);
    }

    [Fact]
    public void Work_ends_on_the_index()
    {
        ProcessCapability capability = ProcessCapability.Of(Window, Readings(Audit), WithinDeviation.Pooled);
        DerivationCheck.EndsOn(capability.Cpk.Value, Derivation.Of(() => capability.Cpk.Value));
        DerivationCheck.EndsOn(capability.Performance.Ppk.Value, Derivation.Of(() => capability.Performance.Ppk.Value));
        ProcessCapability least = ProcessCapability.Of(ToleranceWindow.AtLeast(Window.Lower!.Value), Readings(Audit), WithinDeviation.Pooled);
        DerivationCheck.EndsOn(least.Cpk.Value, Derivation.Of(() => least.Cpk.Value));
    }

    [Fact]
    public void What_does_not_scatter_is_undefined_and_refused()
    {
        SubgroupedReadings<Torque> equal = Readings([[50, 50, 50], [51, 51, 51]]);
        foreach (WithinDeviation method in new[] { WithinDeviation.Pooled, WithinDeviation.MeanRange, WithinDeviation.MeanStandardDeviation })
        {
            ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => ProcessCapability.Of(Window, equal, method));
            Assert.Equal("readings", refusal.ParamName);
            Assert.StartsWith("readings is a sample with a standard deviation of 0 N·m; it must be at least", refusal.Message, StringComparison.Ordinal);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => ProcessPerformance.Of(Window, Sample(9, 50, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ProcessPerformance.Of(ToleranceWindow.AtLeast(Window.Lower!.Value), Sample(9, 50, 0)));
    }

    [Fact]
    public void A_method_that_does_not_fit_the_subgroups_is_refused()
    {
        SubgroupedReadings<Torque> uneven = Readings([[50, 50.5, 50.2], [51, 51.4]]);
        Assert.Null(uneven.SubgroupSize);
        Close.To(ExactPooled([50, 50.5, 50.2], [51, 51.4]), uneven.StandardDeviationWithin(WithinDeviation.Pooled).NewtonMeters);
        foreach (WithinDeviation method in new[] { WithinDeviation.MeanRange, WithinDeviation.MeanStandardDeviation, WithinDeviation.MovingRange })
        {
            Assert.Equal("method", Assert.Throws<ArgumentOutOfRangeException>(() => uneven.StandardDeviationWithin(method)).ParamName);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => Readings(Audit).StandardDeviationWithin(WithinDeviation.MovingRange));
        SubgroupedReadings<Torque> single = SubgroupedReadings.Individual<Torque>([Torque.FromNewtonMeters(50), Torque.FromNewtonMeters(51)]);
        Assert.Throws<ArgumentOutOfRangeException>(() => single.StandardDeviationWithin(WithinDeviation.Pooled));
    }

    [Fact]
    public void Subgroups_that_are_none_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Readings([]));
        Assert.Throws<ArgumentException>(() => Readings([[50, 51], [50]]));
        Assert.Throws<ArgumentNullException>(() => SubgroupedReadings.Of<Torque>([null!]));
        Assert.Throws<ArgumentException>(() => SubgroupedReadings.Consecutive<Torque>([1.0, 2, 3], 2));
        Assert.Throws<ArgumentException>(() => SubgroupedReadings.Consecutive<Torque>(ReadOnlySpan<double>.Empty, 2));
        Assert.Throws<ArgumentException>(() => SubgroupedReadings.Individual<Torque>([Torque.Zero]));
        Assert.Equal(
            "readingsInSiOrDegrees[1]",
            Assert.Throws<ArgumentOutOfRangeException>(() => SubgroupedReadings.Consecutive<Torque>([1.0, double.NaN], 2)).ParamName);
        Assert.Equal("subgroups[1][0]", Assert.Throws<ArgumentOutOfRangeException>(() => Readings([[50, 51], [1e12, 50]])).ParamName);
    }

    [Fact]
    public void Far_out_indices_keep_finite_bounds()
    {
        ToleranceWindow<Torque> far = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(-1e16), Torque.FromNewtonMeters(1e16));
        foreach (ToleranceWindow<Torque> window in new[] { far, ToleranceWindow.FromLimits(Torque.FromNewtonMeters(1e15), Torque.FromNewtonMeters(1e16)), Window })
        {
            foreach (double deviation in new[] { 1e-12, 1, 1e11 })
            {
                ProcessPerformance performance = ProcessPerformance.Of(window, Sample(7, 50, deviation));
                foreach (CapabilityIndex index in new[] { performance.Pp!, performance.Ppk, performance.Ppl!, performance.Ppu! })
                {
                    Assert.All(new[] { index.LowerBound(0.9999), index.UpperBound(0.9999), index.LowerBound(0.5) }, x => Assert.True(double.IsFinite(x)));
                    Assert.True(index.LowerBound(0.9) <= index.UpperBound(0.9));
                }

                Assert.InRange(performance.ShareOutside.DecimalFractions, 0, 1);
            }
        }
    }

    [Fact]
    public void Text_is_invariant() => CommaCulture.Run(() =>
    {
        ProcessPerformance performance = ProcessPerformance.Of(Window, Sample(10, 50.3, 0.5));
        Assert.Equal("Pp 1.667, Ppk 1.133", performance.ToString());
        Assert.Matches(@"^0\.\d+ … 1\.\d+$", performance.Ppk.Interval(0.95).ToString());
    });

    private static bool Holds(Range<double> interval, double truth) => interval.Low <= truth && truth <= interval.High;

    private static double ExactPooled(double[] first, double[] second)
    {
        double a = ExactSample.Of(first).Deviation, b = ExactSample.Of(second).Deviation;
        return Math.Sqrt(((first.Length - 1) * a * a + (second.Length - 1) * b * b) / (first.Length + second.Length - 2));
    }

    private static double Coverage(double lower, double upper, Func<ProcessPerformance, bool> covers, int seed, int runs = 40_000)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(lower), Torque.FromNewtonMeters(upper));
        var random = new Random(seed);
        double[] draw = new double[25];
        int covered = 0;
        for (int run = 0; run < runs; run++)
        {
            Normal.Samples(random, draw, 0, 1);
            if (covers(ProcessPerformance.Of(window, SampleStatistics.Of<Torque>(draw.AsSpan())))) covered++;
        }

        return covered / (double)runs;
    }

    private static SampleStatistics<Torque> Sample(int count, double mean, double deviation) =>
        SampleStatistics.FromSummary(count, Torque.FromNewtonMeters(mean), Torque.FromNewtonMeters(deviation));

    private static SubgroupedReadings<Torque> Readings(double[][] groups) =>
        SubgroupedReadings.Of<Torque>([.. groups.Select(group => (IReadOnlyList<Torque>)[.. group.Select(x => Torque.FromNewtonMeters(x))])]);

    /// <summary>Pairs that agree to rounding: a share of a confidence is not always the same double.</summary>
    private sealed class Nearly : IEqualityComparer<(double A, double B)>
    {
        public static readonly Nearly Equal = new();

        public bool Equals((double A, double B) x, (double A, double B) y) => Math.Abs(x.A - y.A) < 1e-9 && Math.Abs(x.B - y.B) < 1e-9;

        public int GetHashCode((double A, double B) pair) => 0;
    }
}
