using UnitsNet;

namespace Fastening.Tests.Quality;

public class TorqueToolClassTests
{
    private static readonly Ratio[] Fifths = [Ratio.FromPercent(20), Ratio.FromPercent(60), Ratio.FromPercent(100)];

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
        Assert.Equal("from memory", toolClass.Provenance.Confidence);
        double[] points = toolClass.IsSetToOneValue ? [] : [0, 60, 100];
        Assert.Equal(points, toolClass.Points.Select(point => point.Percent));
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

    [Fact]
    public void A_stated_class_is_what_was_stated_for_small_and_large_tools_alike()
    {
        TorqueToolClass stated = TorqueToolClass.Stated("HY", "hydraulic wrench, data sheet of its maker", Ratio.FromPercent(3), 7, hasScale: false, Fifths);

        Close.To(3, stated.PermittedDeviationFor(Torque.FromNewtonMeters(5)).Percent);
        Close.To(3, stated.PermittedDeviationFor(Torque.FromNewtonMeters(5000)).Percent);
        Assert.Equal((7, false, false), (stated.ReadingsPerPoint, stated.HasScale, stated.IsSetToOneValue));
        Assert.Equal([20.0, 60, 100], stated.Points.Select(point => Math.Round(point.Percent, 9)));
        Assert.Equal("HY, hydraulic wrench, data sheet of its maker", stated.ToString());
        Assert.Equal("stated", stated.Provenance.Source);
        Assert.True(TorqueToolClass.Stated("HY", "nutrunner", Ratio.FromPercent(3), 25, hasScale: true, []) is { HasScale: true, IsSetToOneValue: true });
        Assert.False(TorqueToolClass.TryParse("HY", out _));
        Assert.Equal(12, TorqueToolClass.All.Count);
    }

    [Fact]
    public void A_stated_class_keeps_its_own_copy_of_the_points()
    {
        Ratio[] points = [.. Fifths];
        TorqueToolClass stated = TorqueToolClass.Stated("HY", "hydraulic wrench", Ratio.FromPercent(3), 3, hasScale: false, points);
        points[0] = Ratio.FromPercent(99);

        Close.To(20, stated.Points[0].Percent);
    }

    [Theory]
    [InlineData(0.01, 2)]
    [InlineData(50, 1000)]
    public void The_widest_statements_are_accepted(double percent, int readings) =>
        Close.To(percent, TorqueToolClass.Stated("X", "x", Ratio.FromPercent(percent), readings, hasScale: true, Fifths).PermittedDeviationFor(Torque.FromNewtonMeters(1)).Percent);

    [Theory]
    [InlineData(0, 5, "permittedDeviation")]
    [InlineData(-4, 5, "permittedDeviation")]
    [InlineData(50.1, 5, "permittedDeviation")]
    [InlineData(4, 1, "readingsPerPoint")]
    [InlineData(4, 1001, "readingsPerPoint")]
    public void Numbers_that_no_class_has_are_refused(double percent, int readings, string parameter) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(
            () => TorqueToolClass.Stated("HY", "hydraulic wrench", Ratio.FromPercent(percent), readings, hasScale: false, Fifths)).ParamName);

    [Theory]
    [InlineData("", "hydraulic wrench", "designation is empty")]
    [InlineData("HY", " \t", "description is empty")]
    [InlineData("iiA", "hydraulic wrench", "designation is 'iiA', a class of ISO 6789-1; a stated class has a name of its own")]
    public void Names_that_say_nothing_or_something_else_are_refused(string designation, string description, string refusal) =>
        Assert.Contains(refusal, Assert.Throws<ArgumentException>(
            () => TorqueToolClass.Stated(designation, description, Ratio.FromPercent(4), 5, hasScale: false, Fifths)).Message, StringComparison.Ordinal);

    [Fact]
    public void Points_that_no_tool_can_be_measured_at_are_refused()
    {
        static void State(params double[] percent) => TorqueToolClass.Stated("HY", "hydraulic wrench", Ratio.FromPercent(4), 5, hasScale: false, [.. percent.Select(value => Ratio.FromPercent(value))]);

        Assert.Equal("points[1]", Assert.Throws<ArgumentOutOfRangeException>(() => State(20, 101)).ParamName);
        Assert.Equal("points[0]", Assert.Throws<ArgumentOutOfRangeException>(() => State(-1, 100)).ParamName);
        Assert.Contains("points[1] is 60 %; it must be more than the point before it, 60 %", Assert.Throws<ArgumentException>(() => State(60, 60)).Message, StringComparison.Ordinal);
    }
}
