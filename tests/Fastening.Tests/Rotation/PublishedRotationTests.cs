using UnitsNet;

namespace Fastening.Tests.Rotation;

public class PublishedRotationTests
{
    [Theory]
    [InlineData(3.0, 0.75, SlopedFaces.None, 120, 90, 180)]
    [InlineData(3.01, 0.75, SlopedFaces.None, 180, 150, 240)]
    [InlineData(6.0, 0.75, SlopedFaces.One, 240, 210, 300)]
    [InlineData(8.5, 0.75, SlopedFaces.Both, 360, 330, 420)]
    public void Rcsc_of_2014_goes_by_the_length_of_the_bolt_in_diameters(
        double boltInches, double diameterInches, SlopedFaces faces, double degrees, double lower, double upper)
    {
        PublishedRotation row = PublishedRotation.Rcsc2014(Length.FromInches(boltInches), Length.FromInches(diameterInches), faces);
        Assert.Equal(degrees, row.Rotation.Degrees);
        Assert.Equal((lower, upper), (row.Window!.Lower!.Value.Degrees, row.Window.Upper!.Value.Degrees));
    }

    [Theory]
    [InlineData(3.0, SlopedFaces.None, 90, 150)]
    [InlineData(3.0, SlopedFaces.One, 150, 210)]
    [InlineData(3.0, SlopedFaces.Both, 195, 285)]
    [InlineData(9.0, SlopedFaces.None, 195, 285)]
    public void The_older_tolerance_is_another_one(double boltInches, SlopedFaces faces, double lower, double upper)
    {
        PublishedRotation row = PublishedRotation.RcscBefore2014(Length.FromInches(boltInches), Length.FromInches(0.75), faces);
        Assert.Equal((lower, upper), (row.Window!.Lower!.Value.Degrees, row.Window.Upper!.Value.Degrees));
        Assert.Contains("before 2014", row.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(39.9, 60)]
    [InlineData(40, 90)]
    [InlineData(119.9, 90)]
    [InlineData(120, 120)]
    [InlineData(200, 120)]
    public void En1090_goes_by_the_clamped_thickness_and_its_limits_lie_on_the_other_side(double thicknessMm, double degrees)
    {
        PublishedRotation row = PublishedRotation.En1090Part2(Length.FromMillimeters(thicknessMm), Length.FromMillimeters(20));
        Assert.Equal(degrees, row.Rotation.Degrees);
        Assert.Null(row.Window);
        Assert.Equal(degrees < 120, row.Provenance.IsFromMemory);
    }

    [Theory]
    [InlineData(0.625)]
    [InlineData(0.875)]
    [InlineData(1.125)]
    [InlineData(1.375)]
    public void A_whole_number_of_diameters_is_one_in_any_unit(double inches)
    {
        // 4 × 7/8 in written in millimetres or feet is not always the same double.
        foreach (Length diameter in new[] { Length.FromInches(inches), Length.FromMillimeters(25.4 * inches), Length.FromFeet(inches / 12) })
        {
            Assert.Equal(120, PublishedRotation.Rcsc2014(Length.FromInches(4 * inches), diameter, SlopedFaces.None).Rotation.Degrees);
            Assert.Equal(240, PublishedRotation.Rcsc2014(Length.FromMillimeters(12 * 25.4 * inches), diameter, SlopedFaces.None).Rotation.Degrees);
        }
    }

    [Theory]
    [InlineData(12)]
    [InlineData(22)]
    [InlineData(27)]
    [InlineData(36)]
    public void A_whole_number_of_metric_diameters_is_one_in_any_unit(double millimeters)
    {
        foreach (Length diameter in new[] { Length.FromMillimeters(millimeters), Length.FromMeters(millimeters / 1000), Length.FromInches(millimeters / 25.4) })
        {
            Assert.Equal(90, PublishedRotation.En1090Part2(Length.FromInches(2 * millimeters / 25.4), diameter).Rotation.Degrees);
            Assert.Equal(120, PublishedRotation.En1090Part2(Length.FromInches(10 * millimeters / 25.4), diameter).Rotation.Degrees);
        }
    }

    [Fact]
    public void Beyond_the_tables_a_test_is_asked_for()
    {
        ArgumentOutOfRangeException longBolt = Assert.Throws<ArgumentOutOfRangeException>(
            () => PublishedRotation.Rcsc2014(Length.FromMillimeters(241), Length.FromMillimeters(20), SlopedFaces.None));
        Assert.Equal("boltLength is 241 mm; it must be at most 12 diameters; for longer bolts RCSC requires the rotation to be found by test. (Parameter 'boltLength')", longBolt.Message);
        ArgumentOutOfRangeException thick = Assert.Throws<ArgumentOutOfRangeException>(
            () => PublishedRotation.En1090Part2(Length.FromMillimeters(201), Length.FromMillimeters(20)));
        Assert.Equal("clampedThickness", thick.ParamName);
    }

    [Theory]
    [InlineData(8)]
    [InlineData(21)]
    [InlineData(33)]
    [InlineData(25.4)]
    public void En1090_has_no_rotation_for_other_diameters(double millimeters) => Assert.Equal("diameter", Assert.Throws<ArgumentOutOfRangeException>(
        () => PublishedRotation.En1090Part2(Length.FromMillimeters(3 * millimeters), Length.FromMillimeters(millimeters))).ParamName);

    [Theory]
    [InlineData(0.375)]
    [InlineData(2)]
    [InlineData(8 / 25.4)]
    [InlineData(12 / 25.4)]
    public void Rcsc_has_no_rotation_for_other_diameters(double inches)
    {
        Length diameter = Length.FromInches(inches);
        Assert.Equal("diameter", Assert.Throws<ArgumentOutOfRangeException>(() => PublishedRotation.Rcsc2014(3 * diameter, diameter, SlopedFaces.None)).ParamName);
        Assert.Equal("diameter", Assert.Throws<ArgumentOutOfRangeException>(() => PublishedRotation.RcscBefore2014(3 * diameter, diameter, SlopedFaces.None)).ParamName);
    }

    [Fact]
    public void Every_length_up_to_the_end_has_exactly_one_row()
    {
        foreach (IGrouping<(string, SlopedFaces), PublishedRotation> table in PublishedRotation.All.GroupBy(row => (row.Table, row.SlopedFaces)))
        {
            Assert.Equal(3, table.Count());
            Assert.Equal(3, table.Select(row => row.LengthRule).Distinct().Count());
        }

        Assert.Equal(21, PublishedRotation.All.Count);
        Assert.All(PublishedRotation.All, row => Assert.False(string.IsNullOrWhiteSpace(row.Provenance.Confidence) || string.IsNullOrWhiteSpace(row.Provenance.Source)));
        Assert.All(PublishedRotation.All, row => Assert.Equal(row.Window is null, row.ToleranceConfidence is null));
    }

    [Fact]
    public void Says_its_rule_and_that_it_is_for_steel_only()
    {
        PublishedRotation rcsc = PublishedRotation.Rcsc2014(Length.FromInches(3.5), Length.FromInches(0.75), SlopedFaces.None);
        Assert.Equal("180° (150…240°) past snug: RCSC 2014, bolt length above 4d to 8d; steel grips only", rcsc.ToString());
        PublishedRotation en = PublishedRotation.En1090Part2(Length.FromMillimeters(60), Length.FromMillimeters(20));
        Assert.Equal("90° (no tolerance stated) past the first step: EN 1090-2:2018, clamped thickness from 2d below 6d; steel grips only", en.ToString());
    }
}
