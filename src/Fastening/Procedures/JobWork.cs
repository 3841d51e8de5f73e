using Fastening.Internals;

namespace Fastening;

/// <summary>A private working copy of a job that takes entries one after the other. Rows are copied when they are first written to.</summary>
internal sealed partial class JobWork
{
    private static readonly ReasonSet AskingForLoosening = ReasonSet.Of(JobReason.RotationUncounted, JobReason.PulledTooHigh);

    private static readonly ReasonSet RejectingInJob =
        ReasonSet.Of(JobReason.StepNotReached, JobReason.FastenerNotNext, JobReason.MustBeLoosened).And(AskingForLoosening);

    private static readonly ReasonSet TurnDoesNotCount = ReasonSet.Of(JobReason.StepNotReached, JobReason.FastenerNotNext, JobReason.TorqueMissing);

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
    private long _conflicts;

    public JobWork(TighteningProgram program, JobState state)
    {
        _program = program;
        _rows = (FastenerRow[])state.Rows.Clone();
        _owned = new bool[_rows.Length];
        _unsettled = (int[])state.Unsettled.Clone();
        _firstUnsettled = new int[_unsettled.Length];
        _sources = new(state.Sources, StringComparer.Ordinal);
        (_undo, _entries, _strays, _undone, _conflicts) = (state.Undo, state.Entries, state.Strays, state.Undone, state.Conflicts);
    }

    /// <summary>The state after the entries; the working copy is not to be used any more.</summary>
    public JobState Finish() =>
        new(_rows, _unsettled, _sources) { Undo = _undo, Entries = _entries, Strays = _strays, Undone = _undone, Conflicts = _conflicts };

    public JobOutcome Take(JobEntry entry)
    {
        ReasonSet reasons = default;
        if (_sources.TryGetValue(entry.Source, out SourceMark mark))
        {
            if (entry.Sequence <= mark.Sequence) return NotNew(entry, mark);
            reasons = reasons.When(entry.Time < mark.Time, JobReason.TimeWentBack);
        }

        _sources[entry.Source] = new SourceMark(entry.Sequence, entry.Time, entry.Time > mark.Latest ? entry.Time : mark.Latest);
        _entries++;
        UndoRecord last = _undo;
        _undo = default;
        if (entry.Kind == JobEntryKind.Undone) return Undo(entry, last, reasons);
        if (!_program.TryFindFastener(entry.Fastener!, out int fastener)) return Stray(reasons.With(JobReason.UnknownFastener));
        if (entry.Kind == JobEntryKind.Loosened) return Loosen(entry, fastener, reasons);
        int step;
        if (entry.Step is null) step = StepFor(fastener, entry);
        else if (!_program.TryFindStep(entry.Step, out step)) return Stray(entry, fastener, reasons.With(JobReason.UnknownStep));
        if (_program.PositionIn(step, fastener) < 0) return Stray(entry, fastener, reasons.With(JobReason.FastenerNotInStep), step);
        return entry.Kind == JobEntryKind.Skipped ? Skip(entry, fastener, step, reasons) : Tighten(entry, fastener, step, reasons);
    }

    /// <summary>A repeat changes nothing. What is later than all of its source is none, and is not lost in silence: a counter began anew, or two sources have one name.</summary>
    private JobOutcome NotNew(JobEntry entry, in SourceMark mark)
    {
        ReasonSet reasons = default(ReasonSet).With(JobReason.SequenceNotNew);
        if (entry.Time <= mark.Latest) return new(JobVerdict.Ignored, reasons);
        _sources[entry.Source] = mark with { Latest = entry.Time };
        _conflicts++;
        reasons = reasons.With(JobReason.NumberUsedByAnother);
        bool isOurs = _program.TryFindFastener(entry.Fastener ?? "", out int fastener);
        if (isOurs && entry.Kind == JobEntryKind.Tightened && !IsHeldBy(fastener, entry)) reasons = reasons.And(Condemn(entry, fastener));

        // Which of two entries of one number an undo means, nobody knows.
        _undo = default;
        return new(JobVerdict.Rejected, reasons, Fastener: isOurs ? fastener : -1);
    }

    /// <summary>A reading that came again under a later time says nothing new.</summary>
    private bool IsHeldBy(int fastener, JobEntry entry) => Array.Exists(
        _rows[fastener].Cells,
        cell => cell.Reading is JobEntry held && held.InNewtonMeters.Equals(entry.InNewtonMeters) && held.InDegrees.Equals(entry.InDegrees));

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
        reasons = reasons.When(IsUncounted(entry, fastener, step, reasons), JobReason.RotationUncounted)
            .When(reasons.Has(JobReason.StepNotReached) && IsAbove(entry, NextLimitOf(fastener)), JobReason.PulledTooHigh);
        JobVerdict verdict = reasons.VerdictWhere(asked.Rejecting.And(RejectingInJob));
        bool loosen = reasons.Meets(AskingForLoosening) || (again ? asked.IsOvertightened(found) : asked.AsksForLoosening(found));

