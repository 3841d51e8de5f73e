using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A point of the force–deformation diagram of a joint.</summary>
/// <example><code>(double x, double y) = (point.Deformation.Micrometers, point.Force.Kilonewtons);</code></example>
public sealed class DiagramPoint
{
    internal DiagramPoint(double deformation, double force)
    {
        Deformation = Si.Length(deformation);
        Force = Si.Force(force);
    }

    /// <summary>Deformation, counted from the slack bolt.</summary>
    public Length Deformation { get; }

    /// <summary>Force.</summary>
    public Force Force { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Deformation.Micrometers:0.###} µm, {Force:0.###}");
}
