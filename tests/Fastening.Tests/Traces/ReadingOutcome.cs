namespace Fastening.Tests.Traces;

/// <summary>How a record was read.</summary>
internal enum ReadingOutcome
{
    Right,
    RightDoubted,
    WrongDoubted,
    NotRead,

    /// <summary>A finding is off, or a yield missing, and no remark puts it in doubt.</summary>
    SilentlyWrong,
}
