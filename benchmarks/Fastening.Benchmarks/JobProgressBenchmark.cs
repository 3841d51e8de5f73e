using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace Fastening.Benchmarks;

/// <summary>
/// Whole logs through a job in three passes, in sequence, with pulls that are too low or out of turn, lines that are sent twice and loosenings: replayed, and one by one through a run.
/// The baseline only looks up the fastener, classifies the torque and counts.
/// </summary>
[MemoryDiagnoser]
public class JobProgressBenchmark
{
    private static readonly int[] Percentages = [30, 70, 100];

    private readonly ToleranceWindow<Torque> _final = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(120), Ratio.FromPercent(5), Ratio.FromPercent(5));

    private List<JobEntry> _log = [];
    private TighteningProgram _program = null!;

    [Params(48, 1000)]
    public int Fasteners { get; set; }

    [Params(false, true)]
    public bool Repeats { get; set; }

    [Params(1_000_000)]
    public int Readings { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        string[] names = [.. Enumerable.Range(1, Fasteners).Select(i => $"B{i}")];
        IReadOnlyList<string> crosswise = TighteningPattern.Cross(Fasteners).Arrange(names);
        _program = new TighteningProgram(
            names,
            [.. Percentages.Select(percent => TighteningStep.ByTorque($"{percent} %", _final.Scale(percent / 100.0)).WithFasteners(crosswise))],
            TighteningOrder.InSequence);
        _log = Log(crosswise);
        Console.WriteLine($"// {Replay()}");
    }

    [Benchmark(Baseline = true)]
    public int LookUpAndClassify()
    {
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        int within = 0;
        foreach (JobEntry entry in _log)
        {
            if (entry.Fastener is null) continue;
            counts[entry.Fastener] = counts.GetValueOrDefault(entry.Fastener) + 1;
            if (entry.Torque is Torque torque && _final.Classify(torque) == Conformity.Within) within++;
        }

        return within + counts.Count;
    }

    [Benchmark]
    public JobProgress Replay() => JobProgress.Replay(_program, _log);

    [Benchmark]
    public JobProgress OneByOne()
    {
        var run = new JobRun(_program);
        foreach (JobEntry entry in _log) run.Apply(entry);
        return run.Progress;
    }

    /// <summary>The job done again and again: what was done is loosened before the next round.</summary>
    private List<JobEntry> Log(IReadOnlyList<string> order)
    {
        var random = new Random(48);
        var log = new List<JobEntry>(Readings);
        DateTimeOffset time = DateTimeOffset.UnixEpoch;
        long[] numbers = new long[3];
        int source = 0;
        (string, long, DateTimeOffset) Next()
        {
            source = (source + 1) % 3;
            time = time.AddSeconds(10);
            return ($"wrench {source}", ++numbers[source], time);
        }

        while (log.Count < Readings)
        {
            foreach (int percent in Percentages)
            {
                foreach (string fastener in order)
                {
                    int chance = random.Next(20);
                    if (chance == 0) log.Add(Pull(Next(), order[random.Next(order.Count)], percent * 1.2));
                    if (chance == 1) log.Add(Pull(Next(), fastener, percent));
                    if (chance == 2 && Repeats) log.Add(log[^1]);
                    log.Add(Pull(Next(), fastener, percent * 1.2));
                }
            }

            foreach (string fastener in order)
            {
                (string name, long number, DateTimeOffset at) = Next();
                log.Add(JobEntry.Loosened(name, number, at, fastener, "next round"));
            }
        }

        log.RemoveRange(Readings, log.Count - Readings);
        return log;
    }

    private static JobEntry Pull((string Source, long Number, DateTimeOffset Time) line, string fastener, double newtonMeters) =>
        JobEntry.Pulled(line.Source, line.Number, line.Time, fastener).WithTorque(Torque.FromNewtonMeters(newtonMeters));
}
