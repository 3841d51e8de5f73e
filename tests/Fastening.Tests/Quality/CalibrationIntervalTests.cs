using Fastening.Quality;

namespace Fastening.Tests.Quality;

public class CalibrationIntervalTests
{
    private static readonly DateTimeOffset FirstUse = new(2026, 3, 1, 6, 0, 0, TimeSpan.Zero);

    /// <summary>12 months or 5 000 cycles, whichever is first: ISO 6789-2:2017, from memory.</summary>
    [Theory]
    [InlineData(0, 0, DueReason.NotDue)]
    [InlineData(364, 4999, DueReason.NotDue)]
    [InlineData(365, 0, DueReason.Interval)]
    [InlineData(1, 5000, DueReason.Cycles)]
    [InlineData(400, 6000, DueReason.IntervalAndCycles)]
    public void Whichever_is_first(int days, int cycles, DueReason reason)
    {
        DueStatus status = CalibrationInterval.Iso6789.StatusAt(FirstUse, cycles, FirstUse.AddDays(days));

        Assert.Equal(reason, status.Reason);
        Assert.Equal(reason != DueReason.NotDue, status.IsDue);
        Assert.Equal(Math.Max(0, 5000 - cycles), status.CyclesLeft);
        Assert.Equal(new DateTimeOffset(2027, 3, 1, 6, 0, 0, TimeSpan.Zero), status.DueBy);
    }

    [Fact]
    public void It_says_so_in_words()
    {
        Assert.Equal("not due: by 2027-03-01 or after 200 more cycles, whichever is first",
            CalibrationInterval.Iso6789.StatusAt(FirstUse, 4800, FirstUse.AddDays(7)).ToString());
        Assert.Equal("due: the cycles are used up", CalibrationInterval.Iso6789.StatusAt(FirstUse, 5000, FirstUse).ToString());
        Assert.Equal("6 months or 2000 cycles, whichever is first", new CalibrationInterval(6, 2000).ToString());
    }

    [Fact]
    public void The_same_moment_in_another_time_zone_is_the_same_moment()
    {
        // First used at six in the morning: due from the beginning of that day a year later, in the offset of the first use.
        var due = new DateTimeOffset(2027, 3, 1, 0, 0, 0, TimeSpan.Zero);

        Assert.True(CalibrationInterval.Iso6789.StatusAt(FirstUse, 0, due.ToOffset(TimeSpan.FromHours(-8))).IsDue);
        Assert.False(CalibrationInterval.Iso6789.StatusAt(FirstUse, 0, due.AddMinutes(-1).ToOffset(TimeSpan.FromHours(9))).IsDue);
    }

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new CalibrationInterval(0, 100));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CalibrationInterval(12, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => CalibrationInterval.Iso6789.StatusAt(FirstUse, -1, FirstUse));
        Assert.Throws<ArgumentOutOfRangeException>(() => CalibrationInterval.Iso6789.StatusAt(FirstUse, 1, FirstUse.AddDays(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CalibrationInterval.Iso6789.StatusAt(new DateTimeOffset(9950, 1, 1, 0, 0, 0, TimeSpan.Zero), 1, DateTimeOffset.MaxValue));
    }
}
