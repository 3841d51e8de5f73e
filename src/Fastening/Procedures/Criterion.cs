using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>One thing that a step asks of a pull: a measure and its limits. A step is a list of them.</summary>
/// <remarks>
/// A reading equal to a limit conforms, as everywhere. With a decision rule a reading in the guard band is neither accepted nor refused: it is unsure,
/// and does not count. No limit is assumed: they come from the procedure.
/// </remarks>
/// <example><code>Criterion torque = Criterion.Torque(ToleranceWindow.FromLimits(Torque.FromNewtonMeters(95), Torque.FromNewtonMeters(125)));
/// Criterion still = Criterion.MoveAtMost(Angle.FromDegrees(2));
/// Criterion watched = Criterion.Move(rotationWindow).AsWatched();</code></example>
public sealed class Criterion
{
    private readonly DecisionLimits _limits;

    private Criterion(CriterionMeasure measure, in WindowLimits window, in GuardBands bands)
    {
        Measure = measure;
        Least = window.HasLower ? window.Lower + bands.Inside : 0;
        Lower = window.Lower;
        Upper = window.Upper;
        _limits = new DecisionLimits(window, bands);
    }

    private Criterion(Criterion criterion)
    {
        Measure = criterion.Measure;
        Least = criterion.Least;
        Lower = criterion.Lower;
        Upper = criterion.Upper;
        _limits = criterion._limits;
        TorqueWindow = criterion.TorqueWindow;
        RotationWindow = criterion.RotationWindow;
        RateLimit = criterion.RateLimit;
        Rule = criterion.Rule;
        Uncertainty = criterion.Uncertainty;
    }

    /// <summary>What is looked at.</summary>
    public CriterionMeasure Measure { get; }

    /// <summary>Whether it only watches: outside its limits it gives a remark and no refusal.</summary>
    public bool IsWatched { get; private init; }

    /// <summary>The torque that conforms; null where torque is not the measure.</summary>
    public ToleranceWindow<Torque>? TorqueWindow { get; private init; }

    /// <summary>The rotation that conforms; null where rotation is not the measure.</summary>
    public ToleranceWindow<Angle>? RotationWindow { get; private init; }

    /// <summary>How fast the fastener may be turned; null where the rate is not the measure.</summary>
    public RotationRateLimit? RateLimit { get; private init; }

    /// <summary>The decision rule; null where the limits alone decide.</summary>
    public DecisionRule? Rule { get; private init; }

    /// <summary>The uncertainty of the torque that the rule counts with; null where the limits alone decide.</summary>
    public MeasurementUncertainty<Torque>? Uncertainty { get; private init; }

    /// <summary>The least reading that is accepted; 0 without a lower limit.</summary>
    internal double Least { get; }

    internal double Lower { get; }

    internal double Upper { get; }

    /// <summary>The torque must be in a window. The limits alone decide.</summary>
    /// <param name="window">The torque that conforms.</param>
    /// <returns>The criterion.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> is null.</exception>
    /// <exception cref="ArgumentException">No pull can meet the window.</exception>
    /// <example><code>Criterion torque = Criterion.Torque(ToleranceWindow.FromLimits(Torque.FromNewtonMeters(95), Torque.FromNewtonMeters(125)));</code></example>
    public static Criterion Torque(ToleranceWindow<Torque> window) =>
        new(CriterionMeasure.Torque, Reachable(window, Domains.Torque, nameof(window)), default) { TorqueWindow = window };

