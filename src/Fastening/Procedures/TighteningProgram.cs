using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Fasteners, the steps that tighten them, and the order that is enforced. What could never be carried out is refused when it is built.</summary>
/// <remarks>
/// Refused with the reason: no fastener, no step, a name that stands twice; a step that names a fastener which the program does not have, and a
/// fastener that no step tightens; a step that asks for less torque than an earlier step has already put on the same fastener. What a step by
/// itself can never meet is refused by <see cref="TighteningStep"/>. A procedure that loosens on purpose between passes is two programs.
/// </remarks>
/// <example><code>IReadOnlyList&lt;string&gt; bolts = ["B1", "B2", "B3", "B4"];
/// IReadOnlyList&lt;string&gt; crosswise = TighteningPattern.Cross(4).Arrange(bolts);
/// var final = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(120), Ratio.FromPercent(5), Ratio.FromPercent(5));
/// var program = new TighteningProgram(bolts,
///     [TighteningStep.ByTorque("half", final.Scale(0.5)).WithFasteners(crosswise), TighteningStep.ByTorque("full", final).WithFasteners(crosswise)],
///     TighteningOrder.InSequence);</code></example>
public sealed class TighteningProgram
{
    private const int MostPermittedLoosenings = 1_000_000;

    private readonly ProgramIndex _index;

    /// <summary>A program.</summary>
    /// <param name="fasteners">The names of the fasteners, each once.</param>
    /// <param name="steps">The steps in their order.</param>
    /// <param name="order">The order that a job enforces; there is no default.</param>
    /// <exception cref="ArgumentNullException">A list, a name or a step is null.</exception>
    /// <exception cref="ArgumentException">The program can never be carried out; the message says why.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="order"/> is not one of the orders.</exception>
    /// <example><code>var program = new TighteningProgram(["B1", "B2", "B3", "B4"], [snug, turn], TighteningOrder.StepByStep);</code></example>
    public TighteningProgram(IReadOnlyList<string> fasteners, IReadOnlyList<TighteningStep> steps, TighteningOrder order)
    {
        string[] names = Naming.CheckAll(fasteners);
        TighteningStep[] all = [.. Guard.NotNull(steps)];
        if (order is < TighteningOrder.Free or > TighteningOrder.InSequence)
        {
            Guard.RefuseAgainst(nameof(order), (int)order, "Free, StepByStep or InSequence");
        }

        for (int i = 0; i < all.Length; i++) Guard.NotNull(all[i], $"steps[{i}]");
        _index = new ProgramIndex(names, all);
        Fasteners = Array.AsReadOnly(names);
        Steps = Array.AsReadOnly(all);
        Order = order;
        Plans = FastenerPlan.AllOf(_index, null);
    }

    private TighteningProgram(TighteningProgram program, Torque? torqueLimit)
    {
        _index = program._index;
        Fasteners = program.Fasteners;
        Steps = program.Steps;
        Order = program.Order;
        MostLoosenings = program.MostLoosenings;
        Effects = program.Effects;
        ChangedEffects = program.ChangedEffects;
        TorqueLimit = torqueLimit;
        Plans = FastenerPlan.AllOf(_index, torqueLimit is Torque limit ? Si.Of(limit) : null);
    }

    /// <summary>The fasteners.</summary>
    public IReadOnlyList<string> Fasteners { get; }

    /// <summary>The steps in their order.</summary>
    public IReadOnlyList<TighteningStep> Steps { get; }

    /// <summary>The order that a job enforces.</summary>
    public TighteningOrder Order { get; }

    /// <summary>The highest torque that any fastener may have seen; null where none is stated, and then it is the highest upper limit of its steps.</summary>
    public Torque? TorqueLimit { get; }

    /// <summary>How often a fastener may be loosened before somebody has to look at it; null where no number is stated.</summary>
    public int? MostLoosenings { get; private init; }

    /// <summary>The reasons whose effect the program has changed, by number.</summary>
    public IReadOnlyList<JobReason> ChangedEffects { get; private init; } = [];

    internal EffectTable Effects { get; private init; } = EffectTable.Default;

    internal FastenerPlan[] Plans { get; }

