using FsCheck.Xunit;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using UnitsNet;

namespace Fastening.Tests.Rotation;

[Properties(Arbitrary = [typeof(AnyTurnedJoint)], MaxTest = 60)]
public class RotationScatterTests
{
    private static readonly AnyTurnedJoint Example = new(20, 0.125, 55, 30, 0.85, 1.9, 110, 0.14, 0.11);

    [Property]
    public void Friction_scatters_the_snug_preload_and_not_the_gain(AnyTurnedJoint any)
    {
        var friction = new FrictionRange(new FrictionCoefficients(any.ThreadFriction, any.BearingFriction), new FrictionCoefficients(any.ThreadFriction * 1.5, any.BearingFriction * 1.3));
        RotationTightening tightening = any.Tightening;
        Angle rotation = tightening.ElasticRotation * 0.8;
        PreloadRangeAfterRotation range = tightening.PreloadRangeAt(rotation, friction);
        Range<Force> snug = any.Model.PreloadRangeAt(tightening.SnugTorque, friction);
        Close.To((snug.High - snug.Low).Newtons, (range.Range.High - range.Range.Low).Newtons, 1e-10);
        Close.To(snug.Low.Newtons, range.SnugRange.Low.Newtons);
        Assert.True(range.Range.HighOverLow < snug.HighOverLow);
        Assert.True(range.IsElastic);

        PreloadRangeAfterRotation same = tightening.PreloadRangeAt(rotation, snug);
        Close.To(range.Range.Low.Newtons, same.Range.Low.Newtons);
        Close.To(range.Range.High.Newtons, same.Range.High.Newtons);
    }

    [Property]
    public void Every_preload_within_the_range_of_friction_lies_in_the_band(AnyTurnedJoint any, double a, double b)
    {
        var friction = new FrictionRange(new FrictionCoefficients(any.ThreadFriction, any.BearingFriction), new FrictionCoefficients(any.ThreadFriction * 1.5, any.BearingFriction * 1.3));
        RotationTightening tightening = any.Tightening.WithBoltTwist().WithToolWindUp(Angle.FromDegrees(4), any.Model.TorqueFor(any.Limit));
        ToleranceWindow<Angle> turn = ToleranceWindow.FromDeviations(tightening.ElasticRotation * 0.7, Ratio.FromPercent(5), Ratio.FromPercent(6));
        ToleranceWindow<Torque> snug = ToleranceWindow.FromDeviations(tightening.SnugTorque, Ratio.FromPercent(4), Ratio.FromPercent(3));
        Range<Force> band = tightening.PreloadRangeAt(turn, snug, friction).Range;
        double p = Share(a), q = Share(b);
        FrictionTorqueModel model = any.Model.WithFriction(new FrictionCoefficients(any.ThreadFriction * (1 + 0.5 * p), any.BearingFriction * (1 + 0.3 * q)));
        Torque torque = snug.Lower!.Value + (snug.Upper!.Value - snug.Lower!.Value) * q;
        Angle rotation = turn.Lower!.Value + (turn.Upper!.Value - turn.Lower!.Value) * p;
        double preload = new RotationTightening(any.Joint, model, torque, any.Limit * 2).WithBoltTwist()
            .WithToolWindUp(Angle.FromDegrees(4), any.Model.TorqueFor(any.Limit)).PreloadAt(rotation).Preload.Newtons;
        Assert.InRange(preload, band.Low.Newtons * (1 - 1e-12), band.High.Newtons * (1 + 1e-12));
    }

    [Property]
    public void The_band_is_reached_at_its_corners(AnyTurnedJoint any)
    {
        var low = new FrictionCoefficients(any.ThreadFriction, any.BearingFriction);
        var high = new FrictionCoefficients(any.ThreadFriction * 1.5, any.BearingFriction * 1.3);
        ToleranceWindow<Angle> turn = ToleranceWindow.FromDeviations(any.Tightening.ElasticRotation * 0.7, Ratio.FromPercent(5), Ratio.FromPercent(6));
        ToleranceWindow<Torque> snug = ToleranceWindow.FromDeviations(any.Tightening.SnugTorque, Ratio.FromPercent(4), Ratio.FromPercent(3));
        Range<Force> band = any.Tightening.PreloadRangeAt(turn, snug, new FrictionRange(low, high)).Range;
        double gainPerRadian = any.Lead / (2 * Math.PI * (any.BoltCompliancePerEal + any.SleeveCompliancePerEal));
        Close.To(
            any.Model.WithFriction(high).PreloadAt(snug.Lower!.Value).Newtons + turn.Lower!.Value.Radians * gainPerRadian, band.Low.Newtons, 1e-10);
        Close.To(
            any.Model.WithFriction(low).PreloadAt(snug.Upper!.Value).Newtons + turn.Upper!.Value.Radians * gainPerRadian, band.High.Newtons, 1e-10);
    }

