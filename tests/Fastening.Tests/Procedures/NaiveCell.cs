namespace Fastening.Tests.Procedures;

/// <summary>One fastener in one step, in the naive model.</summary>
public sealed class NaiveCell
{
    public FastenerStatus Status { get; set; } = FastenerStatus.Open;

    public int Readings { get; set; }

    public JobEntry? Reading { get; set; }

    public HashSet<JobReason> Reasons { get; set; } = [];

    public double Most { get; set; }

    public string? SkipReason { get; set; }

    public bool Settled => Status is FastenerStatus.Done or FastenerStatus.Skipped;
}
