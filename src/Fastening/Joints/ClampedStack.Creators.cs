using Fastening.Internals;
using UnitsNet;

namespace Fastening;

public sealed partial class ClampedStack
{
    private static readonly Domain<Angle> HalfAngleDomain = new(1, 80);

    /// <summary>The deformation cone of VDI 2230, its angle from grip, bearing diameter and outside diameter.</summary>
    /// <remarks>
    /// One modulus: the closed form of §5.1.2.1. Several: the same cone, with the angle of the whole grip, is cut at the faces of the layers,
    /// in the middle of the grip and where it meets the outside, and the pieces are added. Outside diameter at most the bearing diameter: a sleeve.
    /// A layer with its own outside diameter narrows the cone, which opens again behind it. The outside diameter also gives the angle, unless
    /// <see cref="WithInterfaceDiameter"/> states another; beyond bearing diameter and grip together <see cref="RangeNotes"/> reports that the parts are too stiff.
    /// </remarks>
    /// <param name="layers">The layers, from the head on; of a tapped joint without the tapped part.</param>
    /// <param name="bearingDiameter">Outer diameter d_W of the bearing face of head or nut, greater than the hole.</param>
    /// <param name="hole">Hole d_h.</param>
    /// <param name="outerDiameter">Outside diameter D_A of the parts around the bolt, greater than the hole.</param>
    /// <param name="form">Bolt and nut, or tapped part.</param>
    /// <returns>The stack.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="layers"/> or a layer is null.</exception>
    /// <exception cref="ArgumentException">There are no layers, or one is not wider than the hole.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A diameter is outside its domain or not greater than the hole, the outside is less than the bearing diameter beside a layer of its own
    /// diameter, the grip is less than a thousandth of the bearing diameter, or the form is unknown.
    /// </exception>
    /// <example><code>ClampedStack.Vdi2230Cone(
    ///     layers, bearingDiameter: Length.FromMillimeters(22), hole: Length.FromMillimeters(17.5), outerDiameter: Length.FromMillimeters(60),
    ///     JointForm.ThroughBolt)</code></example>
    public static ClampedStack Vdi2230Cone(
        IReadOnlyList<ClampedLayer> layers, Length bearingDiameter, Length hole, Length outerDiameter, JointForm form)
    {
        ConeShape cone = ConeOf(bearingDiameter, hole, outerDiameter, null, form);
        ClampedLayer[] copy = ThickEnough(WiderThan(cone.Hole, Copy(layers)), 1e-3 * cone.Bearing);
        if (cone.Outside < cone.Bearing && cone.HasCone(copy))
        {
            Guard.RefuseAgainst(nameof(outerDiameter), outerDiameter, $"at least the bearing diameter, {Guard.ShowToCompare(bearingDiameter)}: with layers of their own diameter, the angle follows from this one; for tubes take Sleeve");
        }

        return new ClampedStack(ClampedStackMethod.Vdi2230Cone, copy, cone);
    }

    /// <summary>A stack of frusta of one angle, in parts of any number of layers and materials.</summary>
    /// <remarks>The cone is cut at the faces of the layers, in the middle of the grip (bolt and nut) and where it meets the outside; beyond that it is a sleeve.</remarks>
    /// <param name="layers">The layers, from the head on.</param>
    /// <param name="bearingDiameter">Diameter of the cone at the bearing face, greater than the hole.</param>
    /// <param name="hole">Hole.</param>
    /// <param name="halfAngle">Half angle of the cone, 1° to 80°; 30° is usual.</param>
    /// <param name="outerDiameter">Outside diameter of the parts; null when they are wide enough for the cone.</param>
    /// <param name="form">Bolt and nut, or tapped part.</param>
    /// <returns>The stack.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="layers"/> or a layer is null.</exception>
    /// <exception cref="ArgumentException">There are no layers.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, a diameter is not greater than the hole, or the form is unknown.</exception>
    /// <example><code>ClampedStack.Frusta(
    ///     layers, Length.FromMillimeters(22), hole: Length.FromMillimeters(17.5), halfAngle: Angle.FromDegrees(30), outerDiameter: null,
    ///     JointForm.TappedThread)</code></example>
    public static ClampedStack Frusta(
        IReadOnlyList<ClampedLayer> layers, Length bearingDiameter, Length hole, Angle halfAngle, Length? outerDiameter, JointForm form)
    {
        ConeShape cone = ConeOf(bearingDiameter, hole, outerDiameter, new Held<Angle>(HalfAngleDomain.Stated(halfAngle)), form);
        return new ClampedStack(ClampedStackMethod.Frusta, WiderThan(cone.Hole, Copy(layers)), cone);
    }

