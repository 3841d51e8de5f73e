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
        double force = Domains.Force.Check(preload), load = CheckLoad(axialLoad, force, introduction);
        (double low, double high) = (introduction.Low, introduction.High);
        double bolt = Math.Max(BoltForceOf(null, force, load, low), BoltForceOf(null, force, load, high));
        double clamp = Math.Min(ClampForceOf(null, force, load, low), ClampForceOf(null, force, load, high));
        return new JointState(force, load, introduction, bolt, clamp, clamp <= 0);
    }

    /// <summary>The work behind the bolt force of <see cref="At"/>, at the end of the range where it is greatest.</summary>
    /// <param name="preload">Preload before the load, losses taken off.</param>
    /// <param name="axialLoad">Axial load on this bolt.</param>
    /// <param name="introduction">Where the load enters.</param>
    /// <returns>The steps; the last is the force.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="introduction"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A force is outside its domain, or the load presses so hard that the bolt loses its tension.</exception>
    /// <example><code>Console.WriteLine(joint.DeriveBoltForceAt(preload, axialLoad, LoadIntroduction.Of(0.4)));</code></example>
    public Derivation DeriveBoltForceAt(Force preload, Force axialLoad, LoadIntroduction introduction)
    {
        double force = Domains.Force.Check(preload), load = CheckLoad(axialLoad, force, introduction);
        var work = new Derivation("Force in the bolt");
        BoltForceOf(work, force, load, load >= 0 ? introduction.High : introduction.Low);
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind the clamp force of <see cref="At"/>, at the end of the range where it is least.</summary>
    /// <param name="preload">Preload before the load, losses taken off.</param>
    /// <param name="axialLoad">Axial load on this bolt.</param>
    /// <param name="introduction">Where the load enters.</param>
    /// <returns>The steps; the last is the force.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="introduction"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A force is outside its domain, or the load presses so hard that the bolt loses its tension.</exception>
    /// <example><code>Console.WriteLine(joint.DeriveClampForceAt(preload, axialLoad, LoadIntroduction.Of(0.4)));</code></example>
    public Derivation DeriveClampForceAt(Force preload, Force axialLoad, LoadIntroduction introduction)
    {
        double force = Domains.Force.Check(preload), load = CheckLoad(axialLoad, force, introduction);
        var work = new Derivation("Clamp force left");
        ClampForceOf(work, force, load, load >= 0 ? introduction.Low : introduction.High);
        return work.KeepWhatCounts();
    }

    /// <summary>The axial load at which the clamp force is used up (equation <c>joint.separation-load</c>): the least that the load introduction allows.</summary>
    /// <param name="preload">Preload before the load, losses taken off.</param>
    /// <param name="introduction">Where the load enters; there is no default.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="introduction"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is outside its domain.</exception>
    /// <example><code>joint.SeparationLoadAt(preload, LoadIntroduction.WorstCase)     // the preload itself</code></example>
    public Force SeparationLoadAt(Force preload, LoadIntroduction introduction) =>
        Si.Force(SeparationLoadOf(null, Domains.Force.Check(preload), Guard.NotNull(introduction)));

    /// <summary>The work behind <see cref="SeparationLoadAt"/>.</summary>
    /// <param name="preload">Preload before the load, losses taken off.</param>
    /// <param name="introduction">Where the load enters.</param>
    /// <returns>The steps; the last is the load.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="introduction"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is outside its domain.</exception>
    /// <example><code>Console.WriteLine(joint.DeriveSeparationLoadAt(preload, LoadIntroduction.Of(0.4)));</code></example>
    public Derivation DeriveSeparationLoadAt(Force preload, LoadIntroduction introduction)
    {
        double force = Domains.Force.Check(preload);
        var work = new Derivation("Axial load at separation");
        SeparationLoadOf(work, force, Guard.NotNull(introduction));
        return work.KeepWhatCounts();
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
        double force = Domains.Force.Check(preload), load = Domains.PositiveForce.Check(axialLoad);
        if (Guard.NotNull(strength).RequireFor(Bolt.Thread, nameof(strength)).Proof is null) throw new ArgumentException("The strength has no stress under proof load.", nameof(strength));
        return new ShigleyFactors(this, force, load, strength, basis);
    }

    /// <summary>The force–deformation diagram at a preload and under an axial load.</summary>
    /// <param name="preload">Preload before the load, losses taken off.</param>
    /// <param name="axialLoad">Axial load on this bolt, zero or pulling.</param>
    /// <param name="loadIntroductionFactor">n, 0 to 1: a diagram shows one.</param>
    /// <returns>The lines and points.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>JointDiagram diagram = joint.DiagramAt(Force.FromKilonewtons(40), Force.FromKilonewtons(12), loadIntroductionFactor: 0.4);</code></example>
    public JointDiagram DiagramAt(Force preload, Force axialLoad, double loadIntroductionFactor) => new(
        this,
        Domains.Force.Check(preload),
        Domains.Force.Check(axialLoad),
        Domains.LoadIntroduction.Check(loadIntroductionFactor));

    /// <summary>The two springs, with the work written down.</summary>
    internal JointSprings SpringsOf(Derivation? work)
    {
        if (work is null) return new JointSprings(Bolt.MetersPerNewton, Parts.MetersPerNewton, MetersPerNewton, LoadFactor);
        double bolt = Bolt.ResilienceOf(work), parts = Parts.ResilienceOf(work);
        return new JointSprings(
            bolt, parts, JointEquations.ResilienceEquation.Step(work, bolt, parts), JointEquations.LoadFactorEquation.Step(work, bolt, parts));
    }

    internal double BoltForceOf(Derivation? work, double preload, double load, double factor) =>
        LoadShareEquations.BoltForceEquation.Step(work, preload, WorkingLoadFactor(work, factor), load);

    private double ClampForceOf(Derivation? work, double preload, double load, double factor) =>
        LoadShareEquations.ClampForceEquation.Step(work, preload, WorkingLoadFactor(work, factor), load);

    private double SeparationLoadOf(Derivation? work, double preload, LoadIntroduction introduction) =>
        LoadShareEquations.SeparationLoadEquation.Step(work, preload, WorkingLoadFactor(work, introduction.Low));

    private double WorkingLoadFactor(Derivation? work, double factor) =>
        LoadShareEquations.WorkingLoadFactorEquation.Step(work, factor, SpringsOf(work).LoadFactor);

    private double CheckLoad(Force axialLoad, double preload, LoadIntroduction introduction)
    {
        double load = Domains.AxialLoad.Check(axialLoad), share = Guard.NotNull(introduction).High * LoadFactor;
        if (preload + share * load < 0)
        {
            Guard.RefuseAgainst(
                nameof(axialLoad), axialLoad, $"at least {Guard.ShowToCompare(Si.Force(-preload / share))}, where the bolt has lost its tension");
        }

        return load;
    }
}
