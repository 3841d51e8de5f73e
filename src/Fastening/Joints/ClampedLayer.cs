using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>One layer of the clamped parts: a plate, a flange, a washer.</summary>
/// <example><code>new ClampedLayer(Length.FromMillimeters(20), ElasticMaterial.GreyCastIron)</code></example>
public sealed class ClampedLayer
{
    private readonly Stated<Length> _thickness;
    private readonly Held<Length>? _outerDiameter;

    /// <summary>A layer.</summary>
    /// <param name="thickness">Thickness along the bolt.</param>
    /// <param name="material">Material.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="thickness"/> is outside its domain.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is null.</exception>
    /// <example><code>new ClampedLayer(thickness: Length.FromMillimeters(20), ElasticMaterial.GreyCastIron)</code></example>
    public ClampedLayer(Length thickness, ElasticMaterial material)
    {
        _thickness = Domains.Length.Stated(thickness);
        Material = Guard.NotNull(material);
    }

    private ClampedLayer(ClampedLayer other, Held<Length> outerDiameter)
    {
        _thickness = other._thickness;
        Material = other.Material;
        _outerDiameter = outerDiameter;
    }

    /// <summary>Thickness along the bolt.</summary>
    public Length Thickness => Si.Length(_thickness.Term);

    /// <summary>Material.</summary>
    public ElasticMaterial Material { get; }

    /// <summary>Outside diameter of this layer; null when it is that of the stack.</summary>
    public Length? OuterDiameter => _outerDiameter is null ? null : Si.Length(_outerDiameter.Term);

    internal double? SiOuterDiameter => _outerDiameter?.Value;

    internal double SiThickness => _thickness.Value;

    internal double Modulus => Material.Modulus;

    /// <summary>The same layer with an outside diameter of its own: a washer, a spacer.</summary>
    /// <remarks>The cone of pressure is nowhere wider than the layer it passes through, and opens again behind a narrow one.</remarks>
    /// <param name="outerDiameter">Outside diameter of this layer, greater than the hole of the stack.</param>
    /// <returns>A new layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="outerDiameter"/> is outside its domain.</exception>
    /// <example><code>var washer = new ClampedLayer(Length.FromMillimeters(3), ElasticMaterial.Steel).WithOuterDiameter(Length.FromMillimeters(30));</code></example>
    public ClampedLayer WithOuterDiameter(Length outerDiameter) => new(this, new Held<Length>(Domains.Length.Stated(outerDiameter)));

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Si.Length(SiThickness):0.###} {Material.Name}")
        + (SiOuterDiameter is double outside ? Print.Text($" of {Si.Length(outside):0.###}") : "");

    /// <summary>How the layer is called among those of a stack; put together only while a derivation listens.</summary>
    internal string NameAt(int index) => Recording.IsOn ? Print.Text($"layer {index + 1}, {Material.Name}") : "";

    internal Term ModulusOf(string name) => Material.ModulusOf(name);

    internal Term ThicknessOf(string name) => _thickness.TermOf(name);

    /// <summary>Its own outside diameter, or that of the stack.</summary>
    internal Term? OutsideOf(string name, Held<Length>? ofStack) =>
        _outerDiameter is not null ? _outerDiameter.TermOf(name) : ofStack?.Term;
}
