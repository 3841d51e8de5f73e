using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Threads;

public class ScrewThreadTests
{
    [Fact]
    public void The_explicit_coarse_pitch_is_the_plain_thread_by_every_door()
    {
        ScrewThread plain = ScrewThread.Parse("M16");
        ScrewThread free = ScrewThread.IsoMetric(Millimeters(16), Millimeters(2));

        Assert.Same(plain, ScrewThread.Parse("M16x2"));
        Assert.Equal("M16", free.Designation);
        Assert.Equal(plain.StressArea, free.StressArea);
        Assert.Equal(16, plain.NominalDiameter.Millimeters);
        Assert.Equal(2, plain.Pitch.Millimeters);
    }

    [Theory]
    [InlineData(16, 1.5, "M16x1.5")]
    [InlineData(19, 1.5, "M19x1.5")]
    [InlineData(16, 1.25, "M16x1.25")]
    [InlineData(100, 6, "M100x6")]
    public void A_metric_thread_is_called_by_diameter_and_pitch(double diameter, double pitch, string designation) =>
        Assert.Equal(designation, ScrewThread.IsoMetric(Millimeters(diameter), Millimeters(pitch)).Designation);

    [Theory]
    [InlineData(0.5, 13, "1/2-13 UNC")]
    [InlineData(0.5, 20, "1/2-20 UNF")]
    [InlineData(1.125, 8, "1 1/8-8 UN")]
    [InlineData(0.19, 32, "#10-32 UNF")]
    [InlineData(2, 4.5, "2-4.5 UNC")]
    [InlineData(0.5, 14, "0.5-14 UNS")]
    [InlineData(0.21875, 24, "0.21875-24 UNS")]
    public void A_unified_thread_is_special_only_where_no_series_has_it(double inches, double threadsPerInch, string designation) =>
        Assert.Equal(designation, ScrewThread.Unified(Length.FromInches(inches), threadsPerInch).Designation);

    [Fact]
    public void The_unit_of_the_diameter_does_not_matter() =>
        Assert.Equal("M16x1.5", ScrewThread.IsoMetric(Length.FromCentimeters(1.6), Length.FromMicrometers(1500)).Designation);

    [Theory]
    [InlineData(0, 1, "diameter")]
    [InlineData(-16, 2, "diameter")]
    [InlineData(3000, 2, "diameter")]
    [InlineData(16, 0, "pitch")]
    [InlineData(16, -2, "pitch")]
    [InlineData(16, 12, "pitch")]
    public void A_metric_thread_out_of_its_domain_is_refused(double diameter, double pitch, string parameter)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => ScrewThread.IsoMetric(Millimeters(diameter), Millimeters(pitch)));
        Assert.Equal(parameter, refusal.ParamName);
        Assert.StartsWith(parameter + " is ", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pitch_too_coarse_is_refused_with_the_limit()
    {
        // Closed form: d − 17/12 H = d/10 at P = 0.9 d · 12/17 · 2/√3 = 0.733588 d.
        string metric = Assert.Throws<ArgumentOutOfRangeException>(() => ScrewThread.IsoMetric(Millimeters(10), Millimeters(7.34))).Message;
        Assert.Contains("pitch is 7.34 mm; it must be less than 7.335", metric, StringComparison.Ordinal);
        Assert.NotNull(ScrewThread.IsoMetric(Millimeters(10), Millimeters(7.33)));

        // d − 11/8 H = d/10 at n = 11/8 · √3/2 / (0.9 d) = 1.323094/d.
        string unified = Assert.Throws<ArgumentOutOfRangeException>(() => ScrewThread.Unified(Length.FromInches(1), 1.32)).Message;
        Assert.Contains("threadsPerInch is 1.32; it must be more than 1.323", unified, StringComparison.Ordinal);
        Assert.NotNull(ScrewThread.Unified(Length.FromInches(1), 1.33));
    }

    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.5, -13)]
    [InlineData(0.5, 401)]
    [InlineData(0.5, double.NaN)]
    [InlineData(0.5, double.PositiveInfinity)]
    public void Threads_per_inch_out_of_their_domain_are_refused(double inches, double threadsPerInch) => Assert.Equal(
        "threadsPerInch", Assert.Throws<ArgumentOutOfRangeException>(() => ScrewThread.Unified(Length.FromInches(inches), threadsPerInch)).ParamName);

    [Fact]
    public void A_unified_diameter_out_of_its_domain_is_refused() => Assert.Equal(
        "diameter", Assert.Throws<ArgumentOutOfRangeException>(() => ScrewThread.Unified(Length.Zero, 13)).ParamName);

    [Fact]
    public void A_custom_profile_keeps_what_it_was_given()
    {
        // Square thread of Shigley 9th ed. (2011), Example 8-1: d 32 mm, p 4 mm, two starts, d_m 30, d_r 28, lead 8 mm.
        ScrewThread square = ScrewThread.FromProfile(Millimeters(32), Millimeters(4), Angle.Zero, 2, Millimeters(30), Millimeters(28));

        Assert.Equal(8, square.Lead.Millimeters, 12);
        Assert.Equal(8 / (30 * Math.PI), Math.Tan(square.LeadAngle.Radians), 14);
        Assert.Equal(29, square.StressDiameter.Millimeters, 12);
        Assert.Null(square.InternalMinorDiameter);
        Assert.Equal(ThreadProfile.Custom, square.Profile);
        Assert.Equal("custom 32x4 mm, 2 starts", square.Designation);
        Assert.Equal(square.StressArea.SquareMeters, Derivation.Of(() => square.StressArea).Result);
    }

    [Theory]
    [InlineData(0, 4, 0, 2, 30, 28, "diameter")]
    [InlineData(32, 0, 0, 2, 30, 28, "pitch")]
    [InlineData(32, 4, -1, 2, 30, 28, "loadFlankAngle")]
    [InlineData(32, 4, 90, 2, 30, 28, "loadFlankAngle")]
    [InlineData(32, 4, 0, 0, 30, 28, "starts")]
    [InlineData(32, 4, 0, -1, 30, 28, "starts")]
    [InlineData(32, 4, 0, 101, 30, 28, "starts")]
    [InlineData(32, 4, 0, 2, 32, 28, "pitchDiameter")]
    [InlineData(32, 4, 0, 2, 0, 28, "pitchDiameter")]
    [InlineData(32, 4, 0, 2, 30, 30, "rootDiameter")]
    [InlineData(32, 4, 0, 2, 30, -28, "rootDiameter")]
    public void A_custom_profile_out_of_its_domain_is_refused(
        double d, double p, double flankDegrees, int starts, double pitchDiameter, double rootDiameter, string parameter)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => ScrewThread.FromProfile(
            Millimeters(d), Millimeters(p), Angle.FromDegrees(flankDegrees), starts, Millimeters(pitchDiameter), Millimeters(rootDiameter)));
        Assert.Equal(parameter, refusal.ParamName);
    }

    private static Length Millimeters(double value) => Length.FromMillimeters(value);
}
