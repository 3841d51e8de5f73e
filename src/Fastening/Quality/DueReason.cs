namespace Fastening.Quality;

/// <summary>Why a tool is due for calibration.</summary>
public enum DueReason
{
    /// <summary>It is not due.</summary>
    NotDue = 0,

    /// <summary>The interval is over.</summary>
    Interval = 1,

    /// <summary>The cycles are used up.</summary>
    Cycles = 2,

    /// <summary>Both at once.</summary>
    IntervalAndCycles = 3,
}
