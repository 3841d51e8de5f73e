using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Joints;

[Properties(Arbitrary = [typeof(JointDomain)], MaxTest = 300)]
public class ClampedStackTests
{
    private static readonly ScrewThread M16 = ScrewThread.Parse("M16");

    [Property]
    public void A_sleeve_has_the_stiffness_of_a_bar(AnyPlates stack)
    {
        AnyPlates sleeve = stack with { OuterMm = stack.BearingMm * 0.99 };
        double area = Math.PI / 4 * (sleeve.OuterMm * sleeve.OuterMm - sleeve.HoleMm * sleeve.HoleMm);
        double compliance = sleeve.LayersMm.Zip(sleeve.ModuliGpa, (t, modulus) => t / (modulus * area)).Sum() * 1e-6;
        Close.To(compliance, sleeve.Vdi.MetersPerNewton);
        Close.To(compliance, sleeve.Frusta.MetersPerNewton);
    }

    [Property]
    public void Resilience_is_continuous_where_the_cone_reaches_the_outside_and_where_it_vanishes(AnyPlates any)
    {
        AnyPlates plate = any.OfOnePlate;
        double grows = Math.Tan(plate.HalfAngleDegrees * Math.PI / 180) * plate.GripMm * (plate.Form == JointForm.ThroughBolt ? 1 : 2);
        foreach (double limit in new[] { plate.BearingMm, plate.BearingMm + grows })
        {
            double inside = (plate with { OuterMm = limit * (1 - 1e-9) }).Frusta.MetersPerNewton;
            double outside = (plate with { OuterMm = limit * (1 + 1e-9) }).Frusta.MetersPerNewton;
            Close.To(inside, outside, 1e-7);
        }

        Close.To((plate with { OuterMm = (plate.BearingMm + grows) * 1.5 }).Frusta.MetersPerNewton, plate.WideFrusta.MetersPerNewton);
    }

    [Property]
    public void Layers_of_one_material_are_one_plate(AnyPlates stack)
    {
        AnyPlates alike = stack with { ModuliGpa = [.. stack.ModuliGpa.Select(_ => stack.ModuliGpa[0])] };
        AnyPlates almost = stack with { ModuliGpa = [.. stack.ModuliGpa.Select((_, i) => stack.ModuliGpa[0] * (1 + i * 1e-14))] };
        foreach (Func<AnyPlates, ClampedStack> method in new Func<AnyPlates, ClampedStack>[] { s => s.Vdi, s => s.Frusta, s => s.WideFrusta })
        {
            double plate = method(stack.OfOnePlate).MetersPerNewton;
            Close.To(plate, method(alike).MetersPerNewton);
            Close.To(plate, method(almost).MetersPerNewton, 1e-11); // cut into pieces, where the closed form is one
        }
    }

    [Property]
    public void Splitting_a_layer_changes_nothing(AnyPlates stack)
    {
        double first = stack.LayersMm[0];
        AnyPlates split = stack with
        {
            LayersMm = [first * 0.3, first * 0.7, .. stack.LayersMm.Skip(1)],
            ModuliGpa = [stack.ModuliGpa[0], .. stack.ModuliGpa],
        };
        Close.To(stack.Vdi.MetersPerNewton, split.Vdi.MetersPerNewton, 1e-11);
        Close.To(stack.WideFrusta.MetersPerNewton, split.WideFrusta.MetersPerNewton, 1e-11);
    }

    [Property]
    public void With_bolt_and_nut_either_end_may_be_the_head(AnyPlates any)
    {
        AnyPlates stack = any with { Form = JointForm.ThroughBolt };
        AnyPlates turned = stack with { LayersMm = [.. stack.LayersMm.Reverse()], ModuliGpa = [.. stack.ModuliGpa.Reverse()] };
        Close.To(stack.Vdi.MetersPerNewton, turned.Vdi.MetersPerNewton, 1e-11);
        Close.To(stack.Frusta.MetersPerNewton, turned.Frusta.MetersPerNewton, 1e-11);
    }

    [Fact]
    public void In_a_tapped_joint_the_layer_under_the_head_counts_more()
    {
        var stack = new AnyPlates([20, 20], [70, 205], 17.5, 22.5, 200, 30, JointForm.TappedThread);
        Assert.True(stack.WideFrusta.MetersPerNewton > 1.2 * (stack with { ModuliGpa = [205, 70] }).WideFrusta.MetersPerNewton);
    }

