using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Tension, torsion and equivalent stress in the bolt while it is being tightened, and the preload they permit.</summary>
/// <remarks>
/// VDI 2230-1:2015 §5.5.1 (R7; clause from memory, not checked in the text). Prevailing torque twists the shank too and is counted. Not covered: bending, fatigue, relaxation, preload
/// beyond yield. A torque is chosen at the <em>lowest</em> friction; whether that is also where the bolt is stressed most depends on the
/// range: at a given torque the lowest bearing friction always is the worst, but with high bearing friction the highest thread friction can
/// stress the bolt more than the lowest. <see cref="HighestAt"/> looks at both.
/// </remarks>
/// <example><code>Force permitted = AssemblyStress.PermittedPreload(
///     model.WithFriction(range.Low), PropertyClass.Parse("8.8").StrengthFor(thread), utilisation: Ratio.FromPercent(90));</code></example>
public sealed class AssemblyStress
{
    private AssemblyStress(double tension, double torsion, double equivalent)
    {
        Tension = Si.Pressure(tension);
        Torsion = Si.Pressure(torsion);
        VonMises = Si.Pressure(equivalent);
    }

    /// <summary>Tensile stress σ.</summary>
    public Pressure Tension { get; }

    /// <summary>Torsional stress τ.</summary>
    public Pressure Torsion { get; }

    /// <summary>Equivalent stress σ_red = √(σ² + 3τ²).</summary>
    public Pressure VonMises { get; }

    /// <summary>The stress at a preload.</summary>
    /// <param name="model">Thread, friction, convention and prevailing torque.</param>
    /// <param name="preload">The preload.</param>
    /// <param name="torsion">Plastic (VDI 2230 since 2001) unless elastic is asked for.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The three stresses.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>AssemblyStress.At(model, Force.FromKilonewtons(70)).VonMises</code></example>
    public static AssemblyStress At(
        FrictionTorqueModel model, Force preload, TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        double force = Guard.Check(preload, Domains.Force);
        StressedSection section = StressedSection.Of(null, Guard.NotNull(model).Thread, torsion, waistDiameter);
        return Compute(null, section, model.Arms.Thread, force, model.PrevailingSi);
    }

    /// <summary>The highest stress that a torque can cause over a range of friction; the model's own friction is not used.</summary>
    /// <param name="model">Thread, bearing surface, convention and prevailing torque.</param>
    /// <param name="torque">Torque at the fastener.</param>
    /// <param name="friction">The range. The lowest bearing friction is the worst; of the thread both ends are looked at, because the stress
    /// has no maximum between them.</param>
    /// <param name="torsion">Plastic (VDI 2230 since 2001) unless elastic is asked for.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The stresses at the corner with the highest equivalent stress.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="ArgumentException">At the highest thread friction no torque turns the thread (exact form).</exception>
    /// <example><code>bool safe = AssemblyStress.HighestAt(model, torque, range).VonMises &lt; strength.YieldStrength * 0.9;</code></example>
    public static AssemblyStress HighestAt(
        FrictionTorqueModel model, Torque torque, FrictionRange friction,
        TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        double moment = Guard.Check(torque, Domains.Torque);
        StressedSection section = StressedSection.Of(null, Guard.NotNull(model).Thread, torsion, waistDiameter);
        AssemblyStress first = AtCorner(model.WithFriction(Guard.NotNull(friction).Low), section, moment);
        AssemblyStress second = AtCorner(model.WithFriction(new FrictionCoefficients(friction.High.Thread, friction.Low.Bearing)), section, moment);
        return first.VonMises >= second.VonMises ? first : second;
    }

    /// <summary>The work behind <see cref="At"/>; its last step is the equivalent stress, bit for bit.</summary>
    /// <param name="model">Thread, friction, convention and prevailing torque.</param>
    /// <param name="preload">The preload.</param>
    /// <param name="torsion">Plastic (VDI 2230 since 2001) unless elastic is asked for.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>Console.WriteLine(AssemblyStress.DeriveAt(model, Force.FromKilonewtons(70)));</code></example>
    public static Derivation DeriveAt(
        FrictionTorqueModel model, Force preload, TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        double force = Guard.Check(preload, Domains.Force);
        var work = new Derivation("Stress while tightening");
        double threadArm = ThreadArm(work, Guard.NotNull(model));
        Compute(work, StressedSection.Of(work, model.Thread, torsion, waistDiameter), threadArm, force, model.PrevailingSi);
        return work.KeepWhatCounts();
    }

