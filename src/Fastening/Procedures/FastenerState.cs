using System.Collections.ObjectModel;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The facts of one fastener: what it has borne, what it must undergo before it counts, who decided, and where it stands in each step.</summary>
/// <example><code>FastenerState state = job.StateOf("B3");
/// if (state.MustBeLoosened) Console.WriteLine(state);</code></example>
public sealed class FastenerState
{
    private readonly TighteningProgram _program;
    private readonly FastenerLedger _row;
    private readonly JobOutcome? _cause;
    private IReadOnlyList<StepState>? _steps;

    internal FastenerState(TighteningProgram program, int fastener, FastenerLedger row, bool isWaiting)
    {
        _program = program;
        _row = row;
        _cause = row.Cause;
        Fastener = program.Fasteners[fastener];
        IsWaitingForLines = isWaiting && MustBeLoosened;
    }

    /// <summary>The name of the fastener.</summary>
    public string Fastener { get; }

    /// <summary>Where it stands in every step, in the order of the program.</summary>
    public IReadOnlyList<StepState> Steps => _steps ??= Array.AsReadOnly(_row.Cells.Select((cell, s) => new StepState(_program, s, Fastener, cell)).ToArray());

    /// <summary>Whether no pull of it counts before it is loosened.</summary>
    public bool MustBeLoosened => _row.Run.Meets(_program.Effects.Loosening);

    /// <summary>Whether it seems to need loosening while lines are missing: get the lines first, they may show why.</summary>
    public bool IsWaitingForLines { get; }

    /// <summary>Whether it cannot conform before a person has looked at it and decided.</summary>
    public bool IsToLookAt => _row.Unsettled.Meets(_program.Effects.LookedAt);

    /// <summary>Why it must be loosened.</summary>
    public IReadOnlyList<JobFinding> ToLoosenFor => Found(_row.Run & _program.Effects.Loosening, JobEffect.Loosen);

    /// <summary>Why it must be looked at.</summary>
    public IReadOnlyList<JobFinding> ToLookAtFor => Found(_row.Unsettled & _program.Effects.LookedAt, JobEffect.LookAt);

    /// <summary>The last entry that asked for a loosening or a look; null when none did since it was replaced.</summary>
    public JobEntry? Cause => _cause?.Entry;

    /// <summary>Everything that was ever said of it since it was replaced, by number.</summary>
    public IReadOnlyList<JobReason> Ever =>
        Array.AsReadOnly(_row.Ever.ToList().Select(found => found.Reason).Distinct().OrderBy(reason => reason).ToArray());

    /// <summary>The highest torque since it was loosened, of pulls that count.</summary>
    public Torque Peak => Si.Torque(_row.Peak);

    /// <summary>The highest torque that any entry stated since it was replaced, loosenings and withdrawals notwithstanding.</summary>
    public Torque PeakEver => Si.Torque(_row.PeakEver);

    /// <summary>The rotation past snug since it was loosened, of pulls that count.</summary>
    public Angle Turn => Si.Angle(_row.Turn);

    /// <summary>The rotation past snug since it was replaced, of pulls that count.</summary>
    public Angle TurnEver => Si.Angle(_row.TurnEver);

    /// <summary>What is known of it, as one number: give it to <see cref="JobEntry.Accepted"/>. When anything is added or changed, it is another number.</summary>
    public long Facts => (long)_row.Facts;

    /// <summary>How often it was loosened since it was replaced.</summary>
    public int Loosenings => _row.Loosenings;

    /// <summary>How often it was replaced.</summary>
    public int Replacements => _row.Replacements;

    /// <summary>The last decision that counts, with who and why; null when there is none since it was replaced.</summary>
    public JobEntry? Decision => _row.Decision;

    /// <summary>The last loosening, with why; null when there is none since it was replaced.</summary>
    public JobEntry? Loosening => _row.Loosening;

    /// <summary>Whether all its steps are done, and it is neither to be loosened nor to be looked at.</summary>
    public bool Conforms =>
        !MustBeLoosened && !IsToLookAt && Array.TrueForAll(_row.Cells, cell => cell.Status is FastenerStatus.Done or FastenerStatus.NotInStep);

    /// <summary>Where it stands in one step.</summary>
    /// <param name="step">The name of the step.</param>
    /// <returns>Its state; <see cref="FastenerStatus.NotInStep"/> when the step does not tighten it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="step"/> is null.</exception>
    /// <exception cref="ArgumentException">The program has no such step.</exception>
    /// <example><code>FastenerStatus status = job.StateOf("B3").In("full").Status;</code></example>
    public StepState In(string step) => Steps[_program.StepIndex(step)];

    /// <inheritdoc />
    public override string ToString()
    {
        string steps = string.Join(", ", Steps.Where(step => step.Status != FastenerStatus.NotInStep).Select(step => $"{step.Step.Name} {step.Status}"));
        string loosen = !MustBeLoosened ? "" : $"; {(IsWaitingForLines ? "waiting for lines" : "must be loosened")}: {Facted(ToLoosenFor)}";
        string look = !IsToLookAt ? "" : $"; to be looked at: {Facted(ToLookAtFor)}";
        return $"{Fastener}: {steps}{loosen}{look}{(Loosenings == 0 ? "" : Print.Text($"; loosened {Loosenings} times"))}{(Decision is null ? "" : $"; accepted by {Decision.Operator}: {Decision.Reason}")}";
    }

    /// <summary>With the figures of the entry that gave the reason last, where it is still known, and with the effect that is not cured yet.</summary>
    private ReadOnlyCollection<JobFinding> Found(ReasonSet reasons, JobEffect effect)
    {
        ReasonSet told = reasons & (_cause?.Reasons ?? default);
        TighteningStep? step = _cause is { Step: >= 0 } cause ? _program.Steps[cause.Step] : null;
        return Array.AsReadOnly(JobFinding.ListOf(told, _program.Effects, step, _cause?.Figures)
            .Concat(JobFinding.ListOf(reasons.Without(told), _program.Effects, null, null)).OrderBy(found => found.Reason)
            .Select(found => new JobFinding(found.Reason, effect, found.IsWatched, found.Fact)).ToArray());
    }

    private static string Facted(IReadOnlyList<JobFinding> findings) => string.Join("; ", findings.Select(found => found.Fact));
}
