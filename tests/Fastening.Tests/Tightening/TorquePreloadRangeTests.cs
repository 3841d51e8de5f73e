using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tightening;

/// <summary>Both ranges at once, friction and prevailing torque, against many points inside them.</summary>
[Properties(Arbitrary = [typeof(Domain)], MaxTest = 200)]
public class TorquePreloadRangeTests
{
    private static readonly Ratio Utilisation = Ratio.FromPercent(90);

    private static readonly ScrewThread M16 = ScrewThread.Parse("M16");

    private static readonly BoltStrength Strength = PropertyClass.Parse("8.8").StrengthFor(M16);

    private static readonly FrictionCoefficients Low = new(thread: 0.10, bearing: 0.09), High = new(thread: 0.16, bearing: 0.14);

    private static readonly FrictionTorqueModel Model = TorquePreloadModel.ForHexagonBolt(M16, Low);

    private static readonly Torque Stated = Torque.FromNewtonMeters(30);

    [Fact]
    public void A_nut_without_its_prevailing_torque_overstresses_a_bolt_whose_torque_counted_on_it()
    {
        // M16 8.8, 30 N·m prevailing: 192 N·m for 0.9·640 MPa; without it 92.9 kN and 645 MPa, by hand from
        // κ = 0.318310 + 0.10·14.7010/(2 cos 30°) + 0.09·19.995/2 = 2.06696 mm, A_0 156.668 mm², W_p = π 14.1236³/12.
        FrictionTorqueModel locking = Model.WithPrevailing(Stated);
        Torque chosen = locking.TorqueFor(locking.PermittedPreload(Strength, Utilisation));
        var friction = new FrictionRange(Low, Low);
        TorquePreloadRange known = TorquePreloadRange.OfFriction(locking, friction), unknown = known.WithPrevailing(Torque.Zero, Stated);
        Assert.Equal(192, chosen.NewtonMeters, 0.5);
        Assert.Equal(92.9, unknown.PreloadRangeAt(chosen).High.Kilonewtons, 0.05);
        Assert.Equal(645, BoltStress.HighestAt(unknown, chosen).VonMises.Megapascals, 0.5);
        Assert.Equal(576, BoltStress.HighestAt(known, chosen).VonMises.Megapascals, 1e-9);

        Torque safe = unknown.PermittedTorque(Strength, Utilisation);
        Close.To(Model.TorqueFor(Model.PermittedPreload(Strength, Utilisation)).NewtonMeters, safe.NewtonMeters);
        Assert.Equal(576, BoltStress.HighestAt(unknown, safe).VonMises.Megapascals, 1e-9);
        Close.To((safe.NewtonMeters - 30) / 2.06696e-3, unknown.PreloadRangeAt(safe).Low.Newtons, 1e-4);
    }

    [Property]
    public void No_point_inside_both_ranges_lies_outside_preload_or_stress(AnyJoint joint, AnyTorque torque)
    {
        Torque most = Torque.FromNewtonMeters(Math.Pow(joint.DiameterMm, 3) * (0.01 + 0.1 * (torque.NewtonMeters % 1)));
        foreach (TorqueConvention convention in new[] { TorqueConvention.Iso16047, TorqueConvention.Vdi2230, TorqueConvention.Shigley })
        {
            FrictionTorqueModel model = joint.Model.WithConvention(convention);
            var friction = new FrictionRange(model.Friction, new FrictionCoefficients(joint.ThreadFriction * 2.5, joint.BearingFriction * 2));
            Torque low = most * 0.02, high = most * 0.4;
            TorquePreloadRange range = TorquePreloadRange.OfFriction(model, friction).WithPrevailing(low, high);
            ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(most * 0.2, most);
            Range<Force> preload = range.PreloadRangeAt(window);
            double stress = BoltStress.HighestAt(range, window.Upper!.Value).VonMises.Pascals;
            var own = new BoltStrength(Pressure.FromMegapascals(800), Pressure.FromMegapascals(640));
            Torque permitted = TorquePreloadRange.OfFriction(model, friction).PermittedTorque(own, Utilisation);
            for (int i = 0; i < 108; i++)
            {
                FrictionTorqueModel inside = model
                    .WithFriction(new FrictionCoefficients(joint.ThreadFriction * (1 + 1.5 * (i % 4) / 3), joint.BearingFriction * (1 + i / 4 % 3 / 2.0)))
                    .WithPrevailing(low + (high - low) * (i / 12 % 3 / 2.0));
                Torque there = most * (0.2 + 0.8 * (i / 36) / 2);
                Force force = inside.PreloadAt(there);
                Assert.InRange(force.Newtons, preload.Low.Newtons * (1 - 1e-12), preload.High.Newtons * (1 + 1e-12));
                if (there > inside.PrevailingTorque) Assert.True(BoltStress.WhileTightening(inside, force).VonMises.Pascals <= stress * (1 + 1e-12));
                FrictionTorqueModel free = inside.WithPrevailing(Torque.Zero);
                Assert.True(BoltStress.WhileTightening(free, free.PreloadAt(permitted)).VonMises.Pascals <= 0.9 * 640e6 * (1 + 1e-12));
            }
        }
    }

