using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Tension, torsion and equivalent stress in the bolt while it is being tightened, and the preload they permit.</summary>
/// <remarks>
/// VDI 2230-1:2015 §5.5.1 (R7, from memory). Prevailing torque twists the shank too and is counted. Not covered: bending, fatigue, relaxation,
/// preload beyond yield. A torque is chosen over the ranges of friction and prevailing torque: at a given torque the lowest bearing friction
/// always is the worst, and mostly the lowest thread friction and prevailing torque are, because they give the most preload; but with high
/// bearing friction their highest can stress the bolt more. <see cref="PermittedTorque"/> and <see cref="HighestAt"/> look at every corner.
/// </remarks>
/// <example><code>Torque permitted = AssemblyStress.PermittedTorque(
///     TorquePreloadRange.OfFriction(model, friction), PropertyClass.Parse("8.8").StrengthFor(thread), utilisation: Ratio.FromPercent(90));</code></example>
public sealed class AssemblyStress
{
    private const int Corners = 4;

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
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The three stresses.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>AssemblyStress.At(model, Force.FromKilonewtons(70)).VonMises</code></example>
    public static AssemblyStress At(
        FrictionTorqueModel model, Force preload, TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        double force = Domains.Force.Check(preload);
        StressedSection section = StressedSection.Of(null, Guard.NotNull(model).Thread, torsion, waistDiameter);
        return Compute(null, section, model.ShankArm, force, model.PrevailingSi);
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
    /// <example><code>bool belowYield = AssemblyStress.HighestAt(TorquePreloadRange.OfFriction(model, friction), torque).VonMises &lt; strength.YieldStrength * 0.9;</code></example>
    public static AssemblyStress HighestAt(
        TorquePreloadRange range, Torque torque, TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        double moment = Domains.Torque.Check(torque);
        StressedSection section = StressedSection.Of(null, Guard.NotNull(range).StressCorner(false, false).Thread, torsion, waistDiameter);
        AssemblyStress? highest = null;
        for (int i = 0; i < Corners; i++)
        {
            FrictionTorqueModel corner = Corner(range, i);
            double preload = TorqueEquations.Preload(moment, corner.PrevailingSi, corner.Arms.Total);
            AssemblyStress stress = Compute(null, section, corner.ShankArm, preload, Math.Min(moment, corner.PrevailingSi));
            if (highest is null || stress.VonMises > highest.VonMises) highest = stress;
        }

        return highest!;
    }

    /// <summary>The highest torque at which no friction and no prevailing torque in the range brings the equivalent stress above a share of the yield strength.</summary>
    /// <remarks>
    /// The least over the corners of <see cref="PermittedPreload"/> turned into torque. It is the torque that may arrive at the fastener: the
    /// accuracy of the tool comes off it. Bending, fatigue and what happens after tightening are not in it.
    /// </remarks>
    /// <param name="range">The ranges of friction and of prevailing torque.</param>
    /// <param name="strength">Strength of the bolt.</param>
    /// <param name="utilisation">Share ν of the yield strength, 5 to 100 %; 90 % is usual and never assumed.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The torque.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="ArgumentException">The highest prevailing torque alone uses up the permitted stress, or the strength was looked up for another size.</exception>
    /// <exception cref="InvalidOperationException">The range is one of nut factors.</exception>
    /// <example><code>AssemblyStress.PermittedTorque(TorquePreloadRange.OfFriction(model, friction), strength, utilisation: Ratio.FromPercent(90))</code></example>
    public static Torque PermittedTorque(
        TorquePreloadRange range, BoltStrength strength, Ratio utilisation,
        TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null) =>
        Si.Torque(Governing(range, strength, utilisation, torsion, waistDiameter).Torque);

    /// <summary>The work behind <see cref="PermittedTorque"/>, at the corner that governs; its last step is that torque, bit for bit.</summary>
    /// <param name="range">The ranges of friction and of prevailing torque.</param>
    /// <param name="strength">Strength of the bolt.</param>
    /// <param name="utilisation">Share ν of the yield strength, 5 to 100 %.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="ArgumentException">The highest prevailing torque alone uses up the permitted stress, or the strength was looked up for another size.</exception>
    /// <exception cref="InvalidOperationException">The range is one of nut factors.</exception>
    /// <example><code>Console.WriteLine(AssemblyStress.DerivePermittedTorque(TorquePreloadRange.OfFriction(model, friction), strength, utilisation: Ratio.FromPercent(90)));</code></example>
    public static Derivation DerivePermittedTorque(
        TorquePreloadRange range, BoltStrength strength, Ratio utilisation,
        TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        FrictionTorqueModel corner = Governing(range, strength, utilisation, torsion, waistDiameter).Corner;
        var work = new Derivation("Highest permitted torque");
        double threadArm = ThreadArm(work, corner);
        double preload = Permitted(work, StressedSection.Of(work, corner.Thread, torsion, waistDiameter), threadArm, corner, strength, utilisation);
        TorqueEquations.TighteningTorqueEquation.Step(work, corner.DeriveArm(work), preload, corner.PrevailingSi);
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="At"/>; its last step is the equivalent stress, bit for bit.</summary>
    /// <param name="model">Thread, friction, convention and prevailing torque.</param>
    /// <param name="preload">The preload.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>Console.WriteLine(AssemblyStress.DeriveAt(model, Force.FromKilonewtons(70)));</code></example>
    public static Derivation DeriveAt(
        FrictionTorqueModel model, Force preload, TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        double force = Domains.Force.Check(preload);
        var work = new Derivation("Stress while tightening");
        double threadArm = ThreadArm(work, Guard.NotNull(model));
        Compute(work, StressedSection.Of(work, model.Thread, torsion, waistDiameter), threadArm, force, model.PrevailingSi);
        return work.KeepWhatCounts();
    }

    /// <summary>The preload at which the equivalent stress reaches a share of the yield strength: F_Mzul of VDI 2230 where there is no prevailing torque.</summary>
    /// <remarks>
    /// It is the preload of one corner: the torque for it is <see cref="PermittedTorque"/>, which looks at the others. A preload that is reached
    /// by rotation is limited at the highest thread friction and prevailing torque.
    /// </remarks>
    /// <param name="model">Thread, convention, friction and prevailing torque; where a torque is chosen, the lowest of both.</param>
    /// <param name="strength">Strength of the bolt.</param>
    /// <param name="utilisation">Share ν of the yield strength, 5 to 100 %; 90 % is usual and never assumed.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
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
        return Si.Force(Permitted(null, section, model.ShankArm, model, strength, utilisation));
    }

    /// <summary>The work behind <see cref="PermittedPreload"/>; its last step is that preload, bit for bit.</summary>
    /// <param name="model">Thread, convention, friction and prevailing torque; where a torque is chosen, the lowest of both.</param>
    /// <param name="strength">Strength of the bolt.</param>
    /// <param name="utilisation">Share ν of the yield strength, 5 to 100 %.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
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
    public override string ToString() => Print.Text(
        $"tension {Tension:0.#}, torsion {Torsion:0.#}, equivalent {VonMises:0.#}");

    private static FrictionTorqueModel Corner(TorquePreloadRange range, int index) =>
        range.StressCorner(highThread: (index & 1) != 0, highPrevailing: (index & 2) != 0);

    private static (double Torque, FrictionTorqueModel Corner) Governing(
        TorquePreloadRange range, BoltStrength strength, Ratio utilisation, TorsionDistribution torsion, Length? waistDiameter)
    {
        Guard.NotNull(range);
        (double Torque, FrictionTorqueModel? Corner) least = (double.PositiveInfinity, null);
        for (int i = 0; i < Corners; i++)
        {
            FrictionTorqueModel corner = Corner(range, i);
            StressedSection section = StressedSection.Of(null, corner.Thread, torsion, waistDiameter);
            double preload = Permitted(null, section, corner.ShankArm, corner, strength, utilisation);
            double torque = TorqueEquations.TighteningTorque(corner.Arms.Total, preload, corner.PrevailingSi);
            if (torque < least.Torque) least = (torque, corner);
        }

        return (least.Torque, least.Corner!);
    }

    private static double ThreadArm(Derivation work, FrictionTorqueModel model) =>
        TorqueArms.InShank(work, model.Thread, model.Friction, model.Convention);

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
        double share = Domains.Utilisation.Check(utilisation);
        double yield = Guard.NotNull(strength).RequireFor(model.Thread, nameof(strength)).Yield;
        double limit = StressEquations.PermittedStressEquation.Step(work, share, yield);
        double prevailingStress = StressEquations.PrevailingStressEquation.Step(work, prevailing, section.Modulus);
        if (prevailingStress >= limit)
        {
            throw new ArgumentException(
                Print.Text($"the prevailing torque, {prevailing:G6} N·m, alone uses up the permitted stress of {Si.Pressure(limit):G6}."),
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
