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

    public static TheoryData<string, Action> EveryOverload => new()
    {
        { "x is -1 in (-25.4 mm); it must be at least 0 mm", () => Guard.Check(Length.FromInches(-1), Domains.LengthOrZero, "x") },
        { "x is -1 m² (-1000000 mm²); it must be at least 1E-06 mm²", () => Guard.Check(Area.FromSquareMeters(-1), Domains.Area, "x") },
        { "x is -1 kN·m (-1000 N·m); it must be at least 0 N·m", () => Guard.Check(Torque.FromKilonewtonMeters(-1), Domains.Torque, "x") },
        { "x is -1 N (-0.001 kN); it must be at least 0 kN", () => Guard.Check(Force.FromNewtons(-1), Domains.Force, "x") },
        { "x is -1 Pa (-1E-06 MPa); it must be at least 0.001 MPa", () => Guard.Check(Pressure.FromPascals(-1), Domains.Stress, "x") },
        { "x is -0.5 r (-180°); it must be at least 0°", () => Guard.Check(Angle.FromRevolutions(-0.5), Domains.Rotation, "x") },
        { "x is -1 m (-60 s); it must be at least 0.0001 s", () => Guard.Check(Duration.FromMinutes(-1), Domains.Duration, "x") },
        { "x is -10 rpm (-60°/s); it must be at least", () => Guard.Check(RotationalSpeed.FromRevolutionsPerMinute(-10), Domains.RotationRate, "x") },
        { "x is -25 %; it must be at least 0 % and at most 100 %", () => Guard.Check(Ratio.FromDecimalFractions(-0.25), Domains.Share, "x") },
        { "x is 9 °F⁻¹ (16.2 1/K); it must be at least -0.001 1/K", () => Guard.Check(CoefficientOfThermalExpansion.FromPerDegreeFahrenheit(9), Domains.ThermalExpansion, "x") },
        { "x is -900 ∆°F (-500 K); it must be at least -300 K", () => Guard.Check(TemperatureDelta.FromDegreesFahrenheit(-900), Domains.TemperatureChange, "x") },
    };

    [Theory]
    [MemberData(nameof(EveryOverload))]
    public void Every_overload_shows_the_value_in_the_unit_of_its_bounds(string start, Action check) =>
        Assert.StartsWith(start, Assert.Throws<ArgumentOutOfRangeException>(check).Message, StringComparison.Ordinal);

    [Fact]
    public void Two_values_in_two_units_can_be_compared() => Assert.StartsWith(
        "bearingDiameter is 22 mm; it must be at least 1.001 of the hole, 1 in (25.4 mm)",
        Assert.Throws<ArgumentOutOfRangeException>(() => ClampedStack.Vdi2230Cone(
            [new ClampedLayer(Length.FromMillimeters(20), ElasticMaterial.Steel)], bearingDiameter: Length.FromMillimeters(22), hole: Length.FromInches(1),
            outerDiameter: Length.FromMillimeters(60), JointForm.ThroughBolt)).Message,
        StringComparison.Ordinal);
}