    [Fact]
    public void The_torque_is_chosen_at_the_corner_that_governs()
    {
        // M16, µ_b 0.30, µ_th 0.30…0.50: 601 MPa at the high end for the torque of the low one (found in review by hand); so the high end governs.
        var friction = new FrictionRange(FrictionCoefficients.Uniform(0.30), new FrictionCoefficients(0.50, 0.40));
        TorquePreloadRange range = TorquePreloadRange.OfFriction(Model, friction);
        Torque permitted = range.PermittedTorque(Strength, Utilisation);
        Assert.True(permitted < range.MostPreload.TorqueFor(Model.WithFriction(friction.Low).PermittedPreload(Strength, Utilisation)));
        Assert.Equal(576, BoltStress.HighestAt(range, permitted).VonMises.Megapascals, 1e-9);
        Assert.Equal(permitted.NewtonMeters, Derivation.Of(() => range.PermittedTorque(Strength, Utilisation)).Result);
        Assert.Equal((0.50, 0.30), (range.MostTwist!.Friction.Thread, range.MostTwist.Friction.Bearing));
        Close.To(
            range.MostTwist.TorqueFor(range.MostTwist.PermittedPreload(Strength, Utilisation)).NewtonMeters, permitted.NewtonMeters);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(30)]
    public void A_torque_below_the_prevailing_torque_twists_with_no_more_than_itself(double newtonMeters)
    {
        // τ = M/W_p, W_p = π d_0³/12; no preload. At 30 N·m the nut just turns.
        TorquePreloadRange range = TorquePreloadRange.OfFriction(Model.WithPrevailing(Stated), new FrictionRange(Low, High));
        BoltStress stress = BoltStress.HighestAt(range, Torque.FromNewtonMeters(newtonMeters));
        Assert.Equal(0, stress.Tension.Pascals);
        Close.To(12 * newtonMeters / (Math.PI * Math.Pow(M16.StressDiameter.Meters, 3)), stress.Torsion.Pascals);
    }

    [Property]
    public void One_torque_and_no_range_of_prevailing_torque_is_what_the_model_gives(AnyJoint joint, AnyTorque torque)
    {
        FrictionTorqueModel model = joint.Model.WithPrevailing(torque.Torque * 0.1);
        var friction = new FrictionRange(model.Friction, new FrictionCoefficients(joint.ThreadFriction * 1.5, joint.BearingFriction * 1.5));
        TorquePreloadRange range = TorquePreloadRange.OfFriction(model, friction);
        Range<Force> one = model.PreloadRangeAt(torque.Torque, friction), same = range.PreloadRangeAt(torque.Torque);
        Assert.Equal((one.Low.Newtons, one.High.Newtons), (same.Low.Newtons, same.High.Newtons));
        Assert.Equal(range.MostPreload.PreloadAt(torque.Torque).Newtons, one.High.Newtons);
        Assert.Equal(range.LeastPreload.PreloadAt(torque.Torque).Newtons, one.Low.Newtons);
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(torque.Torque * 0.9, torque.Torque);
        Range<Force> band = model.PreloadRangeAt(window, friction);
        Assert.Equal(model.PreloadRangeAt(window.Lower!.Value, friction).Low.Newtons, band.Low.Newtons);
        Assert.Equal(one.High.Newtons, band.High.Newtons);
    }

