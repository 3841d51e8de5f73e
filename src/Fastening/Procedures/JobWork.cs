using Fastening.Internals;

namespace Fastening;

/// <summary>A private working copy of a job that takes entries one after the other. Rows are copied when they are first written to.</summary>
internal sealed class JobWork
{
    private static readonly ReasonSet RejectingInJob =
        ReasonSet.Of(JobReason.StepNotReached, JobReason.FastenerNotNext, JobReason.MustBeLoosened, JobReason.RotationUncounted);

    private static readonly ReasonSet TurnDoesNotCount =
        ReasonSet.Of(JobReason.StepNotReached, JobReason.FastenerNotNext, JobReason.TorqueMissing, JobReason.AlreadyDone);

    private readonly TighteningProgram _program;
    private readonly FastenerRow[] _rows;
    private readonly bool[] _owned;
    private readonly int[] _unsettled;
    private readonly int[] _firstUnsettled;
    private readonly Dictionary<string, SourceMark> _sources;
    private UndoRecord _undo;
    private long _entries;
    private long _strays;
    private long _undone;

    public JobWork(TighteningProgram program, JobState state)
    {
        _program = program;
        _rows = (FastenerRow[])state.Rows.Clone();
        _owned = new bool[_rows.Length];
        _unsettled = (int[])state.Unsettled.Clone();
        _firstUnsettled = new int[_unsettled.Length];
        _sources = new(state.Sources, StringComparer.Ordinal);
        (_undo, _entries, _strays, _undone) = (state.Undo, state.Entries, state.Strays, state.Undone);
    }

    /// <summary>The state after the entries; the working copy is not to be used any more.</summary>
    public JobState Finish() => new(_rows, _unsettled, _sources) { Undo = _undo, Entries = _entries, Strays = _strays, Undone = _undone };

    public JobOutcome Take(JobEntry entry)
    {
        ReasonSet reasons = default;
        if (_sources.TryGetValue(entry.Source, out SourceMark mark))
        {
            if (entry.Sequence <= mark.Sequence) return new(JobVerdict.Ignored, reasons.With(JobReason.SequenceNotNew));
            reasons = reasons.When(entry.Time < mark.Time, JobReason.TimeWentBack);
        }

        _sources[entry.Source] = new SourceMark(entry.Sequence, entry.Time);
        _entries++;
        UndoRecord last = _undo;
        _undo = default;
        if (entry.Kind == JobEntryKind.Undone) return Undo(entry, last, reasons);
        if (!_program.TryFindFastener(entry.Fastener!, out int fastener)) return Stray(reasons.With(JobReason.UnknownFastener));
        if (entry.Kind == JobEntryKind.Loosened) return Loosen(entry, fastener, reasons);
        int step = StepFor(fastener);
        if (entry.Step is not null && !_program.TryFindStep(entry.Step, out step)) return Stray(entry, fastener, reasons.With(JobReason.UnknownStep));
        if (_program.PositionIn(step, fastener) < 0) return Stray(entry, fastener, reasons.With(JobReason.FastenerNotInStep), step);
        return entry.Kind == JobEntryKind.Skipped ? Skip(entry, fastener, step, reasons) : Tighten(entry, fastener, step, reasons);
    }

    private JobOutcome Tighten(JobEntry entry, int fastener, int step, ReasonSet reasons)
    {
        TighteningStep asked = _program.Steps[step];
        FastenerRow row = Own(fastener);
        StepCell cell = row.Cells[step];
        bool again = cell.Status == FastenerStatus.Done;
        ReasonSet found = asked.Judge(entry.InNewtonMeters, entry.InDegrees, entry.InSeconds);
        reasons = reasons.And(found).When(again, JobReason.AlreadyDone)
            .When(cell.Status == FastenerStatus.Skipped, JobReason.WasSkipped).When(row.MustBeLoosened, JobReason.MustBeLoosened);
        if (!again) reasons = Ordered(reasons, fastener, step, cell);
        bool uncounted = reasons.Meets(TurnDoesNotCount) && asked.HasTurned(found, entry.InDegrees);
        reasons = reasons.When(uncounted, JobReason.RotationUncounted);
        JobVerdict verdict = reasons.VerdictWhere(asked.Rejecting.And(RejectingInJob));
        bool loosen = uncounted || (again ? asked.IsOvertightened(found) : asked.AsksForLoosening(found));

        Remember(entry, fastener, step);
        row.MustBeLoosened |= loosen;
        Put(fastener, step, again && !loosen
            ? cell with { Readings = cell.Readings + 1 }
            : new StepCell(verdict == JobVerdict.Rejected ? FastenerStatus.Rejected : FastenerStatus.Done)
            {
                Readings = cell.Readings + 1,
                Reading = entry,
                Reasons = reasons,
                SkipReason = cell.SkipReason,
            });
        return new(verdict, reasons, step);
    }

