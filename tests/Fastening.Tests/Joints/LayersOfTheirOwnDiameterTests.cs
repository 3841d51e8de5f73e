using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>Washers, spacers and tubes between plates, against a brute-force sum over thin slices and against bars in series.</summary>
[Properties(Arbitrary = [typeof(JointDomain)], MaxTest = 200)]
public class LayersOfTheirOwnDiameterTests
{
    private const int Slices = 40_000;

    [Property]
    public void Frusta_are_the_sum_of_thin_slices(AnyLayeredPlates any)
    {
        double tangent = Math.Tan(any.Stack.HalfAngleDegrees * Math.PI / 180);
        Close.To(Sliced(any, tangent, any.Stack.OuterMm), any.Frusta.MetersPerNewton, 3e-4);
        Close.To(Sliced(any, tangent, double.PositiveInfinity), any.WideFrusta.MetersPerNewton, 3e-4);
    }

    [Property]
    public void The_cone_of_vdi_2230_is_the_sum_of_thin_slices(AnyLayeredPlates any) =>
        Close.To(Sliced(any, ConeQuadrature.VdiTangent(any.Stack), any.Stack.OuterMm), any.Vdi.MetersPerNewton, 3e-4);

    [Property]
    public void A_diameter_of_ones_own_that_is_that_of_the_stack_changes_nothing(AnyPlates stack)
    {
        AnyPlates wide = stack with { OuterMm = Math.Max(stack.OuterMm, stack.BearingMm * 1.01) };
        var same = new AnyLayeredPlates(wide, [.. wide.LayersMm.Select(_ => (double?)wide.OuterMm)]);
        Close.To(wide.Vdi.MetersPerNewton, same.Vdi.MetersPerNewton, 1e-11);
        Close.To(wide.Frusta.MetersPerNewton, same.Frusta.MetersPerNewton, 1e-11);
    }

    [Property]
    public void A_narrower_layer_never_makes_the_parts_stiffer(AnyLayeredPlates any)
    {
        AnyLayeredPlates narrower = any with { OwnMm = [.. any.OwnMm.Select(own => own is double mm ? Math.Max(mm * 0.9, any.Stack.HoleMm * 1.01) : (double?)null)] };
        Assert.True(narrower.WideFrusta.MetersPerNewton >= any.WideFrusta.MetersPerNewton * (1 - 1e-12));
        Assert.True(any.WideFrusta.MetersPerNewton >= any.Stack.WideFrusta.MetersPerNewton * (1 - 1e-12));
    }

    [Property]
    public void With_bolt_and_nut_either_end_may_be_the_head(AnyLayeredPlates any)
    {
        AnyLayeredPlates stack = any with { Stack = any.Stack with { Form = JointForm.ThroughBolt } };
        var turned = new AnyLayeredPlates(
            stack.Stack with { LayersMm = [.. stack.Stack.LayersMm.Reverse()], ModuliGpa = [.. stack.Stack.ModuliGpa.Reverse()] }, [.. stack.OwnMm.Reverse()]);
        Close.To(stack.WideFrusta.MetersPerNewton, turned.WideFrusta.MetersPerNewton, 1e-11);
        Close.To(stack.Vdi.MetersPerNewton, turned.Vdi.MetersPerNewton, 1e-11);
    }

    [Property]
    public void Derivations_end_on_their_answers(AnyLayeredPlates any)
    {
        foreach (ClampedStack parts in new[] { any.Vdi, any.Frusta, any.WideFrusta }) Assert.Equal(parts.MetersPerNewton, Derivation.Of(() => parts.MetersPerNewton).Result);
    }

    /// <summary>A spacer of 20 mm bore 12 between two washers of 30 mm, head 30 mm: everything no wider than the head, so bars in series.</summary>
    [Fact]
    public void Tubes_of_different_width_are_bars_in_series()
    {
        ClampedLayer washer = AnyPlates.LayerOf(3, 205).WithOuterDiameter(Length.FromMillimeters(30)), spacer = AnyPlates.LayerOf(50, 70);
        ClampedStack parts = ClampedStack.Sleeve([washer, spacer, washer], outerDiameter: Length.FromMillimeters(20), hole: Length.FromMillimeters(12));
        double compliance = 2 * 3 / (205e3 * Math.PI / 4 * (30 * 30 - 12 * 12)) + 50 / (70e3 * Math.PI / 4 * (20 * 20 - 12 * 12)); // mm/N
        Close.To(compliance * 1e-3, parts.MetersPerNewton);
        Assert.Equal(parts.MetersPerNewton, Derivation.Of(() => parts.MetersPerNewton).Result);
        Assert.Equal(ClampedStackMethod.Sleeve, parts.Method);
        Assert.Null(parts.Form);
        Assert.Empty(parts.RangeNotes);
    }

