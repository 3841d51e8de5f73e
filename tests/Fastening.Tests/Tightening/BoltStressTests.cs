using System.Numerics;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tightening;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 200)]
public class BoltStressTests
{
    private const int Bits = 300;

    private static readonly BoltStrength Strength =
        new(Pressure.FromMegapascals(1040), Pressure.FromMegapascals(940), Pressure.FromMegapascals(830));

    [Property]
    public void Permitted_preload_just_uses_the_permitted_stress(AnyJoint joint)
    {
        foreach (TorsionDistribution torsion in new[] { TorsionDistribution.Plastic, TorsionDistribution.Elastic })
        {
            FrictionTorqueModel model = joint.Model.WithPrevailing(Torque.FromNewtonMeters(Math.Pow(joint.DiameterMm, 3) * 0.005));
            Force permitted = model.PermittedPreload(Strength, Ratio.FromPercent(85), torsion);
            Close.To(0.85 * 940e6, BoltStress.WhileTightening(model, permitted, torsion).VonMises.Pascals, 1e-11);
        }
    }

    [Property]
    public void Without_prevailing_torque_it_is_the_published_form(AnyJoint joint)
    {
        // VDI 2230-1:2015 §5.5.1 (clause from memory): F = ν R_p0.2 A_0/√(1 + 3((3/2)(d_2/d_0)(P/(π d_2) + 1.155 µ_th))²), typed anew with 1/cos 30° for the rounded 1.155.
        double d2 = joint.Thread.PitchDiameter.Meters, d0 = joint.Thread.StressDiameter.Meters;
        double bracket = 1.5 * d2 / d0 * (joint.PitchMm / 1000 / (Math.PI * d2) + joint.ThreadFriction / Math.Cos(Math.PI / 6));
        double published = 0.9 * 940e6 * Math.PI / 4 * d0 * d0 / Math.Sqrt(1 + 3 * bracket * bracket);
        Close.To(published, joint.Model.PermittedPreload(Strength, Ratio.FromPercent(90)).Newtons);
    }

    [Property]
    public void Elastic_torsion_waist_and_friction_all_lower_the_permitted_preload(AnyJoint joint)
    {
        Force permitted = joint.Model.PermittedPreload(Strength, Ratio.FromPercent(90));
        Assert.True(joint.Model.PermittedPreload(Strength, Ratio.FromPercent(90), TorsionDistribution.Elastic) < permitted);
        Assert.True(joint.Model.PermittedPreload(Strength, Ratio.FromPercent(90), waistDiameter: joint.Thread.StressDiameter * 0.9) < permitted);
        Assert.Equal(permitted.Newtons, joint.Model.PermittedPreload(Strength, Ratio.FromPercent(90), waistDiameter: joint.Thread.StressDiameter * 1.1).Newtons);
        Assert.True(joint.Model.WithFriction(new FrictionCoefficients(joint.ThreadFriction * 1.1, 0)).PermittedPreload(Strength, Ratio.FromPercent(90)) < permitted);
        Assert.True(joint.Model.WithPrevailing(Torque.FromNewtonMeters(Math.Pow(joint.DiameterMm, 3) * 0.001)).PermittedPreload(Strength, Ratio.FromPercent(90)) < permitted);
    }

    [Property]
    public void Stress_grows_with_preload_and_is_at_least_the_tension(AnyJoint joint, AnyPreload preload)
    {
        BoltStress stress = BoltStress.WhileTightening(joint.Model, preload.Force);
        Assert.True(stress.VonMises > stress.Tension);
        Assert.True(BoltStress.WhileTightening(joint.Model, preload.Force * 1.01).VonMises > stress.VonMises);
        Close.To(preload.Newtons, stress.Tension.Pascals * joint.Thread.StressArea.SquareMeters);
    }

