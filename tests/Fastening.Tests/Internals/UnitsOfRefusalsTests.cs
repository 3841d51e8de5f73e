using UnitsNet;

namespace Fastening.Tests.Internals;

/// <summary>A value and its bounds stand in one unit: a value given in another is shown in both.</summary>
public class UnitsOfRefusalsTests
{
    [Fact]
    public void A_value_in_another_unit_than_its_bounds_is_shown_in_both() => Assert.StartsWith(
        "leverLength is -0.4 m (-400 mm); it must be at least 0.001 mm",
        Assert.Throws<ArgumentOutOfRangeException>(() => new TorqueWrench(Length.FromMeters(-0.4))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_value_in_the_unit_of_its_bounds_is_shown_once() => Assert.StartsWith(
        "leverLength is -400 mm; it must be at least 0.001 mm",
        Assert.Throws<ArgumentOutOfRangeException>(() => new TorqueWrench(Length.FromMillimeters(-400))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("force is -5000 N (-5 kN); it must be at least 0 kN", -5000)]
    public void A_force_in_newtons(string start, double newtons)
    {
        BoltCompliance bolt = BoltCompliance.OfSections(
            ScrewThread.Parse("M10"), [BoltSection.OfDiameter(Length.FromMillimeters(30), Length.FromMillimeters(10))], ElasticMaterial.Steel);
        Assert.StartsWith(
            start, Assert.Throws<ArgumentOutOfRangeException>(() => bolt.ElongationAt(Force.FromNewtons(newtons))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_values_in_two_units_can_be_compared() => Assert.StartsWith(
        "bearingDiameter is 22 mm; it must be at least 1.001 of the hole, 1 in (25.4 mm)",
        Assert.Throws<ArgumentOutOfRangeException>(() => ClampedStack.Vdi2230Cone(
            [new ClampedLayer(Length.FromMillimeters(20), ElasticMaterial.Steel)], bearingDiameter: Length.FromMillimeters(22), hole: Length.FromInches(1),
            outerDiameter: Length.FromMillimeters(60), JointForm.ThroughBolt)).Message,
        StringComparison.Ordinal);
}
