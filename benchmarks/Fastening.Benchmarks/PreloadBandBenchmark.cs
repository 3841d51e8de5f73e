using BenchmarkDotNet.Attributes;
using Fastening.Quality;
using UnitsNet;

namespace Fastening.Benchmarks;

/// <summary>A million preloads with both 95 % intervals: torque normal, two coefficients of friction rectangular. Wanted: below 25 ms and 40 MB on two cores.</summary>
public class PreloadBandBenchmark
{
    private static readonly PreloadBandInputs Inputs = new PreloadBandInputs(
        Job.Model,
        Job.Window,
        new FrictionRange(new FrictionCoefficients(thread: 0.10, bearing: 0.09), new FrictionCoefficients(thread: 0.16, bearing: 0.14)), FrictionCorrelation.Independent)
        .WithTorqueShape(ScatterShape.Normal(coverageFactor: 2));

    [Params(1, 2)]
    public int Threads { get; set; }

    [Benchmark]
    public Force Million() => PreloadBand.Evaluate(Inputs, new MonteCarlo().WithThreads(Threads)).ShortestStatistical.Low;
}
