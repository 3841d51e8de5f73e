using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>A random program and a random day, as a list of numbers that can be shortened.</summary>
public sealed record AnyScript(int[] Numbers)
{
    private static readonly string[] Names = ["A", "B", "C", "D"];

    public override string ToString() => string.Join(" ", Numbers);

    public static Arbitrary<AnyScript> Scripts() => Arb.From(
        from length in Gen.Choose(8, 45)
        from numbers in Gen.ArrayOf(Gen.Choose(0, int.MaxValue - 1), length)
        select new AnyScript(numbers),
        script => Enumerable.Range(1, Math.Max(0, script.Numbers.Length - 1)).Select(i => new AnyScript([.. script.Numbers.Where((_, at) => at != i)])));

    /// <summary>The first number makes the program: fasteners, steps, controls, orders. Torques rise from step to step, whole numbers throughout.</summary>
    public (string[] Fasteners, NaiveStep[] Steps, TighteningOrder Order) Program()
    {
        var random = new Random(Numbers.Length == 0 ? 0 : Numbers[0]);
        string[] fasteners = Names[..random.Next(1, Names.Length + 1)];
        NaiveStep[] steps = [.. Enumerable.Range(0, random.Next(1, 5)).Select(s => Step(random, s, fasteners))];
        steps[0] = steps[0] with { Order = Shuffled(random, fasteners) };
        return (fasteners, steps, (TighteningOrder)random.Next(3));
    }

    /// <summary>The other numbers, one entry each; two in three do what comes next, the others anything.</summary>
    public JobEntry EntryAt(int index, JobProgress job, Dictionary<string, long> sequences)
    {
        var random = new Random(Numbers[index]);
        string source = random.Next(3) == 0 ? "nutrunner" : "wrench";
        long last = sequences.GetValueOrDefault(source);
        long sequence = random.Next(10) switch { 0 => last, 1 => Math.Max(0, last - 2), 2 => last + 5, _ => last + 1 };
        sequences[source] = Math.Max(last, sequence);
        bool resent = sequence <= last && random.Next(6) > 0;
        DateTimeOffset time = DateTimeOffset.UnixEpoch.AddMinutes(resent ? -100 : random.Next(12) == 0 ? index - 3 : index);
        bool next = random.Next(3) > 0 && job.NextFastener is not null;
        string fastener = next ? job.NextFastener! : random.Next(20) == 0 ? "X" : job.Program.Fasteners[random.Next(job.Program.Fasteners.Count)];
        string? step = random.Next(5) > 0 ? null : random.Next(8) == 0 ? "no such step" : job.Program.Steps[random.Next(job.Program.Steps.Count)].Name;
        if (job.ToLoosen.Count > 0 && random.Next(3) > 0) return JobEntry.Loosened(source, sequence, time, job.ToLoosen[0], "too much");
        switch (random.Next(16))
        {
            case 0: return JobEntry.Loosened(source, sequence, time, fastener, $"reason {index}");
            case 1: return JobEntry.Undone(source, sequence, time, $"reason {index}");
            case 2:
                JobEntry skip = JobEntry.Skipped(source, sequence, time, fastener, $"reason {index}");
                return step is null ? skip : skip.AtStep(step);
            default:
                JobEntry reading = JobEntry.Tightened(source, sequence, time, fastener);
                return Measured(random, step is null ? reading : reading.AtStep(step), job.OpenStep ?? job.Program.Steps[^1], next);
        }
    }

    private static NaiveStep Step(Random random, int index, string[] fasteners)
    {
        var control = (TighteningControl)random.Next(4);
        double low = 20 + 20 * index, width = random.Next(0, 11);
        bool withTorque = control != TighteningControl.RotationAfterThreshold || random.Next(3) == 0;
        double threshold = control == TighteningControl.RotationAfterThreshold && random.Next(4) > 0 ? low - 5 : 0;
        return new NaiveStep(
            $"step {index}", control, threshold,
            withTorque ? (low, low + width) : null,
            control == TighteningControl.Torque ? null : (40, 40 + random.Next(0, 31)),
            random.Next(4) == 0 ? 30 : null,
            [.. Shuffled(random, fasteners).Take(random.Next(1, fasteners.Length + 1))]);
    }

    private static string[] Shuffled(Random random, string[] names)
    {
        string[] copy = [.. names];
        random.Shuffle(copy);
        return copy;
    }

    private static JobEntry Measured(Random random, JobEntry reading, TighteningStep step, bool good)
    {
        if (good)
        {
            Torque torque = step.TorqueWindow?.Lower ?? step.Threshold ?? Torque.Zero;
            return reading.WithTorque(torque).WithRotation(step.RotationWindow?.Upper ?? Angle.FromDegrees(30)).WithDuration(Duration.FromSeconds(10));
        }

        if (random.Next(10) > 0) reading = reading.WithTorque(Torque.FromNewtonMeters(random.Next(10, 110)));
        if (random.Next(4) > 0) reading = reading.WithRotation(Angle.FromDegrees(random.Next(30, 80)));
        if (random.Next(3) > 0) reading = reading.WithDuration(Duration.FromSeconds(random.Next(1, 4)));
        return reading;
    }
}
