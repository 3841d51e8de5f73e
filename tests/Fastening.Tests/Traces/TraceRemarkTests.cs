using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>Each remark is made where the curve was made to deserve it, and not where it was not.</summary>
public class TraceRemarkTests
{
    private static readonly KnownCurve Plain = new()
    {
        Prevailing = 4,
        Slope = 0.8,
        StartUp = 2,
        RunDown = 150,
        Toe = 6,
        Elastic = 60,
    };

    private static readonly TraceOptions Options = TraceOptions.SnugByProjection(Angle.FromDegrees(8))
        .WithStickSlip(Torque.FromNewtonMeters(4)).WithReversal(Angle.FromDegrees(1)).WithTorqueDrop(Torque.FromNewtonMeters(5));

    [Fact]
    public void A_good_curve_has_none()
    {
        TraceAnalysis analysis = Record(new Recorder()).Analyze(Options);
        Assert.Empty(analysis.Remarks);
        Assert.All(Enum.GetValues<TraceRemarkKind>(), kind => Assert.False(analysis.Has(kind)));
    }

    [Theory]
    [InlineData(0.04, false)]
    [InlineData(0.16, true)]
    public void Stick_slip_is_what_swings_more_than_stated(double share, bool isFlagged)
    {
        // Peak torque is 54.4 N·m: saw-teeth of 2.2 N·m and 8.7 N·m against 4 N·m; the noise has none of that size.
        TighteningTrace trace = Record(new Recorder { StickSlip = share, Noise = 0.004 });
        TraceAnalysis analysis = trace.Analyze(Options);
        Assert.Equal(isFlagged, analysis.Has(TraceRemarkKind.StickSlip));
        Assert.False(trace.Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(8))).Has(TraceRemarkKind.StickSlip));
        if (isFlagged) Assert.InRange(analysis.Remarks.Single(r => r.Kind == TraceRemarkKind.StickSlip).At.Angle!.Value.Degrees, 150, 160);
    }

    [Fact]
    public void A_reversal_counts_before_shut_off_only()
    {
        Assert.False(Record(new Recorder { Recoil = 4 }).Analyze(Options).Has(TraceRemarkKind.Reversal));
        (double[] times, double[] angles, double[] torques) = Columns(Plain, 0.1);
        for (int i = 1700; i < 1720; i++) angles[i] -= 3;
        TraceAnalysis analysis = TighteningTrace.FromSamples(times, angles, torques).Analyze(Options);
        Assert.Equal(1700, analysis.Remarks.Single(r => r.Kind == TraceRemarkKind.Reversal).At.Index);
        Close.To(0.8, analysis.ElasticRegion!.Slope.NewtonMetersPerDegree, 0.02);
    }

    [Fact]
    public void A_torque_that_falls_and_stays_down_is_a_drop_and_an_early_peak()
    {
        (double[] times, double[] angles, double[] torques) = Columns(Plain, 0.1);
        int broken = 1900;
        for (int i = broken; i < torques.Length; i++) torques[i] = 12;
        TraceAnalysis analysis = TighteningTrace.FromSamples(times, angles, torques).Analyze(Options);
        Assert.Equal(190, analysis.Remarks.Single(r => r.Kind == TraceRemarkKind.TorqueDrop).At.Angle!.Value.Degrees, 8.0);
        Assert.Equal(190, analysis.Remarks.Single(r => r.Kind == TraceRemarkKind.EarlyPeak).At.Angle!.Value.Degrees, 8.0);
        Assert.Equal(broken - 1, analysis.Peak.Index);
        Assert.Equal(angles[^1], analysis.ShutOff.Angle!.Value.Degrees);
        Close.To(0.8, analysis.ElasticRegion!.Slope.NewtonMetersPerDegree, 0.02);
    }

    [Fact]
    public void A_plateau_is_no_early_peak()
    {
        KnownCurve curve = Plain with { Knee = 6, PlateauShare = 0, Plateau = 60 };
        for (ulong seed = 0; seed < 20; seed++) Assert.False(new Recorder().Record(curve, new Dice(seed)).Analyze(Options).Has(TraceRemarkKind.EarlyPeak));
    }

    [Fact]
    public void A_fastener_that_never_seats_has_no_elastic_region()
    {
        for (ulong seed = 0; seed < 50; seed++)
        {
            KnownCurve curve = Plain with { Slope = 1e-6, Toe = 1, Elastic = 300 };
            TraceAnalysis analysis = new Recorder { Noise = 0.05 }.Record(curve, new Dice(seed)).Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(8)));
            Assert.True(analysis.Has(TraceRemarkKind.NoElasticRegion), analysis.ToString());
            Assert.Null(analysis.ElasticRegion);
            Assert.Null(analysis.Snug);
            Assert.Null(analysis.YieldOnset);
        }
    }

    [Fact]
    public void A_record_that_begins_on_the_rise_has_no_run_down_but_the_running_torque_can_be_stated()
    {
        (double[] times, double[] angles, double[] torques) = Columns(Plain, 0.1);
        var memory = new ReadOnlyMemory<double>[] { times.AsMemory(1600), angles.AsMemory(1600), torques.AsMemory(1600) };
        TighteningTrace trace = TighteningTrace.FromSamples(memory[0], memory[1], memory[2]);
        TraceAnalysis analysis = trace.Analyze(Options);
        Assert.True(analysis.Has(TraceRemarkKind.NoRunDown));
        Assert.Null(analysis.Snug);
        Assert.Null(analysis.RotationPastSnug);

        // The line meets 20 N·m at 150 + 3 + (20 − 4)/0.8 = 173°.
        TraceAnalysis stated = trace.Analyze(Options.WithRunningTorque(Torque.FromNewtonMeters(20)));
        Assert.Equal(173, stated.Snug!.Angle!.Value.Degrees, 0.2);
        Assert.Equal(angles[^1] - 173, stated.RotationPastSnug!.Value.Degrees, 0.2);
    }

    [Fact]
    public void A_spike_does_not_move_the_line()
    {
        (double[] times, double[] angles, double[] torques) = Columns(Plain, 0.1);
        torques[1750] = 400;
        torques[1900] = -300;
        TraceAnalysis analysis = TighteningTrace.FromSamples(times, angles, torques).Analyze(Options);
        Assert.Equal(1750, analysis.Peak.Index);
        Close.To(0.8, analysis.ElasticRegion!.Slope.NewtonMetersPerDegree, 0.005);
    }

    private static TighteningTrace Record(Recorder recorder) => recorder.Record(Plain, new Dice(3));

    private static (double[] Times, double[] Angles, double[] Torques) Columns(KnownCurve curve, double step)
    {
        double[] angles = [.. Enumerable.Range(0, (int)(curve.End / step) + 1).Select(i => i * step)];
        return ([.. angles.Select(a => a / 90)], angles, [.. angles.Select(curve.TorqueAt)]);
    }
}
