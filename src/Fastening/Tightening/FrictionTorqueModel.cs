using System.Runtime.CompilerServices;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Fastening;

/// <summary>Torque and preload from thread, bearing surface and coefficients of friction.</summary>
/// <remarks>
/// κ = λ_th + λ_b. The thread arm follows the <see cref="Convention"/>; the default is the linear form of ISO 16047:2005 (from memory),
/// λ_th = P_h/(2π) + µ_th d₂/(2 cos α).
/// </remarks>
/// <example><code>FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(
///     ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.12, bearing: 0.10));
/// Console.WriteLine(model.BreakdownAt(Torque.FromNewtonMeters(150)));</code></example>
public sealed class FrictionTorqueModel : TorquePreloadModel, IDerives<TorqueArms>
{
    private readonly BearingSurface _stated;
    private readonly double _looseningArm;
    private TorqueArms? _arms;

    private FrictionTorqueModel(
        ScrewThread thread, BearingSurface stated, BearingSurface bearing, FrictionCoefficients friction, TorqueConvention convention,
        Stated<Torque> prevailing, TorqueArms arms)
        : base(arms.Total.Value, prevailing, thread.Diameter)
    {
        _stated = stated;
        Thread = thread;
        Bearing = bearing;
        Friction = friction;
        Convention = convention;
        _arms = arms;
        _looseningArm = arms.Loosening.Value;
    }

    /// <summary>The thread.</summary>
    public ScrewThread Thread { get; }

    /// <summary>The surface under the turned head or nut, with the effective diameter of the convention where the surface left it open.</summary>
    public BearingSurface Bearing { get; }

    /// <summary>The coefficients of friction that were stated.</summary>
    public FrictionCoefficients Friction { get; }

    /// <summary>The convention of the thread torque.</summary>
    public TorqueConvention Convention { get; }

    /// <summary>
    /// Efficiency of the screw: pitch torque over tightening torque, bearing friction counted, prevailing torque not
    /// (Shigley 9th ed., eq. (8-4)). With a prevailing torque see <see cref="TorqueBreakdown.PitchShare"/>.
    /// </summary>
    public double Efficiency => Si.Number(PowerScrewEquations.EfficiencyEquation.Of(Arms.Law.PitchArm, Arms.Total));

    /// <summary>The thread friction from which the thread is self-locking: tan φ/c (Shigley 9th ed., eq. (8-3), with flank factor).</summary>
    public double HoldingFriction => Si.Number(Arms.Law.HoldingFriction);

    /// <summary>Whether friction in the thread alone keeps the preload from unscrewing it: µ_th ≥ tan φ/c. Vibration is another matter.</summary>
    public bool IsSelfLocking => Friction.Thread >= HoldingFriction;

    /// <summary>
    /// Whether the load drives the whole screw back, thread and bearing together, when nothing holds it: the loosening torque, prevailing
    /// torque not counted, is negative. A screw whose thread is not self-locking can still be held by its collar.
    /// </summary>
    public bool IsOverhauling => _looseningArm < 0;

    private protected override IReadOnlyList<PlausibilityRemark> StatedRemarks => Friction.Remarks;

    internal TorqueArms Arms => Derived.Of(ref _arms, this);

    internal override Term ArmTerm => Arms.Total;

    private protected override Term DiameterTerm => Thread.DiameterTerm;

    /// <summary>The same model with other coefficients of friction.</summary>
    /// <param name="friction">Both coefficients.</param>
    /// <returns>A new model.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="friction"/> is null.</exception>
    /// <exception cref="ArgumentException">With this friction no torque turns the thread (exact form).</exception>
    /// <example><code>model.WithFriction(new FrictionCoefficients(thread: 0.16, bearing: 0.14))</code></example>
    public FrictionTorqueModel WithFriction(FrictionCoefficients friction) =>
        Create(Thread, _stated, Guard.NotNull(friction), Convention, StatedPrevailing, Arms.Law);

