using System.Globalization;
using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.Quality;

public class SampleStatisticsTests
{
    public static TheoryData<string> Sets => [.. StrdUnivariate.All.Select(set => set.Name)];

    [Theory]
    [MemberData(nameof(Sets))]
    public void Certified_digits_of_the_reference_datasets(string name)
    {
        (_, string[] printed, string mean, string deviation) = StrdUnivariate.All.Single(set => set.Name == name);
        SampleStatistics<Torque> sample = Of(StrdUnivariate.Numbers(printed));
        Close.To(double.Parse(mean, CultureInfo.InvariantCulture), sample.Mean.NewtonMeters, 1e-15);

        // A decimal is not a double: 1e7 + 0.1 is off by up to 9e-10, 9e-9 of the deviation; the certified value is for the decimals.
        double representable = name switch { "NumAcc2" => 1e-14, "NumAcc3" => 1e-9, "NumAcc4" => 1e-8, "Mavro" or "Michelso" => 1e-12, _ => 1e-14 };
        Close.To(double.Parse(deviation, CultureInfo.InvariantCulture), sample.StandardDeviation.NewtonMeters, representable);
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void Last_digits_by_whole_number_arithmetic(string name)
    {
        double[] readings = StrdUnivariate.Numbers(StrdUnivariate.All.Single(set => set.Name == name).Readings);
        AssertExact(readings);
        AssertExact([.. readings.Reverse()]);
    }

    [Theory]
    [InlineData(1e9, 1e-3)]
    [InlineData(-1e9, 1e-6)]
    [InlineData(3e-5, 2e4)]
    [InlineData(1e10 - 1, 0.5)]
    public void Last_digits_far_from_zero(double centre, double scatter)
    {
        var random = new Random(17);
        AssertExact([.. Enumerable.Range(0, 5000).Select(_ => centre + scatter * (random.NextDouble() - 0.3))]);
    }

    [Fact]
    public void Column_list_and_units_agree()
    {
        double[] poundFeet = [85.2, 84.1, 86.9, 85.0];
        SampleStatistics<Torque> list = SampleStatistics.Of<Torque>([.. poundFeet.Select(x => Torque.FromPoundForceFeet(x))]);
        SampleStatistics<Torque> column = SampleStatistics.Of<Torque>([.. poundFeet.Select(x => Torque.FromPoundForceFeet(x).NewtonMeters)]);
        Assert.Equal(column.Mean, list.Mean);
        Assert.Equal(column.StandardDeviation, list.StandardDeviation);
        Close.To(85.3, list.Mean.PoundForceFeet);
        Close.To(Math.Sqrt((0.1 * 0.1 + 1.2 * 1.2 + 1.6 * 1.6 + 0.3 * 0.3) / 3), list.StandardDeviation.PoundForceFeet);
        Assert.Equal(4, list.Count);
    }

    [Fact]
    public void Equal_readings_scatter_by_exactly_nothing()
    {
        double[] readings = [.. Enumerable.Repeat(Torque.FromPoundForceFeet(36.7).NewtonMeters, 1001)];
        Assert.Equal(0, Of(readings).StandardDeviation.NewtonMeters);
        Assert.Equal(readings[0], Of(readings).Mean.NewtonMeters);
    }

    [Fact]
    public void Hostile_columns_are_refused_by_index()
    {
        foreach (double hostile in new[] { double.NaN, double.PositiveInfinity, double.NegativeInfinity, 1e11, -1e11 })
        {
            ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => Of([1, 2, hostile]));
            Assert.Equal("readingsInSiOrDegrees[2]", refusal.ParamName);
        }

        Assert.Throws<ArgumentException>(() => Of([1]));
        Assert.Throws<ArgumentException>(() => Of([]));
        Assert.Throws<ArgumentException>(() => SampleStatistics.Of<Torque>([Torque.FromNewtonMeters(1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => SampleStatistics.Of<Torque>([Torque.Zero, Torque.FromNewtonMeters(1e12)]));
        Assert.Throws<NotSupportedException>(() => SampleStatistics.Of<Mass>([Mass.Zero, Mass.Zero]));
    }

    [Fact]
    public void Text_is_invariant() => CommaCulture.Run(() =>
        Assert.Equal("50.5 N·m, standard deviation 1.29099 N·m, 4 readings", Of([49, 50, 51, 52]).ToString()));

    private static SampleStatistics<Torque> Of(double[] readings) => SampleStatistics.Of<Torque>(readings.AsSpan());

    private static void AssertExact(double[] readings)
    {
        (double mean, double deviation) = ExactSample.Of(readings);
        SampleStatistics<Torque> sample = Of(readings);
        Close.To(mean, sample.Mean.NewtonMeters, 3e-16);
        Close.To(deviation, sample.StandardDeviation.NewtonMeters, 1e-15);
    }
}
