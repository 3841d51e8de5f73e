using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>One step of a tightening program: what decides, within which windows, how fast, and which fasteners in which order.</summary>
/// <remarks>
/// No window, threshold or rate is assumed: they come from the procedure. What a step asks for and no reading can give is refused when it is
/// built. A reading equal to a limit conforms, as everywhere. Readings are judged by the limits of the windows alone, which is simple
/// acceptance: where the uncertainty of the readings counts, build the step with the acceptance window of the agreed rule
/// (<see cref="DecisionRule.GuardBandFor"/>, <see cref="ToleranceWindow{TQuantity}.AcceptanceWindow"/>).
/// </remarks>
/// <example><code>var window = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(60), Ratio.FromPercent(5), Ratio.FromPercent(5));
/// TighteningStep snug = TighteningStep.ByTorque("snug", window);
/// TighteningStep turn = TighteningStep.ByRotation("turn", threshold: Torque.FromNewtonMeters(60),
///     ToleranceWindow.FromDeviations(Angle.FromDegrees(90), minus: Angle.FromDegrees(5), plus: Angle.FromDegrees(5)));</code></example>
public sealed class TighteningStep
{
    private static readonly ReasonSet OfRotation = ReasonSet.Of(
        JobReason.RotationMissing, JobReason.RotationBelow, JobReason.RotationAbove, JobReason.TooFast, JobReason.RateUnknown);

    private static readonly ReasonSet RotationUnknown = ReasonSet.Of(JobReason.RotationMissing, JobReason.TooFast, JobReason.RateUnknown);

    private readonly double _threshold;

    private TighteningStep(string name, TighteningControl control, double threshold)
    {
        Name = name;
        Control = control;
        _threshold = threshold;
    }

    private TighteningStep(TighteningStep step)
        : this(step.Name, step.Control, step._threshold)
    {
        TorqueWindow = step.TorqueWindow;
        RotationWindow = step.RotationWindow;
        RateLimit = step.RateLimit;
        Fasteners = step.Fasteners;
    }

    /// <summary>The name, unique in its program.</summary>
    public string Name { get; }

    /// <summary>What decides.</summary>
    public TighteningControl Control { get; }

    /// <summary>The torque from which rotation counts; null where the step does not go by rotation past a threshold.</summary>
    public Torque? Threshold => Control == TighteningControl.RotationAfterThreshold ? Si.Torque(_threshold) : null;

    /// <summary>The torque that conforms; null where none is asked for.</summary>
    public ToleranceWindow<Torque>? TorqueWindow { get; private init; }

    /// <summary>The rotation that conforms, or that is watched; null where none is asked for.</summary>
    public ToleranceWindow<Angle>? RotationWindow { get; private init; }

    /// <summary>How fast the fastener may be turned; null where no limit is stated.</summary>
    public RotationRateLimit? RateLimit { get; private init; }

    /// <summary>The fasteners of the step in their order; null for all of the program, in the program's order.</summary>
    public IReadOnlyList<string>? Fasteners { get; private init; }

    /// <summary>The lowest torque that an accepted reading leaves behind.</summary>
    internal double LeastTorque => Math.Max(_threshold, TorqueWindow is null ? 0 : TorqueWindow.Limits.Lower);

    /// <summary>The highest torque that an accepted reading may have.</summary>
    internal double HighestTorque => TorqueWindow is null ? double.PositiveInfinity : TorqueWindow.Limits.Upper;

    internal bool RotationIsRequired => Control is TighteningControl.RotationAfterThreshold or TighteningControl.TorqueAndRotation;

    /// <summary>A step that goes by torque alone.</summary>
    /// <param name="name">The name of the step.</param>
    /// <param name="torque">The torque that conforms; a lower limit alone says that no torque is too high.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, no reading can meet the window, or its lower limit is not greater than 0.</exception>
    /// <example><code>TighteningStep snug = TighteningStep.ByTorque(
    ///     "snug", ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(60), minus: Ratio.FromPercent(5), plus: Ratio.FromPercent(8)));</code></example>
    public static TighteningStep ByTorque(string name, ToleranceWindow<Torque> torque) =>
        new(Naming.Check(name), TighteningControl.Torque, 0) { TorqueWindow = Deciding(torque, Domains.Torque, nameof(torque)) };

