using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>The order of steps and fasteners against a second model that knows only who is done or skipped.</summary>
public class JobOrderTests
{
    private static readonly string[] Names = ["A", "B", "C", "D"];

    public static Arbitrary<int[]> Scripts() => Arb.From(
        from length in Gen.Choose(8, 60)
        from numbers in Gen.ArrayOf(Gen.Choose(0, int.MaxValue - 1), length)
        select numbers);

    [Property(MaxTest = 5000, Arbitrary = [typeof(JobOrderTests)])]
    public void Who_is_next_and_what_is_out_of_turn_agree_with_the_second_model(int[] numbers)
    {
        var random = new Random(numbers[0]);
        string[] fasteners = Names[..random.Next(1, 5)];
        var order = (TighteningOrder)random.Next(3);
        string[][] steps = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => Some(random, fasteners))];
        steps[0] = Shuffled(random, fasteners);
        var program = new TighteningProgram(fasteners, [.. steps.Select((names, s) => At(s).WithFasteners(names))], order);
        var naive = new NaiveOrder(steps, order);
        var run = new JobRun(program);
        for (int i = 1; i < numbers.Length; i++)
        {
            Assert.Equal((naive.OpenStep, naive.NextFastener), (run.OpenStep is null ? -1 : program.Steps.ToList().IndexOf(run.OpenStep), run.NextFastener));
            JobEntry entry = EntryOf(new Random(numbers[i]), run, i, steps, fasteners);
            string fastener = entry.Fastener!;
            int step = entry.Step is null ? naive.StepOf(fastener) : int.Parse(entry.Step[5..], System.Globalization.CultureInfo.InvariantCulture);
            bool wasDone = run.Progress.StateOf(fastener).Steps[step].Status == FastenerStatus.Done;
            JobReason? refusal = naive.Refusal(step, fastener);
            JobUpdate update = run.Apply(entry);
            if (entry.Kind == JobEntryKind.Pulled)
            {
                Assert.Equal(program.Steps[step], update.Step);
                JobReason[] said = [.. update.Findings.Select(found => found.Reason).Where(reason => reason is JobReason.StepNotReached or JobReason.NotNext)];
                Assert.Equal(wasDone || refusal is null ? [] : [refusal.Value], said);
                naive.Set(step, fastener, update.Verdict != JobVerdict.Rejected);
            }
            else if (entry.Kind == JobEntryKind.Skipped)
            {
                if (!wasDone) naive.Set(step, fastener, settled: true);
            }
            else
            {
                for (int s = 0; s < steps.Length; s++) naive.Set(s, fastener, settled: false);
            }
        }
    }

    /// <summary>The model follows what stands done; here every pull is one that counts when it is its turn, or is too low.</summary>
    private static JobEntry EntryOf(Random random, JobRun run, int number, string[][] steps, string[] fasteners)
    {
        string fastener = random.Next(3) > 0 && run.NextFastener is string next ? next : fasteners[random.Next(fasteners.Length)];
        DateTimeOffset time = DateTimeOffset.UnixEpoch.AddMinutes(number);
        int[] own = [.. Enumerable.Range(0, steps.Length).Where(s => steps[s].Contains(fastener))];
        string? named = random.Next(3) == 0 ? $"step {own[random.Next(own.Length)]}" : null;
        if (random.Next(12) == 0) return JobEntry.Loosened("w", number, time, fastener, "r");
        if (random.Next(12) == 0) return named is null ? JobEntry.Skipped("w", number, time, fastener, "r") : JobEntry.Skipped("w", number, time, fastener, "r").AtStep(named);
        JobEntry pull = JobEntry.Pulled("w", number, time, fastener).WithTorque(Torque.FromNewtonMeters(random.Next(5) == 0 ? 5 : 50));
        return named is null ? pull : pull.AtStep(named);
    }

    private static TighteningStep At(int step) => TighteningStep.ByTorque($"step {step}", ToleranceWindow.FromLimits(Torque.FromNewtonMeters(40), Torque.FromNewtonMeters(60)));

    private static string[] Some(Random random, string[] names) => [.. Shuffled(random, names).Take(random.Next(1, names.Length + 1))];

    private static string[] Shuffled(Random random, string[] names)
    {
        string[] copy = [.. names];
        random.Shuffle(copy);
        return copy;
    }
}
