using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Tension, torsion and equivalent stress in a bolt: while it is being tightened, or in service.</summary>
/// <remarks>
/// Tightening after VDI 2230-1:2015 §5.5.1 (R7), service after §5.5.2 (R8); clauses from memory, not checked in the text. Prevailing torque twists the
/// shank too and is counted. Not covered: bending, fatigue, relaxation, preload beyond yield. A torque is chosen over the ranges of friction and
/// prevailing torque: at a given torque the lowest bearing friction always is the worst, and mostly the lowest thread friction and prevailing torque
/// are, because they give the most preload; but with high bearing friction their highest can stress the bolt more.
/// <see cref="TorquePreloadRange.PermittedTorque"/> and <see cref="HighestAt"/> look at every corner.
/// </remarks>
/// <example><code>BoltStress stress = BoltStress.WhileTightening(model, Force.FromKilonewtons(70));
/// bool belowYield = stress.VonMises &lt; strength.YieldStrength * 0.9;</code></example>
public sealed class BoltStress : IDerived
{
    private readonly Term _tension, _torsion, _vonMises;

    private BoltStress(Term tension, Term torsion)
    {
        _tension = tension;
        _torsion = torsion;
        _vonMises = StressEquations.EquivalentStressEquation.Of(tension, torsion);
    }

    /// <summary>Tensile stress σ.</summary>
    public Pressure Tension => Si.Pressure(_tension);

    /// <summary>Torsional stress τ; in service what is left of it, k_τ τ.</summary>
    public Pressure Torsion => Si.Pressure(_torsion);

    /// <summary>Equivalent stress σ_red = √(σ² + 3τ²).</summary>
    public Pressure VonMises => Si.Pressure(_vonMises);

    Term IDerived.Answer => _vonMises;

    internal Term VonMisesTerm => _vonMises;

    /// <summary>The stress at a preload, while the bolt is being tightened.</summary>
    /// <param name="model">Thread, friction, convention and prevailing torque.</param>
    /// <param name="preload">The preload.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The three stresses.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>BoltStress.WhileTightening(model, Force.FromKilonewtons(70)).VonMises</code></example>
    public static BoltStress WhileTightening(
        FrictionTorqueModel model, Force preload, TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        Term force = Domains.Force.Argument(preload);
        StressedSection section = StressedSection.Of(Guard.NotNull(model).Thread, torsion, waistDiameter);
        return Tightening(section, model.Arms.InShank, force, model.PrevailingTerm);
    }

    /// <summary>The highest stress that a torque can cause over the ranges of friction and prevailing torque.</summary>
    /// <param name="range">
    /// The ranges. The lowest bearing friction is the worst; of thread friction and prevailing torque both ends are looked at, because the
    /// stress has no maximum between them.
    /// </param>
    /// <param name="torque">Torque at the fastener. What of the prevailing torque it does not reach twists nothing.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The stresses at the corner with the highest equivalent stress.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="range"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The range is one of nut factors.</exception>
    /// <example><code>bool belowYield = BoltStress.HighestAt(TorquePreloadRange.OfFriction(model, friction), torque).VonMises &lt; strength.YieldStrength * 0.9;</code></example>
    public static BoltStress HighestAt(
        TorquePreloadRange range, Torque torque, TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        Term moment = Domains.Torque.Argument(torque);
        BoltStress? highest = null;
        foreach (FrictionTorqueModel corner in Guard.NotNull(range).StressCorners())
        {
            StressedSection section = StressedSection.Of(corner.Thread, torsion, waistDiameter);
            Term preload = TorqueEquations.PreloadEquation.Of(moment, corner.PrevailingTerm, corner.ArmTerm);
            BoltStress stress = Tightening(section, corner.Arms.InShank, preload, Term.Min(moment, corner.PrevailingTerm));
            if (highest is null || stress._vonMises.Value > highest._vonMises.Value) highest = stress;
        }

        return highest!;
    }

    /// <summary>The stress in service: the force has changed, and a part of the torsion has gone.</summary>
    /// <remarks>σ = F_S/A_0, τ_B = k_τ τ with the torsion τ of tightening. The share k_τ is the user's: 0.5 by VDI 2230 (from memory), 0 for a bolt that was tensioned or heated.</remarks>
    /// <param name="model">The model by which the bolt was tightened.</param>
    /// <param name="assemblyPreload">The preload at which tightening ended, which sets the torsion.</param>
    /// <param name="boltForce">The force in the bolt in service.</param>
    /// <param name="residualTorsion">Share k_τ of the torsion that stays: 0 %, or 5 % to 100 %; there is no default.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The three stresses.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>BoltStress stress = BoltStress.InService(
    ///     model, assemblyPreload, joint.At(assemblyPreload, load, introduction).BoltForce, residualTorsion: Ratio.FromPercent(50));
    /// bool belowYield = stress.VonMises &lt;= strength.YieldStrength;</code></example>
    public static BoltStress InService(
        FrictionTorqueModel model, Force assemblyPreload, Force boltForce, Ratio residualTorsion,
        TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        Term preload = Domains.Force.Argument(assemblyPreload), force = Domains.Force.Argument(boltForce);
        Domains.Share.CheckNoneOrAtLeast(5, residualTorsion);
        StressedSection section = StressedSection.Of(Guard.NotNull(model).Thread, torsion, waistDiameter);
        return Service(section, model, preload, force, Domains.Share.Argument(residualTorsion));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"tension {Si.Pressure(_tension.Value):0.#}, torsion {Si.Pressure(_torsion.Value):0.#}, equivalent {Si.Pressure(_vonMises.Value):0.#}");

    internal static BoltStress Service(in StressedSection section, FrictionTorqueModel model, Term preload, Term force, Term residualTorsion)
    {
        Term twist = StressEquations.ShankTorqueEquation.Of(model.Arms.InShank, preload, model.PrevailingTerm);
        Term tightening = StressEquations.TorsionalStressEquation.Of(twist, section.Modulus);
        return new BoltStress(
            StressEquations.TensileStressEquation.Of(force, section.Area),
            WorkingStressEquations.ResidualTorsionEquation.Of(residualTorsion, tightening));
    }

    private static BoltStress Tightening(in StressedSection section, Term threadArm, Term force, Term prevailing)
    {
        Term twist = StressEquations.ShankTorqueEquation.Of(threadArm, force, prevailing);
        return new BoltStress(
            StressEquations.TensileStressEquation.Of(force, section.Area), StressEquations.TorsionalStressEquation.Of(twist, section.Modulus));
    }
}
