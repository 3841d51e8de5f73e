using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Design resistance of a preloaded structural bolt against slip, by EN 1993-1-8.</summary>
/// <remarks>
/// Equations <c>slip.pretension-left</c> and <c>slip.resistance</c>: EN 1993-1-8:2005 §3.9, eqs. (3.6), (3.7) and (3.8), from memory. Nothing is
/// assumed: slip factor, hole factor and partial factor are the user's, with the national annex. The form of machine design, which requires a
/// clamp force instead, is in <see cref="JointDuty"/>.
/// </remarks>
/// <example><code>// M20, 10.9: F_p,C 171.5 kN, class A faces (µ 0.5), one plane: 68.6 kN
/// SlipResistance.OfEn1993(holeFactor: 1, frictionPlanes: 1, slipFactor: 0.5, Force.FromKilonewtons(171.5), Force.Zero, partialFactor: 1.25).Resistance</code></example>
public sealed class SlipResistance
{
    private static readonly double[] Tabulated = [0.5, 0.4, 0.3, 0.2];

    private readonly StatedNumber _holeFactor, _planes, _slipFactor, _partialFactor;
    private readonly Stated<Force> _pretension, _tension;

    private SlipResistance(
        StatedNumber holeFactor, StatedNumber planes, StatedNumber slipFactor, Stated<Force> pretension, Stated<Force> tension, StatedNumber partialFactor)
    {
        _holeFactor = holeFactor;
        _planes = planes;
        _slipFactor = slipFactor;
        _pretension = pretension;
        _tension = tension;
        _partialFactor = partialFactor;
    }

    /// <summary>Design slip resistance of one bolt, F_s,Rd; zero when the tension has used up the preload.</summary>
    public Force Resistance => Si.Force(ResistanceTerm);

    /// <summary>
    /// Whether the slip factor is that of a class of surface, A 0.5 to D 0.2 (EN 1993-1-8:2005 Table 3.7, from memory); any other needs the test of
    /// EN 1090-2.
    /// </summary>
    public bool HasTabulatedSlipFactor => Array.IndexOf(Tabulated, _slipFactor.Value) >= 0;

    /// <summary>Resistance of one bolt.</summary>
    /// <param name="holeFactor">k_s: 1.0 for normal holes, less for oversize and slotted ones.</param>
    /// <param name="frictionPlanes">Friction planes, 1 to 100.</param>
    /// <param name="slipFactor">µ of the faces, above 0 to 1: 0.5, 0.4, 0.3 or 0.2 by class of surface, any other by a test of your own.</param>
    /// <param name="pretension">Design preload F_p,C.</param>
    /// <param name="appliedTension">Tension in the bolt F_t,Ed that acts at the same time; zero when there is none.</param>
    /// <param name="partialFactor">γ_M3, 1 or more; 1.25 is the recommended value, national annexes decide.</param>
    /// <returns>The resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>SlipResistance.OfEn1993(
    ///     holeFactor: 1, frictionPlanes: 2, slipFactor: 0.4, Force.FromKilonewtons(172), appliedTension: Force.FromKilonewtons(30),
    ///     partialFactor: 1.25).Resistance.Kilonewtons   // 94.72</code></example>
    public static SlipResistance OfEn1993(
        double holeFactor, int frictionPlanes, double slipFactor, Force pretension, Force appliedTension, double partialFactor) => new(
            Domains.HoleFactor.Stated(holeFactor),
            Domains.CountFromOne.Stated(frictionPlanes),
            Domains.SlipFactor.Stated(slipFactor),
            Domains.Force.Stated(pretension),
            Domains.Force.Stated(appliedTension),
            Domains.PartialFactor.Stated(partialFactor));

    /// <inheritdoc />
    public override string ToString() => Print.Text($"slip resistance {Si.Force(ResistanceTerm.Value):0.###} (EN 1993-1-8)")
        + (HasTabulatedSlipFactor ? "" : Print.Text($"; slip factor {_slipFactor.Value:0.####} is of no class, it rests on a test"));

    private Term ResistanceTerm => SlipEquations.DesignSlipResistanceEquation.Of(
        _holeFactor.Term, _planes.Term, _slipFactor.Term, SlipEquations.PretensionLeftEquation.Of(_pretension.Term, _tension.Term), _partialFactor.Term);
}
