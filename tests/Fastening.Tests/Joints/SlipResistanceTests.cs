using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Joints;

public class SlipResistanceTests
{
    [Fact]
    public void Tension_takes_four_fifths_of_itself_from_the_preload()
    {
        // EN 1993-1-8:2005 §3.9.2, from memory, typed anew: 0.85·2·0.3·(100 − 0.8·40)/1.1
        SlipResistance resistance = SlipResistance.OfEn1993(0.85, 2, 0.3, Force.FromKilonewtons(100), Force.FromKilonewtons(40), 1.1);
        Assert.Equal(0.85 * 2 * 0.3 * 68 / 1.1, resistance.Resistance.Kilonewtons, 10);
        Assert.Equal(resistance.Resistance.Newtons, Derivation.Of(() => resistance.Resistance).Result);
    }

    [Fact]
    public void Tension_beyond_the_preload_leaves_nothing() => Assert.Equal(
        0, SlipResistance.OfEn1993(1, 1, 0.5, Force.FromKilonewtons(100), Force.FromKilonewtons(130), 1.25).Resistance.Newtons);

    [Theory]
    [InlineData("slipFactor", 1.0, 1.9, 1.25)]
    [InlineData("slipFactor", 1.0, 1.01, 1.25)]
    [InlineData("holeFactor", 1.1, 0.5, 1.25)]
    [InlineData("partialFactor", 1.0, 0.5, 0.99)]
    public void What_the_standard_does_not_have_is_refused(string parameter, double hole, double slip, double partial) => Assert.Equal(
        parameter,
        Assert.Throws<ArgumentOutOfRangeException>(
            () => SlipResistance.OfEn1993(hole, 1, slip, Force.FromKilonewtons(100), Force.Zero, partial)).ParamName);

    [Fact]
    public void A_slip_factor_is_never_assumed() => Assert.Equal(
        "slipFactor",
        Assert.Throws<ArgumentOutOfRangeException>(() => SlipResistance.OfEn1993(1, 1, 0, Force.FromKilonewtons(100), Force.Zero, 1.25)).ParamName);
}
