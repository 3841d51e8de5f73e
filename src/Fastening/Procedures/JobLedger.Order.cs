namespace Fastening;

/// <content>Which step an entry is for, whose turn it is, and how many fasteners are left.</content>
internal sealed partial class JobLedger
{
    /// <summary>The first step with fasteners that are neither done nor skipped; −1 when there is none.</summary>
    public int OpenStep
    {
        get
        {
            for (int s = 0; s < _unsettled.Length; s++)
            {
                if (_unsettled[s] > 0) return s;
            }

            return -1;
        }
    }

    /// <summary>The next fastener of the open step in its order; −1 when there is none.</summary>
    public int NextFastener => OpenStep is >= 0 and int step ? _program.OrderOf(step)[FirstUnsettledPlace(step)] : -1;

    /// <summary>The step that is named; else the first of the fastener that is neither done nor skipped, else its last. Values never decide it. −1 when it has no such step.</summary>
    private int StepOf(JobEntry entry, int fastener)
    {
        if (entry.Step is not null)
        {
            return _program.TryFindStep(entry.Step, out int named) && _program.PositionIn(named, fastener) >= 0 ? named : -1;
        }

        int[] own = _program.Plans[fastener].Own;
        return FirstOpenPlace(fastener) is >= 0 and int place ? own[place] : own[own.Length - 1];
    }

    /// <summary>The place, among the steps of the fastener, of the first that is neither done nor skipped; −1 when there is none.</summary>
    private int FirstOpenPlace(int fastener)
    {
        int[] own = _program.Plans[fastener].Own;
        StepCell[] cells = _rows[fastener].Cells;
        for (int place = 0; place < own.Length; place++)
        {
            if (!cells[own[place]].IsSettled) return place;
        }

        return -1;
    }

    private bool AreEarlierDone(int fastener, int step)
    {
        StepCell[] cells = _rows[fastener].Cells;
        for (int s = 0; s < step; s++)
        {
            if (cells[s].Status is not (FastenerStatus.Done or FastenerStatus.NotInStep)) return false;
        }

        return true;
    }

    private ReasonSet OutOfOrder(int fastener, int step, bool isSkipped)
    {
        if (_program.Order == TighteningOrder.Free)
        {
            int place = FirstOpenPlace(fastener);
            return default(ReasonSet).When(place >= 0 && _program.Plans[fastener].Own[place] < step, JobReason.StepNotReached);
        }

        int open = OpenStep;
        if (open >= 0 && step > open) return ReasonSet.Of(JobReason.StepNotReached);
        bool inTurn = _program.Order == TighteningOrder.StepByStep || isSkipped || _program.OrderOf(step)[FirstUnsettledPlace(step)] == fastener;
        return default(ReasonSet).When(!inTurn, JobReason.NotNext);
    }

    private int FirstUnsettledPlace(int step)
    {
        int[] order = _program.OrderOf(step);
        ref int place = ref _firstUnsettled[step];
        while (_rows[order[place]].Cells[step].IsSettled) place++;
        return place;
    }

    private void SetStatus(int fastener, int step, FastenerStatus status)
    {
        ref StepCell cell = ref _rows[fastener].Cells[step];
        bool wasSettled = cell.IsSettled;
        cell.Status = status;
        if (wasSettled == cell.IsSettled) return;
        if (wasSettled) Reopen(fastener, step);
        else _unsettled[step]--;
    }

    private void Reopen(int fastener, int step)
    {
        _unsettled[step]++;
        _firstUnsettled[step] = Math.Min(_firstUnsettled[step], _program.PositionIn(step, fastener));
    }
}
