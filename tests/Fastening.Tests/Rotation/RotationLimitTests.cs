using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Rotation;

public class RotationLimitTests
{
    private static readonly AnyTurnedJoint Example = new(20, 0.125, 55, 30, 0.85, 1.9, 110, 0.14, 0.11);
    private static readonly RotationTightening Tightening = Example.Tightening;

    [Fact]
    public void Says_so_when_the_rotation_goes_past_the_elastic_limit()
    {
        PreloadAfterRotation at = Tightening.PreloadAt(Tightening.ElasticRotation);
        Assert.True(at.IsElastic);
        Close.To(Tightening.ElasticLimit.Newtons, at.Preload.Newtons);
        PreloadAfterRotation past = Tightening.PreloadAt(Tightening.ElasticRotation * 1.001);
        Assert.False(past.IsElastic);
        Assert.StartsWith("yields: ", past.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("which is not reached", past.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_goal_below_snug_or_past_the_limit_is_refused_with_the_reason()
    {
        ArgumentOutOfRangeException below = Assert.Throws<ArgumentOutOfRangeException>(() => Tightening.RotationFor(Tightening.SnugPreload * 0.9));
        Assert.Contains("the preload that the snug torque alone gives, 14.1372 kN; a lower snug torque would be needed", below.Message, StringComparison.Ordinal);
        ArgumentOutOfRangeException above = Assert.Throws<ArgumentOutOfRangeException>(() => Tightening.RotationFor(Tightening.ElasticLimit * 1.01));
        Assert.Contains("above it, rotation does not determine preload", above.Message, StringComparison.Ordinal);
        Assert.Equal("preload", above.ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => Tightening.RotationFor(Force.FromKilonewtons(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Tightening.PreloadAt(Angle.FromDegrees(-0.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Derivation.Of(() => Tightening.RotationFor(Tightening.ElasticLimit * 1.01)));
        Assert.Equal("rotation", Assert.Throws<ArgumentOutOfRangeException>(() => Tightening.StandardUncertaintyAt(
            Tightening.ElasticRotation * 1.1, MeasurementUncertainty.Standard(Force.Zero), MeasurementUncertainty.Standard(Angle.Zero), MeasurementUncertainty.Standard(Ratio.Zero))).ParamName);
    }

    [Fact]
    public void Snug_must_clamp_and_stay_below_the_limit()
    {
        FrictionTorqueModel locking = Example.Model.WithPrevailing(Torque.FromNewtonMeters(20));
        Assert.Contains("up to there nothing is clamped", Assert.Throws<ArgumentOutOfRangeException>(
            () => new RotationTightening(Example.Joint, locking, Torque.FromNewtonMeters(20), Example.Limit)).Message, StringComparison.Ordinal);
        Assert.Equal("elasticLimit", Assert.Throws<ArgumentOutOfRangeException>(
            () => new RotationTightening(Example.Joint, Example.Model, Example.Model.TorqueFor(Example.Limit * 1.001), Example.Limit)).ParamName);
        Assert.Throws<ArgumentException>(() => new RotationTightening(
            Example.Joint, TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M20x1.5"), new FrictionCoefficients(0.1, 0.12)), Torque.FromNewtonMeters(40), Example.Limit));
    }

    /// <summary>M18, M20 and M22 have one pitch: the lead alone does not tell that the model is of another bolt.</summary>
    [Fact]
    public void The_model_must_be_of_the_bolt_of_the_joint()
    {
        Torque snug = Torque.FromNewtonMeters(40);
        FrictionTorqueModel larger = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M22"), new FrictionCoefficients(0.1, 0.12));
        NutFactorModel smaller = TorquePreloadModel.FromNutFactor(0.18, Length.FromMillimeters(18));
        Assert.Equal("model", Assert.Throws<ArgumentException>(() => new RotationTightening(Example.Joint, larger, snug, Example.Limit)).ParamName);
        Assert.Equal("model", Assert.Throws<ArgumentException>(() => new RotationTightening(Example.Joint, smaller, snug, Example.Limit)).ParamName);
    }

    /// <summary>A range past the limit goes on to the checks of the joint: it must not promise them a clamp force that the bolt cannot hold.</summary>
    [Fact]
    public void The_least_preload_of_a_range_never_lies_beyond_the_elastic_limit()
    {
        var friction = new FrictionRange(new FrictionCoefficients(0.10, 0.09), new FrictionCoefficients(0.16, 0.15));
        PreloadRangeAfterRotation past = Tightening.PreloadRangeAt(Tightening.ElasticRotation * 3, friction);
        Assert.False(past.Low.IsElastic);
        Assert.Equal(Example.Limit.Newtons, past.Range.Low.Newtons, 1e-6);
        Assert.Equal(past.High.Preload, past.Range.High);
    }

    [Fact]
    public void A_prevailing_torque_is_no_part_of_the_snug_preload()
    {
        var locking = new RotationTightening(
            Example.Joint, Example.Model.WithPrevailing(Torque.FromNewtonMeters(12)), Tightening.SnugTorque + Torque.FromNewtonMeters(12), Example.Limit);
        Close.To(Tightening.SnugPreload.Newtons, locking.SnugPreload.Newtons);
        Close.To(Tightening.ElasticRotation.Degrees, locking.ElasticRotation.Degrees);
    }

    [Fact]
    public void From_a_nut_factor_all_but_the_thread_torque()
    {
        NutFactorModel model = TorquePreloadModel.FromNutFactor(0.19, Length.FromMillimeters(20));
        var tightening = new RotationTightening(Example.Joint, model, Torque.FromNewtonMeters(57), Example.Limit);
        Close.To(15_000, tightening.SnugPreload.Newtons);
        Close.To(0.19 * 0.02 * Example.Lead / (2 * Math.PI * (Example.BoltCompliancePerEal + Example.SleeveCompliancePerEal)), tightening.ElasticSlope.NewtonMetersPerRadian, 1e-11);
        PreloadRangeAfterRotation range = tightening.PreloadRangeAt(Angle.FromDegrees(20), model.PreloadRangeAt(tightening.SnugTorque, 0.15, 0.25));
        Close.To(57 / (0.15 * 0.02) - 57 / (0.25 * 0.02), (range.Range.High - range.Range.Low).Newtons, 1e-10);
        Assert.Throws<InvalidOperationException>(tightening.WithBoltTwist);
        Assert.Throws<InvalidOperationException>(() => tightening.PreloadRangeAt(
            Angle.FromDegrees(20), new FrictionRange(new FrictionCoefficients(0.1, 0.1), new FrictionCoefficients(0.2, 0.2))));
        Assert.Equal(tightening.PreloadAt(Angle.FromDegrees(20)).Preload.Newtons, Derivation.Of(() => tightening.PreloadAt(Angle.FromDegrees(20))).Result);
    }

    [Fact]
    public void Compared_with_a_published_rotation_in_words()
    {
        // Grip 85 mm of 20 mm: 4.25 d, so 90° by EN 1090-2.
        RotationComparison comparison = Tightening.Compare(
            PublishedRotation.En1090Part2(Length.FromMillimeters(85), Length.FromMillimeters(20)), Example.Limit * 0.8);
        Assert.True(comparison.CarriesPastElasticLimit);
        Assert.True(comparison.ReachesRequired);
        Assert.False(comparison.HasSteelGrip);
        Assert.Equal(90, comparison.AtPublished.Rotation.Degrees);
        Assert.Same(comparison.Published.Window, null);
        Close.To(Tightening.RotationFor(Example.Limit * 0.8).Degrees, comparison.RotationNeeded!.Value.Degrees);
        Assert.Matches(
            @"^the published 90° \(EN 1090-2:2018\) carries the joint past its elastic limit of 94\.2 kN \(the elastic line would give \d+\.\d kN\); this joint needs \d+(\.\d)?° for 75\.4 kN; it is published for steel grips, and this one is not$",
            comparison.ToString());
    }

    [Fact]
    public void The_tool_does_not_enter_the_comparison_and_the_tolerance_does()
    {
        RotationTightening tooled = Tightening.WithToolWindUp(Angle.FromDegrees(15), Torque.FromNewtonMeters(100));
        PublishedRotation published = PublishedRotation.Rcsc2014(Length.FromMillimeters(75), Length.FromMillimeters(20), SlopedFaces.None);
        RotationComparison comparison = tooled.Compare(published, Example.Limit * 2);
        Assert.Equal(Tightening.PreloadAt(published.Rotation).Preload, comparison.AtPublished.Preload);
        Assert.Equal((90, 180), (comparison.AtLeast.Rotation.Degrees, comparison.AtMost.Rotation.Degrees));
        Assert.Null(comparison.RotationNeeded);
        Assert.False(comparison.ReachesRequired);
        Assert.Equal(0, tooled.Compare(published, Tightening.SnugPreload * 0.5).RotationNeeded!.Value.Degrees);
    }

    /// <summary>By hand: F = M_snug/κ(µ) + θ P/(2π δ); δ and κ of the example, asymmetric friction.</summary>
    [Fact]
    public void Over_a_range_of_friction_the_comparison_takes_the_bad_end_of_each_question()
    {
        var friction = new FrictionRange(new FrictionCoefficients(0.09, 0.08), new FrictionCoefficients(0.17, 0.15));
        PublishedRotation published = PublishedRotation.Rcsc2014(Length.FromMillimeters(75), Length.FromMillimeters(20), SlopedFaces.None);
        double gainAt90 = 0.25 * Example.Lead / (Example.BoltCompliancePerEal + Example.SleeveCompliancePerEal);
        double snugHigh = Tightening.SnugTorque.NewtonMeters / ArmAt(0.17, 0.15), snugLow = Tightening.SnugTorque.NewtonMeters / ArmAt(0.09, 0.08);
        Force between = Force.FromNewtons(snugLow + gainAt90 * 180 / 90 * 0.98);
        var tightening = new RotationTightening(Example.Joint, Example.Model, Tightening.SnugTorque, between);

        RotationComparison comparison = tightening.Compare(published, Force.FromNewtons(snugHigh + gainAt90 * 1.001), friction);
        Close.To(snugHigh + gainAt90, comparison.AtLeast.Preload.Newtons, 1e-9);
        Close.To(snugLow + gainAt90 * 2, comparison.AtMost.Preload.Newtons, 1e-9);
        Close.To(90 * 1.001, comparison.RotationNeeded!.Value.Degrees, 1e-9);
        Assert.Equal(tightening.Compare(published, between).AtPublished.Preload, comparison.AtPublished.Preload);
        Assert.False(comparison.ReachesRequired);
        Assert.True(comparison.MayPassElasticLimit);
        Assert.False(comparison.CarriesPastElasticLimit);
        Assert.Contains("within the elastic limit of", comparison.ToString(), StringComparison.Ordinal);
        Assert.Contains(", which the greatest turn at the lowest friction passes; this joint needs 90.1°", comparison.ToString(), StringComparison.Ordinal);
        Assert.True(tightening.Compare(published, Force.FromNewtons(snugHigh + gainAt90 * 0.999), friction).ReachesRequired);
        Assert.True(tightening.Compare(published, Force.FromNewtons(snugHigh + gainAt90 * 1.001)).ReachesRequired);
    }

    /// <summary>κ = P/2π + µ_G d₂/(2 cos 30°) + µ_K D_b/2 with d₂ = d − 0.6495 P and D_b the mean of 32 mm and 22 mm.</summary>
    private static double ArmAt(double thread, double bearing) =>
        0.0025 / (2 * Math.PI) + thread * (0.02 - 0.649519052838329 * 0.0025) / (2 * Math.Cos(Math.PI / 6)) + bearing * 0.027 / 2;
}
