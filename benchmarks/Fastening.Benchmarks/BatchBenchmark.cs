using BenchmarkDotNet.Attributes;

namespace Fastening.Benchmarks;

/// <summary>A thousand readings at once: span calls against a loop of single calls.</summary>
public class BatchBenchmark
{
    private readonly double[] _readings = Job.Numbers(135, 165);
    private readonly double[] _preloads = new double[Job.Count];
    private readonly Conformity[] _verdicts = new Conformity[Job.Count];

    [Benchmark(Baseline = true, OperationsPerInvoke = Job.Count)]
    public void SingleCalls()
    {
        for (int i = 0; i < _readings.Length; i++)
        {
            UnitsNet.Torque reading = UnitsNet.Torque.FromNewtonMeters(_readings[i]);
            _preloads[i] = Job.Model.PreloadAt(reading).Newtons;
            _verdicts[i] = Job.Window.Classify(reading);
        }
    }

    [Benchmark(OperationsPerInvoke = Job.Count)]
    public void Spans()
    {
        Job.Model.PreloadsAt(_readings, _preloads);
        Job.Window.Classify(_readings, _verdicts);
    }
}
