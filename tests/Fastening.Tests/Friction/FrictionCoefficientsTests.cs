namespace Fastening.Tests.Friction;

public class FrictionCoefficientsTests
{
    [Fact]
    public void Thread_and_bearing_are_kept_apart()
    {
        var friction = new FrictionCoefficients(thread: 0.12, bearing: 0.1);

        Assert.Equal(0.12, friction.Thread);
        Assert.Equal(0.1, friction.Bearing);
        CommaCulture.Run(() => Assert.Equal("µ_th 0.12, µ_b 0.1", friction.ToString()));
    }

    [Theory]
    [InlineData(-0.01, 0.1, "thread")]
    [InlineData(2.01, 0.1, "thread")]
    [InlineData(double.NaN, 0.1, "thread")]
    [InlineData(0.1, -0.01, "bearing")]
    [InlineData(0.1, double.PositiveInfinity, "bearing")]
    public void Coefficients_out_of_their_domain_are_refused(double thread, double bearing, string parameter) => Assert.Equal(
        parameter, Assert.Throws<ArgumentOutOfRangeException>(() => new FrictionCoefficients(thread, bearing)).ParamName);

    [Fact]
    public void A_uniform_coefficient_is_both()
    {
        Assert.Equal(0.14, FrictionCoefficients.Uniform(0.14).Thread);
        Assert.Equal(0.14, FrictionCoefficients.Uniform(0.14).Bearing);
        Assert.Equal("friction", Assert.Throws<ArgumentOutOfRangeException>(() => FrictionCoefficients.Uniform(-1)).ParamName);
    }

    [Theory]
    [InlineData(0.09, 0.14, "thread friction, 0.1")]
    [InlineData(0.16, 0.08, "bearing friction, 0.09")]
    public void A_range_upside_down_is_refused(double highThread, double highBearing, string part)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => new FrictionRange(new FrictionCoefficients(0.1, 0.09), new FrictionCoefficients(highThread, highBearing)));
        Assert.Equal("high", refusal.ParamName);
        Assert.Contains(part, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_range_keeps_its_ends_and_needs_both()
    {
        FrictionCoefficients low = new(0.1, 0.09), high = new(0.16, 0.14);
        var range = new FrictionRange(low, high);

        Assert.Same(low, range.Low);
        Assert.Same(high, range.High);
        Assert.Equal("low", Assert.Throws<ArgumentNullException>(() => new FrictionRange(null!, high)).ParamName);
        Assert.Equal("high", Assert.Throws<ArgumentNullException>(() => new FrictionRange(low, null!)).ParamName);
    }
}
