namespace Fastening;

/// <summary>What a job keeps of one fastener in one step: where it stands, and the pull it stands on.</summary>
internal struct StepCell(FastenerStatus status)
{
    public FastenerStatus Status = status;

    /// <summary>A pull stopped short since the fastener was loosened, and no later one was read in motion.</summary>
    public bool StoppedShort;

    public int Pulls;

    /// <summary>The rotation of the step since the fastener was loosened.</summary>
    public double Turn;

    public ReasonSet Reasons;

    /// <summary>The pull on which the status rests; null when there is none.</summary>
    public JobEntry? Pull;

    /// <summary>The last skip; null when there was none.</summary>
    public JobEntry? Skip;

    /// <summary>Whether the job may go on: done, or skipped.</summary>
    public readonly bool IsSettled => Status is FastenerStatus.Done or FastenerStatus.Skipped;
}
