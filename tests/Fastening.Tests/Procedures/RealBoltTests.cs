using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>
/// Random days against bolts that only obey physics. The naive model is the same rules written twice; this one has no rules, so that a rule which is
/// wrong in both is seen: no joint conforms whose bolts were turned or pulled further than the program allows.
/// </summary>
public class RealBoltTests
{
    private const double Snug = 60, Full = 118, MostTurn = 180, MostTorque = 140;

    private static readonly string[] Bolts = ["B1", "B2"];
    private static readonly double?[] Torques = [null, 60, 118, 900], Rotations = [null, 0, 130];

    public static Arbitrary<int[]> Days() => Arb.From(
        from length in Gen.Choose(5, 11)
        from numbers in Gen.ArrayOf(Gen.Choose(0, int.MaxValue - 1), length)
        select numbers);

    [Property(MaxTest = 20_000, Arbitrary = [typeof(RealBoltTests)])]
    public void A_conforming_joint_was_turned_and_pulled_as_the_program_allows(int[] numbers)
    {
        foreach (TighteningProgram program in Programs)
        {
            JobProgress job = JobProgress.Start(program);
            var real = Bolts.ToDictionary(bolt => bolt, _ => RealBolt.Loose);
            (string Bolt, RealBolt Before)? last = null;
            var told = new List<string>();
            for (int i = 0; i < numbers.Length; i++)
            {
                JobEntry entry = EntryOf(new Random(numbers[i]), job, i + 1);
                JobUpdate update = job.Apply(entry);
                job = update.Progress;
                told.Add($"{entry} -> {update}");
                if (entry.Kind == JobEntryKind.Undone)
                {
                    if (update.Verdict != JobVerdict.Rejected) real[last!.Value.Bolt] = last.Value.Before;
                    last = null;
                    continue;
                }

                last = (entry.Fastener!, real[entry.Fastener!]);
                real[entry.Fastener!] = After(real[entry.Fastener!], entry);
                if (!job.IsConforming) continue;
                Assert.All(Bolts, bolt => Assert.True(IsSound(real[bolt]), $"{bolt}: {real[bolt]}\n{program}\n{string.Join("\n", told)}"));
            }
        }
    }

    [Fact]
    public void The_check_sees_a_bolt_that_was_turned_twice()
    {
        RealBolt twice = RealBolt.Loose.Pulled(Snug, null).Pulled(Full, 130).Pulled(Full, 130);
        Assert.False(IsSound(twice));
        Assert.True(IsSound(RealBolt.Loose.Pulled(Snug, null).Pulled(Full, 130)));
        Assert.False(IsSound(RealBolt.Loose.Pulled(Full, 130)));
    }

    private static bool IsSound(RealBolt bolt) => bolt is { TurnedDegrees: <= MostTurn, PeakNewtonMeters: <= MostTorque, WasTurnedLoose: false };

    private static RealBolt After(RealBolt bolt, JobEntry entry) => entry.Kind switch
    {
        JobEntryKind.Loosened => RealBolt.Loose,
        JobEntryKind.Tightened => bolt.Pulled(entry.Torque?.NewtonMeters, entry.Rotation?.Degrees),
        _ => bolt,
    };

    private static IEnumerable<TighteningProgram> Programs =>
        from order in new[] { TighteningOrder.Free, TighteningOrder.StepByStep, TighteningOrder.InSequence }
        from turn in new[]
        {
            TighteningStep.ByRotation("turn", Torque.FromNewtonMeters(55), Turn).WithFinalTorque(Last),
            TighteningStep.ByTorqueAndRotation("turn", Last, Turn),
        }
        select new TighteningProgram(
            Bolts, [TighteningStep.ByTorque("snug", ToleranceWindow.FromLimits(Torque.FromNewtonMeters(57), Torque.FromNewtonMeters(63))), turn], order);

    private static ToleranceWindow<Angle> Turn => ToleranceWindow.FromLimits(Angle.FromDegrees(90), Angle.FromDegrees(MostTurn));

    private static ToleranceWindow<Torque> Last => ToleranceWindow.FromLimits(Torque.FromNewtonMeters(100), Torque.FromNewtonMeters(MostTorque));

    private static JobEntry EntryOf(Random random, JobProgress job, int sequence)
    {
        string bolt = random.Next(3) > 0 && job.NextFastener is string next ? next : Bolts[random.Next(2)];
        string? step = random.Next(3) > 0 ? null : random.Next(5) == 0 ? "tum" : random.Next(2) == 0 ? "snug" : "turn";
        switch (random.Next(20))
        {
            case 0: return JobEntry.Loosened("w", sequence, DateTimeOffset.UnixEpoch, bolt, "r");
            case 1: return JobEntry.Undone("w", sequence, DateTimeOffset.UnixEpoch, "r");
            case 2: return At(JobEntry.Skipped("w", sequence, DateTimeOffset.UnixEpoch, bolt, "r"), step);
        }

        bool good = random.Next(3) > 0 && job.OpenStep is not null, first = good && job.OpenStep!.Name == "snug";
        double? torque = first ? Snug : good ? Full : Torques[random.Next(Torques.Length)];
        double? rotation = first ? null : good ? 130 : Rotations[random.Next(Rotations.Length)];
        JobEntry entry = At(JobEntry.Tightened("w", sequence, DateTimeOffset.UnixEpoch, bolt), step);
        if (torque is double newtonMeters) entry = entry.WithTorque(Torque.FromNewtonMeters(newtonMeters));
        return rotation is double degrees ? entry.WithRotation(Angle.FromDegrees(degrees)) : entry;
    }

    private static JobEntry At(JobEntry entry, string? step) => step is null ? entry : entry.AtStep(step);
}