    /// <summary>The same by frusta of a head of 30 mm: no layer is wider than it.</summary>
    [Fact]
    public void A_sleeve_is_what_a_cone_comes_to_in_parts_no_wider_than_the_head()
    {
        IReadOnlyList<ClampedLayer> layers = [AnyPlates.LayerOf(20, 205), AnyPlates.LayerOf(30, 110)];
        Length outer = Length.FromMillimeters(20), hole = Length.FromMillimeters(12), head = Length.FromMillimeters(22);
        double sleeve = ClampedStack.Sleeve(layers, outer, hole).MetersPerNewton;
        Close.To(sleeve, ClampedStack.Vdi2230Cone(layers, head, hole, outer, JointForm.ThroughBolt).MetersPerNewton);
        Close.To(sleeve, ClampedStack.Frusta(layers, head, hole, Angle.FromDegrees(30), outer, JointForm.TappedThread).MetersPerNewton);
    }

    /// <summary>Shigley's Mechanical Engineering Design, 8th ed., instructor solutions, problem 8-23: k₂ of 7 mm of 207 GPa from 24.9 mm, hole 12, is 15 620 MN/m.</summary>
    [Fact]
    public void A_single_frustum_is_that_of_the_textbook()
    {
        ClampedStack frustum = ClampedStack.Frustum(
            AnyPlates.LayerOf(7, 207), smallDiameter: Length.FromMillimeters(24.9), hole: Length.FromMillimeters(12), halfAngle: Angle.FromDegrees(30));
        Assert.Equal(15_620, frustum.Stiffness.NewtonsPerMeter / 1e6, 5.0);
    }

    [Fact]
    public void What_is_no_layer_is_refused()
    {
        Length hole = Length.FromMillimeters(12), outer = Length.FromMillimeters(40), head = Length.FromMillimeters(20);
        ClampedLayer plate = AnyPlates.LayerOf(20, 205), thin = plate.WithOuterDiameter(Length.FromMillimeters(12));
        Assert.Equal("layers", Assert.Throws<ArgumentException>(() => ClampedStack.Sleeve([thin], outer, hole)).ParamName);
        Assert.Equal("layers", Assert.Throws<ArgumentException>(() => ClampedStack.Frusta([thin], head, hole, Angle.FromDegrees(30), null, JointForm.ThroughBolt)).ParamName);
        Assert.Equal("layers", Assert.Throws<ArgumentException>(() => ClampedStack.Vdi2230Cone([thin], head, hole, outer, JointForm.ThroughBolt)).ParamName);
        Assert.Equal("outerDiameter", Assert.Throws<ArgumentOutOfRangeException>(() => ClampedStack.Sleeve([plate], hole, hole)).ParamName);
        Assert.Equal("smallDiameter", Assert.Throws<ArgumentOutOfRangeException>(() => ClampedStack.Frustum(plate, hole, hole, Angle.FromDegrees(30))).ParamName);
        Assert.Equal("outerDiameter", Assert.Throws<ArgumentOutOfRangeException>(
            () => ClampedStack.Vdi2230Cone([plate.WithOuterDiameter(outer)], head, hole, Length.FromMillimeters(18), JointForm.ThroughBolt)).ParamName);
        Assert.Equal("layers", Assert.Throws<ArgumentException>(
            () => ClampedStack.Wileman(ScrewThread.Parse("M12"), [plate.WithOuterDiameter(outer)], WilemanFit.Steel)).ParamName);
    }

    /// <summary>
    /// The body of pressure from its definition and no formula of the library: at each slice the least of what each end permits, and of what each layer
    /// permits that lies above or below.
    /// </summary>
    private static double Sliced(AnyLayeredPlates any, double tangent, double outerMm)
    {
        AnyPlates stack = any.Stack;
        double[] faces = [.. stack.LayersMm.Select((_, i) => stack.LayersMm.Take(i).Sum())];
        double sum = 0;
        for (int layer = 0; layer < faces.Length; layer++)
        {
            int slices = Slices / faces.Length;
            double slice = stack.LayersMm[layer] / slices;
            for (int i = 0; i < slices; i++)
            {
                double z = faces[layer] + (i + 0.5) * slice;
                double diameter = stack.BearingMm + 2 * tangent * z;
                if (stack.Form == JointForm.ThroughBolt) diameter = Math.Min(diameter, stack.BearingMm + 2 * tangent * (stack.GripMm - z));
                for (int other = 0; other < faces.Length; other++)
                {
                    double away = Math.Max(0, Math.Max(faces[other] - z, z - faces[other] - stack.LayersMm[other]));
                    diameter = Math.Min(diameter, (any.OwnMm[other] ?? outerMm) + 2 * tangent * away);
                }

                sum += slice / (stack.ModuliGpa[layer] * Math.PI / 4 * (diameter * diameter - stack.HoleMm * stack.HoleMm));
            }
        }

        return sum * 1e-6;
    }
}
