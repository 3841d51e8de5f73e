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
    private readonly Term _factor, _gap;

    internal JointDiagram(JointSprings springs, Term preload, Term load, Term factor)
    {
        Term boltSide = LoadShareEquations.LoadedResilienceEquation.Of(springs.Bolt, factor, springs.Parts);
        Term share = springs.Share(factor);
        Term closed = BoltComplianceEquations.ElongationEquation.Of(preload, springs.Total);
        Term bolt = LoadShareEquations.BoltForceEquation.Of(preload, share, load), clamp = LoadShareEquations.ClampForceEquation.Of(preload, share, load);
        Term separation = LoadShareEquations.SeparationLoadEquation.Of(preload, share);
        Term stretched = BoltComplianceEquations.ElongationEquation.Of(bolt, boltSide);

        _factor = factor;
        Preload = new DiagramPoint(BoltComplianceEquations.ElongationEquation.Of(preload, boltSide), preload);
        Bolt = new DiagramPoint(stretched, bolt);
        Parts = new DiagramPoint(Term.Min(stretched, closed), clamp);
        Separation = new DiagramPoint(closed, separation);
        Term top = Term.Max(bolt, separation), nothing = Term.Given(0, "slack bolt, no force");
        BoltLine = Array.AsReadOnly([new DiagramPoint(nothing, nothing), new DiagramPoint(BoltComplianceEquations.ElongationEquation.Of(top, boltSide), top)]);
        PartsLine = Array.AsReadOnly([Preload, new DiagramPoint(closed, nothing)]);
        _gap = LoadShareEquations.GapEquation.Of(stretched, closed);
    }

    /// <summary>The load introduction factor n that is drawn.</summary>
    public double LoadIntroductionFactor => Si.Number(_factor);

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
    public Length Gap => Si.Length(_gap);

    /// <inheritdoc />
    public override string ToString() => $"preload at {Preload}; bolt at {Bolt}; parts at {Parts}; separation at {Separation}";
}
