using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The surface under the turned head or nut: a flat ring, a cone, a sphere, or only its effective diameter.</summary>
/// <remarks>
/// Outer is the smaller outer, inner the larger inner diameter of everything in contact: washer face, countersink of the nut, hole or
/// washer. For a cone both are projected on the plane square to the axis. The effective diameter of a ring is the mean (uniform wear; ISO 16047,
/// VDI 2230) unless <see cref="WithUniformPressure"/> or the convention of a model requires another (JIS, Machinery's Handbook, Shigley); one that
/// was stated is kept under every convention. The transition between head and shank
/// (d_a of ISO 4014) is not counted, as in the formula of ISO 16047:2005 (from memory) and in the tables of VDI 2230: its greatest value
/// lies 0.2 to 1 mm above the medium hole. Where it matters, in a fine hole, state it with <see cref="WithHole(Length)"/>.
/// </remarks>
/// <example><code>BearingSurface.ForHexagonNut(ScrewThread.Parse("M16")).WithWasher(PlainWasher.Iso7089)
/// BearingSurface.Annulus(Length.FromMillimeters(22.5), Length.FromMillimeters(17.5)).EffectiveDiameter   // 20 mm</code></example>
public sealed class BearingSurface
{
    private const string NoRing = "This surface is known by its effective diameter only; state the ring with BearingSurface.Annulus or Cone.";

    private readonly BearingContact _contact;
    private readonly BearingFace? _face;

    private BearingSurface(BearingContact contact, BearingFace? face = null)
    {
        _contact = contact;
        _face = face;
    }

    /// <summary>Outer diameter D_o of the contact; null when only the effective diameter is known, and for a sphere.</summary>
    public Length? OuterDiameter => _contact is BearingContact.Ring ring ? Si.Length(ring.Outer.Term) : null;

    /// <summary>Inner diameter D_i of the contact; null when only the effective diameter is known, and for a sphere.</summary>
    public Length? InnerDiameter => _contact is BearingContact.Ring ring ? Si.Length(ring.Inner.Term) : null;

    /// <summary>Included angle γ of the seat: 180° where flat, that of the tangent cone for a sphere.</summary>
    public Angle IncludedAngle => Si.Angle(_contact.SeatDegrees);

    /// <summary>Whether the effective diameter is that of uniform pressure.</summary>
    public bool HasUniformPressure => _contact is BearingContact.Ring { HasUniformPressure: true };

    /// <summary>Effective diameter D_b at which bearing friction acts.</summary>
    public Length EffectiveDiameter => Si.Length(_contact.Diameter);

    /// <summary>A flat ring.</summary>
    /// <param name="outer">Outer diameter of the contact.</param>
    /// <param name="inner">Inner diameter of the contact, smaller than <paramref name="outer"/>.</param>
    /// <returns>The surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is outside its domain, or inner is not smaller than outer.</exception>
    /// <example><code>BearingSurface.Annulus(outer: Length.FromMillimeters(22.5), inner: Length.FromMillimeters(17.5)).EffectiveDiameter.Millimeters   // 20</code></example>
    public static BearingSurface Annulus(Length outer, Length inner)
    {
        (Stated<Length> o, Stated<Length> i) = Diameters(outer, inner);
        return new BearingSurface(new BearingContact.Ring(o, i));
    }

    /// <summary>A conical seat.</summary>
    /// <param name="outer">Outer diameter of the contact.</param>
    /// <param name="inner">Inner diameter of the contact, smaller than <paramref name="outer"/>.</param>
    /// <param name="includedAngle">Included angle of the cone, 1° to 180°: 90° for a countersunk head of 90°.</param>
    /// <returns>The surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or inner is not smaller than outer.</exception>
    /// <example><code>BearingSurface.Cone(outer: Length.FromMillimeters(22), inner: Length.FromMillimeters(14), includedAngle: Angle.FromDegrees(60))</code></example>
    public static BearingSurface Cone(Length outer, Length inner, Angle includedAngle)
    {
        (Stated<Length> o, Stated<Length> i) = Diameters(outer, inner);
        return new BearingSurface(new BearingContact.Ring(o, i, Domains.SeatAngle.Stated(includedAngle)));
    }