    [Property]
    public void With_a_stated_stiffness_error_every_joint_within_it_lies_in_the_band(AnyTurnedJoint any, double a, double b, double c)
    {
        // Springs, twist and wind-up are added up here; the library has its own sum.
        var low = new FrictionCoefficients(any.ThreadFriction, any.BearingFriction);
        var high = new FrictionCoefficients(any.ThreadFriction * 1.5, any.BearingFriction * 1.3);
        const double error = 0.16;
        Torque wound = any.Model.TorqueFor(any.Limit);
        RotationTightening tightening = any.Tightening.WithStiffnessError(Ratio.FromPercent(16)).WithBoltTwist().WithToolWindUp(Angle.FromDegrees(4), wound);
        ToleranceWindow<Angle> turn = ToleranceWindow.FromLimits(tightening.ElasticRotation * 0.60, tightening.ElasticRotation * 0.65);
        ToleranceWindow<Torque> snug = ToleranceWindow.FromLimits(tightening.SnugTorque * 0.96, tightening.SnugTorque * 1.03);
        PreloadRangeAfterRotation found = tightening.PreloadRangeAt(turn, snug, new FrictionRange(low, high));
        double Preload(double p, double q, double torqueAndTurn, double resilience)
        {
            FrictionTorqueModel model = any.Model.WithFriction(new FrictionCoefficients(any.ThreadFriction * (1 + 0.5 * p), any.BearingFriction * (1 + 0.3 * q)));
            double kappa = model.TorqueFor(Force.FromNewtons(1)).NewtonMeters;
            double lambda = kappa - any.BearingFriction * (1 + 0.3 * q) * (1.6 + 1.1) / 4 * any.DiameterMm * 1e-3;
            double perPreload = 2 * Math.PI * (any.BoltCompliancePerEal + any.SleeveCompliancePerEal) * resilience / any.Lead
                + lambda * any.TwistPerGj + kappa * 4 * Math.PI / 180 / wound.NewtonMeters;
            double torque = snug.Lower!.Value.NewtonMeters + (snug.Upper - snug.Lower)!.Value.NewtonMeters * torqueAndTurn;
            double radians = turn.Lower!.Value.Radians + (turn.Upper - turn.Lower)!.Value.Radians * torqueAndTurn;
            return torque / kappa + radians / perPreload;
        }

        Assert.Equal(16, found.StiffnessError!.Value.Percent, 1e-12);
        double lowest = Preload(1, 1, 0, 1 / (1 - error)), highest = Preload(0, 0, 1, 1 - error);
        Close.To(Math.Min(lowest, any.Limit.Newtons), found.Range.Low.Newtons, 1e-10);
        Close.To(highest, found.Range.High.Newtons, 1e-10);
        Assert.Equal(highest <= any.Limit.Newtons, found.IsElastic);
        Assert.InRange(Preload(Share(a), Share(b), Share(c), 1 + error * (2 * Share(a + b) - 1)), lowest, highest);
    }

    [Property]
    public void A_joint_whose_springs_are_softer_or_stiffer_by_the_stated_error_lies_in_the_band(AnyTurnedJoint any, double share)
    {
        // Springs, not resiliences: 16 % less stiffness is 19 % more resilience.
        const double error = 0.16;
        Angle turn = any.Tightening.ElasticRotation * 0.6;
        FrictionRange friction = new(any.Model.Friction, any.Model.Friction);
        Range<Force> band = any.Tightening.WithStiffnessError(Ratio.FromPercent(16)).PreloadRangeAt(turn, friction).Range;
        double calculated = any.Lead / (2 * Math.PI * (any.BoltCompliancePerEal + any.SleeveCompliancePerEal));
        double snug = any.Model.PreloadAt(any.Tightening.SnugTorque).Newtons;
        foreach (double stiffness in (double[])[1 - error, 1 + error, 1 + error * (2 * Share(share) - 1)])
        {
            double preload = snug + turn.Radians * calculated * stiffness;
            Assert.InRange(preload, band.Low.Newtons * (1 - 1e-10), band.High.Newtons * (1 + 1e-10));
        }
    }

