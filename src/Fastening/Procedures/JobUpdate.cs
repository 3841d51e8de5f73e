namespace Fastening;

/// <summary>What an entry did to a job: the verdict, and every finding with what to do.</summary>
public sealed class JobUpdate
{
    private readonly TighteningProgram _program;
    private readonly JobOutcome _outcome;
    private readonly int _open;
    private readonly int _next;
    private IReadOnlyList<JobFinding>? _findings;

    internal JobUpdate(TighteningProgram program, JobLedger ledger, JobEntry entry, in JobOutcome outcome, JobVerdict verdict, bool wasLate)
    {
        Entry = entry;
        Verdict = verdict;
        WasLate = wasLate;
        _program = program;
        _outcome = outcome;
        _open = ledger.OpenStep;
        _next = ledger.NextFastener;
    }

    /// <summary>The entry.</summary>
    public JobEntry Entry { get; }

    /// <summary>The verdict.</summary>
    public JobVerdict Verdict { get; }

    /// <summary>The step in which the entry counts; null where it belongs to none.</summary>
    public TighteningStep? Step => _outcome.Step < 0 ? null : _program.Steps[_outcome.Step];

    /// <summary>Every finding, by number.</summary>
    public IReadOnlyList<JobFinding> Findings =>
        _findings ??= JobFinding.ListOf(_outcome.Reasons, _program.Effects, Step, _outcome.Figures, InJob);

    /// <summary>What all findings do together.</summary>
    public JobEffect Effect => _program.Effects.Of(_outcome.Reasons);

    /// <summary>Whether the line came late and was put in its place: verdicts on later lines may have changed with it.</summary>
    public bool WasLate { get; }

    /// <inheritdoc />
    public override string ToString()
    {
        string what = Entry.Fastener ?? (Entry.OfSource is null ? Entry.Kind.ToString() : $"{Entry.Kind} {Entry.OfSource} #{Entry.OfSequence}");
        return $"{what}{(Step is null ? "" : ", " + Step.Name)}: {JobFinding.Sentence(Verdict, Findings)}{(WasLate ? " (late: put in its place)" : "")}";
    }

    private string? InJob(JobReason reason) => reason switch
    {
        JobReason.NotNext when _open == _outcome.Step && _next >= 0 => $"{_program.Fasteners[_next]} is next",
        JobReason.StepNotReached when _program.Order != TighteningOrder.Free && _open >= 0 && _open != _outcome.Step => $"{_program.Steps[_open].Name} is not finished",
        JobReason.UnknownStep when Entry.Step is not null && _program.TryFindStep(Entry.Step, out _) => "the step does not tighten this fastener",
        JobReason.UnknownStep => "the program has no such step",
        _ => null,
    };
}