    [Property]
    public void Stiffness_falls_with_grip_and_hole_and_rises_with_modulus_and_width(AnyPlates stack)
    {
        foreach (Func<AnyPlates, ClampedStack> method in new Func<AnyPlates, ClampedStack>[] { s => s.Frusta, s => s.WideFrusta })
        {
            double stiffness = 1 / method(stack).MetersPerNewton;
            Assert.True(method(stack.OfOnePlate with { LayersMm = [stack.GripMm * 1.01] }).Stiffness < method(stack.OfOnePlate).Stiffness);
            Assert.True(1 / method(stack with { HoleMm = stack.HoleMm * 1.01 }).MetersPerNewton < stiffness);
            Assert.True(1 / method(stack with { BearingMm = stack.BearingMm * 1.01 }).MetersPerNewton >= stiffness);
            Close.To(3 * stiffness, 1 / method(stack with { ModuliGpa = [.. stack.ModuliGpa.Select(e => 3 * e)] }).MetersPerNewton, 1e-11);
        }

        // Beyond its range, in long grips of wide parts, the cone of VDI 2230 opens faster than the grip grows. Of several layers a soft one
        // may move to where the cone is wider, so that only a plate is sure to lose stiffness.
        AnyPlates plate = stack.OfOnePlate;
        if (plate.Vdi.IsInRange) Assert.True((plate with { LayersMm = [plate.GripMm * 1.01] }).Vdi.Stiffness < plate.Vdi.Stiffness);
        Assert.True((stack with { OuterMm = stack.OuterMm * 1.01 }).Vdi.Stiffness >= stack.Vdi.Stiffness);
        Assert.True((stack with { OuterMm = stack.OuterMm * 1.01 }).Frusta.Stiffness >= stack.Frusta.Stiffness);
    }

    [Property]
    public void Stiffness_scales_with_size(AnyPlates stack)
    {
        Close.To(2.5 * stack.Vdi.Stiffness.NewtonsPerMeter, stack.Scaled(2.5).Vdi.Stiffness.NewtonsPerMeter, 1e-11);
        Close.To(2.5 * stack.WideFrusta.Stiffness.NewtonsPerMeter, stack.Scaled(2.5).WideFrusta.Stiffness.NewtonsPerMeter, 1e-11);
    }

    [Property]
    public void Derivation_ends_on_the_resilience(AnyPlates stack)
    {
        foreach (ClampedStack parts in new[] { stack.Vdi, stack.Frusta, stack.WideFrusta })
        {
            Assert.Equal(parts.MetersPerNewton, Derivation.Of(() => parts.MetersPerNewton).Result);
        }
    }

    [Fact]
    public void Shigley_takes_thirty_degrees_one_and_a_half_diameters_and_no_clearance()
    {
        IReadOnlyList<ClampedLayer> layers = [AnyPlates.LayerOf(11, 207), AnyPlates.LayerOf(23, 100)];
        ClampedStack named = ClampedStack.ShigleyFrusta(M16, layers);
        ClampedStack general = ClampedStack.Frusta(
            layers, Length.FromMillimeters(24), Length.FromMillimeters(16), Angle.FromDegrees(30), null, JointForm.ThroughBolt);
        Close.To(general.MetersPerNewton, named.MetersPerNewton);
    }

    [Theory]
    [InlineData(8, 17.5, 40, "0.364")]
    [InlineData(400, 17.5, 40, "18.2")]
    [InlineData(40, 17.5, 300, "13.6")]
    public void Proportions_outside_the_range_of_the_deformation_cone_are_said(double grip, double hole, double outer, string figure)
    {
        ClampedStack parts = new AnyPlates([grip], [205], hole, 22, outer, 30, JointForm.ThroughBolt).Vdi;
        Assert.False(parts.IsInRange);
        RangeNote note = Assert.Single(parts.RangeNotes, n => n.Kind is RangeNoteKind.GripPerBearing or RangeNoteKind.OutsidePerBearing);
        Assert.Contains(figure, note.ToString(), StringComparison.Ordinal);
        Assert.Equal(double.Parse(figure, System.Globalization.CultureInfo.InvariantCulture), note.Value, 0.05);
        Assert.True(parts.MetersPerNewton > 0);
    }

