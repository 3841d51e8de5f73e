namespace Fastening;

/// <summary>What an entry of a job's log reports.</summary>
public enum JobEntryKind
{
    /// <summary>A fastener was tightened: a reading.</summary>
    Tightened = 0,

    /// <summary>A fastener was loosened; it begins again with its first step.</summary>
    Loosened = 1,

    /// <summary>A fastener is left out of a step.</summary>
    Skipped = 2,

    /// <summary>The last entry was a mistake and is taken back.</summary>
    Undone = 3,
}
