using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>Shigley's three factors of a bolted joint in tension: against passing the proof strength, against overload, against separation.</summary>
/// <remarks>Shigley, 9th ed. (2011) §8-9, eqs. (8-28) to (8-30); C is <see cref="Joint.LoadFactor"/>. Build the joint the textbook's way to meet its figures.</remarks>
/// <example><code>ShigleyFactors factors = joint.ShigleyFactorsAt(preload, load, strength);
/// Console.WriteLine(factors);     // n_p 1.204, n_L 3.05, n_0 3.022</code></example>
public sealed class ShigleyFactors : IDerived
{
    private readonly Term _yielding, _overload, _separation;

    internal ShigleyFactors(Term proofLoad, Term preload, Term loadFactor, Term load)
    {
        _yielding = LoadShareEquations.YieldingFactorEquation.Of(proofLoad, preload, loadFactor, load);
        _overload = LoadShareEquations.OverloadFactorEquation.Of(proofLoad, preload, loadFactor, load);
        _separation = LoadShareEquations.SeparationFactorEquation.Of(preload, loadFactor, load);
    }

    /// <summary>n_p = S_p A_t/(C P + F_i): proof load over force in the bolt.</summary>
    public double Yielding => Si.Number(_yielding);

    /// <summary>n_L = (S_p A_t − F_i)/(C P): by how much the load may grow up to the proof load.</summary>
    public double Overload => Si.Number(_overload);

    /// <summary>n_0 = F_i/((1 − C) P): by how much the load may grow up to separation.</summary>
    public double Separation => Si.Number(_separation);

    Term IDerived.Answer => _yielding;

    /// <inheritdoc />
    public override string ToString() => Print.Text($"n_p {_yielding.Value:0.###}, n_L {_overload.Value:0.###}, n_0 {_separation.Value:0.###}");
}
