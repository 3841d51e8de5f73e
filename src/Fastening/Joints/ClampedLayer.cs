using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>One layer of the clamped parts: a plate, a flange, a washer.</summary>
/// <example><code>new ClampedLayer(Length.FromMillimeters(20), ElasticMaterial.GreyCastIron)</code></example>
public sealed class ClampedLayer
{
    /// <summary>A layer.</summary>
    /// <param name="thickness">Thickness along the bolt.</param>
    /// <param name="material">Material.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="thickness"/> is outside its domain.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is null.</exception>
    /// <example><code>new ClampedLayer(thickness: Length.FromMillimeters(20), ElasticMaterial.GreyCastIron)</code></example>
    public ClampedLayer(Length thickness, ElasticMaterial material)
    {
        SiThickness = Domains.Length.Check(thickness);
        Material = Guard.NotNull(material);
        Modulus = Si.Of(material.YoungsModulus);
    }

    private ClampedLayer(ClampedLayer other, double outerDiameter)
    {
        SiThickness = other.SiThickness;
        Material = other.Material;
        Modulus = other.Modulus;
        SiOuterDiameter = outerDiameter;
    }

    /// <summary>Thickness along the bolt.</summary>
    public Length Thickness => Si.Length(SiThickness);

    /// <summary>Material.</summary>
    public ElasticMaterial Material { get; }

    /// <summary>Outside diameter of this layer; null when it is that of the stack.</summary>
    public Length? OuterDiameter => SiOuterDiameter is double outside ? Si.Length(outside) : null;

    internal double? SiOuterDiameter { get; }

    internal double SiThickness { get; }

    internal double Modulus { get; }

    /// <summary>The same layer with an outside diameter of its own: a washer, a spacer.</summary>
    /// <remarks>The cone of pressure is nowhere wider than the layer it passes through, and opens again behind a narrow one.</remarks>
    /// <param name="outerDiameter">Outside diameter of this layer, greater than the hole of the stack.</param>
    /// <returns>A new layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="outerDiameter"/> is outside its domain.</exception>
    /// <example><code>var washer = new ClampedLayer(Length.FromMillimeters(3), ElasticMaterial.Steel).WithOuterDiameter(Length.FromMillimeters(30));</code></example>
    public ClampedLayer WithOuterDiameter(Length outerDiameter) => new(this, Domains.Length.Check(outerDiameter));

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Si.Length(SiThickness):0.###} {Material.Name}")
        + (SiOuterDiameter is double outside ? Print.Text($" of {Si.Length(outside):0.###}") : "");
}
