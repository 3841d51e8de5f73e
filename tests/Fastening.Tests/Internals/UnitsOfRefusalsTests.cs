using Fastening.Internals;
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

    public static TheoryData<string, Action> EveryQuantity => new()
    {
        { "x is -1 in (-25.4 mm); it must be at least 0 mm", () => Domains.LengthOrZero.Check(Length.FromInches(-1), "x") },
        { "x is -1 m² (-1000000 mm²); it must be at least 1E-06 mm²", () => Domains.Area.Check(Area.FromSquareMeters(-1), "x") },
        { "x is -1 kN·m (-1000 N·m); it must be at least 0 N·m", () => Domains.Torque.Check(Torque.FromKilonewtonMeters(-1), "x") },
        { "x is -1 N (-0.001 kN); it must be at least 0 kN", () => Domains.Force.Check(Force.FromNewtons(-1), "x") },
        { "x is -1 Pa (-1E-06 MPa); it must be at least 0.001 MPa", () => Domains.Stress.Check(Pressure.FromPascals(-1), "x") },
        { "x is -0.5 r (-180°); it must be at least 0°", () => Domains.Rotation.Check(Angle.FromRevolutions(-0.5), "x") },
        { "x is -1 m (-60 s); it must be at least 0.0001 s", () => Domains.Duration.Check(Duration.FromMinutes(-1), "x") },
        { "x is -10 rpm (-60°/s); it must be at least", () => Domains.RotationRate.Check(RotationalSpeed.FromRevolutionsPerMinute(-10), "x") },
        { "x is -25 %; it must be at least 0 % and at most 100 %", () => Domains.Share.Check(Ratio.FromDecimalFractions(-0.25), "x") },
        { "x is 9 °F⁻¹ (16.2 1/K); it must be at least -0.001 1/K", () => Domains.ThermalExpansion.Check(CoefficientOfThermalExpansion.FromPerDegreeFahrenheit(9), "x") },
        { "x is -900 ∆°F (-500 K); it must be at least -300 K", () => Domains.TemperatureChange.Check(TemperatureDelta.FromDegreesFahrenheit(-900), "x") },
    };

    [Theory]
    [MemberData(nameof(EveryQuantity))]
    public void Every_quantity_shows_its_value_in_the_unit_of_its_bounds(string start, Action check) =>
        Assert.StartsWith(start, Assert.Throws<ArgumentOutOfRangeException>(check).Message, StringComparison.Ordinal);

    [Fact]
    public void Two_values_in_two_units_can_be_compared() => Assert.StartsWith(
        "bearingDiameter is 22 mm; it must be at least 1.001 of the hole, 1 in (25.4 mm)",
        Assert.Throws<ArgumentOutOfRangeException>(() => ClampedStack.Vdi2230Cone(
            [new ClampedLayer(Length.FromMillimeters(20), ElasticMaterial.Steel)], bearingDiameter: Length.FromMillimeters(22), hole: Length.FromInches(1),
            outerDiameter: Length.FromMillimeters(60), JointForm.ThroughBolt)).Message,
        StringComparison.Ordinal);
}
