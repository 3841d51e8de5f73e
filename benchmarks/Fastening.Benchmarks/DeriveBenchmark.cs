using BenchmarkDotNet.Attributes;
using Fastening.Equations;
using UnitsNet;

namespace Fastening.Benchmarks;

/// <summary>What it costs to build a model and to show the work; the baseline is the answer alone.</summary>
public class DeriveBenchmark
{
    private readonly Force _preload = Force.FromKilonewtons(60);
    private readonly FrictionCoefficients _friction = new(thread: 0.11, bearing: 0.13);

    [Benchmark(Baseline = true)]
    public Torque Answer() => Job.Model.TorqueFor(_preload);

    [Benchmark]
    public FrictionTorqueModel NewModel() => Job.Model.WithFriction(_friction);

    [Benchmark]
    public Derivation ShowTheWork() => Derivation.Of(() => Job.Model.TorqueFor(_preload));
}
