namespace Fastening.Tests;

/// <summary>Equality to rounding, relative to a stated size.</summary>
public static class Close
{
    public static void To(double expected, double actual, double relative = 1e-12, double? scale = null) =>
        Assert.True(
            Math.Abs(expected - actual) <= relative * (scale ?? Math.Max(Math.Abs(expected), Math.Abs(actual))),
            $"expected {expected:R}, was {actual:R}");
}