    /// <summary>
    /// A step that turns by an angle once a torque is reached. The rotation of a reading is all of it past the threshold, further turns included. The
    /// torque at its end does not count, however high, unless <see cref="WithFinalTorque"/> asks for it.
    /// </summary>
    /// <param name="name">The name of the step.</param>
    /// <param name="threshold">The torque from which rotation counts; 0 where an earlier step or the procedure makes the joint snug.</param>
    /// <param name="rotation">The rotation past the threshold that conforms.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, no reading can meet the window, or its lower limit is not greater than 0.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="threshold"/> is outside its domain.</exception>
    /// <example><code>TighteningStep turn = TighteningStep.ByRotation("turn", threshold: Torque.FromNewtonMeters(55), rotationWindow);</code></example>
    public static TighteningStep ByRotation(string name, Torque threshold, ToleranceWindow<Angle> rotation) =>
        new(Naming.Check(name), TighteningControl.RotationAfterThreshold, Domains.Torque.Check(threshold))
        {
            RotationWindow = Deciding(rotation, Domains.Rotation, nameof(rotation)),
        };

    /// <summary>A step that goes by torque and watches the rotation: outside its window, missing or too fast, it is a remark and no refusal.</summary>
    /// <param name="name">The name of the step.</param>
    /// <param name="torque">The torque that conforms.</param>
    /// <param name="rotation">The rotation to expect.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, no reading can meet a window, or the lower limit of the torque is not greater than 0.</exception>
    /// <example><code>TighteningStep final = TighteningStep.ByTorqueWatchingRotation("final", torqueWindow, rotationWindow);</code></example>
    public static TighteningStep ByTorqueWatchingRotation(string name, ToleranceWindow<Torque> torque, ToleranceWindow<Angle> rotation) =>
        new(Naming.Check(name), TighteningControl.TorqueRotationWatched, 0)
        {
            TorqueWindow = Deciding(torque, Domains.Torque, nameof(torque)),
            RotationWindow = Reachable(rotation, Domains.Rotation, nameof(rotation)),
        };

    /// <summary>A step that asks for both a torque and a rotation.</summary>
    /// <param name="name">The name of the step.</param>
    /// <param name="torque">The torque that conforms.</param>
    /// <param name="rotation">The rotation that conforms, counted over the whole step.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, no reading can meet a window, or the lower limit of the torque is not greater than 0.</exception>
    /// <example><code>TighteningStep final = TighteningStep.ByTorqueAndRotation("final", torqueWindow, rotationWindow);</code></example>
    public static TighteningStep ByTorqueAndRotation(string name, ToleranceWindow<Torque> torque, ToleranceWindow<Angle> rotation) =>
        new(Naming.Check(name), TighteningControl.TorqueAndRotation, 0)
        {
            TorqueWindow = Deciding(torque, Domains.Torque, nameof(torque)),
            RotationWindow = Reachable(rotation, Domains.Rotation, nameof(rotation)),
        };

    /// <summary>Asks a step by rotation for a torque at its end as well.</summary>
    /// <param name="torque">The torque that conforms when the rotation is done.</param>
    /// <returns>A new step.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="torque"/> is null.</exception>
    /// <exception cref="ArgumentException">No reading can meet the window, or its upper limit is below the threshold.</exception>
    /// <exception cref="InvalidOperationException">The step has its torque window from the start.</exception>
    /// <example><code>turn = turn.WithFinalTorque(ToleranceWindow.FromLimits(Torque.FromNewtonMeters(110), Torque.FromNewtonMeters(165)));</code></example>
    public TighteningStep WithFinalTorque(ToleranceWindow<Torque> torque)
    {
        Reachable(torque, Domains.Torque, nameof(torque));
        if (Control != TighteningControl.RotationAfterThreshold)
        {
            throw new InvalidOperationException($"Step {Quoted.Text(Name)} goes by torque: its window was given when it was built.");
        }

        if (torque.Limits.Upper < _threshold * (1 - Tolerance.Widening))
        {
            throw new ArgumentException(
                $"Step {Quoted.Text(Name)} can never be met: rotation counts from {Guard.Show(Si.Torque(_threshold))}, above the upper limit of the torque, {Guard.Show(torque.Upper!.Value)}.",
                nameof(torque));
        }

        return new(this) { TorqueWindow = torque };
    }

