namespace Fastening.Tests.Friction;

public class FrictionGuidanceTests
{
    /// <summary>VDI 2230-1 Table A5, friction classes; class B from memory, class E open above.</summary>
    [Theory]
    [InlineData("A", 0.04, 0.10, false)]
    [InlineData("B", 0.08, 0.16, true)]
    [InlineData("C", 0.14, 0.24, false)]
    [InlineData("D", 0.20, 0.35, false)]
    public void Friction_classes(string letter, double low, double high, bool fromMemory)
    {
        PublishedFriction row = FrictionGuidance.Coefficients.Single(f => f.Condition == "friction class " + letter);

        Assert.Equal(low, row.Low);
        Assert.Equal(high, row.High);
        Assert.Equal(fromMemory, row.Provenance.IsFromMemory);
        Assert.StartsWith("VDI 2230", row.Provenance.Source, StringComparison.Ordinal);
        FrictionRange range = row.ToRange();
        Assert.Equal((low, low, high, high), (range.Low.Thread, range.Low.Bearing, range.High.Thread, range.High.Bearing));
    }

    [Fact]
    public void A_range_open_above_gives_no_range()
    {
        PublishedFriction open = FrictionGuidance.Coefficients.Single(f => f.High is null);

        Assert.Equal("friction class E", open.Condition);
        Assert.Equal(0.30, open.Low);
        Assert.Contains("must come from a test", Assert.Throws<InvalidOperationException>(open.ToRange).Message, StringComparison.Ordinal);
        CommaCulture.Run(() => Assert.Equal("friction class E: µ 0.3 and more (VDI 2230-1:2015 Table A5, read in secondary source)", open.ToString()));
    }

    /// <summary>Shigley 9th ed. (2011), Table 8-15, p. 439; NASA TM-106943 (1995).</summary>
    [Theory]
    [InlineData("nonplated; black finish", 0.30, 0.30)]
    [InlineData("zinc-plated", 0.20, 0.20)]
    [InlineData("lubricated", 0.18, 0.18)]
    [InlineData("cadmium-plated", 0.16, 0.16)]
    [InlineData("anti-seize compound", 0.12, 0.12)]
    [InlineData("special low-friction nuts", 0.09, 0.09)]
    [InlineData("lubricated; spaceflight fasteners", 0.11, 0.15)]
    [InlineData("dry; spaceflight fasteners", 0.20, 0.20)]
    public void Nut_factors(string condition, double low, double high)
    {
        PublishedNutFactor row = FrictionGuidance.NutFactors.Single(k => k.Condition == condition);

        Assert.Equal((low, high, low == high), (row.Low, row.High, row.IsSingleValue));
        Assert.False(row.Provenance.IsFromMemory);
    }

    [Fact]
    public void Every_row_is_in_order_and_names_its_source()
    {
        Assert.Equal(5, FrictionGuidance.Coefficients.Count);
        Assert.Equal(9, FrictionGuidance.NutFactors.Count);
        Assert.All(FrictionGuidance.Coefficients, row => Assert.True(row.Low > 0 && (row.High ?? 1) > row.Low && row.Provenance.Source.Length > 5 && row.Provenance.Confidence.Length > 3));
        Assert.All(FrictionGuidance.NutFactors, row => Assert.True(row.Low > 0 && row.High >= row.Low && row.Provenance.Source.Length > 5 && row.Provenance.Confidence.Length > 3));
    }

    [Fact]
    public void Text_is_the_same_in_a_culture_with_decimal_commas() => CommaCulture.Run(() =>
    {
        Assert.Equal(
            "lubricated; spaceflight fasteners: K 0.11…0.15 (NASA TM-106943 (1995), read)",
            FrictionGuidance.NutFactors.Single(k => k.Condition.StartsWith("lubricated;", StringComparison.Ordinal)).ToString());
        Assert.Equal("zinc-plated: K 0.2 (Shigley 9th ed. (2011) Table 8-15, read)", FrictionGuidance.NutFactors.Single(k => k.Condition == "zinc-plated").ToString());
    });
}
