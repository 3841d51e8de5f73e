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
        _reasons = outcome.Reasons;
    }

    /// <summary>The progress after the entry; the same object as before when the entry was ignored.</summary>
    public JobProgress Progress { get; }

    /// <summary>The entry.</summary>
    public JobEntry Entry { get; }

    /// <summary>The verdict.</summary>
    public JobVerdict Verdict { get; }

    /// <summary>The step in which the entry counts; null where it belongs to none.</summary>
    public TighteningStep? Step { get; }

    /// <summary>Every reason, by number.</summary>
    public IReadOnlyList<JobReason> Reasons => _reasons.ToList();

    /// <inheritdoc />
    public override string ToString()
    {
        string where = (Entry.Fastener ?? "undo") + (Step is null ? "" : ", " + Step.Name);
        return $"{where}: {ReasonText.Sentence(Verdict, Reasons.Select(InWords))}";
    }

    private string InWords(JobReason reason) => Step is null
        ? ReasonText.InJob(reason)
        : ReasonText.OfReading(reason, Step, Entry.InNewtonMeters, Entry.InDegrees, Entry.InSeconds);
}