        Remember(entry, fastener, step);
        bool keeps = row.MustBeLoosened || again && !loosen && !asked.IsSettledAnewBy(found, verdict);
        row.MustBeLoosened |= loosen;
        Put(fastener, step, keeps
            ? cell with { Readings = cell.Readings + 1, MostDegrees = Most(cell, entry, found) }
            : new StepCell(verdict == JobVerdict.Rejected ? FastenerStatus.Rejected : FastenerStatus.Done)
            {
                Readings = cell.Readings + 1,
                Reading = entry,
                Reasons = reasons,
                SkipReason = cell.SkipReason,
                MostDegrees = Most(cell, entry, found),
            });
        return new(verdict, reasons, step, fastener);
    }

    /// <summary>Whether the reading tells of a turn that will not be part of the rotation that is accepted in the end.</summary>
    private bool IsUncounted(JobEntry entry, int fastener, int step, ReasonSet reasons)
    {
        TighteningStep asked = _program.Steps[step];
        StepCell cell = _rows[fastener].Cells[step];
        bool turns = entry.InDegrees > 0;

        // A turn counted, or tried, from a nut that was not snug yet.
        if (cell.Status == FastenerStatus.Skipped && HasTurnedAfter(fastener, step, orTried: true)) return true;
        if (!asked.RotationIsRequired)
        {
            return turns && (HasTurnedAfter(fastener, step, orTried: false) || reasons.Has(JobReason.TorqueMissing) && _program.TurnsByAngle(fastener));
        }

        // Nobody measured how far a pull that is harder than all before has turned it on.
        if (reasons.Has(JobReason.AlreadyDone)) return turns || double.IsNaN(entry.InDegrees) && IsAbove(entry, HighestHeldBy(fastener));

        // All of a rotation cannot become less: a smaller one is that of the last stroke alone.
        return !reasons.Has(JobReason.ThresholdNotReached) && (entry.InDegrees < cell.MostDegrees || turns && reasons.Meets(TurnDoesNotCount));
    }

    private static double Most(in StepCell cell, JobEntry entry, ReasonSet found) =>
        entry.InDegrees > cell.MostDegrees && !found.Has(JobReason.ThresholdNotReached) ? entry.InDegrees : cell.MostDegrees;

    private bool HasTurnedAfter(int fastener, int step, bool orTried)
    {
        for (int s = step + 1; s < _unsettled.Length; s++)
        {
            StepCell cell = _rows[fastener].Cells[s];
            if (_program.Steps[s].RotationIsRequired && (cell.Status == FastenerStatus.Done || orTried && cell.MostDegrees > 0)) return true;
        }

        return false;
    }

    private double HighestHeldBy(int fastener)
    {
        double highest = 0;
        foreach (StepCell cell in _rows[fastener].Cells)
        {
            if (cell.Status == FastenerStatus.Done && cell.Reading!.InNewtonMeters > highest) highest = cell.Reading.InNewtonMeters;
        }

        return highest;
    }

    private double NextLimitOf(int fastener) =>
        FirstUnsettledStep(fastener) is >= 0 and int next ? _program.Steps[next].HighestTorque : double.PositiveInfinity;

    private static bool IsAbove(JobEntry entry, double newtonMeters) => entry.InNewtonMeters > newtonMeters * (1 + Tolerance.Widening);

    private JobOutcome Skip(JobEntry entry, int fastener, int step, ReasonSet reasons)
    {
        StepCell cell = _rows[fastener].Cells[step];
        if (cell.Status == FastenerStatus.Done) return new(JobVerdict.Rejected, reasons.With(JobReason.AlreadyDone), step, fastener);
        Remember(entry, fastener, step);
        Put(fastener, step, cell with { Status = FastenerStatus.Skipped, SkipReason = entry.Reason });
        return new(reasons.VerdictWhere(default), reasons, step, fastener);
    }

    private JobOutcome Loosen(JobEntry entry, int fastener, ReasonSet reasons)
    {
        _undo = new(entry.Source, fastener, -1) { Row = _rows[fastener] };
        Replace(fastener, _rows[fastener].Loosened(entry.Reason!), owned: true);
        return new(reasons.VerdictWhere(default), reasons, Fastener: fastener);
    }

    private JobOutcome Undo(JobEntry entry, in UndoRecord last, ReasonSet reasons)
    {
        if (last.Source != entry.Source) return new(JobVerdict.Rejected, reasons.With(JobReason.NothingToUndo));
        _undone++;
        if (last.Row is not null)
        {
            Replace(last.Fastener, last.Row, owned: false);
            return new(reasons.VerdictWhere(default), reasons, Fastener: last.Fastener);
        }

        Put(last.Fastener, last.Step, last.Cell);
        _rows[last.Fastener].MustBeLoosened = last.MustBeLoosened;
        return new(reasons.VerdictWhere(default), reasons, last.Step, last.Fastener);
    }

    private JobOutcome Stray(JobEntry entry, int fastener, ReasonSet reasons, int step = -1) =>
        Stray(reasons.And(Condemn(entry, fastener)), step, fastener);

    private JobOutcome Stray(ReasonSet reasons, int step = -1, int fastener = -1)
    {
        _strays++;
        return new(JobVerdict.Rejected, reasons, step, fastener);
    }

    /// <summary>The entry counts in no step, and the fastener was tightened all the same: a turn stays, and so does a torque beyond its windows.</summary>
    private ReasonSet Condemn(JobEntry entry, int fastener)
    {
        bool byAngle = _program.TurnsByAngle(fastener);
        bool turned = byAngle && (entry.InDegrees > 0 || IsAbove(entry, Math.Max(_program.HighestTorqueBeforeTurning(fastener), HighestHeldBy(fastener))));
        bool tooMuch = !byAngle && IsAbove(entry, _program.HighestTorqueOn(fastener));
        if (!turned && !tooMuch) return default;
        _undo = new(entry.Source, fastener, -1) { Row = _rows[fastener] };
        Replace(fastener, _rows[fastener].Copy(), owned: true);
        _rows[fastener].MustBeLoosened = true;
        return default(ReasonSet).When(tooMuch, JobReason.PulledTooHigh).When(turned, JobReason.RotationUncounted);
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
