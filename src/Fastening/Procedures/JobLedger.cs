namespace Fastening;

/// <summary>The facts of a job: takes entries in their order in time, one after the other. What came before what is decided elsewhere.</summary>
internal sealed partial class JobLedger
{
    private static readonly ReasonSet NotFirm = ReasonSet.Of(JobReason.Withdrawn, JobReason.NumberReused, JobReason.OrderUnsure);

    private static readonly ReasonSet NotReal = ReasonSet.Of(JobReason.Withdrawn, JobReason.NumberReused);

    private static readonly ReasonSet OfTorque =
        ReasonSet.Of(JobReason.TorqueMissing, JobReason.TorqueBelow, JobReason.TorqueUnsure, JobReason.TorqueAbove);

    private readonly TighteningProgram _program;
    private readonly EffectTable _effects;
    private readonly long _tolerance;
    private readonly FastenerLedger[] _rows;
    private readonly int[] _unsettled;
    private readonly int[] _firstUnsettled;

    public JobLedger(TighteningProgram program, long tolerance)
    {
        _program = program;
        _effects = program.Effects;
        _tolerance = tolerance;
        _rows = new FastenerLedger[program.Fasteners.Count];
        _unsettled = [.. program.Steps.Select((_, s) => program.OrderOf(s).Length)];
        _firstUnsettled = new int[_unsettled.Length];
        for (int f = 0; f < _rows.Length; f++)
        {
            int fastener = f;
            _rows[f] = new FastenerLedger(
                [.. program.Steps.Select((_, s) => new StepCell(program.PositionIn(s, fastener) < 0 ? FastenerStatus.NotInStep : FastenerStatus.Open))]);
        }
    }

    public JobLedger(JobLedger other)
    {
        (_program, _effects, _tolerance) = (other._program, other._effects, other._tolerance);
        _rows = new FastenerLedger[other._rows.Length];
        for (int f = 0; f < _rows.Length; f++)
        {
            _rows[f] = new FastenerLedger(new StepCell[other._rows[f].Cells.Length]);
            _rows[f].CopyFrom(other._rows[f]);
        }

        _unsettled = (int[])other._unsettled.Clone();
        _firstUnsettled = (int[])other._firstUnsettled.Clone();
        (Entries, Strays, WithdrawnEntries) = (other.Entries, other.Strays, other.WithdrawnEntries);
    }

    public IReadOnlyList<FastenerLedger> Rows => _rows;

    public long Entries { get; private set; }

    /// <summary>Entries that name no fastener of the program and were not withdrawn.</summary>
    public long Strays { get; private set; }

    public long WithdrawnEntries { get; private set; }

    /// <summary>As another ledger, where the two differ in the named fasteners at most; −1 stands for none.</summary>
    public void CopyFrom(JobLedger other, IEnumerable<int> fasteners)
    {
        foreach (int f in fasteners)
        {
            if (f >= 0) _rows[f].CopyFrom(other._rows[f]);
        }

        other._unsettled.CopyTo(_unsettled, 0);
        other._firstUnsettled.CopyTo(_firstUnsettled, 0);
        (Entries, Strays, WithdrawnEntries) = (other.Entries, other.Strays, other.WithdrawnEntries);
    }

    public JobOutcome Fold(JobEntry entry, in LinePlace line)
    {
        Entries++;
        ReasonSet reasons = line.Flags == LineFlags.None ? default : Marked(line.Flags);
        if (entry.Fastener is null) return new(entry, reasons);
        if (!TryFind(entry.Fastener, out int fastener))
        {
            if (!reasons.Meets(NotReal)) Strays++;
            return new(entry, reasons | ReasonSet.Of(JobReason.UnknownFastener));
        }

        FastenerLedger row = _rows[fastener];
        long others = row.PlaceOfOthers(line.Source);
        bool isClose = others != FastenerLedger.NoPlace && (line.Ticks - others <= _tolerance || line.Received < others);
        reasons = reasons.When(isClose, JobReason.OrderUnsure);
        JobOutcome outcome = entry.Kind switch
        {
            JobEntryKind.Pulled => Pull(entry, fastener, reasons),
            JobEntryKind.Skipped => Skip(entry, fastener, reasons),
            JobEntryKind.Accepted => Accept(entry, row, reasons),
            _ => Free(entry, fastener, reasons),
        };
        row.Touch(line);
        row.Add(outcome.Reasons);
        ReasonSet serious = outcome.Reasons & _effects.Serious;
        if (!serious.IsEmpty) row.Blame(outcome);
        if (entry.Kind != JobEntryKind.Accepted) row.Know(Fingerprint.Of(entry, line.SourceHash, line.Flags, serious));
        return outcome;
    }

    private ReasonSet Marked(LineFlags flags)
    {
        if (flags.HasFlag(LineFlags.Withdrawn)) WithdrawnEntries++;
        return default(ReasonSet).When(flags.HasFlag(LineFlags.Withdrawn), JobReason.Withdrawn)
            .When(flags.HasFlag(LineFlags.Reused), JobReason.NumberReused)
            .When(flags.HasFlag(LineFlags.TimeUntold), JobReason.OrderUnsure)
            .When(flags.HasFlag(LineFlags.ClockWentBack), JobReason.ClockWentBack)
            .When(flags.HasFlag(LineFlags.Void), JobReason.NothingWithdrawn);
    }

    private bool TryFind(string name, out int fastener)
    {
        // In a job that goes as planned the next fastener is the one that comes.
        fastener = NextFastener;
        return fastener >= 0 && _program.Fasteners[fastener] == name || _program.TryFindFastener(name, out fastener);
    }

    /// <summary>Loosened or replaced: all steps are open again. Where it is not sure that it was done, and when, it clears nothing.</summary>
    private JobOutcome Free(JobEntry entry, int fastener, ReasonSet reasons)
    {
        FastenerLedger row = _rows[fastener];
        for (int s = 0; s < row.Cells.Length; s++)
        {
            if (row.Cells[s].IsSettled) Reopen(fastener, s);
        }

        if (reasons.Meets(NotFirm)) row.OpenSteps(forget: false);
        else if (entry.Kind == JobEntryKind.Replaced) row.Replace();
        else row.Loosen(entry);

        bool isOften = _program.MostLoosenings is int most && row.Loosenings > most && entry.Kind == JobEntryKind.Loosened;
        return new(entry, reasons.When(isOften, JobReason.LoosenedTooOften));
    }

    private JobOutcome Skip(JobEntry entry, int fastener, ReasonSet reasons)
    {
        int step = StepOf(entry, fastener);
        if (step < 0) return new(entry, reasons | ReasonSet.Of(JobReason.UnknownStep));
        if (reasons.Meets(NotReal)) return new(entry, reasons, step);
        ref StepCell cell = ref _rows[fastener].Cells[step];
        if (cell.Status == FastenerStatus.Done) return new(entry, reasons | ReasonSet.Of(JobReason.AlreadyDone), step);
        cell.Skip = entry;
        SetStatus(fastener, step, FastenerStatus.Skipped);
        return new(entry, reasons, step);
    }

    private static JobOutcome Accept(JobEntry entry, FastenerLedger row, ReasonSet reasons)
    {
        if (reasons.Meets(NotFirm)) return new(entry, reasons);
        if (entry.Seen != (long)row.Facts) return new(entry, reasons | ReasonSet.Of(JobReason.DecisionOutdated));
        row.Decide(entry);
        return new(entry, reasons);
    }
}
