using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The forces in a joint under an axial load: of each, the worst that the load introduction allows.</summary>
/// <example><code>JointState state = joint.At(preload, axialLoad, LoadIntroduction.WorstCase);
/// Console.WriteLine(state);      // bolt 42.999 kN, clamp 28 kN (n 0…1, the worst for each check)</code></example>
public sealed class JointState
{
    internal JointState(double preload, double axialLoad, LoadIntroduction introduction, double boltForce, double clampForce, bool isSeparated)
    {
        Preload = Si.Force(preload);
        AxialLoad = Si.Force(axialLoad);
        Introduction = introduction;
        BoltForce = Si.Force(boltForce);
        ClampForce = Si.Force(clampForce);
        IsSeparated = isSeparated;
    }

    /// <summary>The preload before the load, losses taken off.</summary>
    public Force Preload { get; }

    /// <summary>The axial load.</summary>
    public Force AxialLoad { get; }

    /// <summary>Where the load enters.</summary>
    public LoadIntroduction Introduction { get; }

    /// <summary>Greatest force in the bolt over the range of load introduction.</summary>
    public Force BoltForce { get; }

    /// <summary>Least clamp force over the range of load introduction; zero when the parts have separated.</summary>
    public Force ClampForce { get; }

    /// <summary>Whether somewhere in the range of load introduction the load has used up the clamp force: at the separation load, and beyond.</summary>
    public bool IsSeparated { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"bolt {BoltForce:0.###}")
        + (IsSeparated ? ", separated" : Print.Text($", clamp {ClampForce:0.###}"))
        + $" ({Introduction})";
}
