using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>D'_A of VDI 2230: the diameter that gives the angle, apart from the one that limits the cone.</summary>
[Properties(Arbitrary = [typeof(JointDomain)], MaxTest = 200)]
public class InterfaceDiameterTests
{
    [Property]
    public void The_cone_is_the_integral_of_its_cross_sections_at_the_angle_of_the_other_diameter(AnyPlates any)
    {
        AnyPlates stack = any with { OuterMm = Math.Max(any.OuterMm, any.BearingMm * 1.05) };
        foreach (double ratio in new[] { 1, 1.7, 6 })
        {
            double interfaceMm = stack.BearingMm * ratio;
            ClampedStack parts = stack.Vdi.WithInterfaceDiameter(Length.FromMillimeters(interfaceMm));
            double tangent = ConeQuadrature.VdiTangent(stack with { OuterMm = interfaceMm });
            Close.To(ConeQuadrature.MetersPerNewton(stack, tangent, stack.OuterMm), parts.MetersPerNewton, 1e-9);
            Assert.Equal(parts.MetersPerNewton, Derivation.Of(() => parts.MetersPerNewton).Result);
        }
    }

    [Property]
    public void The_diameter_of_the_parts_themselves_changes_nothing(AnyPlates any)
    {
        AnyPlates stack = any with { OuterMm = Math.Max(any.OuterMm, any.BearingMm * 1.05) };
        Assert.Equal(stack.Vdi.MetersPerNewton, stack.Vdi.WithInterfaceDiameter(Length.FromMillimeters(stack.OuterMm)).MetersPerNewton);
    }

    [Theory]
    [InlineData(61, false)]
    [InlineData(63, true)]
    [InlineData(300, true)]
    public void Parts_wider_than_bearing_diameter_and_grip_together_are_said(double outerMm, bool noted)
    {
        ClampedStack parts = new AnyPlates([40], [205], 17.5, 22, outerMm, 30, JointForm.ThroughBolt).Vdi;
        Assert.Equal(noted, parts.RangeNotes.Any(note => note.Kind == RangeNoteKind.OutsideBeyondGrip));
        if (noted) Assert.Equal(outerMm / 62, parts.RangeNotes.Single(note => note.Kind == RangeNoteKind.OutsideBeyondGrip).Value, 1e-12);
    }

    [Fact]
    public void A_cap_takes_the_note_away_and_makes_the_parts_softer()
    {
        ClampedStack parts = new AnyPlates([40], [205], 17.5, 22, 300, 30, JointForm.ThroughBolt).Vdi;
        ClampedStack capped = parts.WithInterfaceDiameter(Length.FromMillimeters(22) + parts.GripLength);
        Assert.True(capped.IsInRange);
        Assert.True(capped.Stiffness < parts.Stiffness);
        Assert.Contains("parts.interface-diameter-ratio", Derivation.Of(() => capped.MetersPerNewton).Steps.Select(step => step.Equation.Id));
    }

    [Fact]
    public void Only_a_cone_of_vdi_2230_has_such_an_angle()
    {
        var stack = new AnyPlates([40], [205], 17.5, 22, 60, 30, JointForm.ThroughBolt);
        Length diameter = Length.FromMillimeters(40);
        Assert.Throws<InvalidOperationException>(() => stack.Frusta.WithInterfaceDiameter(diameter));
        Assert.Throws<InvalidOperationException>(() => (stack with { OuterMm = 21 }).Vdi.WithInterfaceDiameter(diameter));
        Assert.Equal("interfaceDiameter", Assert.Throws<ArgumentOutOfRangeException>(() => stack.Vdi.WithInterfaceDiameter(Length.FromMillimeters(21.9))).ParamName);
    }
}
