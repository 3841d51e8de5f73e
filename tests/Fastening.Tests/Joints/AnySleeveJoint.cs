using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>
/// A bolt of round sections in a stack of sleeves, so that every spring is l/(E A) and can be solved by hand: millimetres, gigapascals,
/// millionths per kelvin. Bolt and layers differ in all of them.
/// </summary>
/// <param name="Bolt">Sections of the bolt, from the head on.</param>
/// <param name="Layers">Layers, from the head on; as thick together as the bolt is long.</param>
/// <param name="BoltGpa">Modulus of the bolt.</param>
/// <param name="BoltExpansion">Expansion of the bolt.</param>
/// <param name="HoleMm">Hole of the sleeves.</param>
/// <param name="OutsideMm">Outside of the sleeves.</param>
/// <param name="Preload">Preload in newtons.</param>
/// <param name="Introduction">Load introduction factor.</param>
public sealed record AnySleeveJoint(
    IReadOnlyList<(double Mm, double DiameterMm)> Bolt, IReadOnlyList<(double Mm, double Gpa, double Expansion)> Layers,
    double BoltGpa, double BoltExpansion, double HoleMm, double OutsideMm, double Preload, double Introduction)
{
    public double BoltResilience => Bolt.Sum(s => s.Mm / 1e3 / (BoltGpa * 1e9 * Math.PI / 4 * s.DiameterMm * s.DiameterMm / 1e6));

    public double PartsResilience => Layers.Sum(l => l.Mm / 1e3 / (l.Gpa * 1e9 * Math.PI / 4 * (OutsideMm * OutsideMm - HoleMm * HoleMm) / 1e6));

    public double GripMeters => Layers.Sum(l => l.Mm) / 1e3;

    public Force PreloadForce => Force.FromNewtons(Preload);

    public LoadIntroduction Known => LoadIntroduction.Of(Introduction);

    public SpringRing Ring => SpringRing.Tightened(BoltResilience, PartsResilience, Introduction, Preload);

    public Joint Joint => new(
        BoltCompliance.OfSections(
            ScrewThread.Parse("M12"),
            [.. Bolt.Select(s => BoltSection.OfDiameter(Length.FromMillimeters(s.Mm), Length.FromMillimeters(s.DiameterMm)))],
            Material(BoltGpa, BoltExpansion)),
        ClampedStack.Vdi2230Cone(
            [.. Layers.Select(l => new ClampedLayer(Length.FromMillimeters(l.Mm), Material(l.Gpa, l.Expansion)))],
            bearingDiameter: Length.FromMillimeters(OutsideMm * 1.05), hole: Length.FromMillimeters(HoleMm), outerDiameter: Length.FromMillimeters(OutsideMm),
            JointForm.ThroughBolt));

    private static ElasticMaterial Material(double gpa, double expansion) =>
        new("any", Pressure.FromGigapascals(gpa), 0.3, CoefficientOfThermalExpansion.FromPpmPerKelvin(expansion));
}