    /// <summary>The torque must be in a window by a decision rule that counts with the uncertainty of the reading.</summary>
    /// <param name="window">The torque that conforms.</param>
    /// <param name="rule">The rule agreed on; one that accepts readings outside the limits is refused.</param>
    /// <param name="uncertainty">The uncertainty of a reading.</param>
    /// <returns>The criterion.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">No pull can meet the window by this rule, the rule accepts what lies outside, or no uncertainty is stated.</exception>
    /// <example><code>var window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(95), Torque.FromNewtonMeters(125));
    /// Criterion sure = Criterion.Torque(window, DecisionRule.IlacG8, MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(2), coverageFactor: 2));</code></example>
    public static Criterion Torque(ToleranceWindow<Torque> window, DecisionRule rule, MeasurementUncertainty<Torque> uncertainty)
    {
        WindowLimits limits = Reachable(window, Domains.Torque, nameof(window));
        GuardBands bands = Guard.NotNull(rule).BandsFor(limits, uncertainty.OfRules(nameof(uncertainty)), nameof(window));
        if (bands.Inside < 0) throw new ArgumentException($"rule is {rule}; it accepts readings outside the limits, and a step must not: agree on a rule with a guard band of 0 or more.", nameof(rule));
        if (double.IsNaN(bands.Inside) || limits.Shrink(bands.Inside) is null)
        {
            throw new ArgumentException($"window is {window}; by {rule} the uncertainty leaves nothing of it, and no pull can be accepted.", nameof(window));
        }

        return new(CriterionMeasure.Torque, limits, bands) { TorqueWindow = window, Rule = rule, Uncertainty = uncertainty };
    }

    /// <summary>The torque must reach a limit; none is too high for the step.</summary>
    /// <param name="least">The least torque.</param>
    /// <returns>The criterion.</returns>
    /// <exception cref="ArgumentException">No pull can reach it.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="least"/> is outside its domain.</exception>
    /// <example><code>Criterion tight = Criterion.TorqueAtLeast(Torque.FromNewtonMeters(95));</code></example>
    public static Criterion TorqueAtLeast(Torque least) => Torque(ToleranceWindow.AtLeast(Si.Torque(Domains.Torque.Check(least))));

    /// <summary>The torque must not exceed a limit. By itself it does not make a step: an untouched fastener meets it.</summary>
    /// <param name="most">The highest torque.</param>
    /// <returns>The criterion.</returns>
    /// <exception cref="ArgumentException">No pull can meet it.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="most"/> is outside its domain.</exception>
    /// <example><code>Criterion limited = Criterion.TorqueAtMost(Torque.FromNewtonMeters(165));</code></example>
    public static Criterion TorqueAtMost(Torque most) => Torque(ToleranceWindow.AtMost(Si.Torque(Domains.Torque.Check(most))));

    /// <summary>
    /// The rotation of the step, all pulls since the fastener was loosened added up. It makes the step one by rotation: a turn that nobody measured asks for
    /// loosening.
    /// </summary>
    /// <param name="window">The rotation that conforms.</param>
    /// <returns>The criterion.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> is null.</exception>
    /// <exception cref="ArgumentException">No pull can meet the window, or an untouched fastener meets it.</exception>
    /// <example><code>Criterion turn = Criterion.Turn(ToleranceWindow.FromLimits(Angle.FromDegrees(90), Angle.FromDegrees(180)));</code></example>
    public static Criterion Turn(ToleranceWindow<Angle> window)
    {
        WindowLimits limits = Reachable(window, Domains.Rotation, nameof(window));
        if (limits.Lower > 0) return new(CriterionMeasure.Turn, limits, default) { RotationWindow = window };
        throw new ArgumentException($"window is {window}; its lower limit must be greater than 0, or a fastener that was never turned conforms.", nameof(window));
    }

    /// <summary>The rotation of this pull alone: a run-down to be watched, or a check after a turn.</summary>
    /// <param name="window">The rotation that conforms.</param>
    /// <returns>The criterion.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> is null.</exception>
    /// <exception cref="ArgumentException">No pull can meet the window.</exception>
    /// <example><code>Criterion runDown = Criterion.Move(rotationWindow).AsWatched();</code></example>
    public static Criterion Move(ToleranceWindow<Angle> window) =>
        new(CriterionMeasure.Move, Reachable(window, Domains.Rotation, nameof(window)), default) { RotationWindow = window };

