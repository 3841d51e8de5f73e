namespace Fastening;

/// <summary>What the merge of the sources says of a line, before the job looks at it.</summary>
[Flags]
internal enum LineFlags : byte
{
    None = 0,

    /// <summary>A later entry withdraws it.</summary>
    Withdrawn = 1,

    /// <summary>Another entry holds its number.</summary>
    Reused = 2,

    /// <summary>Its clock tells no time.</summary>
    TimeUntold = 4,

    /// <summary>Its clock was set back.</summary>
    ClockWentBack = 8,

    /// <summary>It withdraws a withdrawal, which stays.</summary>
    Void = 16,
}