    [Fact]
    public void Nut_factors_have_corners_of_preload_but_none_of_stress()
    {
        // K 0.14…0.22, d 16 mm, 4…12 N·m: (150 − 12)/(0.22·0.016) = 39 204.5 N and (160 − 4)/(0.14·0.016) = 69 642.9 N.
        TorquePreloadRange range = TorquePreloadRange.OfNutFactor(0.14, 0.22, Length.FromMillimeters(16))
            .WithPrevailing(Torque.FromNewtonMeters(4), Torque.FromNewtonMeters(12));
        Range<Force> preload = range.PreloadRangeAt(ToleranceWindow.FromLimits(Torque.FromNewtonMeters(150), Torque.FromNewtonMeters(160)));
        Assert.Equal(39_204.545, preload.Low.Newtons, 1e-2);
        Assert.Equal(69_642.857, preload.High.Newtons, 1e-2);
        Assert.Equal(0.14, range.MostPreload.NutFactor, 1e-15);
        Assert.Equal(12, range.LeastPreload.PrevailingTorque.NewtonMeters);
        Assert.Null(range.MostTwist);
        Assert.Throws<InvalidOperationException>(() => BoltStress.HighestAt(range, Stated));
        Assert.Throws<InvalidOperationException>(() => range.PermittedTorque(Strength, Utilisation));
        NutFactorModel model = TorquePreloadModel.FromNutFactor(0.18, Length.FromMillimeters(16)).WithPrevailing(Torque.FromNewtonMeters(4));
        Assert.Equal(preload.High.Newtons, model.PreloadRangeAt(
            ToleranceWindow.FromLimits(Torque.FromNewtonMeters(150), Torque.FromNewtonMeters(160)), 0.14, 0.22).High.Newtons);
        Assert.Equal("K 0.14…0.22, d 16 mm, prevailing 4…12 N·m", range.ToString());
    }

    [Fact]
    public void What_cannot_be_a_range_is_refused()
    {
        TorquePreloadRange range = TorquePreloadRange.OfFriction(Model, new FrictionRange(Low, High));
        Assert.Equal("high", Assert.Throws<ArgumentOutOfRangeException>(() => range.WithPrevailing(Stated, Stated * 0.9)).ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => range.WithPrevailing(-Stated, Stated));
        Assert.Throws<ArgumentOutOfRangeException>(() => range.PreloadRangeAt(ToleranceWindow.FromLimits(-Stated, Stated)));
        Assert.Equal("torque", Assert.ThrowsAny<ArgumentException>(() => range.PreloadRangeAt(ToleranceWindow.AtMost(Stated))).ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => TorquePreloadRange.OfNutFactor(0.2, 0.1, Length.FromMillimeters(16)));
        Assert.Throws<ArgumentException>(() => range.WithPrevailing(Torque.Zero, Torque.FromNewtonMeters(500)).PermittedTorque(Strength, Utilisation));
    }

    [Fact]
    public void Jamming_is_looked_for_at_the_highest_friction()
    {
        // Eight starts of 8 mm on 26 mm: tan φ = 0.7835, 1/cos 45° = 1.4142; c µ tan φ is 0.99 at µ = 0.8935 and 1 at 0.9025.
        ScrewThread steep = ScrewThread.FromProfile(
            Length.FromMillimeters(32), Length.FromMillimeters(8), Angle.FromDegrees(45), 8, Length.FromMillimeters(26), Length.FromMillimeters(20));
        FrictionTorqueModel model = TorquePreloadModel
            .FromFriction(steep, BearingSurface.Annulus(Length.FromMillimeters(42), Length.FromMillimeters(38)), Low).WithConvention(TorqueConvention.PowerScrew);
        Assert.True(model.PreloadRangeAt(Stated, Up(0.89)).Low.Newtons > 0);
        foreach (double friction in new[] { 0.895, 0.9025, 1.5 })
        {
            Assert.Contains("no torque turns the thread", Assert.Throws<ArgumentException>(() => model.PreloadRangeAt(Stated, Up(friction))).Message, StringComparison.Ordinal);
            Assert.Throws<ArgumentException>(() => TorquePreloadRange.OfFriction(model, Up(friction)));
            Assert.Throws<ArgumentException>(() => model.WithFriction(new FrictionCoefficients(friction, 0.1)));
        }

        FrictionRange Up(double thread) => new(Low, new FrictionCoefficients(thread, 0.2));
    }

    [Property]
    public void Friction_and_convention_leave_the_prevailing_torque_alone(AnyJoint joint, AnyTorque torque)
    {
        FrictionTorqueModel model = joint.Model.WithPrevailing(torque.Torque);
        foreach (TorqueConvention convention in TorqueConvention.Named)
        {
            FrictionTorqueModel changed = model.WithConvention(convention).WithFriction(new FrictionCoefficients(joint.ThreadFriction * 1.1, joint.BearingFriction));
            Assert.Equal(torque.NewtonMeters, changed.PrevailingTorque.NewtonMeters);
            Assert.Equal(torque.NewtonMeters, changed.TorqueFor(Force.Zero).NewtonMeters);
            TorqueBreakdown below = changed.BreakdownAt(torque.Torque * 0.4);
            Assert.Equal(
                (0, 0, 0, torque.NewtonMeters * 0.4),
                (below.PitchTorque.NewtonMeters, below.ThreadFrictionTorque.NewtonMeters, below.BearingFrictionTorque.NewtonMeters, below.PrevailingTorque.NewtonMeters));
        }
    }
}