    /// <summary>This pull must not move the fastener further than a limit: the audit of a tightened joint.</summary>
    /// <param name="most">The limit.</param>
    /// <returns>The criterion.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="most"/> is outside its domain.</exception>
    /// <example><code>Criterion still = Criterion.MoveAtMost(Angle.FromDegrees(2));</code></example>
    public static Criterion MoveAtMost(Angle most) => Move(ToleranceWindow.AtMost(Si.Angle(Domains.PositiveRotation.Check(most))));

    /// <summary>The fastener must not be turned faster than a limit. Pulls then need their rotation and the time it took.</summary>
    /// <param name="limit">The limit.</param>
    /// <returns>The criterion.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="limit"/> is null.</exception>
    /// <example><code>Criterion slow = Criterion.RateAtMost(RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(30)));</code></example>
    public static Criterion RateAtMost(RotationRateLimit limit) =>
        new(CriterionMeasure.Rate, new WindowLimits(double.NegativeInfinity, double.NaN, Guard.NotNull(limit).RateInDegrees), default) { RateLimit = limit };

    /// <summary>The entry must state that the parts are in firm contact (<see cref="JobEntry.WithContact"/>): snug-tight by eye.</summary>
    /// <returns>The criterion.</returns>
    /// <example><code>var snug = new TighteningStep("snug", Criterion.FirmContact());</code></example>
    public static Criterion FirmContact() => new(CriterionMeasure.Contact, new WindowLimits(1, double.NaN, double.PositiveInfinity), default);

    /// <summary>The same, watched: outside its limits, or missing, it gives a remark and no refusal.</summary>
    /// <returns>A new criterion.</returns>
    /// <exception cref="InvalidOperationException">It is a turn, which makes the step what it is; watch the move instead.</exception>
    /// <example><code>Criterion watched = Criterion.Move(rotationWindow).AsWatched();</code></example>
    public Criterion AsWatched() => Measure == CriterionMeasure.Turn
        ? throw new InvalidOperationException("A turn is not watched: it makes the step one by rotation. Watch the rotation of each pull with Criterion.Move.")
        : new(this) { IsWatched = true };

    /// <inheritdoc />
    public override string ToString()
    {
        string what = Measure switch
        {
            CriterionMeasure.Torque when Rule is not null => Print.Text($"{TorqueWindow} by {Rule}, {Uncertainty}"),
            CriterionMeasure.Torque => $"{TorqueWindow}",
            CriterionMeasure.Turn => $"turned {RotationWindow}",
            CriterionMeasure.Move => $"moved {RotationWindow}",
            CriterionMeasure.Rate => $"{RateLimit}",
            _ => "in firm contact",
        };
        return IsWatched ? "watching " + what : what;
    }

    /// <summary>The judge: what a value says, as one of the four reasons of the measure; NaN stands for what was not measured.</summary>
    internal ReasonSet Judge(double value) => _limits.Classify(value) switch
    {
        Conformity.Within => default,
        Conformity.Below => ReasonSet.Of(Measure, 1, IsWatched),
        Conformity.Undecidable => ReasonSet.Of(Measure, 2, IsWatched),
        Conformity.Above => ReasonSet.Of(Measure, 3, IsWatched),
        _ => ReasonSet.Of(Measure, 0, IsWatched),
    };

    private static WindowLimits Reachable<T>(ToleranceWindow<T> window, in Interval readings, string name)
        where T : struct, IQuantity
    {
        if (Guard.NotNull(window, name).Limits.Upper > 0 && window.Limits.Lower <= readings.High) return window.Limits;
        throw new ArgumentException(Print.Text(
            $"{name} is {window}; no tightening can meet it: readings are greater than 0 and at most {Print.Number(readings.High, Si.BaseUnit<T>())}."), name);
    }
}
