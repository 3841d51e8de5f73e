using BenchmarkDotNet.Attributes;

namespace Fastening.Benchmarks;

public class ClassifyBenchmark
{
    private readonly UnitsNet.Torque[] _torques = Job.Torques;
    private readonly HandWritten _hand = Job.Hand;
    private readonly ToleranceWindow<UnitsNet.Torque> _window = Job.Window;

    [Benchmark(Baseline = true, OperationsPerInvoke = Job.Count)]
    public int HandWritten()
    {
        int sum = 0;
        foreach (UnitsNet.Torque torque in _torques) sum += (int)_hand.Classify(torque);
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Job.Count)]
    public int Classify()
    {
        int sum = 0;
        foreach (UnitsNet.Torque torque in _torques) sum += (int)_window.Classify(torque);
        return sum;
    }
}
