namespace Fastening;

/// <summary>What a job keeps of one fastener in one step: where it stands, and the reading it stands on.</summary>
internal readonly record struct StepCell(FastenerStatus Status)
{
    public int Readings { get; init; }

    /// <summary>The reading on which the status rests; null when there is none.</summary>
    public JobEntry? Reading { get; init; }

    public ReasonSet Reasons { get; init; }

    /// <summary>The greatest rotation that a reading told of since the last loosening, accepted or not; 0 when none did.</summary>
    public double MostDegrees { get; init; }

    public string? SkipReason { get; init; }

    /// <summary>Whether the job may go on: done, or skipped.</summary>
    public bool IsSettled => Status is FastenerStatus.Done or FastenerStatus.Skipped;
}