    /// <summary>The same model with a prevailing torque.</summary>
    /// <param name="prevailingTorque">Prevailing torque, measured in the tightening sense.</param>
    /// <returns>A new model.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="prevailingTorque"/> is negative or beyond its domain.</exception>
    /// <example><code>model.WithPrevailing(Torque.FromNewtonMeters(9))     // a locking nut</code></example>
    public FrictionTorqueModel WithPrevailing(Torque prevailingTorque) =>
        WithPrevailing(Domains.Torque.Stated(prevailingTorque));

    internal FrictionTorqueModel WithPrevailing(Stated<Torque> prevailing) => new(Thread, _stated, Bearing, Friction, Convention, prevailing, Arms);

    /// <summary>The same model under another convention, which brings its bearing diameter with it where the surface left it open.</summary>
    /// <param name="convention">The convention.</param>
    /// <returns>A new model.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="convention"/> is null.</exception>
    /// <exception cref="ArgumentException">The convention does not hold for the thread, or no torque turns it (exact form).</exception>
    /// <example><code>model.WithConvention(TorqueConvention.Vdi2230)</code></example>
    public FrictionTorqueModel WithConvention(TorqueConvention convention) =>
        Create(Thread, _stated, Friction, Guard.NotNull(convention), StatedPrevailing);

    /// <summary>The preloads that one torque gives over a range of friction; the model's own friction is not used.</summary>
    /// <remarks>The prevailing torque is the model's, at both ends; where it has a range too, see <see cref="TorquePreloadRange"/>.</remarks>
    /// <param name="torque">Torque at the fastener.</param>
    /// <param name="friction">Lowest friction gives the highest preload, highest friction the lowest.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="friction"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is negative or beyond its domain.</exception>
    /// <exception cref="ArgumentException">At the highest friction no torque turns the thread (exact form).</exception>
    /// <example><code>Range&lt;Force&gt; range = model.PreloadRangeAt(Torque.FromNewtonMeters(150), friction);</code></example>
    public Range<Force> PreloadRangeAt(Torque torque, FrictionRange friction) =>
        TorquePreloadRange.OfFriction(this, friction).PreloadRangeAt(torque);

    /// <summary>The preloads that a window of torque gives over a range of friction: lower limit at the highest friction, upper limit at the lowest.</summary>
    /// <remarks>The prevailing torque is the model's, at both ends; where it has a range too, see <see cref="TorquePreloadRange"/>.</remarks>
    /// <param name="torque">The torque that arrives at the fastener, limits from 0; the accuracy of the tool is not added.</param>
    /// <param name="friction">Lowest and highest coefficients; the model's own friction is not used.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is negative or beyond its domain.</exception>
    /// <exception cref="ArgumentException">At the highest friction no torque turns the thread (exact form).</exception>
    /// <example><code>Range&lt;Force&gt; preload = model.PreloadRangeAt(
    ///     ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(150), minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(4)), friction);</code></example>
    public Range<Force> PreloadRangeAt(ToleranceWindow<Torque> torque, FrictionRange friction) =>
        TorquePreloadRange.OfFriction(this, friction).PreloadRangeAt(torque);

    /// <summary>The preload at which the equivalent stress while tightening reaches a share of the yield strength: F_Mzul of VDI 2230 where there is no prevailing torque.</summary>
    /// <remarks>
    /// It is the preload of one corner: the torque for it is <see cref="TorquePreloadRange.PermittedTorque"/>, which looks at the others. A preload that
    /// is reached by rotation is limited at the highest thread friction and prevailing torque. Where a torque is chosen, the model is that of the lowest
    /// friction and prevailing torque. VDI 2230-1:2015 §5.5.1 (R7, from memory). Not covered: bending, fatigue, relaxation, preload beyond yield.
    /// </remarks>
    /// <param name="strength">Strength of the bolt.</param>
    /// <param name="utilisation">Share ν of the yield strength, 5 to 100 %; 90 % is usual and never assumed.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The permitted preload.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="strength"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="ArgumentException">The prevailing torque alone uses up the permitted stress, or the strength was looked up for another size.</exception>
    /// <example><code>model.PermittedPreload(strength, utilisation: Ratio.FromPercent(90))</code></example>
    public Force PermittedPreload(
        BoltStrength strength, Ratio utilisation, TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null) =>
        Si.Force(StressedSection.Of(Thread, torsion, waistDiameter).PermittedPreload(this, strength, utilisation));

