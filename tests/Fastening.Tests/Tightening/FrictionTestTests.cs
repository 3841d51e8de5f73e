using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tightening;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 200)]
public class FrictionTestTests
{
    private static readonly ScrewThread M10 = ScrewThread.Parse("M10");
    private static readonly BearingSurface HeadOfM10 = BearingSurface.Annulus(Length.FromMillimeters(14.63), Length.FromMillimeters(11));

    private static IEnumerable<TorqueConvention> Conventions =>
        TorqueConvention.Named.Append(TorqueConvention.PowerScrew.WithFlankSection(FlankSection.Normal))
            .Append(TorqueConvention.Iso16047.WithMeanDiameter(MeanThreadDiameter.MajorAndRoot));

    /// <summary>Coefficients → torques → coefficients → torques, in every convention; differences lose digits, so their terms set the scale.</summary>
    [Property]
    public void Test_and_model_are_inverse_to_each_other(AnyJoint joint, AnyPreload preload)
    {
        foreach (TorqueConvention convention in Conventions)
        {
            FrictionTorqueModel model = joint.Model.WithConvention(convention);
            TorqueBreakdown parts = model.BreakdownAt(model.TorqueFor(preload.Force));
            Torque inThread = parts.PitchTorque + parts.ThreadFrictionTorque;
            FrictionTest measured = FrictionTest.Of(joint.Thread, joint.Bearing, preload.Force, parts.Total, inThread, convention);

            double lead = joint.PitchMm / joint.DiameterMm, total = model.NutFactor * joint.DiameterMm / joint.InnerMm;
            Close.To(joint.ThreadFriction, measured.Thread, scale: joint.ThreadFriction + lead);
            Close.To(joint.BearingFriction, measured.Bearing, scale: joint.BearingFriction + 2 * total);

            FrictionTorqueModel again = model.WithFriction(measured.ToCoefficients());
            Close.To(parts.Total.NewtonMeters, again.TorqueFor(preload.Force).NewtonMeters);
            FrictionTest second = FrictionTest.Of(
                joint.Thread, joint.Bearing, preload.Force, again.TorqueFor(preload.Force), inThread, convention);
            Close.To(measured.Thread, second.Thread, scale: joint.ThreadFriction + lead);
            Close.To(measured.Bearing, second.Bearing, scale: joint.BearingFriction + 2 * total);
        }
    }

    [Property]
    public void One_coefficient_for_both_comes_back_too(AnyJoint joint, AnyPreload preload)
    {
        foreach (TorqueConvention convention in Conventions)
        {
            FrictionTorqueModel model = joint.Model.WithFriction(FrictionCoefficients.Uniform(joint.ThreadFriction)).WithConvention(convention);
            Torque total = model.TorqueFor(preload.Force);
            double uniform = FrictionTest.UniformCoefficientFrom(joint.Thread, joint.Bearing, preload.Force, total, convention);

            Close.To(joint.ThreadFriction, uniform, scale: joint.ThreadFriction + joint.PitchMm / joint.DiameterMm);
            Close.To(total.NewtonMeters, model.WithFriction(FrictionCoefficients.Uniform(uniform)).TorqueFor(preload.Force).NewtonMeters);
        }
    }

    /// <summary>The closed root of the exact form against halving the interval on the forward model, with thread and bearing that pull apart.</summary>
    [Property]
    public void The_exact_uniform_coefficient_is_the_one_that_bisection_finds(AnyJoint joint, AnyPreload preload)
    {
        FrictionTorqueModel model = joint.Model.WithConvention(TorqueConvention.PowerScrew);
        double total = model.TorqueFor(preload.Force).NewtonMeters, low = 0, high = 1;
        for (int n = 0; n < 60; n++)
        {
            double middle = (low + high) / 2;
            if (model.WithFriction(FrictionCoefficients.Uniform(middle)).TorqueFor(preload.Force).NewtonMeters < total) low = middle;
            else high = middle;
        }

        Close.To(low, FrictionTest.UniformCoefficientFrom(joint.Thread, joint.Bearing, preload.Force, Torque.FromNewtonMeters(total), TorqueConvention.PowerScrew), 1e-11);
        Assert.InRange(low, Math.Min(joint.ThreadFriction, joint.BearingFriction), Math.Max(joint.ThreadFriction, joint.BearingFriction));
    }

