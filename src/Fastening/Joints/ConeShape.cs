using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>
/// The body of pressure around a bolt: the widest that opens nowhere faster than the cone, is as wide as the bearing faces at its ends (at the head
/// alone in a tapped joint), and nowhere wider than the layer it passes through.
/// </summary>
internal sealed class ConeShape(double bearing, double hole, double? outer, double? halfAngle, JointForm form, double? atInterface = null)
{
    private readonly int _coefficient = form == JointForm.ThroughBolt ? 1 : 2;

    public JointForm Form => form;

    public double Bearing => bearing;

    public double Hole => hole;

    public ConeShape WithInterfaceDiameter(double diameter) => new(bearing, hole, outer, halfAngle, form, diameter);

    /// <summary>Parts of one diameter, no wider than the bearing face, are a sleeve; where diameters change, pressure spreads and gathers.</summary>
    public bool HasCone(ClampedLayer[] layers) => !(outer <= bearing) || Array.Exists(layers, layer => layer.SiOuterDiameter is not null);

    public double OutsideOf(ClampedLayer layer) => layer.SiOuterDiameter ?? outer ?? double.PositiveInfinity;

    public double ResilienceOf(Derivation? work, ClampedLayer[] layers, double grip)
    {
        double angle = HasCone(layers) ? AngleOf(work, grip) : 0;
        bool onePlate = Array.TrueForAll(layers, layer => layer.Modulus == layers[0].Modulus && layer.SiOuterDiameter is null);
        return onePlate && outer is double limit && angle > 0 ? ClosedForm(work, layers[0].Modulus, grip, angle, limit) : Pieces(work, layers, angle);
    }

    public void AddNotes(List<RangeNote> notes, ClampedLayer[] layers, double grip)
    {
        if (halfAngle is not null || !HasCone(layers)) return;
        double widest = atInterface ?? outer!.Value;
        double slenderness = ClampedPartsEquations.GripRatio(grip, bearing), width = ClampedPartsEquations.DiameterRatio(widest, bearing);
        if (slenderness is < 0.5 or > 10) notes.Add(new RangeNote(RangeNoteKind.GripPerBearing, slenderness));
        if (width > 10) notes.Add(new RangeNote(RangeNoteKind.OutsidePerBearing, width));
        double beyond = widest / (bearing + grip);
        if (Tolerance.Exceeds(beyond, 1)) notes.Add(new RangeNote(RangeNoteKind.OutsideBeyondGrip, beyond));
    }

    private double AngleOf(Derivation? work, double grip)
    {
        if (halfAngle is double given) return given;
        double gripRatio = ClampedPartsEquations.GripRatioEquation.Step(work, grip, bearing);
        double diameterRatio = atInterface is double stated
            ? ClampedPartsEquations.InterfaceDiameterRatioEquation.Step(work, stated, bearing)
            : ClampedPartsEquations.DiameterRatioEquation.Step(work, outer!.Value, bearing);
        return (form == JointForm.ThroughBolt ? ClampedPartsEquations.ThroughBoltConeAngleEquation : ClampedPartsEquations.TappedConeAngleEquation)
            .Step(work, gripRatio, diameterRatio);
    }

    /// <summary>VDI 2230-1:2015 §5.1.2.1 (from memory): whole cones, or cones and a sleeve between them.</summary>
    private double ClosedForm(Derivation? work, double modulus, double grip, double angle, double limit)
    {
        double limiting = ClampedPartsEquations.LimitingDiameterEquation.Step(work, bearing, _coefficient, grip, angle);
        double logarithm = ClampedPartsEquations.ConeLogarithmEquation.Step(work, bearing, hole, Math.Min(limiting, limit));
        if (limit >= limiting) return ClampedPartsEquations.WholeConesEquation.Step(work, logarithm, _coefficient, modulus, hole, angle);
        double cones = ClampedPartsEquations.LimitedConesEquation.Step(work, logarithm, _coefficient, modulus, hole, angle);
        double length = ClampedPartsEquations.SleeveLengthEquation.Step(work, grip, limit, bearing, _coefficient, angle);
        return ClampedPartsEquations.PartsResilienceEquation.Step(
            work, cones, ClampedPartsEquations.SleeveResilienceEquation.Step(work, length, modulus, limit, hole));
    }

    /// <summary>The body cut at the faces of the layers, where cones meet and where they reach the outside.</summary>
    private double Pieces(Derivation? work, ClampedLayer[] layers, double angle)
    {
        double growth = 2 * Math.Tan(angle), delta = 0;
        ConeStart[] fromHead = StartsOf(layers, growth, new ConeStart(bearing, 0));
        ConeStart[] fromBelow = StartsOf([.. Enumerable.Reverse(layers)], growth, form == JointForm.ThroughBolt ? new ConeStart(bearing, 0) : ConeStart.Nowhere);
        for (int i = 0; i < layers.Length; i++)
        {
            double thickness = layers[i].SiThickness, limit = OutsideOf(layers[i]);
            ConeStart head = fromHead[i], below = fromBelow[layers.Length - 1 - i];
            (double rise, double fall) = growth > 0 ? CutOf(head.At(growth), below.At(growth), growth, thickness, limit) : (0, 0);
            double sleeve = thickness - rise - fall;
            if (rise > 0) delta = AddCone(work, delta, head, rise, layers[i].Modulus, angle);
            if (sleeve > 0 && limit < double.PositiveInfinity) delta = AddSleeve(work, delta, sleeve, layers[i].Modulus, limit);
            if (fall > 0) delta = AddCone(work, delta, below, fall, layers[i].Modulus, angle);
        }

        return delta;
    }

    /// <summary>Where the cone stands as it enters each layer; a layer that is narrower makes it begin again.</summary>
    private ConeStart[] StartsOf(ClampedLayer[] layers, double growth, ConeStart cone)
    {
        var starts = new ConeStart[layers.Length];
        for (int i = 0; i < layers.Length; i++)
        {
            double limit = OutsideOf(layers[i]);
            if (cone.At(growth) > limit) cone = new ConeStart(limit, 0);
            starts[i] = cone;
            cone = new ConeStart(cone.Diameter, cone.Depth + layers[i].SiThickness);
            if (cone.At(growth) > limit) cone = new ConeStart(limit, 0);
        }

        return starts;
    }

    /// <summary>How much of a layer lies in the cone that opens from the head, and in that from below; the rest is a sleeve as wide as the layer.</summary>
    private static (double Rise, double Fall) CutOf(double head, double below, double growth, double thickness, double limit)
    {
        double meeting = Math.Max(0, Math.Min(thickness, thickness / 2 + (below - head) / (2 * growth)));
        return head + growth * meeting <= limit
            ? (meeting, thickness - meeting)
            : (Math.Max(0, (limit - head) / growth), Math.Max(0, (limit - below) / growth));
    }

    private double AddCone(Derivation? work, double delta, ConeStart start, double length, double modulus, double angle)
    {
        double diameter = ClampedPartsEquations.ConeDiameterEquation.Step(work, start.Diameter, start.Depth, angle);
        double frustum = ClampedPartsEquations.FrustumResilienceEquation.Step(work, modulus, hole, angle, diameter, length);
        return ClampedPartsEquations.PartsResilienceEquation.Step(work, delta, frustum);
    }

    private double AddSleeve(Derivation? work, double delta, double length, double modulus, double outside) =>
        ClampedPartsEquations.PartsResilienceEquation.Step(
            work, delta, ClampedPartsEquations.SleeveResilienceEquation.Step(work, length, modulus, outside, hole));
}
