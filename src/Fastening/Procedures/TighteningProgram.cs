using Fastening.Internals;

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
    private readonly Dictionary<string, int> _fasteners = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _steps = new(StringComparer.Ordinal);
    private readonly int[][] _orders;
    private readonly int[][] _positions;

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

        if (all.Length == 0) throw new ArgumentException("steps is empty; a program has at least one step.", nameof(steps));
        for (int i = 0; i < names.Length; i++) _fasteners.Add(names[i], i);
        for (int i = 0; i < all.Length; i++) AddStep(Guard.NotNull(all[i], $"steps[{i}]"), i);
        Fasteners = Array.AsReadOnly(names);
        Steps = Array.AsReadOnly(all);
        Order = order;
        _orders = [.. all.Select(OrderOf)];
        _positions = [.. _orders.Select(stepOrder => PositionsIn(stepOrder, names.Length))];
        RefuseIdleFasteners();
        RefuseStepsDown();
    }

    /// <summary>The fasteners.</summary>
    public IReadOnlyList<string> Fasteners { get; }

    /// <summary>The steps in their order.</summary>
    public IReadOnlyList<TighteningStep> Steps { get; }

    /// <summary>The order that a job enforces.</summary>
    public TighteningOrder Order { get; }

    /// <summary>The fasteners of a step, in the order in which they are to be tightened.</summary>
    /// <param name="step">The name of the step.</param>
    /// <returns>Their names.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="step"/> is null.</exception>
    /// <exception cref="ArgumentException">The program has no such step.</exception>
    /// <example><code>IReadOnlyList&lt;string&gt; bolts = program.FastenersOf("full");</code></example>
    public IReadOnlyList<string> FastenersOf(string step) => Steps[StepIndex(step)].Fasteners ?? Fasteners;

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{Steps.Count} steps, {Fasteners.Count} fasteners, order: {Order}");

    /// <summary>The fasteners of a step by their indices in the program, in the order of the step.</summary>
    internal int[] OrderOf(int step) => _orders[step];

    /// <summary>The place of a fastener in the order of a step; -1 when the step does not tighten it.</summary>
    internal int PositionIn(int step, int fastener) => _positions[step][fastener];

    /// <summary>The highest torque that some step allows on a fastener; infinite where a step of it goes without a torque.</summary>
    internal double HighestTorqueOn(int fastener) => StepsOf(fastener).Max(step => step.HighestTorque);

    /// <summary>The highest torque that a fastener may have before a step turns it by an angle; 0 where nothing comes before.</summary>
    internal double HighestTorqueBeforeTurning(int fastener) =>
        StepsOf(fastener).TakeWhile(step => !step.RotationIsRequired).Select(step => step.HighestTorque).DefaultIfEmpty(0).Max();

    /// <summary>Whether a step of the fastener requires a rotation.</summary>
    internal bool TurnsByAngle(int fastener) => StepsOf(fastener).Any(step => step.RotationIsRequired);

    internal bool TryFindFastener(string name, out int index) => _fasteners.TryGetValue(name, out index);

    internal bool TryFindStep(string name, out int index) => _steps.TryGetValue(name, out index);

    internal int StepIndex(string step) => _steps.TryGetValue(Guard.NotNull(step), out int index)
        ? index
        : throw new ArgumentException($"step is {Quoted.Text(step)}; the program has no such step.", nameof(step));

    internal int FastenerIndex(string fastener) => _fasteners.TryGetValue(Guard.NotNull(fastener), out int index)
        ? index
        : throw new ArgumentException($"fastener is {Quoted.Text(fastener)}; the program has no such fastener.", nameof(fastener));

    private IEnumerable<TighteningStep> StepsOf(int fastener) => Steps.Where((_, s) => _positions[s][fastener] >= 0);

    private void AddStep(TighteningStep step, int index)
    {
        if (_steps.ContainsKey(step.Name)) throw Impossible($"it has two steps named {Quoted.Text(step.Name)}");
        _steps.Add(step.Name, index);
    }

    private int[] OrderOf(TighteningStep step) => step.Fasteners is null
        ? [.. Enumerable.Range(0, Fasteners.Count)]
        : [.. step.Fasteners.Select(name => _fasteners.TryGetValue(name, out int index)
            ? index
            : throw Impossible($"step {Quoted.Text(step.Name)} tightens {Quoted.Text(name)}, which is none of its fasteners"))];

    private static int[] PositionsIn(int[] order, int fasteners)
    {
        int[] positions = new int[fasteners];
        for (int i = 0; i < fasteners; i++) positions[i] = -1;
        for (int i = 0; i < order.Length; i++) positions[order[i]] = i;
        return positions;
    }

    private void RefuseIdleFasteners()
    {
        for (int i = 0; i < Fasteners.Count; i++)
        {
            if (_positions.All(positions => positions[i] < 0)) throw Impossible($"no step tightens {Quoted.Text(Fasteners[i])}");
        }
    }

    /// <summary>A fastener that carries a torque cannot be tightened to a lower one: the wrench would click before it moves.</summary>
    private void RefuseStepsDown()
    {
        var reachedBy = new TighteningStep?[Fasteners.Count];
        for (int s = 0; s < Steps.Count; s++)
        {
            TighteningStep step = Steps[s];
            double upper = step.HighestTorque;
            foreach (int fastener in _orders[s])
            {
                TighteningStep? before = reachedBy[fastener];
                if (before is not null && upper < before.LeastTorque * (1 - Tolerance.Widening))
                {
                    throw Impossible(
                        $"step {Quoted.Text(step.Name)} asks for at most {Guard.Show(Si.Torque(upper))}, and step {Quoted.Text(before.Name)} before it "
                        + $"has put at least {Guard.Show(Si.Torque(before.LeastTorque))} on {Quoted.Text(Fasteners[fastener])}");
                }

                if (before is null || step.LeastTorque > before.LeastTorque) reachedBy[fastener] = step;
            }
        }
    }

    private static ArgumentException Impossible(string why, string parameter = "steps") => new($"The program can never be carried out: {why}.", parameter);
}
