using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>Shigley's three factors of a bolted joint in tension: against passing the proof strength, against overload, against separation.</summary>
/// <remarks>Shigley, 9th ed. (2011) §8-9, eqs. (8-28) to (8-30); C is <see cref="Joint.LoadFactor"/>. Build the joint the textbook's way to meet its figures.</remarks>
/// <example><code>ShigleyFactors factors = joint.ShigleyFactorsAt(preload, load, strength);
/// Console.WriteLine(factors);     // n_p 1.204, n_L 3.05, n_0 3.022</code></example>
public sealed class ShigleyFactors
{
    private readonly Joint _joint;
    private readonly double _preload, _load;
    private readonly BoltStrength _strength;
    private readonly StressAreaBasis _basis;

    internal ShigleyFactors(Joint joint, double preload, double load, BoltStrength strength, StressAreaBasis basis)
    {
        _basis = basis;
        _joint = joint;
        _preload = preload;
        _load = load;
        _strength = strength;
        Yielding = YieldingOf(null);
        Overload = OverloadOf(null);
        Separation = SeparationOf(null);
    }

    /// <summary>n_p = S_p A_t/(C P + F_i): proof load over force in the bolt.</summary>
    public double Yielding { get; }

    /// <summary>n_L = (S_p A_t − F_i)/(C P): by how much the load may grow up to the proof load.</summary>
    public double Overload { get; }

    /// <summary>n_0 = F_i/((1 − C) P): by how much the load may grow up to separation.</summary>
    public double Separation { get; }

    /// <summary>The work behind <see cref="Yielding"/>.</summary>
    /// <returns>The steps; the last is the factor.</returns>
    /// <example><code>Console.WriteLine(joint.ShigleyFactorsAt(preload, load, strength).DeriveYielding());</code></example>
    public Derivation DeriveYielding() => Work("Factor against passing the proof strength", work => YieldingOf(work));

    /// <summary>The work behind <see cref="Overload"/>.</summary>
    /// <returns>The steps; the last is the factor.</returns>
    /// <example><code>Console.WriteLine(joint.ShigleyFactorsAt(preload, load, strength).DeriveOverload());</code></example>
    public Derivation DeriveOverload() => Work("Factor against overload", work => OverloadOf(work));

    /// <summary>The work behind <see cref="Separation"/>.</summary>
    /// <returns>The steps; the last is the factor.</returns>
    /// <example><code>Console.WriteLine(joint.ShigleyFactorsAt(preload, load, strength).DeriveSeparation());</code></example>
    public Derivation DeriveSeparation() => Work("Factor against separation", work => SeparationOf(work));

    /// <inheritdoc />
    public override string ToString() => Print.Text($"n_p {Yielding:0.###}, n_L {Overload:0.###}, n_0 {Separation:0.###}");

    private static Derivation Work(string title, Action<Derivation> steps)
    {
        var work = new Derivation(title);
        steps(work);
        return work.KeepWhatCounts();
    }

    private double YieldingOf(Derivation? work) =>
        LoadShareEquations.YieldingFactorEquation.Step(work, ProofLoad(work), _preload, _joint.SpringsOf(work).LoadFactor, _load);

    private double OverloadOf(Derivation? work) =>
        LoadShareEquations.OverloadFactorEquation.Step(work, ProofLoad(work), _preload, _joint.SpringsOf(work).LoadFactor, _load);

    private double SeparationOf(Derivation? work) =>
        LoadShareEquations.SeparationFactorEquation.Step(work, _preload, _joint.SpringsOf(work).LoadFactor, _load);

    private double ProofLoad(Derivation? work) =>
        MaterialEquations.ProofLoadEquation.Step(work, _strength.Proof!.Value, StressAreas.Of(_joint.Bolt.Thread, _basis).Value);
}
