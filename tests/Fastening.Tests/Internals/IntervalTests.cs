using Fastening.Internals;

namespace Fastening.Tests.Internals;

public class IntervalTests
{
    [Theory]
    [InlineData(0, 1)]
    [InlineData(-90, 90)]
    [InlineData(-5, -2)]
    [InlineData(3, 7)]
    public void An_open_end_is_outside_and_its_neighbour_inside(double low, double high)
    {
        var open = new Interval(low, high, lowOpen: true, highOpen: true);
        Assert.False(open.Contains(low));
        Assert.False(open.Contains(high));
        Assert.True(open.Contains(Math.BitIncrement(low)));
        Assert.True(open.Contains(Math.BitDecrement(high)));
        Assert.Equal(FormattableString.Invariant($"greater than {low} N and less than {high} N"), open.Describe(1, "N"));
    }

    [Fact]
    public void A_closed_end_is_inside_and_nothing_that_is_not_finite_ever_is()
    {
        var closed = new Interval(-1, 2);
        Assert.True(closed.Contains(-1) && closed.Contains(2));
        Assert.False(closed.Contains(Math.BitDecrement(-1.0)) || closed.Contains(Math.BitIncrement(2.0)));
        Assert.False(closed.Contains(double.NaN) || closed.Contains(double.PositiveInfinity) || closed.Contains(double.NegativeInfinity));
        Assert.Equal("at least -1000 mm and at most 2000 mm", closed.Describe(1e3, "mm"));
    }
}
