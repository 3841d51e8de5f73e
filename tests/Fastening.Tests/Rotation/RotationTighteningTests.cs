using Fastening.Equations;
using FsCheck.Xunit;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace Fastening.Tests.Rotation;

[Properties(Arbitrary = [typeof(AnyTurnedJoint)], MaxTest = 100)]
public class RotationTighteningTests
{
    private static readonly AnyTurnedJoint Example = new(20, 0.125, 55, 30, 0.85, 1.9, 110, 0.14, 0.11);

    private static readonly CoaxialExtension Bar = CoaxialExtension.Round(
        Length.FromMillimeters(260), Length.FromMillimeters(16), Pressure.FromGigapascals(79));

    [Property]
    public void Helix_advance_is_stretch_plus_compression(AnyTurnedJoint any)
    {
        // What the helix advances past snug is taken up by bolt and sleeve, each E A/L computed in the test.
        RotationTightening tightening = any.Tightening;
        PreloadAfterRotation after = tightening.PreloadAt(tightening.ElasticRotation * 0.6);
        double gain = after.PreloadGain.Newtons;
        double advance = after.Rotation.Degrees / 360 * any.Lead;
        Close.To(advance, gain * any.BoltCompliancePerEal + gain * any.SleeveCompliancePerEal, 1e-11);
        Close.To(any.Joint.PreloadGainAt(after.Rotation).Newtons, gain);
    }

    [Property]
    public void Twist_and_wind_up_agree_with_the_balance_of_every_part(AnyTurnedJoint any)
    {
        // Unknowns: preload, rotation of the nut, twist of the bolt, torque. Solved together as one linear system.
        FrictionTorqueModel model = any.Model;
        double kappa = model.TorqueFor(Force.FromNewtons(1)).NewtonMeters;
        double lambda = kappa - any.BearingFriction * (1.6 + 1.1) / 4 * any.DiameterMm * 1e-3;
        double tool = 1 / Bar.Stiffness.NewtonMetersPerRadian, delta = any.BoltCompliancePerEal + any.SleeveCompliancePerEal;
        RotationTightening tightening = any.Tightening.WithBoltTwist().WithCoaxialExtension(Bar);
        PreloadAfterRotation after = tightening.PreloadAt(tightening.ElasticRotation * 0.8);
        double scale = any.Limit.Newtons;
        Matrix<double> balance = Matrix<double>.Build.DenseOfArray(new[,]
        {
            { kappa * scale, 0, 0, -1 },                                    // torque
            { lambda * any.TwistPerGj * scale, 0, -1, 0 },                  // twist of the bolt
            { -2 * Math.PI * delta / any.Lead * scale, 1, -1, 0 },          // helix: nut against thread
            { 0, 1, 0, tool },                                              // tool: nut and wind-up
        });
        Vector<double> solved = balance.Solve(Vector<double>.Build.DenseOfArray([0, 0, 0, after.Rotation.Radians]));
        Close.To(solved[0] * scale, after.PreloadGain.Newtons, 1e-9);
        Close.To(solved[2], after.BoltTwist.Radians, 1e-9);
        Close.To(solved[3] * tool, after.ToolWindUp.Radians, 1e-9);
    }

    [Fact]
    public void Small_steps_of_the_tool_add_up_to_the_closed_form()
    {
        // Each half degree of the tool: wind-up and twist follow the torque of the step before, the rest turns the nut; repeated until at rest.
        RotationTightening tightening = Example.Tightening.WithBoltTwist().WithCoaxialExtension(Bar);
        FrictionTorqueModel model = Example.Model;
        double tool = 1 / Bar.Stiffness.NewtonMetersPerRadian, delta = Example.BoltCompliancePerEal + Example.SleeveCompliancePerEal;
        double snug = tightening.SnugPreload.Newtons, preload = snug;
        for (double degrees = 0.5; degrees <= 30; degrees += 0.5)
        {
            for (int settle = 0; settle < 400; settle++)
            {
                double torque = model.TorqueFor(Force.FromNewtons(preload)).NewtonMeters - tightening.SnugTorque.NewtonMeters;
                double inThread = model.BreakdownAt(model.TorqueFor(Force.FromNewtons(preload))) is { } now && model.BreakdownAt(tightening.SnugTorque) is { } then
                    ? (now.PitchTorque + now.ThreadFrictionTorque - then.PitchTorque - then.ThreadFrictionTorque).NewtonMeters : 0;
                double nut = degrees * Math.PI / 180 - torque * tool - inThread * Example.TwistPerGj;
                preload += 0.3 * (snug + nut * Example.Lead / (2 * Math.PI) / delta - preload);
            }

            Close.To(preload, tightening.PreloadAt(Angle.FromDegrees(degrees)).Preload.Newtons, 1e-9);
        }
    }

