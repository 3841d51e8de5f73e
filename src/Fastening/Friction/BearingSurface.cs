using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The surface under the turned head or nut: a flat ring or a cone.</summary>
/// <remarks>
/// Outer is the smaller outer, inner the larger inner diameter of the contact, chamfers, holes and washers included; for a cone both are
/// projected on the plane square to the axis. The effective diameter is the mean (uniform wear; ISO 16047, VDI 2230) unless
/// <see cref="WithUniformPressure"/> asks for the other (JIS, Machinery's Handbook).
/// </remarks>
/// <example><code>BearingSurface.Annulus(Length.FromMillimeters(22.5), Length.FromMillimeters(17.5)).EffectiveDiameter   // 20 mm</code></example>
public sealed class BearingSurface
{
    private readonly double _outer;
    private readonly double _inner;
    private readonly double _includedAngleDegrees;
    private readonly bool _uniformPressure;

    private BearingSurface(double outer, double inner, double includedAngleDegrees, bool uniformPressure)
    {
        _outer = outer;
        _inner = inner;
        _includedAngleDegrees = includedAngleDegrees;
        _uniformPressure = uniformPressure;
    }

    /// <summary>Outer diameter D_o of the contact.</summary>
    public Length OuterDiameter => Si.Length(_outer);

    /// <summary>Inner diameter D_i of the contact.</summary>
    public Length InnerDiameter => Si.Length(_inner);

    /// <summary>Included angle γ of the seat: 180° for a flat ring.</summary>
    public Angle IncludedAngle => Si.Angle(_includedAngleDegrees);

    /// <summary>Whether the effective diameter is that of uniform pressure.</summary>
    public bool HasUniformPressure => _uniformPressure;

    /// <summary>Effective diameter D_b at which bearing friction acts.</summary>
    public Length EffectiveDiameter => Si.Length(Diameter(null));

    /// <summary>A flat ring.</summary>
    /// <param name="outer">Outer diameter of the contact.</param>
    /// <param name="inner">Inner diameter of the contact, smaller than <paramref name="outer"/>.</param>
    /// <returns>The surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is outside its domain, or inner is not smaller than outer.</exception>
    public static BearingSurface Annulus(Length outer, Length inner)
    {
        (double o, double i) = Diameters(outer, inner);
        return new BearingSurface(o, i, 180, uniformPressure: false);
    }

    /// <summary>A conical seat.</summary>
    /// <param name="outer">Outer diameter of the contact.</param>
    /// <param name="inner">Inner diameter of the contact, smaller than <paramref name="outer"/>.</param>
    /// <param name="includedAngle">Included angle of the cone, 1° to 180°: 90° for a countersunk head of 90°.</param>
    /// <returns>The surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or inner is not smaller than outer.</exception>
    public static BearingSurface Cone(Length outer, Length inner, Angle includedAngle)
    {
        (double o, double i) = Diameters(outer, inner);
        return new BearingSurface(o, i, Guard.Check(includedAngle, Domains.SeatAngle), uniformPressure: false);
    }

    /// <summary>Under a hexagon head of ISO 4014/4017 on a medium clearance hole of ISO 273.</summary>
    /// <param name="thread">An ISO metric thread with a size in both tables.</param>
    /// <returns>The ring between the least washer-face diameter d_w (grade A to M24, grade B above) and the hole.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The tables have no such size; give the diameters with <see cref="Annulus"/>.</exception>
    public static BearingSurface ForHexagonHead(ScrewThread thread)
    {
        (double outer, double inner) = HexagonHeadTable.RingFor(Guard.NotNull(thread));
        return new BearingSurface(outer, inner, 180, uniformPressure: false);
    }

    /// <summary>The same surface with the effective diameter of uniform pressure, (2/3)(D_o³ − D_i³)/(D_o² − D_i²).</summary>
    /// <returns>A new surface.</returns>
    public BearingSurface WithUniformPressure() => new(_outer, _inner, _includedAngleDegrees, uniformPressure: true);

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant(
        $"{Shape} {InnerDiameter.Millimeters:0.###} to {OuterDiameter.Millimeters:0.###} mm");

    /// <summary>Bearing torque per unit preload.</summary>
    internal double Arm(Derivation? work, double friction) => TorqueEquations.BearingArmEquation.Step(work, friction, Diameter(work), Si.ToRadians(_includedAngleDegrees));

    private string Shape => _includedAngleDegrees == 180 ? "flat ring" : FormattableString.Invariant($"{_includedAngleDegrees:0.##}° cone");

    private double Diameter(Derivation? work) =>
        (_uniformPressure ? TorqueEquations.UniformPressureBearingDiameterEquation : TorqueEquations.MeanBearingDiameterEquation).Step(work, _outer, _inner);

    private static (double Outer, double Inner) Diameters(Length outer, Length inner)
    {
        double o = Guard.Check(outer, Domains.Length);
        double i = Guard.Check(inner, Domains.Length);
        if (i >= o) Guard.RefuseAgainst(nameof(inner), inner, $"less than the outer diameter, {Guard.Show(outer)}");
        return (o, i);
    }
}