    private ReasonSet Ordered(ReasonSet reasons, int fastener, int step, in StepCell cell)
    {
        if (_program.Order == TighteningOrder.Free) return reasons.When(FirstUnsettledStep(fastener) is >= 0 and int first && first < step, JobReason.StepNotReached);
        int open = JobState.OpenStep(_unsettled);
        if (open >= 0 && step > open) return reasons.With(JobReason.StepNotReached);
        bool inTurn = _program.Order == TighteningOrder.StepByStep || cell.IsSettled || _program.OrderOf(step)[FirstUnsettledPlace(step)] == fastener;
        return reasons.When(!inTurn, JobReason.FastenerNotNext);
    }

    private JobOutcome Skip(JobEntry entry, int fastener, int step, ReasonSet reasons)
    {
        StepCell cell = _rows[fastener].Cells[step];
        if (cell.Status == FastenerStatus.Done) return new(JobVerdict.Rejected, reasons.With(JobReason.AlreadyDone), step);
        Remember(entry, fastener, step);
        Put(fastener, step, cell with { Status = FastenerStatus.Skipped, SkipReason = entry.Reason });
        return new(reasons.VerdictWhere(default), reasons, step);
    }

    private JobOutcome Loosen(JobEntry entry, int fastener, ReasonSet reasons)
    {
        _undo = new(entry.Source, fastener, -1) { Row = _rows[fastener] };
        Replace(fastener, _rows[fastener].Loosened(entry.Reason!), owned: true);
        return new(reasons.VerdictWhere(default), reasons);
    }

    private JobOutcome Undo(JobEntry entry, in UndoRecord last, ReasonSet reasons)
    {
        if (last.Source != entry.Source) return new(JobVerdict.Rejected, reasons.With(JobReason.NothingToUndo));
        _undone++;
        if (last.Row is not null)
        {
            Replace(last.Fastener, last.Row, owned: false);
            return new(reasons.VerdictWhere(default), reasons);
        }

        Put(last.Fastener, last.Step, last.Cell);
        _rows[last.Fastener].MustBeLoosened = last.MustBeLoosened;
        return new(reasons.VerdictWhere(default), reasons, last.Step);
    }

    /// <summary>The fastener does not have the step, and was tightened all the same: a turn stays, and so does a torque beyond all its windows.</summary>
    private JobOutcome Stray(JobEntry entry, int fastener, ReasonSet reasons, int step = -1)
    {
        bool tooMuch = entry.InNewtonMeters > _program.HighestTorqueOn(fastener) * (1 + Tolerance.Widening);
        bool turned = entry.InDegrees > 0 && _program.TurnsByAngle(fastener);
        if (tooMuch || turned)
        {
            _undo = new(entry.Source, fastener, -1) { Row = _rows[fastener] };
            Replace(fastener, _rows[fastener].Copy(), owned: true);
            _rows[fastener].MustBeLoosened = true;
        }

        return Stray(reasons.When(tooMuch, JobReason.TorqueAboveProgram).When(turned, JobReason.RotationUncounted), step);
    }

    private JobOutcome Stray(ReasonSet reasons, int step = -1)
    {
        _strays++;
        return new(JobVerdict.Rejected, reasons, step);
    }

    /// <summary>The step that an entry without a step is for: with an order, the open one; without, the fastener's own first that is not settled.</summary>
    private int StepFor(int fastener)
    {
        int first = _program.Order == TighteningOrder.Free ? FirstUnsettledStep(fastener) : JobState.OpenStep(_unsettled);
        int found = 0;
        for (int s = 0; s < _unsettled.Length; s++)
        {
            if (_program.PositionIn(s, fastener) < 0) continue;
            found = s;
            if (first >= 0 && s >= first) break;
        }

        return found;
    }

    private int FirstUnsettledStep(int fastener)
    {
        StepCell[] cells = _rows[fastener].Cells;
        for (int s = 0; s < cells.Length; s++)
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

    private void Remember(JobEntry entry, int fastener, int step) => _undo = new(entry.Source, fastener, step)
    {
        Cell = _rows[fastener].Cells[step],
        MustBeLoosened = _rows[fastener].MustBeLoosened,
    };

    private FastenerRow Own(int fastener)
    {
        if (_owned[fastener]) return _rows[fastener];
        _owned[fastener] = true;
        return _rows[fastener] = _rows[fastener].Copy();
    }

    private void Put(int fastener, int step, in StepCell cell)
    {
        StepCell[] cells = Own(fastener).Cells;
        Count(fastener, step, cells[step], cell);
        cells[step] = cell;
    }

    private void Replace(int fastener, FastenerRow row, bool owned)
    {
        for (int s = 0; s < row.Cells.Length; s++) Count(fastener, s, _rows[fastener].Cells[s], row.Cells[s]);
        _rows[fastener] = row;
        _owned[fastener] = owned;
    }

    private void Count(int fastener, int step, in StepCell before, in StepCell after)
    {
        if (before.IsSettled == after.IsSettled) return;
        _unsettled[step] += after.IsSettled ? -1 : 1;
        if (!after.IsSettled) _firstUnsettled[step] = Math.Min(_firstUnsettled[step], _program.PositionIn(step, fastener));
    }
}