    /// <summary>Limits how fast the fastener may be turned. Readings then need their rotation and the time it took.</summary>
    /// <param name="limit">The limit.</param>
    /// <returns>A new step.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="limit"/> is null.</exception>
    /// <exception cref="ArgumentException">At that rate the rotation takes longer than the longest time a reading may have.</exception>
    /// <example><code>turn = turn.WithRateLimit(RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(30)));</code></example>
    public TighteningStep WithRateLimit(RotationRateLimit limit)
    {
        double shortest = RotationWindow is null ? 0 : RotationWindow.Limits.Lower / Si.Of(Guard.NotNull(limit).Rate);
        if (shortest > Domains.Duration.High)
        {
            throw new ArgumentException(
                $"Step {Quoted.Text(Name)} can never be met: {Guard.Show(RotationWindow!.Lower!.Value)} at {limit} takes {Guard.Show(shortest)} s, longer than any reading.",
                nameof(limit));
        }

        return new(this) { RateLimit = Guard.NotNull(limit) };
    }

    /// <summary>Names the fasteners of the step, in the order in which they are to be tightened.</summary>
    /// <param name="fasteners">Names of the program's fasteners, each once; <see cref="TighteningPattern.Arrange"/> puts them in the order of a pattern.</param>
    /// <returns>A new step.</returns>
    /// <exception cref="ArgumentNullException">The list or a name is null.</exception>
    /// <exception cref="ArgumentException">The list or a name is empty, or a name stands twice.</exception>
    /// <example><code>turn = turn.WithFasteners(TighteningPattern.Cross(4).Arrange(["B1", "B2", "B3", "B4"]));</code></example>
    public TighteningStep WithFasteners(IReadOnlyList<string> fasteners) => new(this) { Fasteners = Array.AsReadOnly(Naming.CheckAll(fasteners)) };

    /// <summary>The verdict on a reading by itself, outside any job: never better when a window shrinks.</summary>
    /// <param name="torque">The torque; null when it was not measured.</param>
    /// <param name="rotation">The rotation; null when it was not measured.</param>
    /// <param name="duration">The time the rotation took; null when it was not measured.</param>
    /// <returns>Verdict and every reason.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>StepJudgement judgement = turn.Judge(Torque.FromNewtonMeters(118), Angle.FromDegrees(84), Duration.FromSeconds(4));</code></example>
    public StepJudgement Judge(Torque? torque, Angle? rotation, Duration? duration)
    {
        double newtonMeters = torque is Torque t ? Domains.Torque.Check(t, nameof(torque)) : double.NaN;
        double degrees = rotation is Angle a ? Domains.Rotation.Check(a, nameof(rotation)) : double.NaN;
        double seconds = duration is Duration d ? Domains.Duration.Check(d, nameof(duration)) : double.NaN;
        return new StepJudgement(this, Judge(newtonMeters, degrees, seconds), newtonMeters, degrees, seconds);
    }

    /// <inheritdoc />
    public override string ToString()
    {
        string torque = TorqueWindow is null ? "" : $", {TorqueWindow}";
        string rotation = RotationWindow is null ? "" : Control switch
        {
            TighteningControl.RotationAfterThreshold => $", {RotationWindow} past {Guard.Show(Si.Torque(_threshold))}",
            TighteningControl.TorqueRotationWatched => $", watching {RotationWindow}",
            _ => $" and {RotationWindow}",
        };
        return $"{Name}{torque}{rotation}{(RateLimit is null ? "" : $", {RateLimit}")}";
    }