    /// <summary>A spherical seat (ball nut, spherical washer), touching along a circle.</summary>
    /// <param name="contactDiameter">Diameter of the circle; for a band, its mean.</param>
    /// <param name="sphereRadius">Radius of the sphere, more than half of <paramref name="contactDiameter"/>: its tangent cone opens by 1° or more.</param>
    /// <returns>The surface: the cone tangent to the sphere at that circle (equation torque.sphere-seat-angle).</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its domain, or no such circle lies on the sphere.</exception>
    /// <example><code>BearingSurface.Sphere(Length.FromMillimeters(22), Length.FromMillimeters(14))   // wheel nut, ball of 28 mm</code></example>
    public static BearingSurface Sphere(Length contactDiameter, Length sphereRadius)
    {
        var circle = new BearingContact.Circle(Domains.Length.Stated(contactDiameter), Domains.Length.Stated(sphereRadius));
        if (!Domains.SeatAngle.Contains(circle.SeatDegrees))
        {
            Guard.RefuseAgainst(nameof(sphereRadius), sphereRadius, $"more than half the contact diameter, {Guard.ShowToCompare(contactDiameter)}, with a seat of 1° at least");
        }

        return new BearingSurface(circle);
    }

    /// <summary>A flat surface known by its effective diameter alone: the collar of a power screw.</summary>
    /// <param name="effectiveDiameter">Diameter at which bearing friction acts.</param>
    /// <returns>The surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="effectiveDiameter"/> is outside its domain.</exception>
    /// <example><code>BearingSurface.OfDiameter(Length.FromMillimeters(40))</code></example>
    public static BearingSurface OfDiameter(Length effectiveDiameter) =>
        new(new BearingContact.Given(Domains.Length.Stated(effectiveDiameter)));

    /// <summary>The collar that Shigley takes for every bolt: an effective diameter of 1.25 d (9th ed., eq. (8-26)).</summary>
    /// <param name="thread">The thread; only its nominal diameter counts.</param>
    /// <returns>The surface.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <example><code>BearingSurface.ForShigleyCollar(ScrewThread.Parse("3/4-16 UNF")).EffectiveDiameter.Inches   // 0.9375</code></example>
    public static BearingSurface ForShigleyCollar(ScrewThread thread) => new(new BearingContact.Collar(Guard.NotNull(thread)));

    /// <summary>Under a hexagon head, on a medium clearance hole: ISO 4014/4017 with ISO 273, or ASME B18.2.1 with B18.2.8 (normal fit).</summary>
    /// <param name="thread">An ISO metric or unified thread with a size in both tables.</param>
    /// <returns>
    /// The ring between the least washer face and the hole: d_w (grade A to M24, grade B above), or 0.9 of the greatest width across flats
    /// (ASME B18.2.1-2012; the 0.9 is from memory).
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The tables have no such size; give the diameters with <see cref="Annulus"/>.</exception>
    /// <example><code>BearingSurface.ForHexagonHead(ScrewThread.Parse("M16")).EffectiveDiameter.Millimeters   // 19.995</code></example>
    public static BearingSurface ForHexagonHead(ScrewThread thread) => OnMediumHole(BearingFace.HexagonHead(Guard.NotNull(thread)));

    /// <summary>Under a hexagon nut of ISO 4032 on a medium clearance hole of ISO 273.</summary>
    /// <param name="thread">An ISO metric thread with a size in both tables.</param>
    /// <returns>The ring between the least washer face d_w and the hole or, where it is larger, the greatest countersink d_a of the nut.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The tables have no such size; give the diameters with <see cref="Annulus"/>.</exception>
    /// <example><code>BearingSurface.ForHexagonNut(ScrewThread.Parse("M16")).EffectiveDiameter.Millimeters   // 20</code></example>
    public static BearingSurface ForHexagonNut(ScrewThread thread) => OnMediumHole(BearingFace.HexagonNut(Guard.NotNull(thread)));

    /// <summary>Under a hexagon socket head of ISO 4762 on a medium clearance hole of ISO 273.</summary>
    /// <param name="thread">An ISO metric thread with a size in both tables.</param>
    /// <returns>The ring between the least washer face d_w and the hole.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The tables have no such size; give the diameters with <see cref="Annulus"/>.</exception>
    /// <example><code>BearingSurface.ForSocketHead(ScrewThread.Parse("M16")).EffectiveDiameter.Millimeters   // 20.335</code></example>
    public static BearingSurface ForSocketHead(ScrewThread thread) => OnMediumHole(BearingFace.SocketHead(Guard.NotNull(thread)));

    /// <summary>The same head or nut on a hole of another series; a washer that was there is gone.</summary>
    /// <param name="series">The series.</param>
    /// <returns>A new surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="series"/> is not a value of the enumeration.</exception>
    /// <exception cref="InvalidOperationException">The surface was not made for a standard head or nut, so its hole has no series.</exception>
    /// <example><code>BearingSurface.ForHexagonHead(ScrewThread.Parse("M16")).WithHole(HoleSeries.Coarse).EffectiveDiameter.Millimeters   // 20.495</code></example>
    public BearingSurface WithHole(HoleSeries series) => On(Face("hole").OnHole(series));