    /// <summary>A single frustum of one layer, opening away from the head (equation <c>parts.frustum-resilience</c>): the k of one frustum in a textbook's sum.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="smallDiameter">Diameter at the small end, greater than the hole.</param>
    /// <param name="hole">Hole.</param>
    /// <param name="halfAngle">Half angle of the cone, 1° to 80°; 30° is usual.</param>
    /// <returns>The parts.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="layer"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the diameter is not greater than the hole.</exception>
    /// <example><code>ClampedStack.Frustum(
    ///     new ClampedLayer(Length.FromMillimeters(13), ElasticMaterial.Steel), smallDiameter: Length.FromMillimeters(18),
    ///     hole: Length.FromMillimeters(12), halfAngle: Angle.FromDegrees(30))</code></example>
    public static ClampedStack Frustum(ClampedLayer layer, Length smallDiameter, Length hole, Angle halfAngle)
    {
        Guard.NotNull(layer);
        RefuseWithin(nameof(smallDiameter), smallDiameter, Domains.Length.Check(smallDiameter), hole, Domains.Length.Check(hole));
        return Frusta([layer], smallDiameter, hole, halfAngle, null, JointForm.TappedThread);
    }

    /// <summary>Sleeves: each layer bears over its whole cross-section, as far as its outside (equation <c>parts.sleeve-resilience</c>).</summary>
    /// <remarks>For parts no wider than the face under head or nut: spacer tubes, bushes. Wider parts bear in a cone and are softer than a sleeve.</remarks>
    /// <param name="layers">The layers, from the head on; one with an outside diameter of its own counts with it.</param>
    /// <param name="outerDiameter">Outside diameter, greater than the hole.</param>
    /// <param name="hole">Hole.</param>
    /// <returns>The parts; they go with any bolt, with a nut or into a tapped part.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="layers"/> or a layer is null.</exception>
    /// <exception cref="ArgumentException">There are no layers, or one is not wider than the hole.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is outside its domain, or the outside is not greater than the hole.</exception>
    /// <example><code>ClampedStack.Sleeve(
    ///     [new ClampedLayer(Length.FromMillimeters(50), ElasticMaterial.Steel)], outerDiameter: Length.FromMillimeters(20), hole: Length.FromMillimeters(13)).Stiffness</code></example>
    public static ClampedStack Sleeve(IReadOnlyList<ClampedLayer> layers, Length outerDiameter, Length hole)
    {
        var outer = new Held<Length>(Domains.Length.Stated(outerDiameter));
        Stated<Length> inner = Domains.Length.Stated(hole);
        RefuseWithin(nameof(outerDiameter), outerDiameter, outer.Value, hole, inner.Value);
        return new ClampedStack(ClampedStackMethod.Sleeve, WiderThan(inner.Value, Copy(layers)), ConeShape.Sleeve(inner, outer));
    }

    /// <summary>The frusta of Shigley, 9th ed. (2011) eq. (8-20): 30°, washer face 1.5 d, hole d, wide parts, a cone from each end.</summary>
    /// <param name="thread">Thread; only its nominal diameter counts.</param>
    /// <param name="layers">The layers; the last one of a tapped joint as thick as <see cref="BoltCompliance.TappedGrip"/> leaves it.</param>
    /// <returns>The stack.</returns>
    /// <exception cref="ArgumentNullException">An argument or a layer is null.</exception>
    /// <exception cref="ArgumentException">There are no layers.</exception>
    /// <example><code>ClampedStack.ShigleyFrusta(ScrewThread.Parse("M16"), layers)</code></example>
    public static ClampedStack ShigleyFrusta(ScrewThread thread, IReadOnlyList<ClampedLayer> layers)
    {
        double d = Guard.NotNull(thread).Diameter;
        return new ClampedStack(ClampedStackMethod.Frusta, WiderThan(d, Copy(layers)), ConeShape.OfTextbook(thread));
    }

