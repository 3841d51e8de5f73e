using BenchmarkDotNet.Attributes;

namespace Fastening.Benchmarks;

public class TorqueForBenchmark
{
    private readonly UnitsNet.Force[] _preloads = Job.Preloads;
    private readonly HandWritten _hand = Job.Hand;
    private readonly FrictionTorqueModel _model = Job.Model;

    [Benchmark(Baseline = true, OperationsPerInvoke = Job.Count)]
    public double HandWritten()
    {
        double sum = 0;
        foreach (UnitsNet.Force preload in _preloads) sum += _hand.TorqueFor(preload).NewtonMeters;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Job.Count)]
    public double TorqueFor()
    {
        double sum = 0;
        foreach (UnitsNet.Force preload in _preloads) sum += _model.TorqueFor(preload).NewtonMeters;
        return sum;
    }
}
