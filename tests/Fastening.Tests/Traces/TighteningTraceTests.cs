using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>What a trace takes, what it refuses, and what it says when there is little to say.</summary>
public class TighteningTraceTests
{
    private static readonly TraceOptions Options = TraceOptions.SnugByProjection(Angle.FromDegrees(10));

    [Fact]
    public void Steady_sampling_reads_as_the_same_times_written_out()
    {
        double[] times = [.. Enumerable.Range(0, 900).Select(i => 2 + i * 0.004)];
        double[] angles = [.. Enumerable.Range(0, 900).Select(i => i * 0.2)], torques = [.. angles.Select(a => Math.Max(a - 90, 0))];
        TighteningTrace written = TighteningTrace.FromSamples(times, angles, torques);
        TighteningTrace steady = TighteningTrace.FromSamples(Duration.FromSeconds(2), Duration.FromMilliseconds(4), angles, torques);
        Assert.True(steady.TimesSeconds.IsEmpty);
        Assert.Equal(written.Count, steady.Count);
        Assert.Equal(written.TimeAt(17), steady.TimeAt(17));
        Assert.Equal(written.Analyze(Options).ToString(), steady.Analyze(Options).ToString());
        RotationRateLimit limit = RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(49));
        RotationRateCheck first = limit.Check(written, Duration.FromSeconds(0.3)), second = limit.Check(steady, Duration.FromSeconds(0.3));
        Assert.Equal(first.HighestRate.DegreesPerSecond, second.HighestRate.DegreesPerSecond, 1e-9);
        Assert.False(second.Conforms);
        Assert.Equal(first.TimeAbove.Seconds, second.TimeAbove.Seconds, 1e-9);
    }

    [Fact]
    public void Without_angles_torque_tells_what_it_can()
    {
        double[] torques = [0, 1, 2, 8, 15, 30, 41, 40, 39, 5, 1];
        TighteningTrace trace = TighteningTrace.FromTorques(Duration.FromSeconds(0), Duration.FromMilliseconds(10), torques);
        TraceAnalysis analysis = trace.Analyze(TraceOptions.SnugAtTorque(Torque.FromNewtonMeters(10), Angle.FromDegrees(5)).WithTorqueDrop(Torque.FromNewtonMeters(1)));
        Assert.False(trace.HasAngles);
        Assert.Equal(4, analysis.Snug!.Index);
        Assert.Equal(6, analysis.Peak.Index);
        Assert.Equal(8, analysis.ShutOff.Index);
        Assert.Equal(10, analysis.Final.Index);
        Assert.Equal(2, analysis.Irregularities.SamplesAfterShutOff);
        Assert.Null(analysis.Peak.Angle);
        Assert.Null(analysis.Energy);
        Assert.Null(analysis.RotationPastSnug);
        Assert.Null(analysis.ElasticRegion);
        Assert.Empty(analysis.Remarks);
        Assert.Equal("trace", Assert.Throws<ArgumentException>(() => RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(9)).Check(trace, Duration.FromSeconds(1))).ParamName);
    }

    [Fact]
    public void Columns_are_refused_by_index()
    {
        double[] good = [0, 1, 2];
        Assert.Equal("forcesNewtons[1]", Assert.Throws<ArgumentOutOfRangeException>(
            () => TighteningTrace.FromSamples(good, good, good).WithForces(new[] { 0, double.NaN, 0 })).ParamName);
        Assert.Throws<ArgumentException>(() => TighteningTrace.FromSamples(good, good, good).WithForces(new double[2]));
        Assert.Equal("torquesNewtonMeters[2]", Assert.Throws<ArgumentOutOfRangeException>(
            () => TighteningTrace.FromTorques(good, new[] { 0, 0, double.NegativeInfinity })).ParamName);
        Assert.Equal("timesSeconds[1]", Assert.Throws<ArgumentOutOfRangeException>(() => TighteningTrace.FromTorques(new double[] { 5, 4 }, new double[2])).ParamName);
        Assert.Throws<ArgumentException>(() => TighteningTrace.FromTorques(Duration.FromSeconds(0), Duration.FromSeconds(1), new double[1]));
        Assert.Throws<ArgumentException>(() => TighteningTrace.FromSamples(Duration.FromSeconds(0), Duration.FromSeconds(1), good, new double[2]));
        Assert.Throws<ArgumentOutOfRangeException>(() => TighteningTrace.FromSamples(good, good, good).TimeAt(3));
    }

    [Fact]
    public void The_memory_is_not_copied()
    {
        double[] times = [0, 1, 2], angles = [0, 5, 9], torques = [1, 2, 3];
        TighteningTrace trace = TighteningTrace.FromSamples(times, angles, torques).WithForces(times);
        angles[1] = 6;
        Assert.Equal(6, trace.AnglesDegrees.Span[1]);
    }

    public static TheoryData<string, double[], double[], double[]> Odd => new()
    {
        { "two samples", [0, 1], [0, 1], [0, 1] },
        { "one moment", [1, 1, 1], [0, 5, 9], [1, 2, 3] },
        { "no turn", [0, 1, 2, 3], [7, 7, 7, 7], [1, 5, 2, 0] },
        { "only back", [0, 1, 2, 3], [9, 6, 3, 0], [1, 5, 2, 0] },
        { "no torque", [0, 1, 2, 3], [0, 90, 180, 270], [0, 0, 0, 0] },
        { "loosening", [0, 1, 2, 3], [0, 90, 180, 270], [-1, -9, -3, -1] },
        { "largest values", [-1e10, 0, 1e10], [-1e10, 0, 1e10], [-1e10, 1e10, -1e10] },
        { "largest values down", [-1e10, 0, 1e10], [1e10, 0, -1e10], [1e10, -1e10, 1e10] },
        { "to and fro", [0, 1, 2, 3, 4, 5], [0, 100, 0, 100, 0, 100], [0, 50, 0, 50, 0, 50] },
    };

    [Theory]
    [MemberData(nameof(Odd))]
    public void Odd_records_are_read_without_a_division_by_zero(string name, double[] times, double[] angles, double[] torques)
    {
        TighteningTrace trace = TighteningTrace.FromSamples(times, angles, torques);
        foreach (double window in new[] { 0.001, 1, 90, 10_000 })
        {
            foreach (TraceOptions options in new[] { TraceOptions.SnugByProjection(Angle.FromDegrees(window)), TraceOptions.SnugAtTorque(Torque.FromNewtonMeters(2), Angle.FromDegrees(window)) })
            {
                TraceAnalysis analysis = trace.Analyze(options.WithReversal(Angle.FromDegrees(1)).WithStickSlip(Torque.FromNewtonMeters(1))
                    .WithTorqueDrop(Torque.FromNewtonMeters(1)).WithYieldOffset(Angle.FromDegrees(1)).WithRunningTorque(Torque.FromNewtonMeters(1)));
                Assert.True(double.IsFinite(analysis.Energy!.Value.Joules), name);
                Assert.DoesNotContain("NaN", analysis.ToString(), StringComparison.Ordinal);
                Assert.InRange(analysis.ShutOff.Index, 0, times.Length - 1);
            }
        }
    }

    [Fact]
    public void Memory_does_not_grow_with_the_number_of_samples()
    {
        long small = Allocated(10_000), large = Allocated(1_000_000);
        Assert.InRange(large, 0, small + 64);
        Assert.InRange(small, 1, 8192);

        static long Allocated(int samples)
        {
            var curve = new KnownCurve { Prevailing = 5, Slope = 1, StartUp = 2, RunDown = 200, Toe = 5, Elastic = 60, Knee = 8, Plateau = 27 };
            double[] angles = [.. Enumerable.Range(0, samples).Select(i => curve.End * i / samples)], torques = [.. angles.Select(curve.TorqueAt)];
            TighteningTrace trace = TighteningTrace.FromSamples(angles, angles, torques);
            return Allocation.Of(() => trace.Analyze(Options));
        }
    }
}
