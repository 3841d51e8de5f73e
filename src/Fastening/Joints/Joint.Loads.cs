using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <content>The joint under an axial load.</content>
public sealed partial class Joint
{
    /// <summary>The forces in the joint at a preload and under an axial load (equations <c>joint.bolt-force</c>, <c>joint.clamp-force</c>).</summary>
    /// <param name="preload">Preload before the load, losses taken off.</param>
    /// <param name="axialLoad">Axial load on this bolt; negative presses the parts together.</param>
    /// <param name="introduction">Where the load enters; there is no default.</param>
    /// <returns>The forces, beyond separation too.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="introduction"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A force is outside its domain, or the load presses so hard that the bolt loses its tension.</exception>
    /// <example><code>JointState state = joint.At(Force.FromKilonewtons(40), Force.FromKilonewtons(12), LoadIntroduction.Of(0.4));</code></example>
    public JointState At(Force preload, Force axialLoad, LoadIntroduction introduction)
    {
        Term force = Domains.Force.Argument(preload), load = LoadOf(axialLoad, force, introduction);
        Term low = Springs.Share(introduction.LowTerm), high = Springs.Share(introduction.HighTerm);
        return new JointState(
            force, load, introduction,
            Term.Max(LoadShareEquations.BoltForceEquation.Of(force, low, load), LoadShareEquations.BoltForceEquation.Of(force, high, load)),
            Term.Min(LoadShareEquations.ClampForceEquation.Of(force, low, load), LoadShareEquations.ClampForceEquation.Of(force, high, load)));
    }

    /// <summary>The axial load at which the clamp force is used up (equation <c>joint.separation-load</c>): the least that the load introduction allows.</summary>
    /// <param name="preload">Preload before the load, losses taken off.</param>
    /// <param name="introduction">Where the load enters; there is no default.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="introduction"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is outside its domain.</exception>
    /// <example><code>joint.SeparationLoadAt(preload, LoadIntroduction.WorstCase)     // the preload itself</code></example>
    public Force SeparationLoadAt(Force preload, LoadIntroduction introduction)
    {
        Term force = Domains.Force.Argument(preload);
        return Si.Force(LoadShareEquations.SeparationLoadEquation.Of(force, Springs.Share(Guard.NotNull(introduction).LowTerm)));
    }

    /// <summary>Shigley's three factors of a joint in tension; the load enters under head and nut (n = 1), as the textbook takes it.</summary>
    /// <param name="preload">Preload F_i.</param>
    /// <param name="axialLoad">Axial load P on this bolt, above zero.</param>
    /// <param name="strength">Strength of the bolt, with a stress under proof load.</param>
    /// <param name="basis">Stress area of the proof load, exact by default: that of the preload, or the two do not compare.</param>
    /// <returns>n_p, n_L and n_0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="strength"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A force is outside its domain, or <paramref name="basis"/> is no basis.</exception>
    /// <exception cref="ArgumentException">The strength has no stress under proof load or was looked up for another size, or the thread has no tabulated area.</exception>
    /// <example><code>joint.ShigleyFactorsAt(preload, load, strength).Overload     // n_L</code></example>
    public ShigleyFactors ShigleyFactorsAt(Force preload, Force axialLoad, BoltStrength strength, StressAreaBasis basis = StressAreaBasis.Exact)
    {
        Term force = Domains.Force.Argument(preload), load = Domains.PositiveForce.Argument(axialLoad);
        if (Guard.NotNull(strength).RequireFor(Bolt.Thread, nameof(strength)).ProofTerm is not Term proof)
        {
            throw new ArgumentException("The strength has no stress under proof load.", nameof(strength));
        }

        Term proofLoad = MaterialEquations.ProofLoadEquation.Of(proof, StressAreas.Of(Bolt.Thread, basis));
        return new ShigleyFactors(proofLoad, force, Springs.LoadFactor, load);
    }

    /// <summary>The force–deformation diagram at a preload and under an axial load.</summary>
    /// <param name="preload">Preload before the load, losses taken off.</param>
    /// <param name="axialLoad">Axial load on this bolt, zero or pulling.</param>
    /// <param name="loadIntroductionFactor">n, 0 to 1: a diagram shows one.</param>
    /// <returns>The lines and points.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>JointDiagram diagram = joint.DiagramAt(Force.FromKilonewtons(40), Force.FromKilonewtons(12), loadIntroductionFactor: 0.4);</code></example>
    public JointDiagram DiagramAt(Force preload, Force axialLoad, double loadIntroductionFactor) => new(
        Springs,
        Domains.Force.Argument(preload),
        Domains.Force.Argument(axialLoad),
        Domains.LoadIntroduction.Argument(loadIntroductionFactor));

    private Term LoadOf(Force axialLoad, Term preload, LoadIntroduction introduction)
    {
        Term load = Domains.AxialLoad.Argument(axialLoad);
        double share = Guard.NotNull(introduction).HighTerm.Value * Springs.LoadFactor.Value;
        if (preload.Value + share * load.Value < 0)
        {
            Guard.RefuseAgainst(
                nameof(axialLoad), axialLoad, $"at least {Guard.ShowToCompare(Si.Force(-preload.Value / share))}, where the bolt has lost its tension");
        }

        return load;
    }
}
