using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>A joint of two stated stiffnesses: what follows from them follows, and what does not is refused.</summary>
public class StatedStiffnessTests
{
    private static readonly ScrewThread M16 = ScrewThread.Parse("M16");
    private static readonly Joint Stated = Joint.FromStiffness(M16, KilonewtonsPerMillimeter(420), KilonewtonsPerMillimeter(1680));

    /// <summary>Springs in a ring, by hand: 420/(420 + 1680), 1/420 + 1/1680 mm/kN, one lead of 2 mm a turn.</summary>
    [Fact]
    public void Shares_rotation_and_embedding_follow_by_hand()
    {
        Close.To(0.2, Stated.LoadFactor);
        Close.To((1 / 420e6) + (1 / 1680e6), Stated.MetersPerNewton);
        Close.To(336 * 2.0 * 30 / 360, Stated.PreloadGainAt(Angle.FromDegrees(30)).Kilonewtons);
        Close.To(336 * 0.008, Stated.EmbeddingLossOf(Embedding.Of(Length.FromMicrometers(8))).Kilonewtons);
        SpringRing ring = SpringRing.Tightened(1 / 420e6, 1 / 1680e6, 0.4, 40e3);
        JointState state = Stated.At(Force.FromKilonewtons(40), Force.FromKilonewtons(12), LoadIntroduction.Of(0.4));
        Close.To(ring.Under(12e3).Bolt, state.BoltForce.Newtons, 1e-9);
        Close.To(ring.Under(12e3).Clamp, state.ClampForce.Newtons, 1e-9);
        Assert.Equal(Stated.LoadFactor, Derivation.Of(() => Stated.LoadFactor).Result);
    }

    [Fact]
    public void The_factors_of_the_textbook_follow_too()
    {
        // Shigley 9th ed., example 8-3: F_i 25 000 lbf, P 6000 lbf, k_b 6.5, k_m 13.8 Mlbf/in, C 0.32; n_0 by hand 25/((1 − 0.3202) 6).
        Joint joint = Joint.FromStiffness(
            ScrewThread.Parse("3/4-16 UNF"), ForcePerLength.FromPoundsForcePerInch(6.5e6), ForcePerLength.FromPoundsForcePerInch(13.8e6));
        Assert.Equal(0.32, joint.LoadFactor, 0.0005);
        var strength = new BoltStrength(Pressure.FromMegapascals(830), Pressure.FromMegapascals(660), Pressure.FromMegapascals(600));
        Close.To(
            25 / ((1 - 6.5 / 20.3) * 6),
            joint.ShigleyFactorsAt(Force.FromPoundsForce(25_000), Force.FromPoundsForce(6000), strength).Separation, 1e-12);
    }

    [Fact]
    public void What_does_not_follow_from_two_stiffnesses_is_refused_or_unknown()
    {
        var rises = new JointTemperatures(TemperatureDelta.FromKelvins(40), TemperatureDelta.FromKelvins(40));
        Assert.Equal("temperatures", Assert.Throws<ArgumentException>(() => Stated.ThermalLossAt(Force.FromKilonewtons(40), rises)).ParamName);
        Assert.Null(Stated.Bolt.TwistRadiansPerNewtonMeter);
        Assert.Null(Stated.Bolt.Material);
        Assert.Empty(Stated.Bolt.Sections);
        Assert.Empty(Stated.Parts.Layers);
        Assert.Null(Stated.Parts.Form);
        var turned = new RotationTightening(
            Stated, TorquePreloadModel.ForHexagonBolt(M16, new FrictionCoefficients(0.12, 0.12)), Torque.FromNewtonMeters(40), Force.FromKilonewtons(80));
        Assert.Throws<InvalidOperationException>(() => turned.WithBoltTwist());
        Assert.False(turned.Compare(PublishedRotation.En1090Part2(Length.FromMillimeters(60), M16.NominalDiameter), Force.FromKilonewtons(60)).HasSteelGrip);
        Assert.Equal("M16, 420 kN/mm (stiffness as stated); clamped parts, 1680 kN/mm (stiffness as stated); Φ_K 0.2", Stated.ToString());
    }

    [Theory]
    [InlineData("bolt", 1e-9, 100)]
    [InlineData("parts", 100, 1e12)]
    [InlineData("parts", 100, -1)]
    public void A_stiffness_that_cannot_be_is_refused(string parameter, double bolt, double parts) => Assert.Equal(
        parameter,
        Assert.Throws<ArgumentOutOfRangeException>(() => Joint.FromStiffness(M16, KilonewtonsPerMillimeter(bolt), KilonewtonsPerMillimeter(parts))).ParamName);

    [Fact]
    public void Springs_too_far_apart_are_no_joint() =>
        Assert.Throws<ArgumentException>(() => Joint.FromStiffness(M16, KilonewtonsPerMillimeter(1e-3), KilonewtonsPerMillimeter(1e7)));

    private static ForcePerLength KilonewtonsPerMillimeter(double value) => ForcePerLength.FromKilonewtonsPerMillimeter(value);
}