    [Property]
    public void Highest_stress_at_a_torque_is_not_exceeded_inside_the_range_of_friction(AnyJoint joint, AnyTorque torque)
    {
        FrictionTorqueModel model = joint.Model.WithPrevailing(torque.Torque * 0.05);
        var range = new FrictionRange(
            new FrictionCoefficients(joint.ThreadFriction, joint.BearingFriction),
            new FrictionCoefficients(joint.ThreadFriction * 2.5, joint.BearingFriction * 2));
        double highest = BoltStress.HighestAt(TorquePreloadRange.OfFriction(model, range), torque.Torque).VonMises.Pascals;
        for (int i = 0; i <= 8; i++)
        {
            for (int j = 0; j <= 2; j++)
            {
                FrictionTorqueModel inside = model.WithFriction(new FrictionCoefficients(
                    joint.ThreadFriction * (1 + 1.5 * i / 8), joint.BearingFriction * (1 + j / 2.0)));
                Assert.True(BoltStress.HighestAt(TorquePreloadRange.OfFriction(inside, new FrictionRange(inside.Friction, inside.Friction)), torque.Torque).VonMises.Pascals <= highest * (1 + 1e-12));
            }
        }
    }

    [Fact]
    public void With_high_bearing_friction_the_highest_thread_friction_is_the_worst()
    {
        // M16, µ_b 0.30, µ_th 0.30…0.50: at the torque that reaches 576 MPa at the low end, 601 MPa at the high end (found in review by hand).
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(0.30, 0.30));
        BoltStrength strength = PropertyClass.Parse("8.8").StrengthFor(model.Thread);
        Torque torque = model.TorqueFor(model.PermittedPreload(strength, Ratio.FromPercent(90)));
        var range = new FrictionRange(new FrictionCoefficients(0.30, 0.30), new FrictionCoefficients(0.50, 0.40));
        FrictionTorqueModel corner = model.WithFriction(new FrictionCoefficients(0.50, 0.30));
        Assert.Equal(
            BoltStress.WhileTightening(corner, corner.PreloadAt(torque)).VonMises.Pascals, BoltStress.HighestAt(TorquePreloadRange.OfFriction(model, range), torque).VonMises.Pascals);
        Assert.Equal(601, BoltStress.HighestAt(TorquePreloadRange.OfFriction(model, range), torque).VonMises.Megapascals, 0.6);
    }

    [Fact]
    public void Refuses_a_prevailing_torque_that_uses_up_the_bolt()
    {
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(
            ScrewThread.IsoMetric(Length.FromMillimeters(6), Length.FromMillimeters(1)),
            BearingSurface.Annulus(Length.FromMillimeters(9), Length.FromMillimeters(6.6)),
            new FrictionCoefficients(0.12, 0.1)).WithPrevailing(Torque.FromNewtonMeters(40));
        Assert.Contains("40 N·m", Assert.Throws<ArgumentException>(() => model.PermittedPreload(Strength, Ratio.FromPercent(90))).Message, StringComparison.Ordinal);
    }

    /// <summary>Near the end, against 90 digits: the positive root of (s_σ F)² + (s_τ F + τ)² = σ² in fixed point, from the same doubles.</summary>
    [Theory]
    [InlineData(0.9)]
    [InlineData(1e-3)]
    [InlineData(1e-9)]
    [InlineData(1e-15)]
    public void Nothing_is_lost_where_the_prevailing_torque_uses_up_nearly_all(double left)
    {
        // In MPa and MPa/N: σ 576, s_σ 1/157, s_τ √3·1.5/550 are an M16 in round numbers.
        double limit = 576, perTension = 1 / 157.0, perTorsion = Math.Sqrt(3) * 1.5 / 550, prevailing = limit * (1 - left);
        BigInteger σ = Fixed(limit), sσ = Fixed(perTension), sτ = Fixed(perTorsion), τ = Fixed(prevailing);
        BigInteger squares = Times(sσ, sσ) + Times(sτ, sτ), half = Times(sτ, τ);
        BigInteger root = Root(Times(half, half) + Times(squares, Times(σ, σ) - Times(τ, τ)));
        double expected = (double)(((root - half) << Bits) / squares >> (Bits - 100)) / Math.Pow(2, 100);
        Close.To(expected, Fastening.Equations.StressEquations.PermittedPreload(limit, perTension, perTorsion, prevailing), 2e-15);

        static BigInteger Fixed(double value) => new BigInteger(Math.ScaleB(value, 60)) << (Bits - 60);

        static BigInteger Times(BigInteger a, BigInteger b) => a * b >> Bits;

        static BigInteger Root(BigInteger square)
        {
            BigInteger wide = square << Bits, root = BigInteger.One << (int)(wide.GetBitLength() / 2 + 1);
            for (BigInteger next = (root + wide / root) / 2; next < root; next = (root + wide / root) / 2) root = next;
            return root;
        }
    }
}
