using Fastening.Internals;

namespace Fastening;

/// <summary>The names of a program turned into numbers once, and the refusal of what could never be carried out.</summary>
internal sealed class ProgramIndex
{
    private readonly string[] _names;
    private readonly TighteningStep[] _steps;

    public ProgramIndex(string[] fasteners, TighteningStep[] steps)
    {
        _names = fasteners;
        _steps = steps;
        if (steps.Length == 0) throw new ArgumentException("steps is empty; a program has at least one step.", nameof(steps));
        for (int i = 0; i < fasteners.Length; i++) Fasteners.Add(fasteners[i], i);
        for (int i = 0; i < steps.Length; i++) AddStep(steps[i], i);
        Orders = [.. steps.Select(OrderOf)];
        Positions = [.. Orders.Select(order => PositionsIn(order, fasteners.Length))];
        RefuseIdleFasteners();
        RefuseStepsDown();
    }

    public Dictionary<string, int> Fasteners { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, int> Steps { get; } = new(StringComparer.Ordinal);

    /// <summary>By step, its fasteners in their order.</summary>
    public int[][] Orders { get; }

    /// <summary>By step and fastener, the place in that order; -1 when the step does not tighten it.</summary>
    public int[][] Positions { get; }

    public int FastenerCount => _names.Length;

    public TighteningStep[] StepList => _steps;

    private void AddStep(TighteningStep step, int index)
    {
        if (Steps.ContainsKey(step.Name)) throw Impossible($"it has two steps named {Quoted.Text(step.Name)}");
        Steps.Add(step.Name, index);
    }

    private int[] OrderOf(TighteningStep step) => step.Fasteners is null
        ? [.. Enumerable.Range(0, _names.Length)]
        : [.. step.Fasteners.Select(name => Fasteners.TryGetValue(name, out int index)
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
        for (int i = 0; i < _names.Length; i++)
        {
            if (Positions.All(positions => positions[i] < 0)) throw Impossible($"no step tightens {Quoted.Text(_names[i])}");
        }
    }

    /// <summary>A fastener that carries a torque cannot be tightened to a lower one: the wrench would click before it moves.</summary>
    private void RefuseStepsDown()
    {
        var reachedBy = new TighteningStep?[_names.Length];
        for (int s = 0; s < _steps.Length; s++)
        {
            TighteningStep step = _steps[s];
            foreach (int fastener in Orders[s])
            {
                TighteningStep? before = reachedBy[fastener];
                if (before is not null && Tolerance.FallsShort(step.HighestTorque, before.LeastTorque))
                {
                    throw Impossible(Print.Text(
                        $"step {Quoted.Text(step.Name)} asks for at most {Si.Torque(step.HighestTorque)}, and step {Quoted.Text(before.Name)} before it has put at least {Si.Torque(before.LeastTorque)} on {Quoted.Text(_names[fastener])}"));
                }

                if (before is null || step.LeastTorque > before.LeastTorque) reachedBy[fastener] = step;
            }
        }
    }

    private static ArgumentException Impossible(string why, string parameter = "steps") => new($"The program can never be carried out: {why}.", parameter);
}
