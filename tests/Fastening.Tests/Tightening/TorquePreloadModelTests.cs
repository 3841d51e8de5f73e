using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tightening;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 300)]
public class TorquePreloadModelTests
{
    private static readonly TorqueConvention[] Conventions =
        [TorqueConvention.Iso16047, TorqueConvention.MachinerysHandbook, TorqueConvention.Vdi2230, TorqueConvention.Shigley];

    [Property]
    public void Preload_and_torque_come_back(AnyJoint joint, AnyPreload preload, AnyTorque torque)
    {
        foreach (TorqueConvention convention in Conventions)
        {
            FrictionTorqueModel model = joint.Model.WithConvention(convention).WithPrevailing(Torque.FromNewtonMeters(torque.NewtonMeters * 1e-3));
            Torque there = model.TorqueFor(preload.Force);
            Close.To(preload.Newtons, model.PreloadAt(there).Newtons, 1e-12, preload.Newtons + model.PrevailingTorque.NewtonMeters / joint.DiameterMm * 1e4);
        }
    }

    [Property]
    public void More_torque_gives_more_preload_and_more_friction_gives_less(AnyJoint joint, AnyTorque torque)
    {
        Force preload = joint.Model.PreloadAt(torque.Torque);
        Assert.True(joint.Model.PreloadAt(torque.Torque * 1.01) > preload);
        Assert.True(joint.Model.WithFriction(new FrictionCoefficients(joint.ThreadFriction * 1.01, joint.BearingFriction)).PreloadAt(torque.Torque) < preload);
        Assert.True(joint.Model.WithFriction(new FrictionCoefficients(joint.ThreadFriction, joint.BearingFriction * 1.01)).PreloadAt(torque.Torque) < preload);
    }

    [Property]
    public void Preload_range_holds_the_preload_of_every_friction_inside_it(AnyJoint joint, AnyTorque torque)
    {
        var range = new FrictionRange(
            new FrictionCoefficients(joint.ThreadFriction * 0.8, joint.BearingFriction * 0.7),
            new FrictionCoefficients(joint.ThreadFriction * 1.3, joint.BearingFriction * 1.4));
        Range<Force> band = joint.Model.PreloadRangeAt(torque.Torque, range);
        Force nominal = joint.Model.PreloadAt(torque.Torque);
        Assert.True(band.Low < nominal && nominal < band.High);
        Assert.Equal(joint.Model.WithFriction(range.High).PreloadAt(torque.Torque).Newtons, band.Low.Newtons);
        Assert.Equal(joint.Model.WithFriction(range.Low).PreloadAt(torque.Torque).Newtons, band.High.Newtons);
        Close.To(band.High / band.Low, band.HighOverLow!.Value);
    }

    [Property]
    public void Torque_scales_with_the_size_of_the_joint(AnyJoint joint, AnyPreload preload)
    {
        AnyJoint twice = joint with { DiameterMm = joint.DiameterMm * 2, PitchMm = joint.PitchMm * 2, OuterMm = joint.OuterMm * 2, InnerMm = joint.InnerMm * 2 };
        Close.To(2 * joint.Model.TorqueFor(preload.Force).NewtonMeters, twice.Model.TorqueFor(preload.Force).NewtonMeters);
        Close.To(joint.Model.NutFactor, twice.Model.NutFactor);
    }

    [Property]
    public void The_parts_of_a_torque_add_up(AnyJoint joint, AnyTorque torque)
    {
        foreach (TorqueConvention convention in Conventions)
        {
            FrictionTorqueModel model = joint.Model.WithConvention(convention).WithPrevailing(torque.Torque * 0.07);
            TorqueBreakdown parts = model.BreakdownAt(torque.Torque);
            Close.To(torque.NewtonMeters, parts.Total.NewtonMeters, 4 * 2.3e-16);
            Assert.Equal(
                parts.PitchTorque.NewtonMeters + parts.ThreadFrictionTorque.NewtonMeters + parts.BearingFrictionTorque.NewtonMeters + parts.PrevailingTorque.NewtonMeters,
                parts.Total.NewtonMeters);
            Assert.InRange(parts.PitchShare.DecimalFractions, 0, 1);
        }
    }

