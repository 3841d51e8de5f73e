using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Tightening;

/// <summary>A convention brings the diameter of its bearing friction, and its own numbers only where its source has them.</summary>
public class BearingRuleTests
{
    [Fact]
    public void Shigley_of_a_hexagon_bolt_is_the_torque_of_the_book()
    {
        // Shigley 9th ed. (2011), Example 8-3(c), p. 440: 3/4-16 UNF, 25 kip, f = f_c = 0.15: 3551 lbf·in with the collar of 1.25 d.
        // The book's d_r comes from a rounded area; hence 1 lbf·in.
        FrictionTorqueModel model = TorquePreloadModel
            .ForHexagonBolt(ScrewThread.Parse("3/4-16 UNF"), FrictionCoefficients.Uniform(0.15)).WithConvention(TorqueConvention.Shigley);
        Assert.Equal(3551, model.TorqueFor(Force.FromPoundsForce(25_000)).PoundForceInches, 1.0);
    }

    [Fact]
    public void The_printed_coefficients_of_VDI_2230_are_those_of_the_torque_only()
    {
        // M10 8.8, µ 0.12: 29 604 N with P/π and 1/cos 30° in the stress (VDI 2230-1, R7, from memory), by hand:
        // d_0 = 8.5926 mm, A_0 = 57.9896 mm², q = 1.5/(π 9.02572) + 0.12·1.154701 = 0.191465, 0.9·640·A_0/√(1 + 3(1.5·9.02572/8.5926·q)²).
        FrictionTorqueModel model = TorquePreloadModel
            .ForHexagonBolt(ScrewThread.Parse("M10"), FrictionCoefficients.Uniform(0.12)).WithConvention(TorqueConvention.Vdi2230);
        BoltStrength strength = PropertyClass.Parse("8.8").StrengthFor(model.Thread);
        Force permitted = model.PermittedPreload(strength, Ratio.FromPercent(90));
        Assert.Equal(29_604, permitted.Newtons, 0.5);
        Assert.Equal(576, BoltStress.WhileTightening(model, permitted).VonMises.Megapascals, 1e-9);
        Assert.DoesNotContain(Derivation.Of(() => model.PermittedPreload(strength, Ratio.FromPercent(90))).Steps, step => step.Equation.Id == "torque.printed-thread-arm");
        Assert.Equal(permitted.Newtons, Derivation.Of(() => model.PermittedPreload(strength, Ratio.FromPercent(90))).Result);
    }

    [Fact]
    public void A_ring_that_leaves_the_choice_open_gets_the_diameter_of_the_convention()
    {
        // M16 head on a medium hole: 22.49 and 17.5 mm; mean 19.995, uniform pressure (2/3)(22.49³ − 17.5³)/(22.49² − 17.5²) = 20.0988, 1.25 d = 20.
        FrictionTorqueModel head = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), FrictionCoefficients.Uniform(0.12));
        Assert.Equal(19.995, Diameter(head, TorqueConvention.Iso16047), 9);
        Assert.Equal(19.995, Diameter(head, TorqueConvention.Vdi2230), 9);
        Assert.Equal(20.0988, Diameter(head, TorqueConvention.MachinerysHandbook), 4);
        Assert.Equal(20, Diameter(head, TorqueConvention.Shigley), 9);
        Assert.Equal(20, Diameter(head, TorqueConvention.NasaTm106943), 9);
        Assert.Equal(19.995, Diameter(head, TorqueConvention.Shigley.WithBearing(BearingRule.MeanDiameter)), 9);
        Assert.Equal(19.995, Diameter(head.WithConvention(TorqueConvention.Shigley), TorqueConvention.Iso16047), 9);
        Assert.Equal(20, head.WithConvention(TorqueConvention.Shigley).WithFriction(FrictionCoefficients.Uniform(0.2)).Bearing.EffectiveDiameter.Millimeters, 9);

        // The collar of a power screw, stated as a ring, is Shigley's mean collar diameter (§8-2).
        FrictionTorqueModel ring = TorquePreloadModel.FromFriction(
            ScrewThread.Parse("M16"), BearingSurface.Annulus(Length.FromMillimeters(45), Length.FromMillimeters(35)), FrictionCoefficients.Uniform(0.12));
        Assert.Equal(40, Diameter(ring, TorqueConvention.Shigley), 9);
        Assert.Equal("flat ring 35 to 45 mm, uniform pressure", ring.WithConvention(TorqueConvention.MachinerysHandbook).Bearing.ToString());
    }

    [Fact]
    public void A_diameter_that_was_stated_is_kept_under_every_convention()
    {
        ScrewThread thread = ScrewThread.Parse("M16");
        BearingSurface uniform = BearingSurface.ForHexagonHead(thread).WithUniformPressure();
        foreach (TorqueConvention convention in TorqueConvention.Named)
        {
            Assert.Equal(40, Diameter(Model(BearingSurface.OfDiameter(Length.FromMillimeters(40))), convention), 9);
            Assert.Equal(22, Diameter(Model(BearingSurface.Sphere(Length.FromMillimeters(22), Length.FromMillimeters(14))), convention), 9);
            Assert.Equal(20, Diameter(Model(BearingSurface.ForShigleyCollar(thread)), convention), 9);
            Assert.Equal(uniform.EffectiveDiameter.Millimeters, Diameter(Model(uniform), convention), 9);
        }

        FrictionTorqueModel Model(BearingSurface surface) => TorquePreloadModel.FromFriction(thread, surface, FrictionCoefficients.Uniform(0.12));
    }

    [Fact]
    public void A_friction_test_evaluates_with_the_diameter_of_its_convention()
    {
        ScrewThread thread = ScrewThread.Parse("M10");
        BearingSurface head = BearingSurface.ForHexagonHead(thread);
        foreach (TorqueConvention convention in TorqueConvention.Named)
        {
            FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(thread, new FrictionCoefficients(0.11, 0.13)).WithConvention(convention);
            Torque total = model.TorqueFor(Force.FromKilonewtons(25)), inThread = total - model.BreakdownAt(total).BearingFrictionTorque;
            FrictionTest measured = FrictionTest.Of(thread, head, Force.FromKilonewtons(25), total, inThread, convention);
            Close.To(0.13, measured.Bearing, 1e-11);
            FrictionTorqueModel uniform = model.WithFriction(FrictionCoefficients.Uniform(0.12));
            Close.To(0.12, FrictionTest.UniformCoefficientFrom(
                thread, head, Force.FromKilonewtons(25), uniform.TorqueFor(Force.FromKilonewtons(25)), convention), 1e-11);
        }
    }

    [Fact]
    public void A_rule_that_is_none_is_refused() => Assert.Equal(
        "bearing", Assert.Throws<ArgumentOutOfRangeException>(() => TorqueConvention.Shigley.WithBearing((BearingRule)3)).ParamName);

    private static double Diameter(FrictionTorqueModel model, TorqueConvention convention) =>
        model.WithConvention(convention).Bearing.EffectiveDiameter.Millimeters;
}
