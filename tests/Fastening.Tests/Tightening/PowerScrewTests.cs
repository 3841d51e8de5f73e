using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tightening;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 200)]
public class PowerScrewTests
{
    /// <summary>Shigley 9th ed. (2011), Example 8-1: square 32 × 4 mm, two starts, f = f_c = 0.08, d_c = 40 mm, 6.4 kN.</summary>
    [Fact]
    public void Shigley_example_8_1()
    {
        ScrewThread thread = Square(starts: 2, pitch: 4);
        FrictionTorqueModel screw = TorquePreloadModel
            .FromFriction(thread, BearingSurface.OfDiameter(Length.FromMillimeters(40)), FrictionCoefficients.Uniform(0.08))
            .WithConvention(TorqueConvention.Shigley);

        Assert.Equal(26.18, screw.TorqueFor(Force.FromNewtons(6400)).NewtonMeters, 2);
        Assert.Equal(9.77, screw.LooseningTorqueAt(Force.FromNewtons(6400)).NewtonMeters, 2);
        Assert.Equal(0.311, screw.Efficiency, 3);
        Assert.False(screw.IsSelfLocking);
        Assert.False(screw.IsOverhauling);
        Assert.Equal(8 / (30 * Math.PI), screw.HoldingFriction, 12);
        Assert.True(screw.WithFriction(new FrictionCoefficients(0.08, 0)).IsOverhauling);
    }

    [Property]
    public void Efficiency_is_work_out_over_work_in(AnyJoint joint, AnyPreload preload)
    {
        foreach (TorqueConvention convention in TorqueConvention.Named)
        {
            FrictionTorqueModel model = joint.Model.WithConvention(convention).WithPrevailing(Torque.FromNewtonMeters(3));
            double workOut = preload.Newtons * joint.PitchMm / 1e3;
            double workIn = 2 * Math.PI * model.WithPrevailing(Torque.Zero).TorqueFor(preload.Force).NewtonMeters;
            Close.To(workOut / workIn, model.Efficiency);
            Assert.Equal(model.Efficiency, Derivation.Of(() => model.Efficiency).Result);
            Assert.Equal(model.HoldingFriction, Derivation.Of(() => model.HoldingFriction).Result);
        }
    }

    [Property]
    public void Without_friction_nothing_is_lost(AnyJoint joint)
    {
        FrictionTorqueModel model = joint.Model.WithFriction(new FrictionCoefficients(0, 0));
        Close.To(1, model.Efficiency);
        Close.To(1, model.WithConvention(TorqueConvention.PowerScrew).Efficiency);
        Assert.True(model.IsOverhauling && !model.IsSelfLocking);
    }

    /// <summary>At the holding friction the thread's loosening torque changes sign, by bisection on the signed torque.</summary>
    [Property]
    public void Holding_friction_is_where_the_loosening_torque_changes_sign(AnyJoint joint)
    {
        foreach (TorqueConvention convention in new[] { TorqueConvention.Iso16047, TorqueConvention.MachinerysHandbook, TorqueConvention.PowerScrew })
        {
            FrictionTorqueModel model = joint.Model.WithConvention(convention);
            double low = 0, high = 0.5;
            for (int n = 0; n < 60; n++)
            {
                double middle = (low + high) / 2;
                FrictionTorqueModel tried = model.WithFriction(new FrictionCoefficients(middle, 0));
                Assert.Equal(tried.IsOverhauling, tried.LooseningTorqueAt(Force.FromKilonewtons(10)).NewtonMeters < 0);
                if (tried.IsOverhauling) low = middle;
                else high = middle;
            }

            Close.To(low, model.HoldingFriction, 1e-10);
            Assert.False(model.WithFriction(new FrictionCoefficients(model.HoldingFriction * 0.999, 0)).IsSelfLocking);
            Assert.True(model.WithFriction(new FrictionCoefficients(model.HoldingFriction * 1.001, 0)).IsSelfLocking);
        }
    }

    /// <summary>A textbook theorem: a self-locking screw without collar is less than 50 % efficient (square thread, exact form).</summary>
    [Property]
    public void A_self_locking_screw_is_less_than_half_efficient(byte pitchPart, byte frictionPart)
    {
        FrictionTorqueModel screw = TorquePreloadModel
            .FromFriction(
                Square(starts: 1, pitch: 1 + pitchPart / 100.0), BearingSurface.OfDiameter(Length.FromMillimeters(40)),
                new FrictionCoefficients(0.001 + frictionPart / 1000.0, 0))
            .WithConvention(TorqueConvention.PowerScrew);
        Assert.True(!screw.IsSelfLocking || screw.Efficiency <= 0.5 + 1e-12);
        Assert.Equal(screw.IsSelfLocking, !screw.IsOverhauling);
    }

    private static ScrewThread Square(int starts, double pitch) => ScrewThread.FromProfile(
        Length.FromMillimeters(32), Length.FromMillimeters(pitch), Angle.Zero, starts, Length.FromMillimeters(30), Length.FromMillimeters(28));
}
