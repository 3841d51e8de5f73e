using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>One fastener in one step: where it stands, and the pull it stands on.</summary>
public sealed class StepState
{
    private readonly TighteningProgram _program;
    private readonly StepCell _cell;

    internal StepState(TighteningProgram program, int step, string fastener, in StepCell cell)
    {
        _program = program;
        _cell = cell;
        Step = program.Steps[step];
        Fastener = fastener;
    }

    /// <summary>The step.</summary>
    public TighteningStep Step { get; }

    /// <summary>The name of the fastener.</summary>
    public string Fastener { get; }

    /// <summary>Where it stands.</summary>
    public FastenerStatus Status => _cell.Status;

    /// <summary>How many pulls it had in this step, those before a loosening included, those withdrawn not.</summary>
    public int Pulls => _cell.Pulls;

    /// <summary>The rotation in this step since the fastener was loosened, of pulls that count.</summary>
    public Angle Turn => Si.Angle(_cell.Turn);

    /// <summary>The pull that was accepted, or the last one that was not; null when there is none since the last loosening.</summary>
    public JobEntry? Pull => _cell.Pull;

    /// <summary>What was said of that pull.</summary>
    public IReadOnlyList<JobFinding> Findings =>
        JobFinding.ListOf(_cell.Reasons, _program.Effects, Step, _cell.Pull is JobEntry pull ? pull.Figures with { Turn = _cell.Turn } : null);

    /// <summary>The last skip, with who and why; null when it never was skipped.</summary>
    public JobEntry? Skip => _cell.Skip;

    internal bool HasFindings => !_cell.Reasons.IsEmpty;

    /// <inheritdoc />
    public override string ToString() =>
        $"{Fastener}, {Step.Name}: {Status}, pulls: {Pulls}{(Findings.Count == 0 ? "" : "; " + string.Join("; ", Findings.Select(found => found.Fact)))}";
}