    /// <summary>Where a tightening torque goes: pitch, thread friction, bearing friction, prevailing torque.</summary>
    /// <param name="torque">Torque at the fastener; below the prevailing torque all of it is prevailing.</param>
    /// <returns>The parts; their sum is the torque to rounding.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is negative or beyond its domain.</exception>
    /// <example><code>Ratio stretching = model.BreakdownAt(Torque.FromNewtonMeters(150)).PitchShare;</code></example>
    public TorqueBreakdown BreakdownAt(Torque torque)
    {
        Term moment = Domains.Torque.Argument(torque);
        TorqueArms arms = Arms;
        Term pitchArm = arms.Law.PitchArm, prevailing = PrevailingTerm;
        Term preload = TorqueEquations.PreloadEquation.Of(moment, prevailing, arms.Total);
        return new TorqueBreakdown(
            TorqueEquations.PitchTorqueEquation.Of(pitchArm, preload),
            TorqueEquations.ThreadFrictionTorqueEquation.Of(Term.Max(arms.Thread, pitchArm), pitchArm, preload),
            TorqueEquations.BearingFrictionTorqueEquation.Of(arms.Bearing, preload),
            Term.Min(moment, prevailing));
    }

    /// <summary>
    /// The torque that loosens the joint: positive must be applied, negative must be held. The prevailing torque is taken as the
    /// removal torque; breakaway from rest, embedding and vibration are not covered.
    /// </summary>
    /// <param name="preload">The preload in the bolt.</param>
    /// <returns>Signed torque.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is negative or beyond its domain.</exception>
    /// <example><code>model.LooseningTorqueAt(Force.FromKilonewtons(70))</code></example>
    public Torque LooseningTorqueAt(Force preload)
    {
        double torque = TorqueEquations.LooseningTorque(_looseningArm, Domains.Force.Check(preload), Prevailing);
        if (Recording.IsAnywhere) WriteLooseningTorque(torque, preload.Value, preload.Unit);
        return Si.Torque(torque);
    }

    /// <inheritdoc />
    public override string ToString() =>
        $"{Thread}, {Bearing}, {Friction}, {Convention.Name}{(Prevailing > 0 ? Print.Text($", prevailing {Prevailing:0.###} N·m") : "")}";

    TorqueArms IDerives<TorqueArms>.Derive() => new(ThreadLaw.Of(Thread, Convention), Thread, Bearing, Friction, Convention);

    /// <summary>A model; the law is that of the thread and the convention, where it is known already.</summary>
    internal static FrictionTorqueModel Create(
        ScrewThread thread, BearingSurface stated, FrictionCoefficients friction, TorqueConvention convention, Stated<Torque> prevailing, ThreadLaw? law = null)
    {
        TorqueConvention.RefuseUnlessItHolds(convention, thread);
        law ??= ThreadLaw.Of(thread, convention);
        RefuseUnlessItTurns(law, thread, friction);
        BearingSurface bearing = stated.By(convention.Bearing, thread);
        return new FrictionTorqueModel(
            thread, stated, bearing, friction, convention, prevailing, new TorqueArms(law, thread, bearing, friction, convention));
    }

    internal static void RefuseUnlessItTurns(ThreadLaw law, ScrewThread thread, FrictionCoefficients friction)
    {
        if (!law.Jams(friction.Thread)) return;
        throw new ArgumentException(
            Print.Text($"thread friction is {friction.Thread:G6}; on {thread} no torque turns the thread at c·µ·tan φ = 1 and above, and from 0.99 on it is as good as jammed."),
            nameof(friction));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WriteLooseningTorque(double torque, double preload, ForceUnit unit)
    {
        if (!Recording.IsOn) return;
        Term force = Domains.Force.Argument(new Force(preload, unit), nameof(preload));
        Si.Torque(Recording.Agree(torque, TorqueEquations.LooseningTorqueEquation.Of(Arms.Loosening, force, PrevailingTerm)));
    }
}