    [Property]
    public void Rotation_and_preload_come_back_and_rise_together(AnyTurnedJoint any)
    {
        foreach (RotationTightening tightening in new[] { any.Tightening, any.Tightening.WithBoltTwist(), any.Tightening.WithBoltTwist().WithCoaxialExtension(Bar) })
        {
            Assert.Equal(0, tightening.RotationFor(tightening.SnugPreload).Degrees);
            double last = 0;
            for (double share = 0.2; share <= 1; share += 0.16)
            {
                Force preload = any.Limit * share;
                Angle rotation = tightening.RotationFor(preload);
                Assert.True(rotation.Degrees > last);
                last = rotation.Degrees;
                Close.To(preload.Newtons, tightening.PreloadAt(rotation).Preload.Newtons);
            }
        }
    }

    [Property]
    public void Twist_and_wind_up_cost_rotation(AnyTurnedJoint any)
    {
        RotationTightening bare = any.Tightening, twisted = bare.WithBoltTwist(), tooled = twisted.WithCoaxialExtension(Bar);
        Assert.True(bare.ElasticRotation < twisted.ElasticRotation && twisted.ElasticRotation < tooled.ElasticRotation);
        PreloadAfterRotation end = tooled.PreloadAt(tooled.ElasticRotation);
        Close.To(tooled.ElasticRotation.Degrees, bare.ElasticRotation.Degrees + end.BoltTwist.Degrees + end.ToolWindUp.Degrees);
        Assert.Equal(0, bare.PreloadAt(Angle.FromDegrees(10)).BoltTwist.Degrees);
    }

    [Property]
    public void Slopes_of_joint_tool_and_bolt_add_as_compliances(AnyTurnedJoint any)
    {
        double kappa = any.Model.TorqueFor(Force.FromNewtons(1)).NewtonMeters;
        double lambda = kappa - any.BearingFriction * (1.6 + 1.1) / 4 * any.DiameterMm * 1e-3;
        double joint = kappa * any.Lead / (2 * Math.PI * (any.BoltCompliancePerEal + any.SleeveCompliancePerEal));
        Close.To(joint, any.Tightening.ElasticSlope.NewtonMetersPerRadian, 1e-11);
        double measured = 1 / (1 / joint + 1 / Bar.Stiffness.NewtonMetersPerRadian + lambda / kappa * any.TwistPerGj);
        Close.To(measured, any.Tightening.WithBoltTwist().WithCoaxialExtension(Bar).ElasticSlope.NewtonMetersPerRadian, 1e-9);
    }

    [Property]
    public void Slope_is_the_torque_between_two_rotations(AnyTurnedJoint any)
    {
        RotationTightening tightening = any.Tightening.WithBoltTwist().WithCoaxialExtension(Bar);
        Angle start = tightening.ElasticRotation * 0.2, end = tightening.ElasticRotation * 0.7;
        Torque rise = any.Model.TorqueFor(tightening.PreloadAt(end).Preload) - any.Model.TorqueFor(tightening.PreloadAt(start).Preload);
        Close.To(rise.NewtonMeters / (end - start).Radians, tightening.ElasticSlope.NewtonMetersPerRadian, 1e-11);
        Torque target = any.Model.TorqueFor(any.Limit);
        Close.To(tightening.ElasticRotation.Degrees, tightening.HardnessAngleFromSnug(target).Degrees, 1e-11);
        Close.To(0.35 * target.NewtonMeters / tightening.ElasticSlope.NewtonMetersPerDegree, tightening.HardnessAngleFromShare(target, Ratio.FromPercent(65)).Degrees, 1e-11);
    }

