using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>Parts of a trace: by samples, by points, and columns written out.</summary>
public class TraceSliceTests
{
    [Fact]
    public void A_part_holds_its_samples_on_the_clock_of_the_trace()
    {
        TighteningTrace trace = TighteningTrace.FromSamples([0, 1, 2, 3, 4], [0, 10, 20, 30, 40], [1, 2, 4, 8, 16]).WithForces([0, 0, 100, 200, 300]);
        TighteningTrace part = trace.Slice(1, 3);
        Assert.Equal(trace.TimesSeconds[1..4].ToArray(), part.TimesSeconds.ToArray());
        Assert.Equal(trace.AnglesDegrees[1..4].ToArray(), part.AnglesDegrees.ToArray());
        Assert.Equal(trace.TorquesNewtonMeters[1..4].ToArray(), part.TorquesNewtonMeters.ToArray());
        Assert.Equal(trace.ForcesNewtons[1..4].ToArray(), part.ForcesNewtons.ToArray());
        Assert.Equal(part.ToString(), trace[1..^1].ToString());
        Assert.True(part.TorquesNewtonMeters.Equals(trace.TorquesNewtonMeters.Slice(1, 3)), "the memory is not copied");
    }

    [Fact]
    public void A_part_of_a_steady_trace_keeps_its_times()
    {
        TighteningTrace trace = TighteningTrace.FromTorques(Duration.FromSeconds(2), Duration.FromSeconds(0.25), [1, 2, 3, 4, 5, 6]);
        TighteningTrace part = trace[2..];
        Assert.Equal(4, part.Count);
        for (int i = 0; i < part.Count; i++) Assert.Equal(trace.TimeAt(i + 2), part.TimeAt(i));
        Assert.False(part.HasAngles || part.HasForces);
    }

    [Fact]
    public void A_part_between_two_points_holds_both()
    {
        KnownTrace known = KnownTrace.All[0];
        TraceAnalysis analysis = known.Analysis;
        TighteningTrace part = known.Trace.Slice(analysis.Snug!, analysis.ShutOff);
        Assert.Equal(analysis.ShutOff.Index - analysis.Snug!.Index + 1, part.Count);
        Assert.Equal(analysis.Snug.Time, part.TimeAt(0));
        Assert.Equal(analysis.ShutOff.Time, part.TimeAt(part.Count - 1));
    }

    [Fact]
    public void What_is_no_part_is_refused_by_name()
    {
        TighteningTrace trace = KnownTrace.All[0].Trace;
        TraceAnalysis analysis = KnownTrace.All[0].Analysis, other = KnownTrace.All[1].Analysis;
        Assert.Equal("start", Assert.Throws<ArgumentOutOfRangeException>(() => trace.Slice(-1, 5)).ParamName);
        Assert.Equal("start", Assert.Throws<ArgumentOutOfRangeException>(() => trace.Slice(trace.Count - 1, 2)).ParamName);
        Assert.Equal("length", Assert.Throws<ArgumentOutOfRangeException>(() => trace.Slice(5, 1)).ParamName);
        Assert.Equal("length", Assert.Throws<ArgumentOutOfRangeException>(() => trace.Slice(5, int.MaxValue)).ParamName);
        Assert.Equal("to", Assert.Throws<ArgumentException>(() => trace.Slice(analysis.ShutOff, analysis.Snug!)).ParamName);
        Assert.Equal("to", Assert.Throws<ArgumentException>(() => trace.Slice(analysis.Snug!, analysis.Snug!)).ParamName);
        Assert.Equal("from", Assert.Throws<ArgumentException>(() => trace.Slice(other.Snug!, analysis.ShutOff)).ParamName);
        Assert.Equal("from", Assert.Throws<ArgumentNullException>(() => trace.Slice(null!, analysis.ShutOff)).ParamName);
    }

    /// <summary>It compiles, for every call that takes a column of numbers.</summary>
    [Fact]
    public void Columns_may_be_written_out()
    {
        Duration start = Duration.Zero, interval = Duration.FromSeconds(1);
        Assert.Equal(3, TighteningTrace.FromSamples([0, 1, 2], [0, 2, 4], [1, 3, 6]).Count);
        Assert.Equal(3, TighteningTrace.FromSamples(start, interval, [0, 2, 4], [1, 3, 6]).Count);
        Assert.Equal(3, TighteningTrace.FromTorques([0, 1, 2], [1, 3, 6]).Count);
        Assert.True(TighteningTrace.FromTorques(start, interval, [1, 3, 6]).WithForces([0, 800, 2000]).HasForces);
        Assert.Equal(3, SampleStatistics.Of<Torque>([1.0, 1.2, 1.1]).Count);
        Assert.Equal(3, SampleStatistics.Of([Torque.FromNewtonMeters(1), Torque.FromNewtonMeters(2), Torque.FromNewtonMeters(4)]).Count);
        Assert.Equal("timesSeconds", Assert.Throws<ArgumentNullException>(() => TighteningTrace.FromTorques(null!, [1.0, 2.0])).ParamName);
        var verdicts = new Conformity[2];
        ToleranceWindow.FromLimits(Torque.FromNewtonMeters(1), Torque.FromNewtonMeters(2)).Classify([1.5, 3.0], verdicts);
        Assert.Equal([Conformity.Within, Conformity.Above], verdicts);
    }
}
