using UnitsNet;

namespace Fastening.Tests.Materials;

public class PropertyClassTests
{
    /// <summary>ISO 898-1:2013, Table 3, in MPa; 5.8 and 9.8 as in Shigley 9th ed. (2011), Table 8-11; yield of 4.8, 5.6 and 6.8 from memory.</summary>
    [Theory]
    [InlineData("4.6", "M16", 400, 240, 225)]
    [InlineData("4.8", "M16", 420, 340, 310)]
    [InlineData("5.6", "M16", 500, 300, 280)]
    [InlineData("5.8", "M16", 520, 420, 380)]
    [InlineData("6.8", "M16", 600, 480, 440)]
    [InlineData("8.8", "M16", 800, 640, 580)]
    [InlineData("8.8", "M16x1.5", 800, 640, 580)]
    [InlineData("8.8", "M17x1.5", 830, 660, 600)]
    [InlineData("8.8", "M18", 830, 660, 600)]
    [InlineData("8.8", "M39", 830, 660, 600)]
    [InlineData("9.8", "M1.6", 900, 720, 650)]
    [InlineData("9.8", "M16", 900, 720, 650)]
    [InlineData("10.9", "M1.6", 1040, 940, 830)]
    [InlineData("10.9", "M39", 1040, 940, 830)]
    [InlineData("12.9", "M16", 1220, 1100, 970)]
    public void Strength_of_the_class(string designation, string thread, double tensile, double yield, double proof)
    {
        BoltStrength strength = PropertyClass.Parse(designation).StrengthFor(ScrewThread.Parse(thread));

        Assert.Equal(tensile, strength.TensileStrength.Megapascals, 9);
        Assert.Equal(yield, strength.YieldStrength.Megapascals, 9);
        Assert.Equal(proof, strength.ProofLoadStress.Megapascals, 9);
    }

    [Theory]
    [InlineData(16, 800)]
    [InlineData(16.001, 830)]
    public void Class_8_8_changes_above_16_mm(double millimeters, double tensile) => Assert.Equal(
        tensile,
        PropertyClass.Parse("8.8").StrengthFor(ScrewThread.IsoMetric(Length.FromMillimeters(millimeters), Length.FromMillimeters(1.5)))
            .TensileStrength.Megapascals,
        9);

    [Fact]
    public void The_change_is_at_16_mm_in_any_unit() => Assert.Equal(800, PropertyClass.Parse("8.8").StrengthFor(
        ScrewThread.IsoMetric(Length.FromInches(16 / 25.4), Length.FromMillimeters(2))).TensileStrength.Megapascals, 9);

    [Theory]
    [InlineData("9.8", "M18", "M1.6 to M16")]
    [InlineData("8.8", "M1.4", "M1.6 to M39")]
    [InlineData("8.8", "M42", "M1.6 to M39")]
    [InlineData("8.8", "M40x3", "M1.6 to M39")]
    [InlineData("8.8", "1/2-13 UNC", "M1.6 to M39")]
    [InlineData("9.8", "#10-32 UNF", "M1.6 to M16")]
    public void Threads_the_standard_does_not_cover_are_refused(string designation, string thread, string range)
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => PropertyClass.Parse(designation).StrengthFor(ScrewThread.Parse(thread)));
        Assert.Equal("thread", refusal.ParamName);
        Assert.Contains($"class {designation} covers ISO metric threads from {range}, not {thread}", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_custom_thread_and_null_are_refused()
    {
        ScrewThread square = ScrewThread.FromProfile(
            Length.FromMillimeters(16), Length.FromMillimeters(4), Angle.Zero, 1, Length.FromMillimeters(14), Length.FromMillimeters(12));
        Assert.Throws<ArgumentException>(() => PropertyClass.Parse("8.8").StrengthFor(square));
        Assert.Equal("thread", Assert.Throws<ArgumentNullException>(() => PropertyClass.Parse("8.8").StrengthFor(null!)).ParamName);
    }

    [Fact]
    public void Every_class_is_listed_and_read()
    {
        Assert.Equal(["4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"], PropertyClass.All.Select(c => c.Designation));
        Assert.All(PropertyClass.All, c => Assert.Same(c, PropertyClass.Parse($" {c} ")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("8,8")]
    [InlineData("8.80")]
    [InlineData("3.6")]
    [InlineData("A2-70")]
    public void Other_text_is_refused_with_the_list(string text)
    {
        string message = Assert.Throws<FormatException>(() => PropertyClass.Parse(text)).Message;
        Assert.StartsWith($"'{text}' is not a property class of ISO 898-1; the classes are 4.6, 4.8,", message, StringComparison.Ordinal);
        Assert.False(PropertyClass.TryParse(text, out _));
    }

    [Fact]
    public void A_refusal_does_not_repeat_a_long_text() =>
        Assert.InRange(Assert.Throws<FormatException>(() => PropertyClass.Parse(new string('8', 100_000))).Message.Length, 1, 200);

    [Fact]
    public void Null_is_refused()
    {
        Assert.Equal("designation", Assert.Throws<ArgumentNullException>(() => PropertyClass.Parse(null!)).ParamName);
        Assert.False(PropertyClass.TryParse(null, out _));
    }
}
