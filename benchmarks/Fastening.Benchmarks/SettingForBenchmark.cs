using BenchmarkDotNet.Attributes;

namespace Fastening.Benchmarks;

public class SettingForBenchmark
{
    private readonly UnitsNet.Torque[] _torques = Job.Torques;
    private readonly HandWritten _hand = Job.Hand;
    private readonly TorqueWrench _wrench = Job.Wrench;

    [Benchmark(Baseline = true, OperationsPerInvoke = Job.Count)]
    public double HandWritten()
    {
        double sum = 0;
        foreach (UnitsNet.Torque torque in _torques) sum += _hand.SettingFor(torque).NewtonMeters;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Job.Count)]
    public double SettingFor()
    {
        double sum = 0;
        foreach (UnitsNet.Torque torque in _torques) sum += _wrench.SettingFor(torque).NewtonMeters;
        return sum;
    }
}
