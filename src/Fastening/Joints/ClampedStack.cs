using System.Collections.ObjectModel;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The clamped parts as a spring, by one of three named methods.</summary>
/// <remarks>
/// Elastic, clamped concentrically. Where the proportions leave the range that a method was made for, <see cref="RangeNotes"/> says so; the
/// result stands where it is defined. The methods give different values for the same parts: state which one was used.
/// </remarks>
/// <example><code>ClampedStack parts = ClampedStack.Vdi2230Cone(
///     [new ClampedLayer(Length.FromMillimeters(20), ElasticMaterial.Steel), new ClampedLayer(Length.FromMillimeters(40), ElasticMaterial.GreyCastIron)],
///     bearingDiameter: Length.FromMillimeters(22), hole: Length.FromMillimeters(17.5), outerDiameter: Length.FromMillimeters(60), JointForm.ThroughBolt);
/// parts.Stiffness.KilonewtonsPerMillimeter</code></example>
public sealed partial class ClampedStack
{
    private readonly ClampedLayer[] _layers;
    private readonly ConeShape? _cone;
    private readonly double _wilemanDiameter;

    private ClampedStack(ClampedStackMethod method, ClampedLayer[] layers, ConeShape? cone, double wilemanDiameter = 0, WilemanFit? fit = null)
    {
        Method = method;
        _layers = layers;
        _cone = cone;
        _wilemanDiameter = wilemanDiameter;
        Fit = fit;
        Layers = Array.AsReadOnly(layers);
        foreach (ClampedLayer layer in layers) GripMeters += layer.SiThickness;
        MetersPerNewton = ResilienceOf(null);
        RangeNotes = NotesOf();
        ExpansionPerKelvin = ExpansionOf();
    }

    /// <summary>How the compliance was found.</summary>
    public ClampedStackMethod Method { get; }

    /// <summary>The layers, from the head on.</summary>
    public IReadOnlyList<ClampedLayer> Layers { get; }

    /// <summary>Thickness of all layers.</summary>
    public Length GripLength => Si.Length(GripMeters);

    /// <summary>Elastic resilience δ_P, metres of compression per newton.</summary>
    public double MetersPerNewton { get; }

    /// <summary>Stiffness 1/δ_P.</summary>
    public ForcePerLength Stiffness => Si.Stiffness(1 / MetersPerNewton);

    /// <summary>What lies outside the range that the method was made for, in sentences; empty when nothing does.</summary>
    public IReadOnlyList<string> RangeNotes { get; }

    /// <summary>Whether the proportions lie in the range that the method was made for.</summary>
    public bool IsInRange => RangeNotes.Count == 0;

    /// <summary>The fit, for the method of Wileman; null for the others.</summary>
    public WilemanFit? Fit { get; }

    /// <summary>
    /// Whether the cone opens from both ends or from the head alone: as given, from both ends for <see cref="ShigleyFrusta"/>, null for the fit
    /// by Wileman, which has no cone.
    /// </summary>
    public JointForm? Form => _cone?.Form;

    internal double GripMeters { get; }

    /// <summary>Σ l_i α_i, metres per kelvin; null when the expansion of a layer is unknown.</summary>
    internal double? ExpansionPerKelvin { get; }

    /// <summary>The work behind <see cref="MetersPerNewton"/>.</summary>
    /// <returns>The steps; the last is the resilience δ_P.</returns>
    /// <example><code>Console.WriteLine(parts.DeriveResilience());</code></example>
    public Derivation DeriveResilience()
    {
        var work = new Derivation($"Resilience of the clamped parts, {MethodName}");
        ResilienceOf(work);
        return work.KeepWhatCounts();
    }

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{GripMeters * 1e3:0.###} mm clamped, {1e-6 / MetersPerNewton:G4} kN/mm ({MethodName})");

    private string MethodName => Method switch
    {
        ClampedStackMethod.Vdi2230Cone => "deformation cone of VDI 2230",
        ClampedStackMethod.Frusta => "frustum stack",
        _ => "fit by Wileman",
    };

    internal double ResilienceOf(Derivation? work)
    {
        if (_cone is not null) return _cone.ResilienceOf(work, _layers, GripMeters);
        double stiffness = ClampedPartsEquations.WilemanStiffnessEquation.Step(
            work, _layers[0].Modulus, _wilemanDiameter, Fit!.Coefficient, Fit.Exponent, GripMeters);
        return ClampedPartsEquations.ResilienceOfStiffnessEquation.Step(work, stiffness);
    }

    private double? ExpansionOf()
    {
        double? sum = 0;
        foreach (ClampedLayer layer in _layers)
        {
            sum += layer.Material.ThermalExpansion is CoefficientOfThermalExpansion alpha ? layer.SiThickness * Si.Of(alpha) : null;
        }

        return sum;
    }

    private ReadOnlyCollection<string> NotesOf()
    {
        var notes = new List<string>();
        if (_cone is not null) _cone.AddNotes(notes, GripMeters);
        double slenderness = _wilemanDiameter / GripMeters;
        if (_cone is null && slenderness is < 0.1 or > 2)
        {
            notes.Add(FormattableString.Invariant($"d/l is {slenderness:G3}; the fit by Wileman was made for 0.1 to 2."));
        }

        return notes.AsReadOnly();
    }
}
