using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Joints;

[Properties(Arbitrary = [typeof(JointDomain)], MaxTest = 300)]
public class JointTests
{
    /// <summary>Two springs of a ring, solved as such: a turn takes up one lead of the thread, part of it in the bolt, part in the parts.</summary>
    [Property]
    public void One_turn_takes_up_one_lead(AnyBolt bolt, AnyPlates stack)
    {
        Joint joint = Of(bolt, stack);
        double gain = joint.PreloadGainAt(Angle.FromRevolutions(1)).Newtons;
        double stretch = gain / joint.Bolt.Stiffness.NewtonsPerMeter, squeeze = gain / joint.Parts.Stiffness.NewtonsPerMeter;
        Close.To(bolt.Thread.Lead.Meters, stretch + squeeze);
        Close.To(stretch, joint.Bolt.ElongationAt(Force.FromNewtons(gain)).Meters);
    }

    [Property]
    public void Work_of_the_rotation_is_the_energy_of_the_springs(AnyBolt bolt, AnyPlates stack)
    {
        Joint joint = Of(bolt, stack);
        double force = 1234, angle = joint.RotationFor(Force.FromNewtons(force)).Radians;
        double frictionless = force * bolt.Thread.Lead.Meters / (2 * Math.PI); // torque at the end of a rise from zero
        double stored = force * force / (2 * joint.Bolt.Stiffness.NewtonsPerMeter) + force * force / (2 * joint.Parts.Stiffness.NewtonsPerMeter);
        Close.To(stored, frictionless * angle / 2);
    }

    [Property]
    public void Rotation_and_preload_come_back(AnyBolt bolt, AnyPlates stack)
    {
        Joint joint = Of(bolt, stack);
        Force gain = Force.FromKilonewtons(37);
        Close.To(gain.Newtons, joint.PreloadGainAt(joint.RotationFor(gain)).Newtons);
        Assert.True(joint.RotationFor(gain * 1.01) > joint.RotationFor(gain));
    }

    [Property]
    public void Load_factor_is_the_share_of_the_bolt_when_both_springs_share_a_displacement(AnyBolt bolt, AnyPlates stack)
    {
        Joint joint = Of(bolt, stack);
        double kb = joint.Bolt.Stiffness.NewtonsPerMeter, km = joint.Parts.Stiffness.NewtonsPerMeter;
        Close.To(kb / (kb + km), joint.LoadFactor);
        Assert.InRange(joint.LoadFactor, 1e-6, 1 - 1e-6);
        Close.To(1 / kb + 1 / km, joint.MetersPerNewton);
    }

    [Property]
    public void Derivations_end_on_their_answers(AnyBolt bolt, AnyPlates stack)
    {
        Joint joint = Of(bolt, stack);
        var gain = Force.FromKilonewtons(12);
        Assert.Equal(joint.RotationFor(gain), Angle.FromDegrees(Derivation.Of(() => joint.RotationFor(gain)).Result / (Math.PI / 180)));
        Assert.Equal(joint.PreloadGainAt(Angle.FromDegrees(71)).Newtons, Derivation.Of(() => joint.PreloadGainAt(Angle.FromDegrees(71))).Result);
        Assert.Equal(joint.LoadFactor, Derivation.Of(() => joint.LoadFactor).Result);
        Assert.Contains(Derivation.Of(() => joint.LoadFactor).Steps, step => step.Equation.Id == "bolt.resilience");
    }

    [Fact]
    public void Methods_of_different_schools_are_not_mixed()
    {
        ScrewThread thread = ScrewThread.Parse("M16");
        IReadOnlyList<ClampedLayer> layers = [AnyPlates.LayerOf(40, 205)];
        Length grip = Length.FromMillimeters(40), length = Length.FromMillimeters(60);
        BoltCompliance vdi = BoltCompliance.Vdi2230(thread, length, length, grip, BoltHead.Hexagon, ElasticMaterial.Steel);
        BoltCompliance textbook = BoltCompliance.Textbook(thread, length, length, grip, ElasticMaterial.Steel);
        BoltCompliance sections = BoltCompliance.OfSections(thread, [BoltSection.OfRootArea(length, thread)], ElasticMaterial.Steel);
        ClampedStack cone = new AnyPlates([40], [205], 17.5, 22, 60, 30, JointForm.ThroughBolt).Vdi;
        ClampedStack frusta = ClampedStack.ShigleyFrusta(thread, layers);
        ClampedStack fit = ClampedStack.Wileman(thread, layers, WilemanFit.Steel);

        Assert.Equal("parts", Assert.Throws<ArgumentException>(() => new Joint(vdi, fit)).ParamName);
        Assert.Equal("parts", Assert.Throws<ArgumentException>(() => new Joint(textbook, cone)).ParamName);
        foreach ((BoltCompliance bolt, ClampedStack parts) in new[] { (vdi, cone), (vdi, frusta), (textbook, frusta), (textbook, fit), (sections, cone), (sections, fit) })
        {
            Assert.InRange(new Joint(bolt, parts).LoadFactor, 0.05, 0.5);
        }
    }

    [Fact]
    public void Bolt_and_parts_must_have_one_grip()
    {
        ScrewThread thread = ScrewThread.Parse("M16");
        BoltCompliance bolt = BoltCompliance.Textbook(
            thread, Length.FromMillimeters(60), Length.FromMillimeters(38), Length.FromMillimeters(40), ElasticMaterial.Steel);
        ArgumentException refusal = Assert.Throws<ArgumentException>(
            () => new Joint(bolt, ClampedStack.ShigleyFrusta(thread, [AnyPlates.LayerOf(41, 205)])));
        Assert.Contains("40 mm", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("41 mm", refusal.Message, StringComparison.Ordinal);
    }

    private static Joint Of(AnyBolt bolt, AnyPlates stack) => new(BoltOf(bolt, stack), stack.Scaled(bolt.GripMm / stack.GripMm).Vdi);

    private static BoltCompliance BoltOf(AnyBolt bolt, AnyPlates stack) =>
        stack.Form == JointForm.TappedThread ? bolt.Vdi.TappedInto(bolt.Material) : bolt.Vdi;
}
