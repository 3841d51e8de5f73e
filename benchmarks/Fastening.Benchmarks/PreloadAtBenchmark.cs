using BenchmarkDotNet.Attributes;

namespace Fastening.Benchmarks;

public class PreloadAtBenchmark
{
    private readonly UnitsNet.Torque[] _torques = Job.Torques;
    private readonly HandWritten _hand = Job.Hand;
    private readonly FrictionTorqueModel _model = Job.Model;

    [Benchmark(Baseline = true, OperationsPerInvoke = Job.Count)]
    public double HandWritten()
    {
        double sum = 0;
        foreach (UnitsNet.Torque torque in _torques) sum += _hand.PreloadAt(torque).Newtons;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Job.Count)]
    public double PreloadAt()
    {
        double sum = 0;
        foreach (UnitsNet.Torque torque in _torques) sum += _model.PreloadAt(torque).Newtons;
        return sum;
    }
}