    /// <summary>What a reason does.</summary>
    /// <param name="reason">The reason.</param>
    /// <returns>Its effect in this program.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reason"/> is none of the reasons.</exception>
    /// <example><code>JobEffect effect = program.EffectOf(JobReason.TorqueAbove);      // Reject, Loosen</code></example>
    public JobEffect EffectOf(JobReason reason) => Effects[EffectTable.Known(reason)];

    /// <summary>States the highest torque that a fastener may ever see. One pulled beyond it must be loosened and looked at.</summary>
    /// <param name="limit">The limit, as that of yield.</param>
    /// <returns>A new program.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is outside its domain, or below what a step asks for.</exception>
    /// <example><code>program = program.WithTorqueLimit(Torque.FromNewtonMeters(150));</code></example>
    public TighteningProgram WithTorqueLimit(Torque limit)
    {
        double newtonMeters = Domains.PositiveTorque.Check(limit);
        double least = Steps.Max(step => step.LeastTorque);
        if (Tolerance.FallsShort(newtonMeters, least)) Guard.RefuseAgainst(nameof(limit), limit, Print.Text($"at least what the steps ask for, {Si.Torque(least)}"));
        return new(this, limit);
    }

    /// <summary>States how often a fastener may be loosened. One loosened more often must be looked at: threads and coatings wear.</summary>
    /// <param name="count">The number, 0 or more.</param>
    /// <returns>A new program.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is negative, or above a million.</exception>
    /// <example><code>program = program.WithMostLoosenings(2);</code></example>
    public TighteningProgram WithMostLoosenings(int count)
    {
        if (count is < 0 or > MostPermittedLoosenings) Guard.RefuseAgainst(nameof(count), count, $"from 0 to {MostPermittedLoosenings}");
        return new(this, TorqueLimit) { MostLoosenings = count };
    }

    /// <summary>Changes what a reason does. What rejects goes on rejecting; what asks for a loosening or a look goes on asking for one of the two.</summary>
    /// <param name="reason">The reason.</param>
    /// <param name="effect">Its effect.</param>
    /// <returns>A new program.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reason"/> is none of the reasons, or <paramref name="effect"/> none of the effects.</exception>
    /// <exception cref="ArgumentException">The effect would let pass what must not pass.</exception>
    /// <example><code>program = program.WithEffect(JobReason.Restarted, JobEffect.Reject | JobEffect.Loosen);</code></example>
    public TighteningProgram WithEffect(JobReason reason, JobEffect effect)
    {
        EffectTable changed = Effects.With(EffectTable.Known(reason), effect);
        return new(this, TorqueLimit)
        {
            Effects = changed,
            ChangedEffects = Array.AsReadOnly(EffectTable.All.Where(one => changed[one] != EffectTable.Default[one]).ToArray()),
        };
    }

    /// <summary>The fasteners of a step, in the order in which they are to be tightened.</summary>
    /// <param name="step">The name of the step.</param>
    /// <returns>Their names.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="step"/> is null.</exception>
    /// <exception cref="ArgumentException">The program has no such step.</exception>
    /// <example><code>IReadOnlyList&lt;string&gt; bolts = program.FastenersOf("full");</code></example>
    public IReadOnlyList<string> FastenersOf(string step) => Steps[StepIndex(step)].Fasteners ?? Fasteners;

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"{Steps.Count} steps, {Fasteners.Count} fasteners, order: {Order}{(TorqueLimit is Torque limit ? Print.Text($", at most {limit}") : "")}");

    /// <summary>The fasteners of a step by their indices in the program, in the order of the step.</summary>
    internal int[] OrderOf(int step) => _index.Orders[step];

    /// <summary>The place of a fastener in the order of a step; -1 when the step does not tighten it.</summary>
    internal int PositionIn(int step, int fastener) => _index.Positions[step][fastener];

    internal bool TryFindFastener(string name, out int index) => _index.Fasteners.TryGetValue(name, out index);

    internal bool TryFindStep(string name, out int index) => _index.Steps.TryGetValue(name, out index);

    internal int StepIndex(string step) => TryFindStep(Guard.NotNull(step), out int index)
        ? index
        : throw new ArgumentException($"step is {Quoted.Text(step)}; the program has no such step.", nameof(step));

    internal int FastenerIndex(string fastener) => TryFindFastener(Guard.NotNull(fastener), out int index)
        ? index
        : throw new ArgumentException($"fastener is {Quoted.Text(fastener)}; the program has no such fastener.", nameof(fastener));
}
