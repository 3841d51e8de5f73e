using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>One step of a tightening program: a list of criteria, the torque from which rotation counts, and which fasteners in which order.</summary>
/// <remarks>
/// Nothing is assumed: windows, thresholds and rates come from the procedure. A step needs a criterion that an untouched fastener does not meet. What no
/// pull can ever meet is refused when the step is built.
/// </remarks>
/// <example><code>var window = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(60), Ratio.FromPercent(5), Ratio.FromPercent(5));
/// TighteningStep snug = TighteningStep.ByTorque("snug", window);
/// var turn = new TighteningStep("turn", Criterion.Turn(rotationWindow)).After(Torque.FromNewtonMeters(55));
/// var audit = new TighteningStep("audit", Criterion.Torque(torqueWindow), Criterion.MoveAtMost(Angle.FromDegrees(2)));</code></example>
public sealed class TighteningStep
{
    private readonly Criterion[] _criteria;
    private readonly Criterion? _torque;
    private readonly Criterion? _turn;

    /// <summary>A step of criteria.</summary>
    /// <param name="name">The name of the step, unique in its program.</param>
    /// <param name="criteria">What it asks of a pull; of one measure at most one that decides and one that watches.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, two criteria decide on one measure, or an untouched fastener meets all of them.</exception>
    /// <example><code>var snug = new TighteningStep("snug", Criterion.FirmContact());</code></example>
    public TighteningStep(string name, params Criterion[] criteria)
        : this(Naming.Check(name), Checked(criteria), null, null)
    {
    }

    private TighteningStep(string name, Criterion[] criteria, Torque? threshold, IReadOnlyList<string>? fasteners)
    {
        Name = name;
        _criteria = criteria;
        Criteria = Array.AsReadOnly(criteria);
        Threshold = threshold;
        Fasteners = fasteners;
        ThresholdTorque = threshold is Torque stated ? Si.Of(stated) : 0;
        _torque = Required(CriterionMeasure.Torque);
        _turn = Required(CriterionMeasure.Turn);
        LimitsMove = Required(CriterionMeasure.Move) is not null;
        AsksRate = Required(CriterionMeasure.Rate) is not null;
        if (!Array.Exists(criteria, criterion => !criterion.IsWatched && (criterion.Least > 0 || criterion.Measure == CriterionMeasure.Contact)))
        {
            throw new ArgumentException(
                $"Step {Quoted.Text(name)} asks for nothing that a fastener which was never tightened does not have: give it a torque, a turn or a move with a lower limit greater than 0, or firm contact.",
                nameof(criteria));
        }

        RefuseWhatNoPullMeets();
    }

    /// <summary>The name, unique in its program.</summary>
    public string Name { get; }

    /// <summary>What the step asks of a pull.</summary>
    public IReadOnlyList<Criterion> Criteria { get; }

    /// <summary>The torque from which rotation counts; null where none is stated.</summary>
    public Torque? Threshold { get; }

    /// <summary>The fasteners of the step in their order; null for all of the program, in the program's order.</summary>
    public IReadOnlyList<string>? Fasteners { get; }

    /// <summary>The torque that conforms; null where torque does not decide.</summary>
    public ToleranceWindow<Torque>? TorqueWindow => _torque?.TorqueWindow;

    internal double ThresholdTorque { get; }

    internal bool AsksTorque => _torque is not null;

    internal bool IsByTurn => _turn is not null;

    internal bool LimitsMove { get; }

    internal bool AsksRate { get; }

    /// <summary>The lowest torque that an accepted pull leaves behind.</summary>
    internal double LeastTorque => Math.Max(ThresholdTorque, _torque?.Least ?? 0);

    /// <summary>The highest torque that an accepted pull may have; infinite where no limit is stated.</summary>
    internal double HighestTorque => _torque?.Upper ?? double.PositiveInfinity;

    /// <summary>The furthest rotation that the step allows, by the turn or else by the move.</summary>
    internal double FurthestTurn => (_turn ?? Required(CriterionMeasure.Move))?.Upper ?? double.PositiveInfinity;

    /// <summary>A step that goes by torque alone.</summary>
    /// <param name="name">The name of the step.</param>
    /// <param name="torque">The torque that conforms; a lower limit alone says that no torque is too high.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, no pull can meet the window, or its lower limit is not greater than 0.</exception>
    /// <example><code>TighteningStep snug = TighteningStep.ByTorque(
    ///     "snug", ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(60), minus: Ratio.FromPercent(5), plus: Ratio.FromPercent(8)));</code></example>
    public static TighteningStep ByTorque(string name, ToleranceWindow<Torque> torque) => new(name, Criterion.Torque(Guard.NotNull(torque)));

