using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace Fastening.Benchmarks;

/// <summary>A verdict with uncertainty by a named rule; the baseline is the verdict by the limits.</summary>
public class DecideBenchmark
{
    private readonly Torque[] _torques = Job.Torques;
    private readonly double[] _readings = Job.Numbers(135, 165);
    private readonly Conformity[] _verdicts = new Conformity[Job.Count];
    private readonly ToleranceWindow<Torque> _window = Job.Window;
    private readonly MeasurementUncertainty<Torque> _uncertainty = MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(1.2), 2);
    private readonly DecisionRule _byProbability = DecisionRule.FromProbability(0.95);

    [Benchmark(Baseline = true, OperationsPerInvoke = Job.Count)]
    public int ByTheLimits()
    {
        int sum = 0;
        foreach (Torque torque in _torques) sum += (int)_window.Classify(torque);
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Job.Count)]
    public int ByFactor() => Sum(DecisionRule.IlacG8);

    [Benchmark(OperationsPerInvoke = Job.Count)]
    public int ByRatio() => Sum(DecisionRule.RootSumSquare);

    [Benchmark(OperationsPerInvoke = Job.Count)]
    public int ByProbability() => Sum(_byProbability);

    [Benchmark(OperationsPerInvoke = Job.Count)]
    public int Zones()
    {
        int sum = 0;
        foreach (Torque torque in _torques) sum += (int)_window.ZoneOf(torque, _uncertainty, DecisionRule.IlacG8);
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Job.Count)]
    public void Spans() => _window.Classify(_readings, _uncertainty, DecisionRule.IlacG8, _verdicts);

    private int Sum(DecisionRule rule)
    {
        int sum = 0;
        foreach (Torque torque in _torques) sum += (int)_window.Classify(torque, _uncertainty, rule);
        return sum;
    }
}