    /// <summary>The fit by Wileman, Choudhury and Green: wide plates of one material under washer faces of 1.5 d (equation <c>parts.wileman-stiffness</c>).</summary>
    /// <param name="thread">Thread; only its nominal diameter counts.</param>
    /// <param name="layers">The layers, all of one Young's modulus.</param>
    /// <param name="fit">The coefficients of their material.</param>
    /// <returns>The stack.</returns>
    /// <exception cref="ArgumentNullException">An argument or a layer is null.</exception>
    /// <exception cref="ArgumentException">
    /// There are no layers, they differ in modulus, one has an outside diameter of its own, or their modulus is more than 15 % from that of the fit: then the fit is for another material.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The grip is less than a twentieth of the nominal diameter.</exception>
    /// <example><code>ClampedStack.Wileman(
    ///     ScrewThread.Parse("M16"), [new ClampedLayer(Length.FromMillimeters(45), ElasticMaterial.Steel)], WilemanFit.Steel)</code></example>
    public static ClampedStack Wileman(ScrewThread thread, IReadOnlyList<ClampedLayer> layers, WilemanFit fit)
    {
        Guard.NotNull(thread);
        ClampedLayer[] copy = Copy(layers);
        Guard.NotNull(fit);
        double modulus = copy[0].Modulus;
        if (copy.Any(layer => layer.Modulus != modulus))
        {
            throw new ArgumentException("The fit by Wileman holds for plates of one material; take ClampedStack.Frusta for several.", nameof(layers));
        }

        if (copy.Any(layer => layer.SiOuterDiameter is not null))
        {
            throw new ArgumentException("The fit by Wileman holds for wide plates; take ClampedStack.Frusta for layers of their own diameter.", nameof(layers));
        }

        if (fit.Modulus is double fitted && Math.Abs(modulus / fitted - 1) > 0.15)
        {
            throw new ArgumentException(Print.Text(
                $"{copy[0].Material.Name} has {modulus / 1e9:G4} GPa, the fit for {fit.Name} {fitted / 1e9:G4} GPa; take WilemanFit.General or ClampedStack.Frusta."), nameof(fit));
        }

        return new ClampedStack(ClampedStackMethod.Wileman, ThickEnough(copy, thread.Diameter / 20), null, thread, fit);
    }

    private static ClampedLayer[] Copy(IReadOnlyList<ClampedLayer> layers)
    {
        ClampedLayer[] copy = [.. Guard.NotNull(layers)];
        if (copy.Length == 0) throw new ArgumentException("A joint clamps at least one layer.", nameof(layers));
        foreach (ClampedLayer layer in copy) Guard.NotNull(layer, nameof(layers));
        return copy;
    }

    /// <summary>Parts of a stated stiffness: neither layers nor material are known of them.</summary>
    internal static ClampedStack OfStiffness(Held<ForcePerLength> stiffness) => new(ClampedStackMethod.Stated, [], stated: stiffness);

    private static ClampedLayer[] WiderThan(double hole, ClampedLayer[] layers)
    {
        foreach (ClampedLayer layer in layers)
        {
            if (layer.SiOuterDiameter < 1.001 * hole)
            {
                throw new ArgumentException(Print.Text($"The layer {layer} must be at least 1.001 of the hole, {Si.Length(hole):0.###}, wide."), nameof(layers));
            }
        }

        return layers;
    }

    private static void RefuseWithin(string name, Length diameter, double meters, Length hole, double holeMeters)
    {
        if (meters < 1.001 * holeMeters)
        {
            Guard.RefuseAgainst(name, diameter, $"at least 1.001 of the hole, {Guard.ShowToCompare(hole)}");
        }
    }

    private static ClampedLayer[] ThickEnough(ClampedLayer[] layers, double least)
    {
        double grip = layers.Sum(layer => layer.SiThickness);
        if (grip < least) Guard.RefuseAgainst(nameof(layers), Si.Length(grip), $"at least {Guard.ShowToCompare(Si.Length(least))} thick for this method");
        return layers;
    }

    private static ConeShape ConeOf(Length bearingDiameter, Length hole, Length? outerDiameter, Held<Angle>? halfAngle, JointForm form)
    {
        Stated<Length> bearing = Domains.Length.Stated(bearingDiameter), inner = Domains.Length.Stated(hole);
        Held<Length>? outer = outerDiameter is Length given ? new Held<Length>(Domains.Length.Stated(given, nameof(outerDiameter))) : null;
        RefuseWithin(nameof(bearingDiameter), bearingDiameter, bearing.Value, hole, inner.Value);
        if (outer is not null) RefuseWithin(nameof(outerDiameter), outer.AsStated, outer.Value, hole, inner.Value);
        if (form is not (JointForm.ThroughBolt or JointForm.TappedThread))
        {
            throw new ArgumentOutOfRangeException(nameof(form), Print.Text($"form is {(int)form}; it must be ThroughBolt or TappedThread."));
        }

        return new ConeShape(bearing, inner, outer, halfAngle, form);
    }
}
