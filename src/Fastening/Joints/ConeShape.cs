using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>
/// The body of pressure around a bolt: the widest that opens nowhere faster than the cone, is as wide as the bearing faces at its ends (at the head
/// alone in a tapped joint), and nowhere wider than the layer it passes through.
/// </summary>
internal sealed class ConeShape
{
    private static readonly Held<Angle> TextbookAngle = new(Stated<Angle>.Of(30, "half angle of the textbook frusta"));
    private static readonly Held<Angle> NoAngle = new(Stated<Angle>.Of(0, "half angle of a sleeve"));

    private readonly Stated<Length> _bearing, _hole;
    private readonly Held<Length>? _outer, _atInterface;
    private readonly Held<Angle>? _halfAngle;
    private readonly ScrewThread? _textbook;

    public ConeShape(
        in Stated<Length> bearing, in Stated<Length> hole, Held<Length>? outer, Held<Angle>? halfAngle, JointForm form, Held<Length>? atInterface = null,
        ScrewThread? textbook = null)
    {
        _bearing = bearing;
        _hole = hole;
        _outer = outer;
        _halfAngle = halfAngle;
        _atInterface = atInterface;
        _textbook = textbook;
        Form = form;
    }

    public JointForm Form { get; }

    public double Bearing => _bearing.Value;

    public double Hole => _hole.Value;

    /// <summary>Outside diameter of the parts; null when they are wide enough for any cone.</summary>
    public double? Outside => _outer?.Value;

    private Term BearingTerm => _textbook is null ? _bearing.Term : ConeGeometryEquations.WasherFaceEquation.Of(_textbook.DiameterTerm);

    private Term HoleTerm => _textbook is null ? _hole.Term : _textbook.DiameterTerm;

    private Term Coefficient => Form == JointForm.ThroughBolt ? Term.Given(1, "cones of a joint with nut") : Term.Given(2, "cone of a tapped joint");

    /// <summary>Sleeves: the outside itself is the bearing face.</summary>
    public static ConeShape Sleeve(in Stated<Length> hole, Held<Length> outer) => new(hole, hole, outer, NoAngle, JointForm.ThroughBolt);

    /// <summary>Wide parts, washer face 1.5 d, hole d, a cone from each end.</summary>
    public static ConeShape OfTextbook(ScrewThread thread) => new(
        Stated<Length>.Of(ConeGeometryEquations.WasherFace(thread.Diameter), "washer face"), Stated<Length>.Of(thread.Diameter, "hole"), null, TextbookAngle,
        JointForm.ThroughBolt, textbook: thread);

    public ConeShape WithInterfaceDiameter(Held<Length> diameter) => new(_bearing, _hole, _outer, _halfAngle, Form, diameter);

    /// <summary>Parts of one diameter, no wider than the bearing face, are a sleeve; where diameters change, pressure spreads and gathers.</summary>
    public bool HasCone(ClampedLayer[] layers) =>
        _halfAngle != NoAngle && (!(Outside <= Bearing) || Array.Exists(layers, layer => layer.SiOuterDiameter is not null));

    public Term ResilienceOf(ClampedLayer[] layers, Term grip)
    {
        if (!HasCone(layers)) return Sleeves(layers);
        Term angle = AngleOf(grip);
        bool onePlate = Array.TrueForAll(layers, layer => layer.Modulus == layers[0].Modulus && layer.SiOuterDiameter is null);
        if (onePlate && _outer is Held<Length> limit && angle.Value > 0) return ClosedForm(layers[0].ModulusOf(layers[0].NameAt(0)), grip, angle, limit.Term);
        return new ConePieces(layers, _outer, HoleTerm, angle).ResilienceOf(BearingTerm, Form);
    }

    public void AddNotes(List<RangeNote> notes, ClampedLayer[] layers, double grip)
    {
        if (_halfAngle is not null || !HasCone(layers)) return;
        double widest = _atInterface?.Value ?? _outer!.Value;
        double slenderness = ClampedPartsEquations.GripRatio(grip, Bearing), width = ClampedPartsEquations.DiameterRatio(widest, Bearing);
        if (slenderness is < 0.5 or > 10) notes.Add(new RangeNote(RangeNoteKind.GripPerBearing, slenderness));
        if (width > 10) notes.Add(new RangeNote(RangeNoteKind.OutsidePerBearing, width));
        double beyond = widest / (Bearing + grip);
        if (Tolerance.Exceeds(beyond, 1)) notes.Add(new RangeNote(RangeNoteKind.OutsideBeyondGrip, beyond));
    }

    private Term AngleOf(Term grip)
    {
        if (_halfAngle is not null) return _halfAngle.Term;
        Term gripRatio = ClampedPartsEquations.GripRatioEquation.Of(grip, BearingTerm);
        Term diameterRatio = _atInterface is Held<Length> stated
            ? ClampedPartsEquations.InterfaceDiameterRatioEquation.Of(stated.Term, BearingTerm)
            : ClampedPartsEquations.DiameterRatioEquation.Of(_outer!.Term, BearingTerm);
        return (Form == JointForm.ThroughBolt ? ClampedPartsEquations.ThroughBoltConeAngleEquation : ClampedPartsEquations.TappedConeAngleEquation)
            .Of(gripRatio, diameterRatio);
    }

    /// <summary>VDI 2230-1:2015 §5.1.2.1 (from memory): whole cones, or cones and a sleeve between them.</summary>
    private Term ClosedForm(Term modulus, Term grip, Term angle, Term limit)
    {
        Term w = Coefficient, diameter = BearingTerm, inner = HoleTerm;
        Term limiting = ClampedPartsEquations.LimitingDiameterEquation.Of(diameter, w, grip, angle);
        Term logarithm = ClampedPartsEquations.ConeLogarithmEquation.Of(diameter, inner, Term.Min(limiting, limit));
        if (limit.Value >= limiting.Value) return ClampedPartsEquations.WholeConesEquation.Of(logarithm, w, modulus, inner, angle);
        Term cones = ClampedPartsEquations.LimitedConesEquation.Of(logarithm, w, modulus, inner, angle);
        Term length = ClampedPartsEquations.SleeveLengthEquation.Of(grip, limit, diameter, w, angle);
        return ClampedPartsEquations.PartsResilienceEquation.Of(cones, ClampedPartsEquations.SleeveResilienceEquation.Of(length, modulus, limit, inner));
    }

    private Term Sleeves(ClampedLayer[] layers)
    {
        Term inner = HoleTerm;
        Term? delta = null;
        for (int i = 0; i < layers.Length; i++)
        {
            string name = layers[i].NameAt(i);
            delta = ConePieces.Add(delta, ClampedPartsEquations.SleeveResilienceEquation.Of(
                layers[i].ThicknessOf(name), layers[i].ModulusOf(name), layers[i].OutsideOf(name, _outer)!.Value, inner));
        }

        return delta!.Value;
    }
}
