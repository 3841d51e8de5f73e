namespace Fastening;

/// <summary>What an entry did to a job: the progress after it, and the verdict with every reason.</summary>
public sealed class JobUpdate
{
    private readonly ReasonSet _reasons;

    internal JobUpdate(JobProgress progress, JobEntry entry, in JobOutcome outcome)
    {
        Progress = progress;
        Entry = entry;
        Verdict = outcome.Verdict;
        Step = outcome.Step < 0 ? null : progress.Program.Steps[outcome.Step];
        Fastener = outcome.Fastener < 0 ? entry.Fastener : progress.Program.Fasteners[outcome.Fastener];
        _reasons = outcome.Reasons;
    }

    /// <summary>The progress after the entry; the same object as before when the entry was ignored.</summary>
    public JobProgress Progress { get; }

    /// <summary>The entry.</summary>
    public JobEntry Entry { get; }

    /// <summary>The fastener that it is about, of an undo that of the entry which was taken back; null where there is none.</summary>
    public string? Fastener { get; }

    /// <summary>The verdict.</summary>
    public JobVerdict Verdict { get; }

    /// <summary>The step in which the entry counts; null where it belongs to none.</summary>
    public TighteningStep? Step { get; }

    /// <summary>Every reason, by number.</summary>
    public IReadOnlyList<JobReason> Reasons => _reasons.ToList();

    /// <inheritdoc />
    public override string ToString()
    {
        string what = Entry.Kind == JobEntryKind.Undone ? "undo" + (Fastener is null ? "" : " of " + Fastener) : Fastener!;
        string then = Verdict == JobVerdict.Rejected && Fastener is not null && !_reasons.Has(JobReason.MustBeLoosened) && Progress.ToLoosen.Contains(Fastener) ? "; to be loosened" : "";
        return $"{what}{(Step is null ? "" : ", " + Step.Name)}: {ReasonText.Sentence(Verdict, Told.Select(InWords))}{then}";
    }

    // That a number is not new would say "a repeat", and an entry that used another's is none.
    private IEnumerable<JobReason> Told =>
        Reasons.Where(reason => reason != JobReason.SequenceNotNew || !_reasons.Has(JobReason.NumberUsedByAnother));

    private string InWords(JobReason reason) => reason switch
    {
        JobReason.FastenerNotNext when Progress.OpenStep == Step => $"{Progress.NextFastener} is next",
        JobReason.StepNotReached when Progress.Program.Order != TighteningOrder.Free && Progress.OpenStep is TighteningStep open && open != Step =>
            $"{open.Name} is not finished",
        _ => Step is null || _reasons.Has(JobReason.FastenerNotInStep)
            ? ReasonText.InJob(reason)
            : ReasonText.OfReading(reason, Step, Entry.InNewtonMeters, Entry.InDegrees, Entry.InSeconds),
    };
}