    /// <summary>
    /// A made-up reading of an M10 at 25.2 kN, evaluated by hand with d_2 = 9.0257 mm: no source. (25/25200 − 1.5e-3/2π)/(0.577·d_2) and the
    /// like; D_b = 12.815 mm.
    /// </summary>
    [Fact]
    public void A_reading_worked_by_hand()
    {
        Force force = Force.FromKilonewtons(25.2);
        Torque total = Torque.FromNewtonMeters(52), inThread = Torque.FromNewtonMeters(25);
        FrictionTest exact = FrictionTest.Of(M10, HeadOfM10, force, total, inThread);
        FrictionTest printed = FrictionTest.Of(M10, HeadOfM10, force, total, inThread, TorqueConvention.Iso16047Printed);
        FrictionTest vdi = FrictionTest.Of(M10, HeadOfM10, force, total, inThread, TorqueConvention.Vdi2230);

        Assert.Equal(0.144565, exact.Thread, 6);
        Assert.Equal(0.144653, printed.Thread, 6);
        Assert.Equal(0.143663, vdi.Thread, 6);
        Assert.Equal(0.167215, exact.Bearing, 6);
        Assert.Equal(exact.Bearing, printed.Bearing);
        Assert.Equal(0.157056, FrictionTest.UniformCoefficientFrom(M10, HeadOfM10, force, total), 6);
        CommaCulture.Run(() => Assert.Equal("µ_th 0.1446, µ_b 0.1672", exact.ToString()));
    }

    [Fact]
    public void The_printed_coefficient_differs_by_six_hundredths_of_a_percent()
    {
        FrictionTest exact = Read(25, 52), printed = FrictionTest.Of(
            M10, HeadOfM10, Force.FromKilonewtons(25.2), Torque.FromNewtonMeters(52), Torque.FromNewtonMeters(25), TorqueConvention.Iso16047Printed);
        Close.To(1 / (2 * Math.Cos(Math.PI / 6)) / 0.577, printed.Thread / exact.Thread, 1e-12);
    }

