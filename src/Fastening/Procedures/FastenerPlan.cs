namespace Fastening;

/// <summary>What the program asks of one fastener, worked out once: its steps, and the limits of what may happen to it.</summary>
internal sealed class FastenerPlan
{
    private FastenerPlan(TighteningStep[] steps, int[] own, double? torqueLimit)
    {
        Own = own;
        Upper = new double[own.Length];
        double highest = 0;
        for (int i = 0; i < own.Length; i++)
        {
            // A step that asks for neither, as firm contact, says nothing of the torque.
            TighteningStep step = steps[own[i]];
            if (step.AsksTorque || step.IsByTurn) highest = Math.Max(highest, step.HighestTorque);
            Upper[i] = highest > 0 ? highest : double.PositiveInfinity;
        }

        TorqueLimit = torqueLimit ?? Upper[own.Length - 1];
        AsksTorque = own.Any(s => steps[s].AsksTorque);
        int turn = Array.FindIndex(own, s => steps[s].IsByTurn);
        FirstTurn = turn < 0 ? int.MaxValue : own[turn];
        if (turn < 0) return;
        double[] snugging = [.. own.Take(turn).Where(s => steps[s].AsksTorque).Select(s => steps[s].HighestTorque)];
        SnugTorque = snugging.Length > 0 ? snugging.Max() : steps[FirstTurn].ThresholdTorque;
        TurnLimit = own.Skip(turn).Sum(s => steps[s].FurthestTurn);
    }

    /// <summary>Its steps, by their numbers in the program.</summary>
    public int[] Own { get; }

    /// <summary>By place among its steps, the highest torque of the steps up to there.</summary>
    public double[] Upper { get; }

    /// <summary>What no pull may exceed; infinite where nothing limits it.</summary>
    public double TorqueLimit { get; }

    /// <summary>Whether a step of it asks for a torque.</summary>
    public bool AsksTorque { get; }

    public bool IsTurned => FirstTurn != int.MaxValue;

    /// <summary>The first of its steps that goes by a turn, by its number in the program.</summary>
    public int FirstTurn { get; }

    /// <summary>Up to this torque a pull before the turn only makes the joint snug.</summary>
    public double SnugTorque { get; }

    /// <summary>The rotation that all its steps together allow.</summary>
    public double TurnLimit { get; } = double.PositiveInfinity;

    public static FastenerPlan[] AllOf(ProgramIndex index, double? torqueLimit) =>
        [.. Enumerable.Range(0, index.FastenerCount).Select(f => new FastenerPlan(
            index.StepList, [.. Enumerable.Range(0, index.StepList.Length).Where(s => index.Positions[s][f] >= 0)], torqueLimit))];
}
