using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>Whether a tool is due for calibration, and by what.</summary>
/// <example><code>DueStatus status = interval.StatusAt(firstUse, cycles: 4_800, at: today);
/// Console.WriteLine(status);     // not due: by 2027-03-01 or after 200 more cycles, whichever is first</code></example>
public sealed class DueStatus
{
    internal DueStatus(DueReason reason, DateTimeOffset dueBy, int cyclesLeft)
    {
        Reason = reason;
        DueBy = dueBy;
        CyclesLeft = cyclesLeft;
    }

    /// <summary>Whether it is due.</summary>
    public bool IsDue => Reason != DueReason.NotDue;

    /// <summary>By what it is due.</summary>
    public DueReason Reason { get; }

    /// <summary>When the interval ends; cycles may end it sooner.</summary>
    public DateTimeOffset DueBy { get; }

    /// <summary>Cycles left, 0 when they are used up.</summary>
    public int CyclesLeft { get; }

    /// <inheritdoc />
    public override string ToString() => Reason switch
    {
        DueReason.Interval => Print.Text($"due: the interval ended on {DueBy:yyyy-MM-dd}"),
        DueReason.Cycles => "due: the cycles are used up",
        DueReason.IntervalAndCycles => Print.Text($"due: the interval ended on {DueBy:yyyy-MM-dd} and the cycles are used up"),
        _ => Print.Text($"not due: by {DueBy:yyyy-MM-dd} or after {CyclesLeft} more cycles, whichever is first"),
    };
}