    /// <summary>
    /// A step that turns by an angle once a torque is reached: the rotation of its pulls past the threshold, added up. The torque at its end does not count,
    /// however high, unless a criterion asks for it.
    /// </summary>
    /// <param name="name">The name of the step.</param>
    /// <param name="threshold">The torque from which rotation counts; 0 where an earlier step or the procedure makes the joint snug.</param>
    /// <param name="rotation">The rotation past the threshold that conforms.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, no pull can meet the window, or its lower limit is not greater than 0.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="threshold"/> is outside its domain.</exception>
    /// <example><code>TighteningStep turn = TighteningStep.ByRotation("turn", threshold: Torque.FromNewtonMeters(55), rotationWindow);</code></example>
    public static TighteningStep ByRotation(string name, Torque threshold, ToleranceWindow<Angle> rotation) =>
        new TighteningStep(name, Criterion.Turn(Guard.NotNull(rotation))).After(threshold);

    /// <summary>A step that goes by torque and watches how far each pull moves the fastener: outside the window or missing, it is a remark and no refusal.</summary>
    /// <param name="name">The name of the step.</param>
    /// <param name="torque">The torque that conforms.</param>
    /// <param name="rotation">The rotation to expect.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, no pull can meet a window, or the lower limit of the torque is not greater than 0.</exception>
    /// <example><code>TighteningStep final = TighteningStep.ByTorqueWatchingRotation("final", torqueWindow, rotationWindow);</code></example>
    public static TighteningStep ByTorqueWatchingRotation(string name, ToleranceWindow<Torque> torque, ToleranceWindow<Angle> rotation) =>
        new(name, Criterion.Torque(Guard.NotNull(torque)), Criterion.Move(Guard.NotNull(rotation)).AsWatched());

    /// <summary>A step that asks for both a torque and a rotation.</summary>
    /// <param name="name">The name of the step.</param>
    /// <param name="torque">The torque that conforms.</param>
    /// <param name="rotation">The rotation that conforms, all pulls of the step added up.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, no pull can meet a window, or a lower limit is not greater than 0.</exception>
    /// <example><code>TighteningStep final = TighteningStep.ByTorqueAndRotation("final", torqueWindow, rotationWindow);</code></example>
    public static TighteningStep ByTorqueAndRotation(string name, ToleranceWindow<Torque> torque, ToleranceWindow<Angle> rotation) =>
        new(name, Criterion.Torque(Guard.NotNull(torque)), Criterion.Turn(Guard.NotNull(rotation)));

    /// <summary>Adds a criterion.</summary>
    /// <param name="criterion">The criterion.</param>
    /// <returns>A new step.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="criterion"/> is null.</exception>
    /// <exception cref="ArgumentException">Another criterion decides on this measure, or together no pull can meet them.</exception>
    /// <example><code>turn = turn.With(Criterion.RateAtMost(RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(30))));</code></example>
    public TighteningStep With(Criterion criterion) => new(Name, Checked([.. _criteria, Guard.NotNull(criterion)]), Threshold, Fasteners);

    /// <summary>States the torque from which rotation counts.</summary>
    /// <param name="threshold">The torque.</param>
    /// <returns>A new step.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="threshold"/> is outside its domain.</exception>
    /// <exception cref="ArgumentException">It is above the upper limit of the torque.</exception>
    /// <exception cref="InvalidOperationException">The step does not go by rotation.</exception>
    /// <example><code>var turn = new TighteningStep("turn", Criterion.Turn(rotationWindow)).After(Torque.FromNewtonMeters(55));</code></example>
    public TighteningStep After(Torque threshold)
    {
        Domains.Torque.Check(threshold);
        return IsByTurn
            ? new(Name, _criteria, threshold, Fasteners)
            : throw new InvalidOperationException($"Step {Quoted.Text(Name)} has no turn that could count from a threshold: give it Criterion.Turn.");
    }

    /// <summary>Names the fasteners of the step, in the order in which they are to be tightened.</summary>
    /// <param name="fasteners">Names of the program's fasteners, each once; <see cref="TighteningPattern.Arrange"/> puts them in the order of a pattern.</param>
    /// <returns>A new step.</returns>
    /// <exception cref="ArgumentNullException">The list or a name is null.</exception>
    /// <exception cref="ArgumentException">The list or a name is empty, or a name stands twice.</exception>
    /// <example><code>turn = turn.WithFasteners(TighteningPattern.Cross(4).Arrange(["B1", "B2", "B3", "B4"]));</code></example>
    public TighteningStep WithFasteners(IReadOnlyList<string> fasteners) => new(Name, _criteria, Threshold, Array.AsReadOnly(Naming.CheckAll(fasteners)));

