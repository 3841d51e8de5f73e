using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace Fastening.Benchmarks;

/// <summary>
/// Whole logs through a job of 1000 fasteners in three passes, in sequence: too little, wrong fasteners, repeats and clocks that go back among them.
/// The baseline only looks up the fastener, classifies the torque and counts.
/// </summary>
public class JobProgressBenchmark
{
    private const int Fasteners = 1000;

    private readonly ToleranceWindow<Torque> _final = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(120), Ratio.FromPercent(5), Ratio.FromPercent(5));
    private static readonly int[] Percentages = [30, 70, 100];

    private List<JobEntry> _log = [];
    private JobProgress _start = null!;

    [Params(10_000, 1_000_000)]
    public int Readings { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        string[] names = [.. Enumerable.Range(1, Fasteners).Select(i => $"B{i}")];
        IReadOnlyList<string> crosswise = TighteningPattern.Cross(Fasteners).Arrange(names);
        var program = new TighteningProgram(
            names,
            [.. Percentages.Select(percent => TighteningStep.ByTorque($"{percent} %", _final.Scale(percent / 100.0)).WithFasteners(crosswise))],
            TighteningOrder.InSequence);
        _start = JobProgress.Start(program);
        _log = Log(crosswise);
        JobProgress end = _start.ApplyAll(_log);
        Console.WriteLine($"// {end}; {end.EntryCount} entries counted, {end.StrayCount} strays");
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
    public JobProgress ApplyAll() => _start.ApplyAll(_log);

    /// <summary>The job done again and again: what was done is loosened before the next round.</summary>
    private List<JobEntry> Log(IReadOnlyList<string> order)
    {
        var random = new Random(48);
        var log = new List<JobEntry>(Readings);
        DateTimeOffset time = DateTimeOffset.UnixEpoch;
        for (long sequence = 1; log.Count < Readings;)
        {
            foreach (int percent in new[] { 30, 70, 100 })
            {
                foreach (string fastener in order)
                {
                    int chance = random.Next(20);
                    if (chance == 0) log.Add(Reading(sequence++, time, order[random.Next(Fasteners)], percent * 1.2));
                    if (chance == 1) log.Add(Reading(sequence++, time, fastener, percent));
                    if (chance == 2) log.Add(Reading(sequence - 1, time, fastener, percent));
                    time = time.AddSeconds(chance == 3 ? -9 : 10);
                    log.Add(Reading(sequence++, time, fastener, percent * 1.2));
                }
            }

            foreach (string fastener in order) log.Add(JobEntry.Loosened($"wrench {sequence % 3}", sequence++, time, fastener, "next round"));
        }

        log.RemoveRange(Readings, log.Count - Readings);
        return log;
    }

    private static JobEntry Reading(long sequence, DateTimeOffset time, string fastener, double newtonMeters) =>
        JobEntry.Tightened($"wrench {sequence % 3}", sequence, time, fastener).WithTorque(Torque.FromNewtonMeters(newtonMeters));
}
