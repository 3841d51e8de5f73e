using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>Two thousand random curves with 1 % torque noise and 0.1° resolution, against what is known of them.</summary>
public class KnownTruthTests
{
    private static IEnumerable<KnownTrace> Yielding => KnownTrace.All.Where(t => t.Curve.Yields);

    [Fact]
    public void Snug_is_found_on_all_within_a_degree_and_a_half() =>
        Assert.All(KnownTrace.All, t => Assert.InRange(t.SnugError, -1.5, 1.5));

    [Fact]
    public void Elastic_slope_is_found_on_all_within_one_percent() =>
        Assert.All(KnownTrace.All, t => Assert.InRange(t.SlopeError, -0.01, 0.01));

    [Fact]
    public void Yield_onset_is_found_on_all_that_yield_within_three_degrees() =>
        Assert.All(Yielding, t => Assert.InRange(t.OnsetError, -3, 3));

    [Fact]
    public void No_yield_is_seen_where_there_is_none()
    {
        KnownTrace[] elastic = [.. KnownTrace.All.Where(t => !t.Curve.Yields)];
        Assert.True(elastic.Length > 900);
        Assert.InRange(elastic.Count(t => t.Analysis.YieldOnset is not null) / (double)elastic.Length, 0, 0.01);
    }

    [Fact]
    public void Running_torque_and_shut_off_are_found()
    {
        Assert.All(KnownTrace.All, t => Assert.Equal(t.Curve.Prevailing, t.Analysis.RunDown!.Torque.NewtonMeters, 0.005 * t.Curve.Peak));
        Assert.All(KnownTrace.All, t => Assert.Equal(t.Curve.End, t.Analysis.ShutOff.Angle!.Value.Degrees, 0.1));
    }

    [Fact]
    public void The_standard_error_is_the_error()
    {
        // On white noise the error over its standard error has variance 1; over 1500 curves its root mean square is known to within a few percent.
        double[] z = [.. KnownTrace.All.Where(t => t.Recorder.StickSlip == 0)
            .Select(t => t.SlopeError * t.Curve.Slope / t.Analysis.ElasticRegion!.SlopeStandardError.NewtonMetersPerDegree)];
        Assert.InRange(Math.Sqrt(z.Average(x => x * x)), 0.85, 1.15);
    }

    [Fact]
    public void A_threshold_snug_is_where_the_true_curve_passes_it()
    {
        foreach (KnownTrace known in KnownTrace.All.Take(300))
        {
            double threshold = known.Curve.Prevailing + 0.3 * (known.Curve.Peak - known.Curve.Prevailing);
            TraceAnalysis analysis = known.Trace.Analyze(TraceOptions.SnugAtTorque(Torque.FromNewtonMeters(threshold), Angle.FromDegrees(KnownTrace.Window)));
            Assert.Equal(Crossing(known.Curve, _ => threshold), analysis.Snug!.Angle!.Value.Degrees, 1.5);
            Assert.Equal(threshold, analysis.Snug.Torque.NewtonMeters, 1e-9 * threshold);
        }
    }

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void Offset_yield_is_where_the_true_curve_passes_the_offset_line(double offset)
    {
        int found = 0;
        foreach (KnownTrace known in Yielding.Take(300))
        {
            KnownCurve curve = known.Curve;
            double truth = Crossing(curve, angle => curve.Prevailing + curve.Slope * (angle - curve.Snug - offset), falling: true);
            if (truth > curve.End - KnownTrace.Window) continue;
            TraceAnalysis analysis = known.Trace.Analyze(known.Analysis.Options.WithYieldOffset(Angle.FromDegrees(offset)));
            Assert.Equal(truth, analysis.OffsetYield!.Angle!.Value.Degrees, 3.0);
            found++;
        }

        Assert.True(found > 200);
    }

    [Fact]
    public void Yield_at_another_fraction_is_where_the_true_slope_has_that_fraction()
    {
        foreach (KnownTrace known in Yielding.Take(300))
        {
            TraceAnalysis analysis = known.Trace.Analyze(known.Analysis.Options.WithSlopeFraction(Ratio.FromDecimalFractions(2.0 / 3)));
            Assert.Equal(known.Curve.YieldOnset(2.0 / 3), analysis.YieldOnset!.Angle!.Value.Degrees, 3.0);
        }
    }

    [Theory]
    [InlineData(2)]
    [InlineData(6)]
    [InlineData(15)]
    [InlineData(25)]
    public void Smoothing_shifts_no_finding_by_more_than_its_window(double window)
    {
        var recorder = new Recorder { Noise = 0, AngleResolution = 0, TorqueResolutionShare = 0, Jitter = 0 };
        for (int number = 0; number < 60; number++)
        {
            var dice = new Dice((ulong)(90_000 + number));
            KnownCurve curve = KnownCurve.Random(dice);
            TraceAnalysis analysis = recorder.Record(curve, dice).Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(window)));
            Assert.Equal(curve.Snug, analysis.Snug!.Angle!.Value.Degrees, window);
            Assert.InRange(analysis.RunDown!.End.Angle!.Value.Degrees, 0, curve.RunDown + 0.1 * curve.Toe);
            Assert.Equal(curve.End, analysis.ShutOff.Angle!.Value.Degrees, 1e-9);
            if (curve.Yields && curve.Plateau > window) Assert.Equal(curve.YieldOnset(0.5), analysis.YieldOnset!.Angle!.Value.Degrees, window);
        }
    }

    [Fact]
    public void Energy_is_the_area_under_the_true_curve()
    {
        var recorder = new Recorder { Noise = 0, AngleResolution = 0, TorqueResolutionShare = 0 };
        for (int number = 0; number < 20; number++)
        {
            var dice = new Dice((ulong)(70_000 + number));
            KnownCurve curve = KnownCurve.Random(dice);
            double expected = MathNet.Numerics.Integration.SimpsonRule.IntegrateComposite(curve.TorqueAt, 0, curve.End, 20_000) * Math.PI / 180;
            Energy energy = recorder.Record(curve, dice).Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(8))).Energy!.Value;
            Close.To(expected, energy.Joules, 1e-3);
        }
    }

    [Fact]
    public void Every_index_is_that_of_the_first_sample_at_or_past_the_finding()
    {
        foreach (KnownTrace known in KnownTrace.All.Take(200))
        {
            ReadOnlySpan<double> angles = known.Trace.AnglesDegrees.Span;
            foreach (TracePoint point in new[] { known.Analysis.Snug, known.Analysis.YieldOnset }.OfType<TracePoint>())
            {
                Assert.True(angles[point.Index] >= point.Angle!.Value.Degrees);
                for (int i = 0; i < point.Index; i++) Assert.True(angles[i] < point.Angle.Value.Degrees);
            }
        }
    }

    /// <summary>Where the true curve rises through a line last, or falls below it, by bisection.</summary>
    private static double Crossing(KnownCurve curve, Func<double, double> line, bool falling = false)
    {
        double low = falling ? curve.RunDown + curve.Toe + curve.Elastic : curve.RunDown, high = curve.End;
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            bool isPast = falling ? curve.TorqueAt(middle) < line(middle) : curve.TorqueAt(middle) > line(middle);
            if (isPast) high = middle;
            else low = middle;
        }

        return high;
    }
}
