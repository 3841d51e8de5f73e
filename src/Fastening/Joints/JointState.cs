using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The forces in a joint under an axial load: of each, the worst that the load introduction allows.</summary>
/// <example><code>JointState state = joint.At(preload, axialLoad, LoadIntroduction.WorstCase);
/// Console.WriteLine(state);      // bolt 42.999 kN, clamp 28 kN (n 0…1, the worst for each check)</code></example>
public sealed class JointState : IDerived
{
    private readonly Term _preload, _axialLoad, _boltForce, _clampForce;

    internal JointState(Term preload, Term axialLoad, LoadIntroduction introduction, Term boltForce, Term clampForce)
    {
        _preload = preload;
        _axialLoad = axialLoad;
        _boltForce = boltForce;
        _clampForce = clampForce;
        Introduction = introduction;
    }

    /// <summary>The preload before the load, losses taken off.</summary>
    public Force Preload => Si.Force(_preload);

    /// <summary>The axial load.</summary>
    public Force AxialLoad => Si.Force(_axialLoad);

    /// <summary>Where the load enters.</summary>
    public LoadIntroduction Introduction { get; }

    /// <summary>Greatest force in the bolt over the range of load introduction.</summary>
    public Force BoltForce => Si.Force(_boltForce);

    /// <summary>Least clamp force over the range of load introduction; zero when the parts have separated.</summary>
    public Force ClampForce => Si.Force(_clampForce);

    /// <summary>Whether somewhere in the range of load introduction the load has used up the clamp force: at the separation load, and beyond.</summary>
    public bool IsSeparated => _clampForce.Value <= 0;

    Term IDerived.Answer => _boltForce;

    /// <inheritdoc />
    public override string ToString() => Print.Text($"bolt {Si.Force(_boltForce.Value):0.###}")
        + (IsSeparated ? ", separated" : Print.Text($", clamp {Si.Force(_clampForce.Value):0.###}"))
        + $" ({Introduction})";
}
