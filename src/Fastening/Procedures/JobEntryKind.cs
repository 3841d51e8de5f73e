namespace Fastening;

/// <summary>What an entry of a job's log reports. The numbers are part of the contract.</summary>
public enum JobEntryKind
{
    /// <summary>A fastener was pulled, or looked at: a reading.</summary>
    Pulled = 0,

    /// <summary>A fastener was loosened; it begins again with its first step.</summary>
    Loosened = 1,

    /// <summary>A fastener is left out of a step.</summary>
    Skipped = 2,

    /// <summary>A fastener was replaced by a new one.</summary>
    Replaced = 3,

    /// <summary>A person has looked at a fastener and accepts what is known of it.</summary>
    Accepted = 4,

    /// <summary>An earlier entry was a mistake.</summary>
    Withdrawn = 5,

    /// <summary>Numbers that are missing have a reason.</summary>
    Explained = 6,

    /// <summary>A note; the last line of a source shows that none is lost behind it.</summary>
    Noted = 7,
}