    [Property]
    public void Without_friction_the_work_of_a_turn_is_preload_times_lead(AnyJoint joint, AnyPreload preload)
    {
        // Energy: 2π M = F P_h, an independent route to the pitch torque; holds in every form without friction.
        foreach (TorqueConvention convention in new[] { TorqueConvention.Iso16047, TorqueConvention.MachinerysHandbook, TorqueConvention.Iso16047.WithForm(TorqueForm.Exact) })
        {
            FrictionTorqueModel model = joint.Model.WithFriction(new FrictionCoefficients(0, 0)).WithConvention(convention);
            Close.To(preload.Newtons * joint.PitchMm / 1000, 2 * Math.PI * model.TorqueFor(preload.Force).NewtonMeters);
            Assert.False(model.IsSelfLocking);
            Close.To(-model.TorqueFor(preload.Force).NewtonMeters, model.LooseningTorqueAt(preload.Force).NewtonMeters);
        }
    }

    [Property]
    public void Exact_form_follows_the_force_balance_on_the_flank_in_space(AnyJoint joint, AnyPreload preload)
    {
        // Independent route: unit vectors in the tangent, radial and axial directions at the mean diameter. The flank normal is square to the
        // helix tangent and to the flank's line in the axial plane; friction acts along the helix. Axial balance gives N, moment gives M.
        FrictionTorqueModel model = joint.Model.WithConvention(TorqueConvention.Iso16047.WithForm(TorqueForm.Exact).WithFlankSection(FlankSection.Normal));
        double r = model.Thread.PitchDiameter.Meters / 2, phi = Math.Atan(joint.PitchMm / 1000 / (2 * Math.PI * r)), alpha = Math.PI / 6;
        (double T, double R, double A) helix = (Math.Cos(phi), 0, Math.Sin(phi)), flank = (0, Math.Cos(alpha), Math.Sin(alpha));
        (double T, double R, double A) n = (helix.R * flank.A - helix.A * flank.R, helix.A * flank.T - helix.T * flank.A, helix.T * flank.R - helix.R * flank.T);
        double size = Math.Sqrt(n.T * n.T + n.R * n.R + n.A * n.A);
        n = (n.T / size, n.R / size, n.A / size);
        double axial = n.A - joint.ThreadFriction * helix.A, tangential = -n.T + joint.ThreadFriction * helix.T;
        double threadTorque = preload.Newtons / axial * tangential * r;
        double bearingTorque = preload.Newtons * joint.BearingFriction * model.Bearing.EffectiveDiameter.Meters / 2 / Math.Sin(joint.SeatDegrees * Math.PI / 360);
        Close.To(threadTorque + bearingTorque, model.TorqueFor(preload.Force).NewtonMeters);
    }

    [Property]
    public void Exact_form_lies_above_the_linear_one(AnyJoint joint, AnyPreload preload)
    {
        Torque linear = joint.Model.TorqueFor(preload.Force);
        Assert.True(joint.Model.WithConvention(TorqueConvention.Iso16047.WithForm(TorqueForm.Exact)).TorqueFor(preload.Force) > linear);
    }

    [Property]
    public void Loosening_takes_less_than_tightening_and_friction_holds_where_it_says_so(AnyJoint joint, AnyPreload preload)
    {
        foreach (TorqueConvention convention in Conventions)
        {
            FrictionTorqueModel model = joint.Model.WithConvention(convention);
            Assert.True(model.LooseningTorqueAt(preload.Force) < model.TorqueFor(preload.Force));
        }

        // Linear form: M_t − M_L = F P_h/π, whatever the friction (formulas 2.5).
        Close.To(
            preload.Newtons * joint.PitchMm / 1000 / Math.PI,
            joint.Model.TorqueFor(preload.Force).NewtonMeters - joint.Model.LooseningTorqueAt(preload.Force).NewtonMeters,
            1e-12,
            joint.Model.TorqueFor(preload.Force).NewtonMeters);
    }

    [Fact]
    public void A_steep_slippery_thread_must_be_held()
    {
        ScrewThread screw = ScrewThread.FromProfile(
            Length.FromMillimeters(32), Length.FromMillimeters(4), Angle.Zero, 6, Length.FromMillimeters(30), Length.FromMillimeters(28));
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(
            screw, BearingSurface.Annulus(Length.FromMillimeters(42), Length.FromMillimeters(38)), new FrictionCoefficients(0.08, 0));
        Assert.False(model.IsSelfLocking);
        Assert.True(model.LooseningTorqueAt(Force.FromKilonewtons(6)).NewtonMeters < 0);
        Assert.True(model.WithFriction(new FrictionCoefficients(0.3, 0)).IsSelfLocking);
    }

