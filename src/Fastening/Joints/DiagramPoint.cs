using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A point of the force–deformation diagram of a joint.</summary>
/// <example><code>(double x, double y) = (point.Deformation.Micrometers, point.Force.Kilonewtons);</code></example>
public sealed class DiagramPoint
{
    private readonly Term _deformation, _force;

    internal DiagramPoint(Term deformation, Term force)
    {
        _deformation = deformation;
        _force = force;
    }

    /// <summary>Deformation, counted from the slack bolt.</summary>
    public Length Deformation => Si.Length(_deformation);

    /// <summary>Force.</summary>
    public Force Force => Si.Force(_force);

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Si.Length(_deformation.Value).Micrometers:0.###} µm, {Si.Force(_force.Value):0.###}");
}
