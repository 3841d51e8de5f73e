using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>Clamped parts of one to five layers of different materials; lengths in millimetres, moduli in gigapascals.</summary>
/// <param name="LayersMm">Thicknesses.</param>
/// <param name="ModuliGpa">Young's modulus of each layer.</param>
/// <param name="HoleMm">Hole.</param>
/// <param name="BearingMm">Bearing diameter.</param>
/// <param name="OuterMm">Outside diameter.</param>
/// <param name="HalfAngleDegrees">Half angle of frusta.</param>
/// <param name="Form">Bolt and nut, or tapped part.</param>
public sealed record AnyPlates(
    IReadOnlyList<double> LayersMm, IReadOnlyList<double> ModuliGpa, double HoleMm, double BearingMm, double OuterMm, double HalfAngleDegrees, JointForm Form)
{
    public double GripMm => LayersMm.Sum();

    public IReadOnlyList<ClampedLayer> Layers => [.. LayersMm.Zip(ModuliGpa, LayerOf)];

    /// <summary>The same geometry in one material, as one plate.</summary>
    public AnyPlates OfOnePlate => this with { LayersMm = [GripMm], ModuliGpa = [ModuliGpa[0]] };

    public ClampedStack Vdi => ClampedStack.Vdi2230Cone(Layers, Mm(BearingMm), Mm(HoleMm), Mm(OuterMm), Form);

    public ClampedStack Frusta => ClampedStack.Frusta(Layers, Mm(BearingMm), Mm(HoleMm), Angle.FromDegrees(HalfAngleDegrees), Mm(OuterMm), Form);

    public ClampedStack WideFrusta => ClampedStack.Frusta(Layers, Mm(BearingMm), Mm(HoleMm), Angle.FromDegrees(HalfAngleDegrees), null, Form);

    public AnyPlates Scaled(double factor) => this with
    {
        LayersMm = [.. LayersMm.Select(t => t * factor)],
        HoleMm = HoleMm * factor,
        BearingMm = BearingMm * factor,
        OuterMm = OuterMm * factor,
    };

    public static ClampedLayer LayerOf(double thicknessMm, double modulusGpa) =>
        new(Mm(thicknessMm), new ElasticMaterial("plate", Pressure.FromGigapascals(modulusGpa), 0.3, CoefficientOfThermalExpansion.FromPpmPerKelvin(11)));

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
