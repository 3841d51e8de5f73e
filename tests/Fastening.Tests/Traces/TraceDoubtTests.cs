using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>Each doubt is a remark that names its findings, made where the curve was made to deserve it.</summary>
public class TraceDoubtTests
{
    private static readonly TraceOptions Options = TraceOptions.SnugByProjection(Angle.FromDegrees(8));

    [Fact]
    public void A_dip_on_the_rise_is_read_through()
    {
        // The line goes on behind the dip: the take-up after it is steeper, and is not the elastic line.
        TraceAnalysis analysis = Read(angle => Line(angle) * (angle is > 172 and < 176 ? 0.5 : 1));
        Assert.Equal(0.8, analysis.ElasticRegion!.Slope.NewtonMetersPerDegree, 0.02);
        Assert.Equal(150, analysis.Snug!.Angle!.Value.Degrees, 0.6);
        Assert.Null(analysis.YieldOnset);
        Assert.Equal(TraceDoubts.Yield, analysis.Doubts);
        Assert.Contains("in doubt: yield", analysis.ToString(), StringComparison.Ordinal);
        Assert.Contains("yield cannot be told", analysis.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(30)]
    [InlineData(44)]
    public void A_torque_cut_flat_is_given_as_yield_in_doubt(double limit)
    {
        var random = new Random(7);
        TraceAnalysis analysis = Read(angle => Math.Min(Line(angle) + 0.3 * (random.NextDouble() - 0.5), limit), end: 230);
        TraceRemark held = analysis.Remarks.Single(remark => remark.Kind == TraceRemarkKind.HeldTorque);
        Assert.Equal(TraceDoubts.Yield, held.Doubts);
        Assert.True((analysis.Doubts & TraceDoubts.Yield) != 0);
        Assert.Equal(150 + (limit - 4) / 0.8, held.At.Angle!.Value.Degrees, 3.0);
        Assert.Contains("range of the sensor", held.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flat_top_that_a_sensor_within_its_range_shows_is_not_held()
    {
        var random = new Random(7);
        TraceAnalysis analysis = Read(angle => Math.Min(Line(angle), 44) + 0.3 * (random.NextDouble() - 0.5), end: 230);
        Assert.NotNull(analysis.YieldOnset);
        Assert.False(analysis.Has(TraceRemarkKind.HeldTorque));
    }

    [Fact]
    public void A_drop_that_stays_is_no_yield_and_doubts_it()
    {
        TraceAnalysis analysis = Read(angle => Line(angle) - (angle > 185 ? 8 : 0));
        Assert.Null(analysis.YieldOnset);
        Assert.True(analysis.Has(TraceRemarkKind.OtherLine));
        Assert.True((analysis.Doubts & TraceDoubts.Yield) != 0);
    }

    [Fact]
    public void A_drop_before_the_region_doubts_the_line()
    {
        TraceAnalysis analysis = Read(angle => Line(angle) - (angle > 164 ? 6 : 0));
        TraceRemark broken = analysis.Remarks.Single(remark => remark.Kind == TraceRemarkKind.BrokenRise);
        Assert.Equal(TraceDoubts.Snug | TraceDoubts.Slope | TraceDoubts.Yield, broken.Doubts);
        Assert.Equal(164, broken.At.Angle!.Value.Degrees, 8.0);
    }

    [Fact]
    public void A_rise_that_bends_all_along_is_doubted_and_the_text_says_what_to_record()
    {
        TraceAnalysis analysis = Read(angle => 4 + 0.01 * Math.Pow(Math.Max(angle - 150, 0), 2));
        Assert.True((analysis.Doubts & (TraceDoubts.Snug | TraceDoubts.Slope)) == (TraceDoubts.Snug | TraceDoubts.Slope));
        Assert.Contains(analysis.Remarks, remark => remark.Advice is not null && remark.ToString().Contains("record", StringComparison.Ordinal));
    }

    [Fact]
    public void An_angle_that_begins_again_at_zero_doubts_everything()
    {
        // The transducer counts from 0° to 360°: the furthest angle is where it wraps, and the yield behind it is not seen.
        double[] turned = [.. Enumerable.Range(0, 2000).Select(i => i * 0.12)];
        TighteningTrace trace = TighteningTrace.FromSamples(
            turned.Select(angle => angle / 60).ToArray(), turned.Select(angle => (angle + 200) % 360).ToArray(), turned.Select(Line).ToArray());
        Assert.Equal(TraceDoubts.All, trace.Analyze(Options).Doubts);
    }

    [Fact]
    public void Few_samples_doubt_everything_and_say_so()
    {
        TraceAnalysis analysis = Read(Line, step: 2.5);
        TraceRemark few = analysis.Remarks.Single(remark => remark.Kind == TraceRemarkKind.FewSamples);
        Assert.Equal(TraceDoubts.All, few.Doubts);
        Assert.Contains("at least four samples", few.ToString(), StringComparison.Ordinal);
        Assert.False(Read(Line, step: 1.5).Has(TraceRemarkKind.FewSamples));
    }

    [Fact]
    public void A_torque_that_falls_away_gives_neither_snug_nor_yield()
    {
        TraceAnalysis analysis = Read(angle => angle < 190 ? Line(angle) : Math.Max(Line(190) - 3 * (angle - 190), 6), end: 260);
        Assert.True(analysis.Has(TraceRemarkKind.FallsAway));
        Assert.Equal(TraceDoubts.All, analysis.Doubts);
        Assert.Null(analysis.Snug);
        Assert.Null(analysis.YieldOnset);
        Assert.NotNull(analysis.ElasticRegion);
    }

    [Fact]
    public void A_yield_close_to_the_end_cannot_be_told()
    {
        // A bolt hardens while it yields; a torque that stays the very same would be doubted as held.
        static double Yielding(double angle) => Line(Math.Min(angle, 200)) + 0.02 * Math.Max(angle - 200, 0);
        TraceAnalysis near = Read(Yielding, end: 206), far = Read(Yielding, end: 215);
        Assert.Null(near.YieldOnset);
        Assert.Equal(TraceDoubts.Yield, near.Remarks.Single(remark => remark.Kind == TraceRemarkKind.YieldUntold).Doubts);
        Assert.Equal(200, far.YieldOnset!.Angle!.Value.Degrees, 1.5);
        Assert.True(far.Has(TraceRemarkKind.Yield));
        Assert.Equal(TraceDoubts.None, far.Doubts);
    }

    [Fact]
    public void A_run_down_that_drifts_doubts_snug_and_run_down_torque()
    {
        TraceAnalysis analysis = Read(angle => angle < 150 ? 4 + 0.1 * angle : 19 + Line(angle) - 4);
        Assert.Equal(TraceDoubts.Snug | TraceDoubts.RunningTorque, analysis.Remarks.Single(remark => remark.Kind == TraceRemarkKind.DriftingRunDown).Doubts);
    }

    [Fact]
    public void A_short_line_doubts_snug_by_projection_but_not_at_a_threshold()
    {
        // 7° of line, then none: shorter than the window.
        static double Torque(double angle) => Line(Math.Min(angle, 157));
        TraceAnalysis projected = Read(Torque), threshold = Read(Torque, options: TraceOptions.SnugAtTorque(UnitsNet.Torque.FromNewtonMeters(7), Angle.FromDegrees(8)));
        Assert.True(projected.Has(TraceRemarkKind.ShortRegion) && threshold.Has(TraceRemarkKind.ShortRegion), $"{projected} | {threshold}");
        Assert.True((projected.Doubts & TraceDoubts.Snug) != 0);
        Assert.True((threshold.Doubts & TraceDoubts.Snug) == 0);
    }

    [Theory]
    [InlineData(-1, -1)]
    [InlineData(-1, 1)]
    [InlineData(1, -1)]
    public void The_other_sense_is_said_and_not_read(int angleSign, int torqueSign)
    {
        (double[] angles, double[] torques) = Columns(Line, 0.1, 210);
        TraceAnalysis analysis = TighteningTrace.FromSamples(Times(angles.Length), Signed(angles, angleSign), Signed(torques, torqueSign)).Analyze(Options);
        Assert.True(analysis.Has(TraceRemarkKind.WrongSense));
        Assert.Equal(TraceDoubts.All, analysis.Doubts);
        Assert.Null(analysis.ElasticRegion);
        Assert.Equal(torqueSign * torques[^1], analysis.Peak.Torque.NewtonMeters);
    }

    [Fact]
    public void Without_angles_yield_was_not_looked_for_and_is_in_doubt()
    {
        TraceAnalysis analysis = TighteningTrace.FromTorques(Duration.Zero, Duration.FromMilliseconds(1), new double[] { 0, 1, 2, 9, 4 }).Analyze(Options);
        Assert.Equal(TraceDoubts.Yield, analysis.Doubts);
        Assert.Empty(analysis.Remarks);
    }

    [Fact]
    public void Every_kind_can_be_asked_for_and_no_other()
    {
        TraceAnalysis analysis = Read(Line);
        foreach (TraceRemarkKind kind in Enum.GetValues<TraceRemarkKind>()) Assert.Equal(analysis.Remarks.Any(remark => remark.Kind == kind), analysis.Has(kind));
        Assert.Throws<ArgumentOutOfRangeException>(() => analysis.Has(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => analysis.Has(Enum.GetValues<TraceRemarkKind>().Max() + 1));
    }

    private static double Line(double angle) => 4 + 0.8 * Math.Max(angle - 150, 0);

    private static double[] Times(int count) => [.. Enumerable.Range(0, count).Select(i => i * 0.01)];

    private static double[] Signed(double[] values, int sign) => [.. values.Select(x => sign * x)];

    private static TraceAnalysis Read(Func<double, double> torque, double step = 0.1, double end = 210, TraceOptions? options = null)
    {
        (double[] angles, double[] torques) = Columns(torque, step, end);
        return TighteningTrace.FromSamples(Times(angles.Length), angles, torques).Analyze(options ?? Options);
    }

    private static (double[] Angles, double[] Torques) Columns(Func<double, double> torque, double step, double end)
    {
        double[] angles = [.. Enumerable.Range(0, (int)Math.Round(end / step) + 1).Select(i => i * step)];
        return (angles, [.. angles.Select(torque)]);
    }
}
