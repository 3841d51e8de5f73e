using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Friction;

public class BearingSurfaceTests
{
    [Fact]
    public void A_flat_ring_acts_at_its_mean_diameter()
    {
        BearingSurface ring = BearingSurface.Annulus(Length.FromMillimeters(22.5), Length.FromMillimeters(17.5));

        Assert.Equal(20, ring.EffectiveDiameter.Millimeters, 12);
        Assert.Equal("flat ring 17.5 to 22.5 mm", ring.ToString());
    }

    /// <summary>Under uniform pressure the friction radius is ∫r·r dr/∫r dr, integrated here by Simpson's rule, exact for these powers.</summary>
    [Property]
    public void Uniform_pressure_acts_at_the_integrated_diameter(byte outerPart, byte innerPart)
    {
        double outer = 10 + outerPart, inner = outer * (0.05 + 0.9 * innerPart / 255);
        BearingSurface ring = BearingSurface.Annulus(Length.FromMillimeters(outer), Length.FromMillimeters(inner)).WithUniformPressure();
        double middle = (outer + inner) / 2;
        double moment = inner * inner + 4 * middle * middle + outer * outer, force = inner + 4 * middle + outer;

        Assert.True(ring.HasUniformPressure);
        Assert.InRange(ring.EffectiveDiameter.Millimeters / (moment / force), 1 - 1e-12, 1 + 1e-12);
        Assert.True(ring.EffectiveDiameter.Millimeters > middle);
    }

    [Fact]
    public void A_cone_keeps_its_angle()
    {
        BearingSurface cone = BearingSurface.Cone(Length.FromMillimeters(20), Length.FromMillimeters(11), Angle.FromDegrees(90));

        Assert.Equal(90, cone.IncludedAngle.Degrees);
        Assert.Equal(90, cone.WithUniformPressure().IncludedAngle.Degrees);
        Assert.Equal(15.5, cone.EffectiveDiameter.Millimeters, 12);
    }

    [Fact]
    public void Text_is_the_same_in_a_culture_with_decimal_commas() => CommaCulture.Run(() => Assert.Equal(
        "82.5° cone 10.5 to 20.5 mm",
        BearingSurface.Cone(Length.FromMillimeters(20.5), Length.FromMillimeters(10.5), Angle.FromDegrees(82.5)).ToString()));

    [Theory]
    [InlineData(0, 10, 90, "outer")]
    [InlineData(2e6, 10, 90, "outer")]
    [InlineData(20, 0, 90, "inner")]
    [InlineData(20, -5, 90, "inner")]
    [InlineData(20, 20, 90, "inner")]
    [InlineData(20, 21, 90, "inner")]
    [InlineData(20, 10, 0, "includedAngle")]
    [InlineData(20, 10, 181, "includedAngle")]
    public void Values_out_of_their_domain_are_refused(double outer, double inner, double includedAngle, string parameter)
    {
        Assert.Equal(parameter, Refusal(() => BearingSurface.Cone(
            Length.FromMillimeters(outer), Length.FromMillimeters(inner), Angle.FromDegrees(includedAngle))));
        if (parameter == "includedAngle") return;

        Assert.Equal(parameter, Refusal(() => BearingSurface.Annulus(Length.FromMillimeters(outer), Length.FromMillimeters(inner))));
    }

    private static string? Refusal(Func<object> create) => Assert.Throws<ArgumentOutOfRangeException>(create).ParamName;
}
