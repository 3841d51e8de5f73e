using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace Fastening.Benchmarks;

/// <summary>One tightening of 300°, recorded ever finer: the time must grow with the samples, the memory must not.</summary>
public class TraceBenchmark
{
    private static readonly TraceOptions Options = TraceOptions.SnugByProjection(Angle.FromDegrees(8))
        .WithReversal(Angle.FromDegrees(2)).WithTorqueDrop(Torque.FromNewtonMeters(10));

    private static readonly RotationRateLimit Limit = RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(100));

    private TighteningTrace _trace = null!;

    [Params(10_000, 100_000, 1_000_000)]
    public int Samples { get; set; }

    [GlobalSetup]
    public void Record()
    {
        var random = new Random(16);
        double[] times = new double[Samples], angles = new double[Samples], torques = new double[Samples];
        for (int i = 0; i < Samples; i++)
        {
            double angle = 300.0 * i / Samples;
            times[i] = angle / 90;
            angles[i] = Math.Round(angle, 1);
            torques[i] = 5 + Math.Max(Math.Min(angle - 200, 60), 0) + 0.1 * Math.Max(angle - 260, 0) + random.NextDouble() - 0.5;
        }

        _trace = TighteningTrace.FromSamples(times, angles, torques);
    }

    [Benchmark]
    public TraceAnalysis Analyze() => _trace.Analyze(Options);

    [Benchmark]
    public RotationRateCheck CheckRate() => Limit.Check(_trace, Duration.FromSeconds(0.5));
}
