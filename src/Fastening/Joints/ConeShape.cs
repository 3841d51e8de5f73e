using Fastening.Equations;

namespace Fastening;

/// <summary>The body of pressure around a bolt: a cone from each bearing face, or from the head alone, limited by the outside of the parts.</summary>
internal sealed class ConeShape(double bearing, double hole, double? outer, double? halfAngle, JointForm form)
{
    private readonly int _coefficient = form == JointForm.ThroughBolt ? 1 : 2;

    /// <summary>Where the outside is no wider than the bearing face there is no cone.</summary>
    private bool IsSleeve => outer <= bearing;

    public JointForm Form => form;

    public double ResilienceOf(Derivation? work, ClampedLayer[] layers, double grip)
    {
        double angle = IsSleeve ? 0 : AngleOf(work, grip);
        bool oneModulus = Array.TrueForAll(layers, layer => layer.Modulus == layers[0].Modulus);
        return oneModulus && outer is double limit && !IsSleeve ? ClosedForm(work, layers[0].Modulus, grip, angle, limit) : Pieces(work, layers, grip, angle);
    }

    public void AddNotes(List<string> notes, double grip)
    {
        if (halfAngle is not null || IsSleeve) return;
        AddNote(notes, "The grip per bearing diameter, β_L,", ClampedPartsEquations.GripRatio(grip, bearing));
        AddNote(notes, "The outside per bearing diameter, y,", ClampedPartsEquations.DiameterRatio(outer!.Value, bearing));
    }

    private static void AddNote(List<string> notes, string subject, double ratio)
    {
        if (ratio is < 0.5 or > 10)
        {
            notes.Add(FormattableString.Invariant($"{subject} is {ratio:G3}; the angle of the deformation cone is known for 0.5 to 10 (from memory)."));
        }
    }

    private double AngleOf(Derivation? work, double grip)
    {
        if (halfAngle is double given) return given;
        double gripRatio = ClampedPartsEquations.GripRatioEquation.Step(work, grip, bearing);
        double diameterRatio = ClampedPartsEquations.DiameterRatioEquation.Step(work, outer!.Value, bearing);
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

    /// <summary>The cone cut at the faces of the layers, where cones meet and where they reach the outside.</summary>
    private double Pieces(Derivation? work, ClampedLayer[] layers, double grip, double angle)
    {
        double height = grip / (3 - _coefficient);
        double delta = AddCone(work, 0, layers, height, angle);
        return form == JointForm.ThroughBolt ? AddCone(work, delta, Enumerable.Reverse(layers), height, angle) : delta;
    }

    private double AddCone(Derivation? work, double delta, IEnumerable<ClampedLayer> layers, double height, double angle)
    {
        double depth = 0;
        foreach (ClampedLayer layer in layers)
        {
            double thickness = Math.Min(layer.SiThickness, height - depth);
            if (thickness <= 0) break;
            delta = AddPiece(work, delta, depth, thickness, layer.Modulus, angle);
            depth += thickness;
        }

        return delta;
    }

    private double AddPiece(Derivation? work, double delta, double depth, double thickness, double modulus, double angle)
    {
        double reach = IsSleeve ? 0 : outer is double limit ? (limit - bearing) / (2 * Math.Tan(angle)) : double.PositiveInfinity;
        double cone = Math.Max(0, Math.Min(reach - depth, thickness));
        if (cone > 0)
        {
            double diameter = ClampedPartsEquations.ConeDiameterEquation.Step(work, bearing, depth, angle);
            double frustum = ClampedPartsEquations.FrustumResilienceEquation.Step(work, modulus, hole, angle, diameter, cone);
            delta = ClampedPartsEquations.PartsResilienceEquation.Step(work, delta, frustum);
        }

        if (cone == thickness) return delta;
        double sleeve = ClampedPartsEquations.SleeveResilienceEquation.Step(work, thickness - cone, modulus, outer!.Value, hole);
        return ClampedPartsEquations.PartsResilienceEquation.Step(work, delta, sleeve);
    }
}