    /// <summary>The same surface on a hole of a given diameter, chamfer included; a washer that was there is gone.</summary>
    /// <param name="hole">The hole. Under a standard head or nut it takes the place of the medium hole; a ring that was given it can only narrow.</param>
    /// <returns>A new surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hole is outside its domain, narrower than the thread, or leaves no ring.</exception>
    /// <exception cref="InvalidOperationException">Only the effective diameter of the surface is known.</exception>
    public BearingSurface WithHole(Length hole)
    {
        Stated<Length> diameter = Domains.Length.Stated(hole);
        BearingContact.Ring ring = _contact as BearingContact.Ring ?? throw new InvalidOperationException(NoRing);
        Stated<Length> outer = _face?.Outer ?? ring.Outer;
        if (diameter.Value >= outer.Value)
        {
            Guard.RefuseAgainst(nameof(hole), hole, $"less than the outer diameter of the face, {Guard.ShowToCompare(Si.Length(outer.Value))}");
        }

        return On(_face?.OnHole(diameter) ?? (outer, BearingFace.Wider(ring.Inner, diameter)));
    }

    /// <summary>The same head or nut turned on a washer, which takes the place of the plate and its hole. The washer is taken to stand still.</summary>
    /// <param name="washer">The washer.</param>
    /// <returns>A new surface.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="washer"/> is not a value of the enumeration.</exception>
    /// <exception cref="ArgumentException">The standard has no washer for the thread.</exception>
    /// <exception cref="InvalidOperationException">The surface was not made for a standard head or nut.</exception>
    /// <example><code>BearingSurface.ForHexagonHead(ScrewThread.Parse("M16")).WithWasher(PlainWasher.Iso7089).EffectiveDiameter.Millimeters   // 19.745</code></example>
    public BearingSurface WithWasher(PlainWasher washer) => On(Face("washer").OnWasher(washer));

    /// <summary>The same surface with the effective diameter of uniform pressure, (2/3)(D_o³ − D_i³)/(D_o² − D_i²).</summary>
    /// <returns>A new surface.</returns>
    /// <exception cref="InvalidOperationException">Only the effective diameter of the surface is known.</exception>
    /// <example><code>BearingSurface.Annulus(Length.FromMillimeters(22.5), Length.FromMillimeters(17.5)).WithUniformPressure().EffectiveDiameter.Millimeters   // 20.10</code></example>
    public BearingSurface WithUniformPressure() =>
        new((_contact as BearingContact.Ring ?? throw new InvalidOperationException(NoRing)).UnderUniformPressure(), _face);

    /// <inheritdoc />
    public override string ToString() => _contact.ToString()!;

    /// <summary>The surface as a rule sees it. What was stated, a diameter or uniform pressure, is kept; only a ring that left the choice open changes.</summary>
    internal BearingSurface By(BearingRule rule, ScrewThread thread) => rule switch
    {
        _ when _contact is not BearingContact.Ring { HasUniformPressure: false } => this,
        BearingRule.UniformPressure => WithUniformPressure(),
        BearingRule.TextbookCollar when _face is not null => ForShigleyCollar(thread),
        _ => this,
    };

    /// <summary>Bearing torque per unit preload.</summary>
    /// <summary>Null where the face is no ring.</summary>
    internal BearingContact.Ring? Ring => _contact as BearingContact.Ring;

    internal Term Arm(Term friction) => TorqueEquations.BearingArmEquation.Of(friction, _contact.Diameter, _contact.SeatAngle);

    /// <summary>The same for loops.</summary>
    internal double ArmAt(double friction) => TorqueEquations.BearingArm(friction, _contact.Diameter.Value, _contact.SeatAngle.Value);

    /// <summary>Bearing torque per unit preload and unit friction.</summary>
    internal Term FrictionRadius => FrictionTestEquations.BearingRadiusEquation.Of(_contact.Diameter, _contact.SeatAngle);

    private static BearingSurface OnMediumHole(BearingFace face)
    {
        (Stated<Length> outer, Stated<Length> inner) = face.OnHole(HoleSeries.Medium);
        return new BearingSurface(new BearingContact.Ring(outer, inner), face);
    }

    private static (Stated<Length> Outer, Stated<Length> Inner) Diameters(Length outer, Length inner)
    {
        double o = Domains.Length.Check(outer);
        double i = Domains.Length.Check(inner);
        if (i >= o) Guard.RefuseAgainst(nameof(inner), inner, $"less than the outer diameter, {Guard.ShowToCompare(outer)}");
        return (new(outer, o, "outer bearing diameter"), new(inner, i, "inner bearing diameter"));
    }

    private BearingSurface On((Stated<Length> Outer, Stated<Length> Inner) ring) =>
        new(((BearingContact.Ring)_contact).Between(ring.Outer, ring.Inner), _face);

    private BearingFace Face(string what) => _face ?? throw new InvalidOperationException(
        $"This surface was not made for a standard head or nut, so no {what} belongs to it; state the ring with BearingSurface.Annulus.");
}