    [Property]
    public void Without_a_stated_stiffness_error_the_band_says_that_it_counts_none(AnyTurnedJoint any)
    {
        FrictionRange friction = new(any.Model.Friction, any.Model.Friction);
        PreloadRangeAfterRotation found = any.Tightening.PreloadRangeAt(any.Tightening.ElasticRotation * 0.5, friction);
        Assert.Null(found.StiffnessError);
        Assert.Contains("stiffness as calculated", found.ToString(), StringComparison.Ordinal);
        PreloadRangeAfterRotation stated = any.Tightening.WithStiffnessError(Ratio.FromPercent(10)).PreloadRangeAt(any.Tightening.ElasticRotation * 0.5, friction);
        Assert.True(stated.Range.Low < found.Range.Low && stated.Range.High > found.Range.High);
        PreloadRangeAfterRotation ofSnug = any.Tightening.WithStiffnessError(Ratio.FromPercent(10))
            .PreloadRangeAt(any.Tightening.ElasticRotation * 0.5, any.Model.PreloadRangeAt(any.Tightening.SnugTorque, friction));
        Close.To(stated.Range.Low.Newtons, ofSnug.Range.Low.Newtons);
        Close.To(stated.Range.High.Newtons, ofSnug.Range.High.Newtons);
    }

    [Fact]
    public void Uncertainty_agrees_with_a_million_trials()
    {
        // Small uncertainties, so that the first order holds: the trial's own error is 1/√(2·10⁶) = 0.07 %, three of them 0.2 %.
        RotationTightening tightening = Example.Tightening.WithBoltTwist();
        Angle rotation = tightening.ElasticRotation * 0.75;
        Force uSnug = Force.FromNewtons(900);
        Angle uTheta = Angle.FromDegrees(0.8);
        var random = new Random(20260401);
        double lead = Example.Lead, delta = Example.BoltCompliancePerEal + Example.SleeveCompliancePerEal;
        double lambda = Example.Model.BreakdownAt(Torque.FromNewtonMeters(100)) is { } parts
            ? (parts.PitchTorque + parts.ThreadFrictionTorque).NewtonMeters / Example.Model.PreloadAt(Torque.FromNewtonMeters(100)).Newtons : 0;
        double[] trials = new double[1_000_000];
        for (int i = 0; i < trials.Length; i++)
        {
            double snug = Normal.Sample(random, tightening.SnugPreload.Newtons, uSnug.Newtons);
            double theta = Normal.Sample(random, rotation.Radians, uTheta.Radians);
            double perPreload = 2 * Math.PI * delta * Normal.Sample(random, 1, 0.02) / lead + lambda * Example.TwistPerGj;
            trials[i] = snug + theta / perPreload;
        }

        double computed = tightening.StandardUncertaintyAt(rotation, MeasurementUncertainty.Standard(uSnug), MeasurementUncertainty.Standard(uTheta), MeasurementUncertainty.Standard(Ratio.FromPercent(2))).Newtons;
        Close.To(trials.StandardDeviation(), computed, 0.003);

        // Without bolt twist the printed form: u² = u_snug² + ΔF²((u_θ/Δθ)² + (u_δ/δ)²).
        RotationTightening bare = Example.Tightening;
        double gain = bare.PreloadAt(rotation).PreloadGain.Newtons;
        Close.To(
            Math.Sqrt(900.0 * 900 + gain * gain * (Math.Pow(0.8 / rotation.Degrees, 2) + 0.02 * 0.02)),
            bare.StandardUncertaintyAt(rotation, MeasurementUncertainty.Standard(uSnug), MeasurementUncertainty.Standard(uTheta), MeasurementUncertainty.Standard(Ratio.FromPercent(2))).Newtons);
    }

    [Property]
    public void At_a_preload_the_highest_thread_friction_twists_the_bolt_most(AnyTurnedJoint any)
    {
        var strength = new BoltStrength(Pressure.FromMegapascals(800), Pressure.FromMegapascals(640));
        Force low = any.Model.PermittedPreload(strength, Ratio.FromPercent(100));
        Force high = any.Model.WithFriction(new FrictionCoefficients(any.ThreadFriction * 1.5, any.BearingFriction)).PermittedPreload(strength, Ratio.FromPercent(100));
        Assert.True(high < low);
    }

    private static double Share(double any) => double.IsFinite(any) ? Math.Abs(Math.Sin(any)) : 0.5;
}
