using System.Collections.ObjectModel;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The clamped parts as a spring, by one of the named methods.</summary>
/// <remarks>
/// Elastic, clamped concentrically. Where the proportions leave the range that a method was made for, <see cref="RangeNotes"/> says so; the
/// result stands where it is defined. The methods give different values for the same parts: state which one was used.
/// </remarks>
/// <example><code>ClampedStack parts = ClampedStack.Vdi2230Cone(
///     [new ClampedLayer(Length.FromMillimeters(20), ElasticMaterial.Steel), new ClampedLayer(Length.FromMillimeters(40), ElasticMaterial.GreyCastIron)],
///     bearingDiameter: Length.FromMillimeters(22), hole: Length.FromMillimeters(17.5), outerDiameter: Length.FromMillimeters(60), JointForm.ThroughBolt);
/// parts.Stiffness.KilonewtonsPerMillimeter</code></example>
public sealed partial class ClampedStack : IDerives<StackSpring>
{
    private readonly ClampedLayer[] _layers;
    private readonly ConeShape? _cone;
    private readonly ScrewThread? _thread;
    private readonly Held<ForcePerLength>? _stated;
    private StackSpring? _spring;

    private ClampedStack(
        ClampedStackMethod method, ClampedLayer[] layers, ConeShape? cone = null, ScrewThread? thread = null, WilemanFit? fit = null,
        Held<ForcePerLength>? stated = null)
    {
        Method = method;
        _layers = layers;
        _cone = cone;
        _thread = thread;
        _stated = stated;
        Fit = fit;
        Layers = Array.AsReadOnly(layers);
        foreach (ClampedLayer layer in layers) GripMeters += layer.SiThickness;
        RangeNotes = NotesOf();
    }

    /// <summary>How the compliance was found.</summary>
    public ClampedStackMethod Method { get; }

    /// <summary>The layers, from the head on; none for a stated stiffness.</summary>
    public IReadOnlyList<ClampedLayer> Layers { get; }

    /// <summary>Thickness of all layers.</summary>
    public Length GripLength => _layers.Length == 0 ? Si.Length(0) : Si.Length(GripTerm);

    /// <summary>Elastic resilience δ_P, metres of compression per newton.</summary>
    public double MetersPerNewton => Si.Number(Spring.Resilience);

    /// <summary>Stiffness 1/δ_P.</summary>
    public ForcePerLength Stiffness => Si.Stiffness(ClampedPartsEquations.StiffnessOfResilienceEquation.Of(Spring.Resilience));

    /// <summary>What lies outside the range that the method was made for; empty when nothing does.</summary>
    public IReadOnlyList<RangeNote> RangeNotes { get; }

    /// <summary>Whether the proportions lie in the range that the method was made for.</summary>
    public bool IsInRange => RangeNotes.Count == 0;

    /// <summary>The fit, for the method of Wileman; null for the others.</summary>
    public WilemanFit? Fit { get; }

    /// <summary>
    /// Whether the cone opens from both ends or from the head alone: as given, from both ends for <see cref="ShigleyFrusta"/>, null where there
    /// is no cone: the fit by Wileman, <see cref="Sleeve"/>, a stated stiffness.
    /// </summary>
    public JointForm? Form => Method is ClampedStackMethod.Vdi2230Cone or ClampedStackMethod.Frusta ? _cone?.Form : null;

    internal StackSpring Spring => Derived.Of(ref _spring, this);

    internal double GripMeters { get; }

    /// <summary>Thickness of all layers.</summary>
    internal Term GripTerm
    {
        get
        {
            Term grip = _layers[0].ThicknessOf(_layers[0].NameAt(0));
            for (int i = 1; i < _layers.Length; i++) grip = ConeGeometryEquations.GripEquation.Of(grip, _layers[i].ThicknessOf(_layers[i].NameAt(i)));
            return grip;
        }
    }

    /// <summary>The same parts with the diameter that gives the angle of the cone stated separately: D'_A of VDI 2230, near the interface.</summary>
    /// <remarks>
    /// <c>outerDiameter</c> goes on limiting the cone. Bearing diameter and grip together is a cap that finite elements of wide parts confirm
    /// (a check of this project, not a value of the guideline).
    /// </remarks>
    /// <param name="interfaceDiameter">The diameter, at least the bearing diameter.</param>
    /// <returns>New parts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its domain, or less than the bearing diameter.</exception>
    /// <exception cref="InvalidOperationException">The parts are not those of <see cref="Vdi2230Cone"/>, or no wider than the bearing face: there is no such angle.</exception>
    /// <example><code>ClampedStack capped = parts.WithInterfaceDiameter(Length.FromMillimeters(22) + parts.GripLength);</code></example>
    public ClampedStack WithInterfaceDiameter(Length interfaceDiameter)
    {
        var diameter = new Held<Length>(Domains.Length.Stated(interfaceDiameter));
        if (Method != ClampedStackMethod.Vdi2230Cone || !_cone!.HasCone(_layers))
        {
            throw new InvalidOperationException($"Only a cone of VDI 2230 has an angle that follows from a diameter; this is {(Method == ClampedStackMethod.Vdi2230Cone ? "a sleeve" : MethodName)}.");
        }

        if (diameter.Value < _cone.Bearing)
        {
            Guard.RefuseAgainst(nameof(interfaceDiameter), interfaceDiameter, $"at least the bearing diameter, {Guard.ShowToCompare(Si.Length(_cone.Bearing))}");
        }

        return new ClampedStack(Method, _layers, _cone.WithInterfaceDiameter(diameter));
    }

    /// <inheritdoc />
    public override string ToString() =>
        (Method == ClampedStackMethod.Stated ? "clamped parts, " : Print.Text($"{Si.Length(GripMeters):0.###} clamped, "))
        + Print.Text($"{Si.Stiffness(1 / Spring.Resilience.Value):G4} ({MethodName})");

    private string MethodName => Method switch
    {
        ClampedStackMethod.Vdi2230Cone => "deformation cone of VDI 2230",
        ClampedStackMethod.Frusta => "frustum stack",
        ClampedStackMethod.Sleeve => "sleeve",
        ClampedStackMethod.Stated => "stiffness as stated",
        _ => "fit by Wileman",
    };

    StackSpring IDerives<StackSpring>.Derive() => new(ResilienceOf());

    private Term ResilienceOf()
    {
        if (_cone is not null) return _cone.ResilienceOf(_layers, GripTerm);
        if (_stated is not null) return ClampedPartsEquations.ResilienceOfStiffnessEquation.Of(_stated.Term);
        return ClampedPartsEquations.ResilienceOfStiffnessEquation.Of(ClampedPartsEquations.WilemanStiffnessEquation.Of(
            _layers[0].ModulusOf(_layers[0].NameAt(0)), _thread!.DiameterTerm, Fit!.CoefficientTerm, Fit.ExponentTerm, GripTerm));
    }

    private ReadOnlyCollection<RangeNote> NotesOf()
    {
        var notes = new List<RangeNote>();
        _cone?.AddNotes(notes, _layers, GripMeters);
        double slenderness = (_thread?.Diameter ?? 0) / GripMeters;
        if (Method == ClampedStackMethod.Wileman && slenderness is < 0.1 or > 2) notes.Add(new RangeNote(RangeNoteKind.DiameterPerGrip, slenderness));

        return notes.AsReadOnly();
    }
}