    /// <summary>Every reason that a reading gives; NaN stands for what was not measured.</summary>
    internal ReasonSet Judge(double torque, double rotation, double duration)
    {
        ReasonSet reasons = default;
        if (TorqueWindow is not null || _threshold > 0) reasons = JudgeTorque(torque);
        if (RotationWindow is not null)
        {
            if (double.IsNaN(rotation)) reasons = reasons.With(JobReason.RotationMissing);
            else reasons = Side(reasons, RotationWindow.Classify(Si.Angle(rotation)), JobReason.RotationBelow, JobReason.RotationAbove);
        }

        if (RateLimit is null) return reasons;
        if (double.IsNaN(rotation) || double.IsNaN(duration)) return reasons.With(JobReason.RateUnknown);
        return reasons.When(!RateLimit.Check(Si.Angle(rotation), Si.Duration(duration)).Conforms, JobReason.TooFast);
    }

    /// <summary>The reasons of a reading that reject it; the others are remarks.</summary>
    internal ReasonSet Rejecting =>
        Control == TighteningControl.TorqueRotationWatched ? ReasonSet.OfReading.Without(OfRotation) : ReasonSet.OfReading;

    /// <summary>Too little can be made up by a further pull; too much, or a rotation that nobody knows, cannot.</summary>
    internal bool AsksForLoosening(ReasonSet reasons) => IsOvertightened(reasons)
        || RotationIsRequired && reasons.Meets(RotationUnknown) && !reasons.Has(JobReason.ThresholdNotReached);

    internal bool IsOvertightened(ReasonSet reasons) =>
        reasons.Has(JobReason.TorqueAbove) || RotationIsRequired && reasons.Has(JobReason.RotationAbove);

    /// <summary>
    /// Whether the reading of a fastener that is done takes the place of the one it was done by. Where torque decides, a later pull says more: one that
    /// is accepted, and one that is too low. A rotation is past, and no later reading shows it again.
    /// </summary>
    internal bool IsSettledAnewBy(ReasonSet found, JobVerdict verdict) =>
        !RotationIsRequired && (verdict != JobVerdict.Rejected || found.Has(JobReason.TorqueBelow));

    private ReasonSet JudgeTorque(double torque)
    {
        if (double.IsNaN(torque)) return default(ReasonSet).With(JobReason.TorqueMissing);
        ReasonSet reasons = default(ReasonSet).When(torque < _threshold * (1 - Tolerance.Widening), JobReason.ThresholdNotReached);
        return TorqueWindow is null ? reasons : Side(reasons, TorqueWindow.Classify(Si.Torque(torque)), JobReason.TorqueBelow, JobReason.TorqueAbove);
    }

    private static ReasonSet Side(ReasonSet reasons, Conformity conformity, JobReason below, JobReason above) =>
        reasons.When(conformity == Conformity.Below, below).When(conformity == Conformity.Above, above);

    private static ToleranceWindow<T> Reachable<T>(ToleranceWindow<T> window, in Interval readings, string name)
        where T : struct, IQuantity
    {
        if (Guard.NotNull(window, name).Limits.Upper > 0 && window.Limits.Lower <= readings.High) return window;
        throw new ArgumentException($"{name} is {window}; no tightening can meet it: readings are greater than 0 and at most {Interval.Format(readings.High, Si.BaseUnit<T>())}.", name);
    }

    /// <summary>A window that decides alone whether a fastener is tight must not take one for tight that was never touched.</summary>
    private static ToleranceWindow<T> Deciding<T>(ToleranceWindow<T> window, in Interval readings, string name)
        where T : struct, IQuantity
    {
        if (Reachable(window, readings, name).Limits.Lower > 0) return window;
        throw new ArgumentException($"{name} is {window}; its lower limit must be greater than 0, or a fastener that was never tightened conforms.", name);
    }
}