    /// <summary>The verdict on a pull by itself, outside any job: never better when a window shrinks.</summary>
    /// <param name="torque">The torque; null when it was not measured.</param>
    /// <param name="rotation">The rotation; null when it was not measured.</param>
    /// <param name="duration">The time the rotation took; null when it was not measured.</param>
    /// <param name="contact">Whether the parts are in firm contact; null when it was not stated.</param>
    /// <returns>Verdict and every finding.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>StepJudgement judgement = turn.Judge(Torque.FromNewtonMeters(118), Angle.FromDegrees(84), Duration.FromSeconds(4));</code></example>
    public StepJudgement Judge(Torque? torque, Angle? rotation, Duration? duration, bool? contact = null)
    {
        double newtonMeters = torque is Torque t ? Domains.Torque.Check(t, nameof(torque)) : double.NaN;
        double degrees = rotation is Angle a ? Domains.Rotation.Check(a, nameof(rotation)) : double.NaN;
        double seconds = duration is Duration d ? Domains.Duration.Check(d, nameof(duration)) : double.NaN;
        var figures = new PullFigures(newtonMeters, degrees, seconds, contact is bool firm ? firm ? 1 : 0 : double.NaN) { Turn = degrees };
        return new StepJudgement(this, Judge(figures), figures);
    }

    /// <inheritdoc />
    public override string ToString() =>
        $"{Name}, {string.Join(", ", Criteria)}{(Threshold is Torque threshold ? Print.Text($" past {threshold}") : "")}";

    /// <summary>Whether a rate is one that the step permits; one that is not known is none.</summary>
    internal bool IsSlow(double rate) => Required(CriterionMeasure.Rate) is not Criterion limit || limit.Judge(rate).IsEmpty;

    /// <summary>Every reason that a pull gives by itself.</summary>
    internal ReasonSet Judge(in PullFigures figures)
    {
        ReasonSet reasons = default;
        bool isShort = Tolerance.FallsShort(figures.Torque, ThresholdTorque);
        foreach (Criterion criterion in _criteria)
        {
            // Rotation counts from the threshold: below it there is none to judge.
            if (!isShort || criterion.Measure != CriterionMeasure.Turn) reasons |= criterion.Judge(figures.Of(criterion.Measure));
        }

        return reasons.When(ThresholdTorque > 0 && double.IsNaN(figures.Torque), JobReason.TorqueMissing).When(isShort, JobReason.ThresholdNotReached);
    }

    private Criterion? Required(CriterionMeasure measure) => Array.Find(_criteria, criterion => criterion.Measure == measure && !criterion.IsWatched);

    private static Criterion[] Checked(Criterion[] criteria)
    {
        Criterion[] copy = [.. Guard.NotNull(criteria)];
        for (int i = 0; i < copy.Length; i++)
        {
            Criterion one = Guard.NotNull(copy[i], $"criteria[{i}]");
            if (Array.FindIndex(copy, other => other is not null && other.Measure == one.Measure && other.IsWatched == one.IsWatched) < i)
            {
                throw new ArgumentException(
                    $"criteria holds two of {one.Measure} that {(one.IsWatched ? "watch" : "decide")}; there is at most one.", nameof(criteria));
            }
        }

        return copy;
    }

    private void RefuseWhatNoPullMeets()
    {
        if (Tolerance.FallsShort(HighestTorque, ThresholdTorque))
        {
            throw new ArgumentException(Print.Text(
                $"Step {Quoted.Text(Name)} can never be met: rotation counts from {Threshold!.Value}, above the upper limit of the torque, {Si.Torque(HighestTorque)}."));
        }

        // Only a pull has a rate; a turn may take many pulls, and still each of them takes time.
        double least = _turn?.Lower ?? Required(CriterionMeasure.Move)?.Least ?? 0;
        if (Required(CriterionMeasure.Rate) is not Criterion rate || least / rate.Upper <= Domains.Duration.High) return;
        throw new ArgumentException(Print.Text(
            $"Step {Quoted.Text(Name)} can never be met: {Si.Angle(least)} at {rate} takes {Print.Number(least / rate.Upper)} s, longer than any reading."));
    }
}