    [Property]
    public void Nut_factor_reproduces_the_model_it_came_from(AnyJoint joint, AnyTorque torque)
    {
        NutFactorModel same = TorquePreloadModel.FromNutFactor(joint.Model.NutFactor, joint.Thread.NominalDiameter);
        Close.To(joint.Model.PreloadAt(torque.Torque).Newtons, same.PreloadAt(torque.Torque).Newtons);
        Range<Force> band = same.PreloadRangeAt(torque.Torque, joint.Model.NutFactor * 0.9, joint.Model.NutFactor * 1.2);
        Assert.True(band.Low < same.PreloadAt(torque.Torque) && same.PreloadAt(torque.Torque) < band.High);
    }

    [Property]
    public void A_torque_below_the_prevailing_torque_gives_no_preload(AnyJoint joint, AnyTorque torque)
    {
        FrictionTorqueModel model = joint.Model.WithPrevailing(torque.Torque);
        Assert.Equal(0, model.PreloadAt(torque.Torque * 0.99).Newtons);
        Assert.Equal(torque.NewtonMeters, model.TorqueFor(Force.Zero).NewtonMeters);
        TorqueBreakdown parts = model.BreakdownAt(torque.Torque * 0.5);
        Assert.Equal(parts.Total.NewtonMeters, parts.PrevailingTorque.NewtonMeters);
        Assert.Equal(0, parts.PitchShare.DecimalFractions);
    }

    [Property]
    public void Batches_agree_with_single_calls_bit_for_bit(AnyJoint joint, AnyTorque torque)
    {
        FrictionTorqueModel model = joint.Model.WithPrevailing(torque.Torque * 1e-3);
        double[] torques = [0, torque.NewtonMeters, double.NaN, 1, -1e-300, -1, 1e7, 1.0000001e7, double.PositiveInfinity, double.NegativeInfinity, torque.NewtonMeters * 1e-3];
        double[] preloads = new double[torques.Length], back = new double[torques.Length];
        model.PreloadsAt(torques, preloads);
        model.TorquesFor(preloads, back);
        for (int i = 0; i < torques.Length; i++)
        {
            Assert.Equal(Scalar(() => model.PreloadAt(Torque.FromNewtonMeters(torques[i])).Newtons), preloads[i]);
            Assert.Equal(Scalar(() => model.TorqueFor(Force.FromNewtons(preloads[i])).NewtonMeters), back[i]);
        }

        static double Scalar(Func<double> call)
        {
            try
            {
                return call();
            }
            catch (ArgumentException)
            {
                return double.NaN;
            }
        }
    }

    [Fact]
    public void Batches_refuse_unequal_lengths_and_partial_overlap_before_writing()
    {
        NutFactorModel model = TorquePreloadModel.FromNutFactor(0.2, Length.FromMillimeters(10));
        double[] memory = [1, 2, 3, 4, 5];
        Assert.Throws<ArgumentException>(() => model.TorquesFor(memory, new double[4]));
        Assert.Throws<ArgumentException>(() => model.TorquesFor(memory.AsSpan(0, 4), memory.AsSpan(1, 4)));
        Assert.Equal([1, 2, 3, 4, 5], memory);
        model.TorquesFor(memory, memory);
        Assert.Equal(0.2 * 0.01 * 5, memory[4], 1e-15);
    }

    [Fact]
    public void Printed_form_is_refused_where_it_does_not_hold()
    {
        ScrewThread square = ScrewThread.FromProfile(
            Length.FromMillimeters(32), Length.FromMillimeters(4), Angle.Zero, 2, Length.FromMillimeters(30), Length.FromMillimeters(28));
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(
            square, BearingSurface.Annulus(Length.FromMillimeters(42), Length.FromMillimeters(38)), new FrictionCoefficients(0.08, 0.1));
        Assert.Contains("60°", Assert.Throws<ArgumentException>(() => model.WithConvention(TorqueConvention.Vdi2230)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Exact_form_refuses_friction_that_no_torque_overcomes()
    {
        ScrewThread steep = ScrewThread.FromProfile(
            Length.FromMillimeters(32), Length.FromMillimeters(8), Angle.FromDegrees(45), 8, Length.FromMillimeters(26), Length.FromMillimeters(20));
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(
            steep, BearingSurface.Annulus(Length.FromMillimeters(42), Length.FromMillimeters(38)), new FrictionCoefficients(1.5, 0.1));
        Assert.Contains("tan φ", Assert.Throws<ArgumentException>(
            () => model.WithConvention(TorqueConvention.Shigley)).Message, StringComparison.Ordinal);
    }
}