    [Fact]
    public void A_thread_torque_below_the_pitch_torque_is_reported_and_not_clamped()
    {
        // Pitch torque at 25.2 kN: 25200·1.5e-3/2π = 6.016 N·m.
        FrictionTest measured = Read(inThread: 5, total: 40);

        Assert.Equal((5 - 6.01605) / 25200 * 1e3 / (9.02572 / (2 * Math.Cos(Math.PI / 6))), measured.Thread, 5);
        Assert.True(measured.Thread < 0 && measured.Bearing > 0 && !measured.IsPlausible);
        Assert.Equal([FrictionTestDoubt.ThreadTorqueBelowPitchTorque], measured.Doubts);
        Assert.Contains("less than the pitch torque", Assert.Throws<InvalidOperationException>(measured.ToCoefficients).Message, StringComparison.Ordinal);
        Assert.Contains("µ_th -0.0077", Assert.Throws<InvalidOperationException>(measured.ToCoefficients).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thread_torque_above_the_total_gives_a_negative_bearing_friction()
    {
        FrictionTest measured = Read(inThread: 45, total: 40);

        Assert.True(measured.Bearing < 0 && !measured.IsPlausible);
        Assert.Equal([FrictionTestDoubt.ThreadTorqueAboveTotal], measured.Doubts);
        Assert.Equal(-5.0 / 25200 / (12.815e-3 / 2), measured.Bearing, 12);
        Assert.Throws<InvalidOperationException>(measured.ToCoefficients);
    }

    [Fact]
    public void Nothing_read_gives_the_friction_that_would_carry_the_load_by_itself()
    {
        // Without torque the exact form gives −tan φ/c in the thread, and the uniform coefficient is negative in every form.
        foreach (TorqueConvention convention in Conventions)
        {
            Assert.True(FrictionTest.UniformCoefficientFrom(M10, HeadOfM10, Force.FromKilonewtons(10), Torque.Zero, convention) < 0);
            double thread = FrictionTest.Of(M10, HeadOfM10, Force.FromKilonewtons(10), Torque.Zero, Torque.Zero, convention).Thread;
            FrictionTorqueModel holding = TorquePreloadModel.FromFriction(M10, HeadOfM10, new FrictionCoefficients(0.1, 0.1)).WithConvention(convention);
            Close.To(-holding.HoldingFriction, thread, convention.Form == TorqueForm.Printed ? 0.01 : 0.001);
            if (convention.Form == TorqueForm.Exact) Close.To(-holding.HoldingFriction, thread);
        }
    }

    [Fact]
    public void A_reading_that_is_too_high_is_reported_too()
    {
        FrictionTest measured = Read(inThread: 400, total: 900);
        Assert.True(measured.Thread > 2 && !measured.IsPlausible);
        Assert.Equal([FrictionTestDoubt.ThreadFrictionAboveTwo, FrictionTestDoubt.BearingFrictionAboveTwo], measured.Doubts);
        Assert.Throws<InvalidOperationException>(measured.ToCoefficients);
    }

    [Property]
    public void Work_ends_on_the_coefficient_bit_for_bit(AnyJoint joint, AnyPreload preload, AnyTorque torque)
    {
        foreach (TorqueConvention convention in Conventions)
        {
            FrictionTest measured = FrictionTest.Of(
                joint.Thread, joint.Bearing, preload.Force, torque.Torque, torque.Torque * 0.45, convention);
            Assert.Equal(measured.Thread, Derivation.Of(() => measured.Thread).Result);
            Assert.Equal(measured.Bearing, Derivation.Of(() => measured.Bearing).Result);
            Assert.Equal(
                FrictionTest.UniformCoefficientFrom(joint.Thread, joint.Bearing, preload.Force, torque.Torque, convention),
                Derivation.Of(() => FrictionTest.UniformCoefficientFrom(joint.Thread, joint.Bearing, preload.Force, torque.Torque, convention)).Result);
        }
    }

    [Fact]
    public void Without_clamp_force_there_is_no_friction_to_speak_of()
    {
        foreach (double newtons in new[] { 0, -5, 1e-4 })
        {
            Assert.Equal("clampForce", Assert.Throws<ArgumentOutOfRangeException>(() => FrictionTest.Of(
                M10, HeadOfM10, Force.FromNewtons(newtons), Torque.FromNewtonMeters(40), Torque.FromNewtonMeters(20))).ParamName);
            Assert.Equal("clampForce", Assert.Throws<ArgumentOutOfRangeException>(() => FrictionTest.UniformCoefficientFrom(
                M10, HeadOfM10, Force.FromNewtons(newtons), Torque.FromNewtonMeters(40))).ParamName);
        }
    }

    [Fact]
    public void A_printed_form_is_refused_for_another_profile()
    {
        ScrewThread square = ScrewThread.FromProfile(
            Length.FromMillimeters(32), Length.FromMillimeters(4), Angle.Zero, 2, Length.FromMillimeters(30), Length.FromMillimeters(28));
        foreach (TorqueConvention convention in new[] { TorqueConvention.Vdi2230, TorqueConvention.Iso16047Printed })
        {
            ArgumentException refusal = Assert.Throws<ArgumentException>(() => FrictionTest.Of(
                square, HeadOfM10, Force.FromKilonewtons(10), Torque.FromNewtonMeters(40), Torque.FromNewtonMeters(20), convention));
            Assert.Equal("convention", refusal.ParamName);
            Assert.Contains(convention.Name, refusal.Message, StringComparison.Ordinal);
        }
    }

    private static FrictionTest Read(double inThread, double total) => FrictionTest.Of(
        M10, HeadOfM10, Force.FromKilonewtons(25.2), Torque.FromNewtonMeters(total), Torque.FromNewtonMeters(inThread));
}
