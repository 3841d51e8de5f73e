namespace Fastening;

/// <summary>The verdict on an entry of a job's log, from the best to the worst of those that count.</summary>
public enum JobVerdict
{
    /// <summary>The number of the entry is not new, and it may well be a repeat, or one that came too late: it changed nothing.</summary>
    Ignored = 0,

    /// <summary>Accepted, with nothing to say.</summary>
    Accepted = 1,

    /// <summary>Accepted, with a remark that somebody has to look at.</summary>
    Flagged = 2,

    /// <summary>Not accepted; it is recorded with every reason.</summary>
    Rejected = 3,
}