    /// <summary>The preload at which the equivalent stress reaches a share of the yield strength: F_Mzul of VDI 2230.</summary>
    /// <param name="model">Thread, convention, prevailing torque, and the friction at which the torque is to be chosen: the lowest.</param>
    /// <param name="strength">Strength of the bolt.</param>
    /// <param name="utilisation">Share ν of the yield strength, 5 to 100 %; 90 % is usual and never assumed.</param>
    /// <param name="torsion">Plastic (VDI 2230 since 2001) unless elastic is asked for.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The permitted preload.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="ArgumentException">The prevailing torque alone uses up the permitted stress, or the strength was looked up for another size.</exception>
    /// <example><code>AssemblyStress.PermittedPreload(model, strength, utilisation: Ratio.FromPercent(90))</code></example>
    public static Force PermittedPreload(
        FrictionTorqueModel model, BoltStrength strength, Ratio utilisation,
        TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        StressedSection section = StressedSection.Of(null, Guard.NotNull(model).Thread, torsion, waistDiameter);
        return Si.Force(Permitted(null, section, model.Arms.Thread, model, strength, utilisation));
    }

    /// <summary>The work behind <see cref="PermittedPreload"/>; its last step is that preload, bit for bit.</summary>
    /// <param name="model">Thread, convention, prevailing torque, and the friction at which the torque is to be chosen: the lowest.</param>
    /// <param name="strength">Strength of the bolt.</param>
    /// <param name="utilisation">Share ν of the yield strength, 5 to 100 %.</param>
    /// <param name="torsion">Plastic (VDI 2230 since 2001) unless elastic is asked for.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="ArgumentException">The prevailing torque alone uses up the permitted stress, or the strength was looked up for another size.</exception>
    /// <example><code>Console.WriteLine(AssemblyStress.DerivePermittedPreload(model, strength, utilisation: Ratio.FromPercent(90)));</code></example>
    public static Derivation DerivePermittedPreload(
        FrictionTorqueModel model, BoltStrength strength, Ratio utilisation,
        TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        var work = new Derivation("Permitted preload");
        double threadArm = ThreadArm(work, Guard.NotNull(model));
        Permitted(work, StressedSection.Of(work, model.Thread, torsion, waistDiameter), threadArm, model, strength, utilisation);
        return work.KeepWhatCounts();
    }

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant(
        $"tension {Tension.Megapascals:0.#} MPa, torsion {Torsion.Megapascals:0.#} MPa, equivalent {VonMises.Megapascals:0.#} MPa");

    private static AssemblyStress AtCorner(FrictionTorqueModel model, in StressedSection section, double moment) => Compute(
        null, section, model.Arms.Thread, TorqueEquations.Preload(moment, model.PrevailingSi, model.Arms.Total), model.PrevailingSi);

    private static double ThreadArm(Derivation work, FrictionTorqueModel model) =>
        TorqueArms.Tightening(work, model.Thread, model.Bearing, model.Friction, model.Convention).Thread;

    private static AssemblyStress Compute(Derivation? work, in StressedSection section, double threadArm, double force, double prevailing)
    {
        double tension = StressEquations.TensileStressEquation.Step(work, force, section.Area);
        double twist = StressEquations.ShankTorqueEquation.Step(work, threadArm, force, prevailing);
        double torsion = StressEquations.TorsionalStressEquation.Step(work, twist, section.Modulus);
        return new AssemblyStress(tension, torsion, StressEquations.EquivalentStressEquation.Step(work, tension, torsion));
    }

    private static double Permitted(
        Derivation? work, in StressedSection section, double threadArm, FrictionTorqueModel model, BoltStrength strength, Ratio utilisation)
    {
        double prevailing = model.PrevailingSi;
        double share = Guard.Check(utilisation, Domains.Utilisation);
        double yield = Guard.NotNull(strength).RequireFor(model.Thread, nameof(strength)).Yield;
        double limit = StressEquations.PermittedStressEquation.Step(work, share, yield);
        double prevailingStress = StressEquations.PrevailingStressEquation.Step(work, prevailing, section.Modulus);
        if (prevailingStress >= limit)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"the prevailing torque, {prevailing:G6} N·m, alone uses up the permitted stress of {limit / 1e6:G6} MPa."),
                nameof(model));
        }

        return StressEquations.PermittedPreloadEquation.Step(
            work,
            limit,
            StressEquations.TensionPerPreloadEquation.Step(work, section.Area),
            StressEquations.TorsionPerPreloadEquation.Step(work, threadArm, section.Modulus),
            prevailingStress);
    }
}
