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
        Assert.Equal(proof, strength.ProofLoadStress!.Value.Megapascals, 9);
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

    /// <summary>
    /// ISO 3506-1:2009, Tables 2 and 3, in MPa. Read: A1, A2, A4 in classes 50 and 70; C1-50, C1-70, C4-70, F1-45, F1-60 (steel grade assigned by
    /// the order of a scrambled table); the yield strength of A2-80 and A4-80. The rest, class 100 (ISO 3506-1:2020) and all diameters: from memory.
    /// </summary>
    [Theory]
    [InlineData("A1-50", "M39", 500, 210)]
    [InlineData("A2-50", "M1.6", 500, 210)]
    [InlineData("A2-70", "M24", 700, 450)]
    [InlineData("A4-70", "M8", 700, 450)]
    [InlineData("A4-80", "M24", 800, 600)]
    [InlineData("A3-80", "M10", 800, 600)]
    [InlineData("A5-100", "M10", 1000, 800)]
    [InlineData("C1-50", "M39", 500, 250)]
    [InlineData("C1-70", "M10", 700, 410)]
    [InlineData("C1-110", "M10", 1100, 820)]
    [InlineData("C3-80", "M10", 800, 640)]
    [InlineData("C4-50", "M10", 500, 250)]
    [InlineData("C4-70", "M10", 700, 410)]
    [InlineData("F1-45", "M24", 450, 250)]
    [InlineData("F1-60", "M10x1.25", 600, 410)]
    public void Strength_of_a_stainless_class(string designation, string thread, double tensile, double yield)
    {
        PropertyClass stainless = PropertyClass.Parse(designation);
        BoltStrength strength = stainless.StrengthFor(ScrewThread.Parse(thread));

        Assert.Equal("ISO 3506-1", stainless.Standard);
        Assert.Equal(tensile, strength.TensileStrength.Megapascals, 9);
        Assert.Equal(yield, strength.YieldStrength.Megapascals, 9);
        Assert.Null(strength.ProofLoadStress);
        Assert.Equal(tensile, stainless.NominalTensileStrength.Megapascals, 9);
        Assert.Null(stainless.NominalYieldStrength);
    }

    [Theory]
    [InlineData("A2-70", "M27", "M1.6 to M24")]
    [InlineData("A4-80", "M24x2", null)]
    [InlineData("A4-80", "M25x2", "M1.6 to M24")]
    [InlineData("A2-50", "M42", "M1.6 to M39")]
    [InlineData("A2-50", "M1.4", "M1.6 to M39")]
    [InlineData("F1-60", "M27", "M1.6 to M24")]
    [InlineData("C3-80", "M39", null)]
    public void Sizes_of_a_stainless_class_end(string designation, string thread, string? refusedBeyond)
    {
        PropertyClass stainless = PropertyClass.Parse(designation);
        ScrewThread size = ScrewThread.Parse(thread);
        if (refusedBeyond is null)
        {
            Assert.NotNull(stainless.StrengthFor(size));
            return;
        }

        string message = Assert.Throws<ArgumentException>(() => stainless.StrengthFor(size)).Message;
        Assert.StartsWith($"ISO 3506-1 class {designation} covers ISO metric threads from {refusedBeyond}, not {thread};", message, StringComparison.Ordinal);
    }

    /// <summary>The designation system of ISO 898-1, clause 5: hundredths of the tensile strength, and ten times the ratio of yield to tensile strength.</summary>
    [Fact]
    public void Nominal_strengths_are_what_the_designation_says()
    {
        foreach (PropertyClass steel in PropertyClass.All.Where(c => c.Standard == "ISO 898-1"))
        {
            double[] parts = [.. steel.Designation.Split('.').Select(part => double.Parse(part, System.Globalization.CultureInfo.InvariantCulture))];
            Assert.Equal(parts[0] * 100, steel.NominalTensileStrength.Megapascals, 9);
            Assert.Equal(parts[0] * 100 * parts[1] / 10, steel.NominalYieldStrength!.Value.Megapascals, 9);
            BoltStrength least = steel.StrengthFor(ScrewThread.Parse("M10"));
            Assert.True(least.TensileStrength >= steel.NominalTensileStrength && least.YieldStrength >= steel.NominalYieldStrength);
        }
    }

    [Fact]
    public void Every_class_is_ordered_within_itself()
    {
        foreach (PropertyClass any in PropertyClass.All)
        {
            BoltStrength strength = any.StrengthFor(ScrewThread.Parse("M16"));
            Assert.True(strength.YieldStrength < strength.TensileStrength, any.Designation);
            Assert.True(strength.ProofLoadStress is not Pressure proof || proof < strength.YieldStrength, any.Designation);
            Assert.StartsWith(any.Standard + ":20", strength.Provenance!.Source, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("8.8", "ISO 898-1:2013 Table 3", false)]
    [InlineData("4.8", "ISO 898-1:2013 Table 3, yield from memory", true)]
    [InlineData("A2-70", "ISO 3506-1:2009 Table 2", false)]
    [InlineData("A4-100", "ISO 3506-1:2020, from memory", true)]
    public void What_is_from_memory_says_so(string designation, string start, bool isFromMemory)
    {
        Provenance provenance = PropertyClass.Parse(designation).StrengthFor(ScrewThread.Parse("M16")).Provenance!;
        Assert.StartsWith(start, provenance.ToString(), StringComparison.Ordinal);
        Assert.Equal(isFromMemory, provenance.IsFromMemory);
    }

    [Fact]
    public void Every_class_is_listed_and_read()
    {
        Assert.Equal(
            [
                "4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9",
                "A1-50", "A1-70", "A1-80", "A1-100", "A2-50", "A2-70", "A2-80", "A2-100", "A3-50", "A3-70", "A3-80", "A3-100",
                "A4-50", "A4-70", "A4-80", "A4-100", "A5-50", "A5-70", "A5-80", "A5-100",
                "C1-50", "C1-70", "C1-110", "C3-80", "C4-50", "C4-70", "F1-45", "F1-60",
            ],
            PropertyClass.All.Select(c => c.Designation));
        Assert.All(PropertyClass.All, c => Assert.Same(c, PropertyClass.Parse($" {c} ")));
    }

    [Theory]
    [InlineData("a2-70", "A2-70")]
    [InlineData("A4L-80", "A4-80")]
    [InlineData("a2l-50", "A2-50")]
    public void Case_and_low_carbon_do_not_change_the_class(string text, string designation) =>
        Assert.Equal(designation, PropertyClass.Parse(text).Designation);

    [Theory]
    [InlineData("")]
    [InlineData("8.80")]
    [InlineData("3.6")]
    [InlineData("A2")]
    [InlineData("A2-90")]
    [InlineData("A6-70")]
    [InlineData("A2 70")]
    [InlineData("A1L-70")]
    [InlineData("C4L-70")]
    [InlineData("A4LL-80")]
    [InlineData("AL-80")]
    [InlineData("D6-100")]
    public void Other_text_is_refused_with_the_list(string text)
    {
        string message = Assert.Throws<FormatException>(() => PropertyClass.Parse(text)).Message;
        Assert.Equal(
            $"'{text}' is not a property class of ISO 898-1 (4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9) or "
                + "ISO 3506-1 (A1/A2/A3/A4/A5-50/70/80/100, C1-50/70/110, C3-80, C4-50/70, F1-45/60).",
            message);
        Assert.False(PropertyClass.TryParse(text, out _));
    }

    [Fact]
    public void A_refusal_does_not_repeat_a_long_text() =>
        Assert.InRange(Assert.Throws<FormatException>(() => PropertyClass.Parse(new string('8', 100_000))).Message.Length, 1, 300);

    [Fact]
    public void Null_is_refused()
    {
        Assert.Equal("designation", Assert.Throws<ArgumentNullException>(() => PropertyClass.Parse(null!)).ParamName);
        Assert.False(PropertyClass.TryParse(null, out _));
    }

    [Fact]
    public void A_decimal_comma_is_pointed_out() => Assert.StartsWith(
        "'8,8' is not a property class (write a decimal point) of ISO 898-1", Assert.Throws<FormatException>(() => PropertyClass.Parse("8,8")).Message, StringComparison.Ordinal);
}