    [Property]
    public void A_measured_wind_up_is_the_bar_it_was_measured_on(AnyTurnedJoint any)
    {
        var onBar = new TorqueWrench(Length.FromMillimeters(400)).WithCoaxialExtension(Bar);
        Torque torque = Torque.FromNewtonMeters(75);
        RotationTightening measured = any.Tightening.WithToolWindUp(onBar.WindUpAt(torque), torque);
        Close.To(any.Tightening.WithCoaxialExtension(Bar).ElasticRotation.Degrees, measured.ElasticRotation.Degrees, 1e-11);
        Assert.Equal(2, measured.WithCoaxialExtension(Bar).PreloadAt(any.Tightening.ElasticRotation).ToolWindUp.Degrees
            / measured.WithCoaxialExtension(Bar).PreloadAt(any.Tightening.ElasticRotation).PreloadGain.Newtons
            / (measured.PreloadAt(any.Tightening.ElasticRotation).ToolWindUp.Degrees / measured.PreloadAt(any.Tightening.ElasticRotation).PreloadGain.Newtons), 9);
    }

    [Fact]
    public void Fastener_turns_less_than_the_tool_while_the_torque_rises_and_more_while_it_falls()
    {
        // 260 mm of 16 mm round steel: J = π/32·16⁴ = 6434 mm⁴, 0.26/(79e9·6.434e-9) = 5.1153e-4 rad/(N·m); 250 N·m wind it up by 7.327°.
        RotationTightening tightening = Example.Tightening.WithCoaxialExtension(Bar);
        double windUp = 250 * 0.26 / (79e9 * Math.PI / 32 * Math.Pow(0.016, 4)) * 180 / Math.PI;
        Torque low = Torque.FromNewtonMeters(60), high = Torque.FromNewtonMeters(310);
        Close.To(64 - windUp, tightening.FastenerRotationAt(Angle.FromDegrees(64), low, high).Degrees);
        Close.To(64 + windUp, tightening.FastenerRotationAt(Angle.FromDegrees(64), high, low).Degrees);
        Assert.Equal(64, Example.Tightening.FastenerRotationAt(Angle.FromDegrees(64), low, high).Degrees, 12);
    }

    [Property]
    public void Every_derivation_ends_on_its_answer(AnyTurnedJoint any)
    {
        RotationTightening tightening = any.Tightening.WithBoltTwist().WithCoaxialExtension(Bar).WithToolWindUp(Angle.FromDegrees(0.7), Torque.FromNewtonMeters(90));
        Angle rotation = tightening.ElasticRotation * 0.7;
        Force force = any.Limit * 0.9;
        EndsOn(tightening.PreloadAt(rotation).Preload.Newtons, Derivation.Of(() => tightening.PreloadAt(rotation)));
        Close.To(tightening.RotationFor(force).Radians, Derivation.Of(() => tightening.RotationFor(force)).Result, 1e-15);
        EndsOn(tightening.ElasticSlope.NewtonMetersPerRadian, Derivation.Of(() => tightening.ElasticSlope));
        EndsOn(
            tightening.StandardUncertaintyAt(rotation, MeasurementUncertainty.Standard(force * 0.1), MeasurementUncertainty.Standard(rotation * 0.02), MeasurementUncertainty.Standard(Ratio.FromPercent(7))).Newtons,
            Derivation.Of(() => tightening.StandardUncertaintyAt(rotation, MeasurementUncertainty.Standard(force * 0.1), MeasurementUncertainty.Standard(rotation * 0.02), MeasurementUncertainty.Standard(Ratio.FromPercent(7)))));
    }

    private static void EndsOn(double answer, Derivation work)
    {
        Assert.Equal(answer, work.Result);
        for (int i = 0; i < work.Steps.Count - 1; i++)
        {
            double result = work.Steps[i].Result;
            Assert.Contains(work.Steps.Skip(i + 1), later => later.Inputs.Contains(result));
            Assert.Equal(1, work.Steps.Count(step => step.ToString() == work.Steps[i].ToString()));
        }
    }
}
