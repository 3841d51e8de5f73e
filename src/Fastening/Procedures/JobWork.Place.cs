namespace Fastening;

/// <content>Where an entry belongs: its step, and whether it is that step's turn and the fastener's.</content>
internal sealed partial class JobWork
{
    private ReasonSet Ordered(ReasonSet reasons, int fastener, int step, in StepCell cell)
    {
        if (_program.Order == TighteningOrder.Free) return reasons.When(FirstUnsettledStep(fastener) is >= 0 and int first && first < step, JobReason.StepNotReached);
        int open = JobState.OpenStep(_unsettled);
        if (open >= 0 && step > open) return reasons.With(JobReason.StepNotReached);
        bool inTurn = _program.Order == TighteningOrder.StepByStep || cell.IsSettled || _program.OrderOf(step)[FirstUnsettledPlace(step)] == fastener;
        return reasons.When(!inTurn, JobReason.FastenerNotNext);
    }

    /// <summary>
    /// The step that an entry without a step is for: with an order, the open one; without, the fastener's own first that is not settled. A reading
    /// that does not fit it may repeat the torque step that the fastener did last; where the step is done already, it is for the next of the fastener.
    /// </summary>
    private int StepFor(int fastener, JobEntry entry)
    {
        int first = _program.Order == TighteningOrder.Free ? FirstUnsettledStep(fastener) : JobState.OpenStep(_unsettled);
        int found = -1, before = -1;
        for (int s = 0; s < _unsettled.Length; s++)
        {
            if (_program.PositionIn(s, fastener) < 0) continue;
            (before, found) = (found, s);
            if (first >= 0 && s >= first) break;
        }

        if (entry.Kind != JobEntryKind.Tightened || Fits(found, entry)) return found;
        StepCell[] cells = _rows[fastener].Cells;
        if (cells[found].Status == FastenerStatus.Done) return FirstUnsettledStep(fastener, from: found) is >= 0 and int next ? next : found;
        bool repeats = before >= 0 && cells[before].Status == FastenerStatus.Done && !_program.Steps[before].RotationIsRequired && Fits(before, entry);
        return repeats ? before : found;
    }

    private bool Fits(int step, JobEntry entry) =>
        !_program.Steps[step].Judge(entry.InNewtonMeters, entry.InDegrees, entry.InSeconds).Meets(_program.Steps[step].Rejecting);

    private int FirstUnsettledStep(int fastener, int from = 0)
    {
        StepCell[] cells = _rows[fastener].Cells;
        for (int s = from; s < cells.Length; s++)
        {
            if (cells[s].Status != FastenerStatus.NotInStep && !cells[s].IsSettled) return s;
        }

        return -1;
    }

    private int FirstUnsettledPlace(int step)
    {
        int[] order = _program.OrderOf(step);
        ref int place = ref _firstUnsettled[step];
        while (_rows[order[place]].Cells[step].IsSettled) place++;
        return place;
    }
}
