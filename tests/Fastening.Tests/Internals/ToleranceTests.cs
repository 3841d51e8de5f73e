using Fastening.Internals;

namespace Fastening.Tests.Internals;

/// <summary>A value equal to a limit conforms, whatever unit both came from; the widening is 1e-12 of the size of the limit, outwards for either sign.</summary>
public class ToleranceTests
{
    // Decimal values of both sides of the widened limit, by hand: 1e-12 of 100 is 1e-10.
    [Theory]
    [InlineData(100, 100, true, true)]
    [InlineData(100.00000000009, 100, true, true)]
    [InlineData(100.00000000011, 100, false, true)]
    [InlineData(99.99999999991, 100, true, true)]
    [InlineData(99.99999999989, 100, true, false)]
    [InlineData(-100, -100, true, true)]
    [InlineData(-99.99999999991, -100, true, true)]
    [InlineData(-99.99999999989, -100, false, true)]
    [InlineData(-100.00000000009, -100, true, true)]
    [InlineData(-100.00000000011, -100, true, false)]
    [InlineData(0, 0, true, true)]
    [InlineData(1e-300, 0, false, true)]
    [InlineData(-1e-300, 0, true, false)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity, true, true)]
    [InlineData(double.NegativeInfinity, double.NegativeInfinity, true, true)]
    [InlineData(1, double.PositiveInfinity, true, false)]
    [InlineData(1, double.NegativeInfinity, false, true)]
    public void A_value_against_a_limit(double value, double limit, bool atMost, bool atLeast)
    {
        Assert.Equal(atMost, Tolerance.IsAtMost(value, limit));
        Assert.Equal(atLeast, Tolerance.IsAtLeast(value, limit));
        Assert.Equal(!atMost, Tolerance.Exceeds(value, limit));
        Assert.Equal(!atLeast, Tolerance.FallsShort(value, limit));
    }

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(1, double.NaN)]
    [InlineData(double.NaN, double.NaN)]
    public void Nothing_is_said_of_a_missing_value(double value, double limit)
    {
        Assert.False(Tolerance.IsAtMost(value, limit));
        Assert.False(Tolerance.IsAtLeast(value, limit));
        Assert.False(Tolerance.Exceeds(value, limit));
        Assert.False(Tolerance.FallsShort(value, limit));
    }
}
