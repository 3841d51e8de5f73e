using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>How long and how often a tool is used before it is calibrated again, whichever is first.</summary>
/// <remarks>
/// The owner of the tool sets it; <see cref="Iso6789"/> is what the standard says where no other is set, from memory and provisional. The time
/// runs from the first use after a calibration. After overload, repair or mishandling a tool is due at once, whatever this says.
/// </remarks>
/// <example><code>DueStatus status = CalibrationInterval.Iso6789.StatusAt(firstUse, cycles: 4_800, at: today);</code></example>
public sealed class CalibrationInterval
{
    private static readonly Interval MonthsDomain = new(1, 120);
    private static readonly Interval CyclesDomain = new(1, 1e9);
    private static readonly Interval CyclesDoneDomain = new(0, 1e9);

    /// <summary>An interval.</summary>
    /// <param name="months">Months from first use, 1 to 120.</param>
    /// <param name="cycles">Cycles, 1 to 10⁹.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>var interval = new CalibrationInterval(months: 6, cycles: 2_000);</code></example>
    public CalibrationInterval(int months, int cycles)
    {
        MonthsDomain.Check((double)months, name: nameof(months));
        CyclesDomain.Check((double)cycles, name: nameof(cycles));
        Months = months;
        Cycles = cycles;
    }

    /// <summary>12 months or 5 000 cycles (ISO 6789-2:2017, probably §4.1; from memory, provisional).</summary>
    public static CalibrationInterval Iso6789 { get; } = new(12, 5000);

    /// <summary>Months from first use.</summary>
    public int Months { get; }

    /// <summary>Cycles.</summary>
    public int Cycles { get; }

    /// <summary>Whether a tool is due.</summary>
    /// <param name="firstUse">First use after the last calibration; before the year 9900.</param>
    /// <param name="cycles">Cycles since then, 0 or more.</param>
    /// <param name="at">The moment of the question; no clock is read.</param>
    /// <returns>Due or not, by what, and what is left. A tool is due from the day its interval ends and when the last cycle is used.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or <paramref name="at"/> is before <paramref name="firstUse"/>.</exception>
    /// <example><code>new CalibrationInterval(6, 2_000).StatusAt(firstUse, 1_999, today).IsDue     // false within the six months</code></example>
    public DueStatus StatusAt(DateTimeOffset firstUse, int cycles, DateTimeOffset at)
    {
        CyclesDoneDomain.Check((double)cycles, name: nameof(cycles));
        if (firstUse.Year >= 9900)
        {
            throw new ArgumentOutOfRangeException(nameof(firstUse), Print.Text($"firstUse is {firstUse:yyyy-MM-dd}; it must be before the year 9900."));
        }

        if (at < firstUse)
        {
            throw new ArgumentOutOfRangeException(nameof(at), Print.Text(
                $"at is {at:yyyy-MM-dd HH:mm zzz}; it must not be before firstUse, {firstUse:yyyy-MM-dd HH:mm zzz}."));
        }

        DateTimeOffset dueBy = firstUse.AddMonths(Months);
        bool overTime = at >= new DateTimeOffset(dueBy.Date, dueBy.Offset), overCycles = cycles >= Cycles;
        DueReason reason = overTime && overCycles ? DueReason.IntervalAndCycles
            : overTime ? DueReason.Interval
            : overCycles ? DueReason.Cycles : DueReason.NotDue;
        return new DueStatus(reason, dueBy, Math.Max(0, Cycles - cycles));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Months} months or {Cycles} cycles, whichever is first");
}
