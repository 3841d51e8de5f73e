using Fastening.Tests.Joints;
using UnitsNet;

namespace Fastening.Tests.Tolerances;

/// <summary>A range has a low and a high end, in whatever unit they were given.</summary>
public class RangeTests
{
    [Fact]
    public void A_range_is_stated_by_its_ends_in_any_unit()
    {
        var range = new Range<Force>(low: Force.FromNewtons(48_000), high: Force.FromKilonewtons(72));
        Assert.Equal(48, range.Low.Kilonewtons);
        Assert.Equal(72, range.High.Kilonewtons);
        Assert.Equal(1.5, range.HighOverLow);
        CommaCulture.Run(() => Assert.Equal("48 … 72 kN", range.ToString()));
    }

    [Fact]
    public void Numbers_have_ranges_too()
    {
        var range = new Range<double>(-1.25, 2.5);
        Assert.Null(range.HighOverLow);
        CommaCulture.Run(() => Assert.Equal("-1.25 … 2.5", range.ToString()));
        Assert.Equal(2, new Range<double>(1, 2).HighOverLow);
    }

    [Fact]
    public void A_range_from_nothing_has_no_ratio() => Assert.Null(new Range<Force>(Force.Zero, Force.FromKilonewtons(5)).HighOverLow);

    [Fact]
    public void Equal_ends_are_a_range() => Assert.Equal(1, new Range<Torque>(Torque.FromNewtonMeters(5), Torque.FromNewtonMeters(5)).HighOverLow);

    [Fact]
    public void Ends_the_wrong_way_round_and_no_numbers_are_refused()
    {
        Assert.StartsWith(
            "high is 48 kN; it must be at least low, 72 kN.",
            Assert.Throws<ArgumentOutOfRangeException>(() => new Range<Force>(Force.FromKilonewtons(72), Force.FromNewtons(48_000))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new Range<double>(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Range<double>(1, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Range<double>(1, double.PositiveInfinity));
    }

    [Fact]
    public void A_range_of_no_force_of_a_bolt_is_refused_where_it_is_used()
    {
        var pressed = new Range<Force>(Force.FromKilonewtons(-5), Force.FromKilonewtons(5));
        Assert.Throws<ArgumentOutOfRangeException>(() => AssessedJoint.Joint.Assess(AssessedJoint.Duty(0, 1, LoadIntroduction.Of(0.5)), pressed, AssessedJoint.Capacity));
    }
}
