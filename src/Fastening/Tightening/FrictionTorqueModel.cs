using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Torque and preload from thread, bearing surface and coefficients of friction.</summary>
/// <remarks>
/// κ = λ_th + λ_b. The thread arm follows the <see cref="Convention"/>; the default is the linear form of ISO 16047:2005 (from memory),
/// λ_th = P_h/(2π) + µ_th d₂/(2 cos α).
/// </remarks>
/// <example><code>FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(
///     ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.12, bearing: 0.10));
/// Console.WriteLine(model.BreakdownAt(Torque.FromNewtonMeters(150)));</code></example>
public sealed class FrictionTorqueModel : TorquePreloadModel
{
    private readonly BearingSurface _stated;
    private readonly TorqueArms _arms;
    private readonly double _looseningArm;

    private FrictionTorqueModel(
        ScrewThread thread, BearingSurface stated, BearingSurface bearing, FrictionCoefficients friction, TorqueConvention convention,
        double prevailing, in TorqueArms arms)
        : base(arms.Total, prevailing, thread.Diameter)
    {
        _stated = stated;
        Thread = thread;
        Bearing = bearing;
        Friction = friction;
        Convention = convention;
        _arms = arms;
        ShankArm = TorqueArms.InShank(null, thread, friction, convention);
        _looseningArm = TorqueArms.Loosening(null, thread, bearing, friction, convention);
        HoldingFriction = InclinedPlane.Of(null, thread, convention).HoldingFriction(null);
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
    public double Efficiency => PowerScrewEquations.Efficiency(_arms.Pitch, _arms.Total);

    /// <summary>The thread friction from which the thread is self-locking: tan φ/c (Shigley 9th ed., eq. (8-3), with flank factor).</summary>
    public double HoldingFriction { get; }

    /// <summary>Whether friction in the thread alone keeps the preload from unscrewing it: µ_th ≥ tan φ/c. Vibration is another matter.</summary>
    public bool IsSelfLocking => Friction.Thread >= HoldingFriction;

    /// <summary>
    /// Whether the load drives the whole screw back, thread and bearing together, when nothing holds it: the loosening torque, prevailing
    /// torque not counted, is negative. A screw whose thread is not self-locking can still be held by its collar.
    /// </summary>
    public bool IsOverhauling => _looseningArm < 0;

    private protected override IReadOnlyList<PlausibilityRemark> StatedRemarks => Friction.Remarks;

    internal TorqueArms Arms => _arms;

    /// <summary>Torque per unit preload that twists the shank.</summary>
    internal double ShankArm { get; }

    internal double PrevailingSi => Prevailing;

    /// <summary>The same model with other coefficients of friction.</summary>
    /// <param name="friction">Both coefficients.</param>
    /// <returns>A new model.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="friction"/> is null.</exception>
    /// <exception cref="ArgumentException">With this friction no torque turns the thread (exact form).</exception>
    /// <example><code>model.WithFriction(new FrictionCoefficients(thread: 0.16, bearing: 0.14))</code></example>
    public FrictionTorqueModel WithFriction(FrictionCoefficients friction) =>
        Create(Thread, _stated, Guard.NotNull(friction), Convention, Prevailing);

    /// <summary>The same model with a prevailing torque.</summary>
    /// <param name="prevailingTorque">Prevailing torque, measured in the tightening sense.</param>
    /// <returns>A new model.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="prevailingTorque"/> is negative or beyond its domain.</exception>
    /// <example><code>model.WithPrevailing(Torque.FromNewtonMeters(9))     // a locking nut</code></example>
    public FrictionTorqueModel WithPrevailing(Torque prevailingTorque) =>
        Create(Thread, _stated, Friction, Convention, Domains.Torque.Check(prevailingTorque));

    /// <summary>The same model under another convention, which brings its bearing diameter with it where the surface left it open.</summary>
    /// <param name="convention">The convention.</param>
    /// <returns>A new model.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="convention"/> is null.</exception>
    /// <exception cref="ArgumentException">The convention does not hold for the thread, or no torque turns it (exact form).</exception>
    /// <example><code>model.WithConvention(TorqueConvention.Vdi2230)</code></example>
    public FrictionTorqueModel WithConvention(TorqueConvention convention) =>
        Create(Thread, _stated, Friction, Guard.NotNull(convention), Prevailing);

    /// <summary>The preloads that one torque gives over a range of friction; the model's own friction is not used.</summary>
    /// <remarks>The prevailing torque is the model's, at both ends; where it has a range too, see <see cref="TorquePreloadRange"/>.</remarks>
    /// <param name="torque">Torque at the fastener.</param>
    /// <param name="friction">Lowest friction gives the highest preload, highest friction the lowest.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="friction"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is negative or beyond its domain.</exception>
    /// <exception cref="ArgumentException">At the highest friction no torque turns the thread (exact form).</exception>
    /// <example><code>PreloadRange range = model.PreloadRangeAt(Torque.FromNewtonMeters(150), friction);</code></example>
    public PreloadRange PreloadRangeAt(Torque torque, FrictionRange friction) =>
        TorquePreloadRange.OfFriction(this, friction).PreloadRangeAt(torque);

    /// <summary>The preloads that a window of torque gives over a range of friction: lower limit at the highest friction, upper limit at the lowest.</summary>
    /// <remarks>The prevailing torque is the model's, at both ends; where it has a range too, see <see cref="TorquePreloadRange"/>.</remarks>
    /// <param name="torque">The torque that arrives at the fastener, limits from 0; the accuracy of the tool is not added.</param>
    /// <param name="friction">Lowest and highest coefficients; the model's own friction is not used.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is negative or beyond its domain.</exception>
    /// <exception cref="ArgumentException">At the highest friction no torque turns the thread (exact form).</exception>
    /// <example><code>PreloadRange preload = model.PreloadRangeAt(
    ///     ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(150), minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(4)), friction);</code></example>
    public PreloadRange PreloadRangeAt(ToleranceWindow<Torque> torque, FrictionRange friction) =>
        TorquePreloadRange.OfFriction(this, friction).PreloadRangeAt(torque);

    /// <summary>Where a tightening torque goes: pitch, thread friction, bearing friction, prevailing torque.</summary>
    /// <param name="torque">Torque at the fastener; below the prevailing torque all of it is prevailing.</param>
    /// <returns>The parts; their sum is the torque to rounding.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is negative or beyond its domain.</exception>
    /// <example><code>Ratio stretching = model.BreakdownAt(Torque.FromNewtonMeters(150)).PitchShare;</code></example>
    public TorqueBreakdown BreakdownAt(Torque torque) => Breakdown(null, _arms, Domains.Torque.Check(torque));

    /// <summary>The work behind <see cref="BreakdownAt"/>; its last step is the total, bit for bit.</summary>
    /// <param name="torque">Torque at the fastener.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is negative or beyond its domain.</exception>
    /// <example><code>Console.WriteLine(model.DeriveBreakdownAt(Torque.FromNewtonMeters(150)));</code></example>
    public Derivation DeriveBreakdownAt(Torque torque)
    {
        double moment = Domains.Torque.Check(torque);
        var work = new Derivation("Where the tightening torque goes");
        Breakdown(work, TorqueArms.Tightening(work, Thread, Bearing, Friction, Convention), moment);
        return work.KeepWhatCounts();
    }

    /// <summary>
    /// The torque that loosens the joint: positive must be applied, negative must be held. The prevailing torque is taken as the
    /// removal torque; breakaway from rest, embedding and vibration are not covered.
    /// </summary>
    /// <param name="preload">The preload in the bolt.</param>
    /// <returns>Signed torque.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is negative or beyond its domain.</exception>
    /// <example><code>model.LooseningTorqueAt(Force.FromKilonewtons(70))</code></example>
    public Torque LooseningTorqueAt(Force preload) =>
        Si.Torque(TorqueEquations.LooseningTorque(_looseningArm, Domains.Force.Check(preload), Prevailing));

    /// <summary>The work behind <see cref="LooseningTorqueAt"/>; its last step is that torque, bit for bit.</summary>
    /// <param name="preload">The preload in the bolt.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is negative or beyond its domain.</exception>
    /// <example><code>Console.WriteLine(model.DeriveLooseningTorqueAt(Force.FromKilonewtons(70)));</code></example>
    public Derivation DeriveLooseningTorqueAt(Force preload)
    {
        double force = Domains.Force.Check(preload);
        var work = new Derivation("Loosening torque");
        TorqueEquations.LooseningTorqueEquation.Step(
            work, TorqueArms.Loosening(work, Thread, Bearing, Friction, Convention), force, Prevailing);
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="Efficiency"/>; its last step is that ratio, bit for bit.</summary>
    /// <returns>The steps.</returns>
    /// <example><code>Console.WriteLine(model.DeriveEfficiency());</code></example>
    public Derivation DeriveEfficiency()
    {
        var work = new Derivation("Efficiency of the screw");
        TorqueArms arms = TorqueArms.Tightening(work, Thread, Bearing, Friction, Convention);
        PowerScrewEquations.EfficiencyEquation.Step(work, arms.Pitch, arms.Total);
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="HoldingFriction"/>; its last step is that coefficient, bit for bit.</summary>
    /// <returns>The steps.</returns>
    /// <example><code>Console.WriteLine(model.DeriveHoldingFriction());</code></example>
    public Derivation DeriveHoldingFriction()
    {
        var work = new Derivation("Thread friction that just holds");
        InclinedPlane.Of(work, Thread, Convention).HoldingFriction(work);
        return work.KeepWhatCounts();
    }

    /// <inheritdoc />
    public override string ToString() =>
        $"{Thread}, {Bearing}, {Friction}, {Convention.Name}{(Prevailing > 0 ? Print.Text($", prevailing {Prevailing:0.###} N·m") : "")}";

    internal static FrictionTorqueModel Create(
        ScrewThread thread, BearingSurface stated, FrictionCoefficients friction, TorqueConvention convention, double prevailing)
    {
        TorqueConvention.RefuseUnlessItHolds(convention, thread);
        RefuseUnlessItTurns(thread, friction, convention);
        BearingSurface bearing = stated.By(convention.Bearing, thread);
        return new FrictionTorqueModel(
            thread, stated, bearing, friction, convention, prevailing, TorqueArms.Tightening(null, thread, bearing, friction, convention));
    }

    internal override double DeriveArm(Derivation work) => TorqueArms.Tightening(work, Thread, Bearing, Friction, Convention).Total;

    internal static void RefuseUnlessItTurns(ScrewThread thread, FrictionCoefficients friction, TorqueConvention convention)
    {
        if (convention.Form == TorqueForm.Exact && InclinedPlane.Of(null, thread, convention).Jams(friction.Thread))
        {
            throw new ArgumentException(
                Print.Text($"thread friction is {friction.Thread:G6}; on {thread} no torque turns the thread at c·µ·tan φ = 1 and above, and from 0.99 on it is as good as jammed."),
                nameof(friction));
        }
    }

    private TorqueBreakdown Breakdown(Derivation? work, in TorqueArms arms, double moment)
    {
        double preload = TorqueEquations.PreloadEquation.Step(work, moment, Prevailing, arms.Total);
        double pitch = TorqueEquations.PitchTorqueEquation.Step(work, arms.Pitch, preload);
        double threadFriction = TorqueEquations.ThreadFrictionTorqueEquation.Step(work, Math.Max(arms.Thread, arms.Pitch), arms.Pitch, preload);
        double bearingFriction = TorqueEquations.BearingFrictionTorqueEquation.Step(work, arms.Bearing, preload);
        double prevailing = Math.Min(moment, Prevailing);
        double total = TorqueEquations.TotalTorqueEquation.Step(work, pitch, threadFriction, bearingFriction, prevailing);
        return new TorqueBreakdown(pitch, threadFriction, bearingFriction, prevailing, total);
    }
}
