using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The force–deformation diagram of a joint: the line of the bolt rises, the line of the parts falls from the preload to the right.</summary>
/// <remarks>
/// Where the load enters inside the parts (n below 1), what lies outside it stretches with the bolt and is drawn with it: δ_S + (1 − n) δ_P and n δ_P,
/// equation <c>joint.loaded-resilience</c>. Each line has two points; under the load bolt and parts have the same deformation until they separate.
/// </remarks>
/// <example><code>JointDiagram diagram = joint.DiagramAt(preload, axialLoad, loadIntroductionFactor: 0.4);
/// foreach (DiagramPoint point in diagram.BoltLine) Console.WriteLine(point);</code></example>
public sealed class JointDiagram
{
    internal JointDiagram(Joint joint, double preload, double load, double factor)
    {
        JointSprings springs = joint.SpringsOf(null);
        double boltSide = LoadShareEquations.LoadedResilience(springs.Bolt, factor, springs.Parts);
        double share = LoadShareEquations.WorkingLoadFactor(factor, springs.LoadFactor);
        double closed = BoltComplianceEquations.Elongation(preload, springs.Total);
        double bolt = LoadShareEquations.BoltForce(preload, share, load), clamp = LoadShareEquations.ClampForce(preload, share, load);
        double separation = LoadShareEquations.SeparationLoad(preload, share);
        double stretched = BoltComplianceEquations.Elongation(bolt, boltSide);

        LoadIntroductionFactor = factor;
        Preload = new DiagramPoint(BoltComplianceEquations.Elongation(preload, boltSide), preload);
        Bolt = new DiagramPoint(stretched, bolt);
        Parts = new DiagramPoint(Math.Min(stretched, closed), clamp);
        Separation = new DiagramPoint(closed, separation);
        double top = Math.Max(bolt, separation);
        BoltLine = Array.AsReadOnly([new DiagramPoint(0, 0), new DiagramPoint(BoltComplianceEquations.Elongation(top, boltSide), top)]);
        PartsLine = Array.AsReadOnly([Preload, new DiagramPoint(closed, 0)]);
        Gap = Si.Length(Math.Max(stretched - closed, 0));
    }

    /// <summary>The load introduction factor n that is drawn.</summary>
    public double LoadIntroductionFactor { get; }

    /// <summary>The line of the bolt, from the slack bolt to separation or, when it is higher, to the force under the load.</summary>
    public IReadOnlyList<DiagramPoint> BoltLine { get; }

    /// <summary>The line of the parts, from the preload to where they separate.</summary>
    public IReadOnlyList<DiagramPoint> PartsLine { get; }

    /// <summary>The preload, where both lines meet.</summary>
    public DiagramPoint Preload { get; }

    /// <summary>The bolt under the load.</summary>
    public DiagramPoint Bolt { get; }

    /// <summary>The parts under the load.</summary>
    public DiagramPoint Parts { get; }

    /// <summary>The bolt at separation; its force is the separation load.</summary>
    public DiagramPoint Separation { get; }

    /// <summary>The gap between the parts under the load; zero while they are closed.</summary>
    public Length Gap { get; }

    /// <inheritdoc />
    public override string ToString() => $"preload at {Preload}; bolt at {Bolt}; parts at {Parts}; separation at {Separation}";
}
