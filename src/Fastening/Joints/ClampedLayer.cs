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
        SiThickness = Guard.Check(thickness, Domains.Length);
        Material = Guard.NotNull(material);
        Modulus = Si.Of(material.YoungsModulus);
    }

    /// <summary>Thickness along the bolt.</summary>
    public Length Thickness => Si.Length(SiThickness);

    /// <summary>Material.</summary>
    public ElasticMaterial Material { get; }

    internal double SiThickness { get; }

    internal double Modulus { get; }

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{SiThickness * 1e3:0.###} mm {Material.Name}");
}
