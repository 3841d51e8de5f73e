using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Tension, torsion and equivalent stress in the bolt in service: the force has changed, and a part of the torsion has gone.</summary>
/// <remarks>
/// VDI 2230-1:2015 §5.5.2 (R8; clause from memory, not checked in the text): σ = F_S/A_0, τ_B = k_τ τ with the torsion τ of tightening, σ_red = √(σ² + 3τ_B²). The share k_τ is the user's: 0.5
/// by VDI 2230 (from memory), 0 for a bolt that was tensioned or heated. Not covered: bending, fatigue, preload beyond yield.
/// </remarks>
/// <example><code>WorkingStress stress = WorkingStress.At(model, assemblyPreload, joint.At(assemblyPreload, load, introduction).BoltForce, residualTorsion: Ratio.FromPercent(50));
/// bool holds = stress.VonMises &lt;= strength.YieldStrength;</code></example>
public sealed class WorkingStress
{
    private WorkingStress(double tension, double torsion, double equivalent)
    {
        Tension = Si.Pressure(tension);
        Torsion = Si.Pressure(torsion);
        VonMises = Si.Pressure(equivalent);
    }

    /// <summary>Tensile stress σ at the force in service.</summary>
    public Pressure Tension { get; }

    /// <summary>Torsional stress that is left, k_τ τ.</summary>
    public Pressure Torsion { get; }

    /// <summary>Equivalent stress.</summary>
    public Pressure VonMises { get; }

    /// <summary>The stress at a force in service.</summary>
    /// <param name="model">The model by which the bolt was tightened.</param>
    /// <param name="assemblyPreload">The preload at which tightening ended, which sets the torsion.</param>
    /// <param name="boltForce">The force in the bolt in service.</param>
    /// <param name="residualTorsion">Share k_τ of the torsion that stays: 0 %, or 5 % to 100 %; there is no default.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The three stresses.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>WorkingStress.At(model, assemblyPreload: Force.FromKilonewtons(70), boltForce: Force.FromKilonewtons(74.5), residualTorsion: Ratio.FromPercent(50)).VonMises</code></example>
    public static WorkingStress At(
        FrictionTorqueModel model, Force assemblyPreload, Force boltForce, Ratio residualTorsion,
        TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        double preload = Domains.Force.Check(assemblyPreload), force = Domains.Force.Check(boltForce);
        double share = Domains.Share.CheckNoneOrAtLeast(5, residualTorsion);
        StressedSection section = StressedSection.Of(null, Guard.NotNull(model).Thread, torsion, waistDiameter);
        (double tension, double twist, double equivalent) = Compute(null, section, model, model.ShankArm, preload, force, share);
        return new WorkingStress(tension, twist, equivalent);
    }

    /// <summary>The work behind <see cref="At"/>; its last step is the equivalent stress, bit for bit.</summary>
    /// <param name="model">The model by which the bolt was tightened.</param>
    /// <param name="assemblyPreload">The preload at which tightening ended, which sets the torsion.</param>
    /// <param name="boltForce">The force in the bolt in service.</param>
    /// <param name="residualTorsion">Share k_τ of the torsion that stays: 0 %, or 5 % to 100 %.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>Console.WriteLine(WorkingStress.DeriveAt(model, Force.FromKilonewtons(70), Force.FromKilonewtons(74.5), residualTorsion: Ratio.FromPercent(50)));</code></example>
    public static Derivation DeriveAt(
        FrictionTorqueModel model, Force assemblyPreload, Force boltForce, Ratio residualTorsion,
        TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        double preload = Domains.Force.Check(assemblyPreload), force = Domains.Force.Check(boltForce);
        double share = Domains.Share.CheckNoneOrAtLeast(5, residualTorsion);
        var work = new Derivation("Stress in service");
        double arm = ThreadArm(work, Guard.NotNull(model));
        Compute(work, StressedSection.Of(work, model.Thread, torsion, waistDiameter), model, arm, preload, force, share);
        return work.KeepWhatCounts();
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"tension {Tension:0.#}, torsion left {Torsion:0.#}, equivalent {VonMises:0.#}");

    /// <summary>Thread torque per unit preload, with the work written down.</summary>
    internal static double ThreadArm(Derivation? work, FrictionTorqueModel model) => work is null
        ? model.ShankArm
        : TorqueArms.InShank(work, model.Thread, model.Friction, model.Convention);

    internal static (double Tension, double Torsion, double Equivalent) Compute(
        Derivation? work, in StressedSection section, FrictionTorqueModel model, double threadArm, double preload, double force, double residualTorsion)
    {
        double twist = StressEquations.ShankTorqueEquation.Step(work, threadArm, preload, model.PrevailingSi);
        double tightening = StressEquations.TorsionalStressEquation.Step(work, twist, section.Modulus);
        double left = WorkingStressEquations.ResidualTorsionEquation.Step(work, residualTorsion, tightening);
        double tension = StressEquations.TensileStressEquation.Step(work, force, section.Area);
        return (tension, left, StressEquations.EquivalentStressEquation.Step(work, tension, left));
    }
}