    [Fact]
    public void Usual_proportions_need_no_note()
    {
        Assert.Empty(new AnyPlates([30, 20], [205, 110], 17.5, 22, 60, 30, JointForm.TappedThread).Vdi.RangeNotes);
        Assert.Empty(new AnyPlates([400], [205], 17.5, 22, 600, 30, JointForm.TappedThread).Frusta.RangeNotes);
        Assert.True(new AnyPlates([300], [205], 17.5, 22, 20, 30, JointForm.ThroughBolt).Vdi.IsInRange);
    }

    [Theory]
    [InlineData(7, false)]
    [InlineData(8.1, true)]
    [InlineData(159, true)]
    [InlineData(161, false)]
    public void Wileman_says_where_the_fit_ends(double gripMm, bool inRange)
    {
        ClampedStack parts = ClampedStack.Wileman(M16, [AnyPlates.LayerOf(gripMm, 205)], WilemanFit.Steel);
        Assert.Equal(inRange, parts.IsInRange);
        Close.To(205e9 * 0.016 * 0.78715 * Math.Exp(0.62873 * 16 / gripMm), parts.Stiffness.NewtonsPerMeter);
        Assert.Equal(parts.MetersPerNewton, Derivation.Of(() => parts.MetersPerNewton).Result);
    }

    [Fact]
    public void Wileman_is_for_one_material_and_for_that_of_its_coefficients()
    {
        Assert.Equal("layers", Assert.Throws<ArgumentException>(
            () => ClampedStack.Wileman(M16, [AnyPlates.LayerOf(20, 205), AnyPlates.LayerOf(20, 110)], WilemanFit.Steel)).ParamName);
        ArgumentException wrong = Assert.Throws<ArgumentException>(() => ClampedStack.Wileman(M16, [AnyPlates.LayerOf(20, 70)], WilemanFit.Steel));
        Assert.Equal("fit", wrong.ParamName);
        Assert.Contains("70 GPa", wrong.Message, StringComparison.Ordinal);
        Assert.True(ClampedStack.Wileman(M16, [AnyPlates.LayerOf(20, 70)], WilemanFit.General).IsInRange);
        Assert.Equal(5, WilemanFit.All.Count);
        Assert.Null(WilemanFit.General.YoungsModulus);
        Assert.Equal("from memory", WilemanFit.Copper.Provenance.Confidence);
    }

    [Fact]
    public void Frusta_and_fit_agree_for_the_plates_the_fit_was_made_for()
    {
        foreach (double grip in new[] { 10.0, 16, 40, 80 })
        {
            double frusta = ClampedStack.ShigleyFrusta(M16, [AnyPlates.LayerOf(grip, 207)]).Stiffness.NewtonsPerMeter;
            double fit = ClampedStack.Wileman(M16, [AnyPlates.LayerOf(grip, 207)], WilemanFit.Steel).Stiffness.NewtonsPerMeter;
            Assert.InRange(frusta / fit, 0.85, 1.2);
        }
    }

    [Fact]
    public void What_cannot_be_clamped_is_refused()
    {
        var valid = new AnyPlates([20], [205], 17.5, 22, 40, 30, JointForm.ThroughBolt);
        AssertRefused("bearingDiameter", () => (valid with { BearingMm = 17.5 }).Vdi);
        AssertRefused("outerDiameter", () => (valid with { OuterMm = 17.5 }).Vdi);
        AssertRefused("outerDiameter", () => (valid with { OuterMm = 17 }).Frusta);
        AssertRefused("layers", () => (valid with { LayersMm = [0.02] }).Vdi);
        AssertRefused("layers", () => ClampedStack.Wileman(M16, [AnyPlates.LayerOf(0.7, 205)], WilemanFit.Steel));
        Assert.Equal("layers", Assert.Throws<ArgumentException>(() => ClampedStack.ShigleyFrusta(M16, [])).ParamName);
        Assert.Equal("layers", Assert.Throws<ArgumentNullException>(() => ClampedStack.ShigleyFrusta(M16, [null!])).ParamName);
    }

    [Fact]
    public void Later_changes_of_the_callers_list_do_not_reach_the_stack()
    {
        List<ClampedLayer> layers = [AnyPlates.LayerOf(20, 205)];
        ClampedStack parts = ClampedStack.ShigleyFrusta(M16, layers);
        layers.Add(AnyPlates.LayerOf(5, 70));
        Assert.Single(parts.Layers);
        Close.To(20, parts.GripLength.Millimeters);
    }

    private static void AssertRefused(string parameter, Func<ClampedStack> create) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(create).ParamName);
}
