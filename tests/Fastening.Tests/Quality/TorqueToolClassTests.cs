using UnitsNet;

namespace Fastening.Tests.Quality;

public class TorqueToolClassTests
{
    /// <summary>ISO 6789-1:2017 permitted deviations in percent, all from memory, above and up to 10 N·m.</summary>
    [Theory]
    [InlineData("I A", 6, 6)]
    [InlineData("I B", 4, 6)]
    [InlineData("I C", 4, 6)]
    [InlineData("I D", 6, 6)]
    [InlineData("I E", 4, 6)]
    [InlineData("II A", 4, 6)]
    [InlineData("II B", 4, 6)]
    [InlineData("II C", 4, 6)]
    [InlineData("II D", 6, 6)]
    [InlineData("II E", 6, 6)]
    [InlineData("II F", 6, 6)]
    [InlineData("II G", 6, 6)]
    public void Permitted_deviations(string designation, double large, double small)
    {
        TorqueToolClass toolClass = TorqueToolClass.Parse(designation);

        Close.To(large, toolClass.PermittedDeviationFor(Torque.FromNewtonMeters(10.01)).Percent);
        Close.To(small, toolClass.PermittedDeviationFor(Torque.FromNewtonMeters(10)).Percent);
        Assert.Equal(designation is "II C" or "II F" ? 10 : 5, toolClass.ReadingsPerPoint);
        Assert.Equal(designation is "II B" or "II C" or "II E" or "II F", toolClass.IsSetToOneValue);
        Assert.Equal(!toolClass.IsSetToOneValue, toolClass.HasScale);
        Assert.Equal("from memory", toolClass.Confidence);
    }

    [Fact]
    public void Designations_are_read_with_and_without_a_space()
    {
        Assert.Equal(12, TorqueToolClass.All.Count);
        Assert.Same(TorqueToolClass.Parse("II A"), TorqueToolClass.Parse("iia"));
        Assert.False(TorqueToolClass.TryParse("III A", out _));
        Assert.False(TorqueToolClass.TryParse(null, out _));
        FormatException refused = Assert.Throws<FormatException>(() => TorqueToolClass.Parse("II H"));
        Assert.Contains("'II H' is not a class of ISO 6789-1: I A, I B", refused.Message, StringComparison.Ordinal);
    }
}
