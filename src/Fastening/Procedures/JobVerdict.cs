namespace Fastening;

/// <summary>The verdict on an entry of a job's log.</summary>
public enum JobVerdict
{
    /// <summary>A repeat of a line that the job has: it changes nothing.</summary>
    Ignored = 0,

    /// <summary>Accepted, with nothing to say.</summary>
    Accepted = 1,

    /// <summary>Accepted, with a remark.</summary>
    Remarked = 2,

    /// <summary>Not accepted; it is recorded with every reason.</summary>
    Rejected = 3,

    /// <summary>Older than what the run still holds: it counts when the log is replayed, and nothing conforms before.</summary>
    NeedsReplay = 4,
}
