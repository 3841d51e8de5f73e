using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>The written rule of misreading on the measured runs, at four smoothing windows, and the rule itself.</summary>
public class MisreadingTests
{
    [Theory]
    [InlineData(5)]
    [InlineData(8)]
    [InlineData(12)]
    [InlineData(20)]
    public void No_measured_run_is_misread_without_a_doubt(double window) => Assert.All(
        MeasuredRun.All, run =>
        {
            TraceAnalysis analysis = run.Trace.Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(window)));
            Assert.Equal(TraceDoubts.None, Misreading.Of(run.Trace, analysis) & ~analysis.Doubts);
        });

    [Fact]
    public void At_least_thirty_measured_runs_are_read_and_ten_without_a_doubt_about_snug_and_slope()
    {
        MeasuredCount count = MeasuredCount.At(8);
        Assert.True(count.Read >= 30, $"{count}");
        Assert.True(count.Undoubted >= 8, $"{count}");
        Assert.InRange(count.Misread, 0, 2);
    }

    [Fact]
    public void Loosened_runs_say_so_and_are_not_read()
    {
        foreach (MeasuredRun run in MeasuredRun.All.Where(run => run.IsLoosening))
        {
            TraceAnalysis analysis = run.Trace.Analyze(run.Options);
            Assert.True(analysis.Has(TraceRemarkKind.WrongSense));
            Assert.Equal(TraceDoubts.All, analysis.Doubts);
            Assert.Equal(run.Torques.Min(), analysis.Peak.Torque.NewtonMeters);
            Assert.Null(analysis.ElasticRegion);
            Assert.Null(analysis.Snug);
            Assert.Null(analysis.YieldOnset);
        }
    }

    [Fact]
    public void The_rule_sees_what_no_reader_would_sign()
    {
        FeaturedTrace known = FeaturedTrace.Random(TraceFeature.None, 0);
        TighteningTrace trace = known.Trace;
        TraceAnalysis right = trace.Analyze(FeaturedTrace.Options);
        double middle = 0.5 * (right.ElasticRegion!.Start.Angle!.Value.Degrees + right.ElasticRegion.End.Angle!.Value.Degrees);
        int index = 0;
        while (trace.AnglesDegrees.Span[index] < middle) index++;
        var there = new TracePoint(index, 0, middle, trace.TorquesNewtonMeters.Span[index]);
        Assert.Equal(TraceDoubts.None, Misreading.Of(trace, right));
        Assert.Equal(TraceDoubts.Snug, Misreading.Of(trace, With(trace, right, found => found.Snug = there)));
        Assert.Equal(TraceDoubts.RunningTorque, Misreading.Of(trace, With(trace, right, found => found.RunDown = new RunDown(there, there, 1, 2))));
        Assert.Equal(TraceDoubts.Yield, Misreading.Of(trace, With(trace, right, found => found.YieldOnset = there)));
        var steep = new RobustLine(3 * known.Truth.Slope, middle, there.TorqueSi, 0);
        Assert.Equal(TraceDoubts.Slope, Misreading.Of(trace, With(
            trace, right, found => found.Elastic = new ElasticRegion(right.ElasticRegion.Start, right.ElasticRegion.End, new ElasticFit(0, 1, 0, 1, steep, 0, false)))));
    }

    private static TraceAnalysis With(TighteningTrace trace, TraceAnalysis right, Action<TraceFindings> change)
    {
        var found = new TraceFindings
        {
            Irregularities = right.Irregularities,
            Peak = right.Peak,
            ShutOff = right.ShutOff,
            Final = right.Final,
            Elastic = right.ElasticRegion,
            Snug = right.Snug,
            RunDown = right.RunDown,
            YieldOnset = right.YieldOnset,
        };
        change(found);
        return new TraceAnalysis(trace, right.Options, found);
    }
}
