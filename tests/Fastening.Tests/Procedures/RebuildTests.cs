using UnitsNet;
using UnitsNet.Units;

namespace Fastening.Tests.Procedures;

/// <summary>Entries, criteria, steps and programs can be built again from what they show, so that a file format needs nothing else.</summary>
public class RebuildTests
{
    [Fact]
    public void Entries_come_back_bit_for_bit_in_every_unit()
    {
        var random = new Random(7);
        TorqueUnit[] torques = Enum.GetValues<TorqueUnit>();
        AngleUnit[] angles = [.. Enum.GetValues<AngleUnit>().Where(unit => unit != AngleUnit.Tilt)];
        DurationUnit[] durations = Enum.GetValues<DurationUnit>();
        for (int i = 0; i < 20_000; i++)
        {
            JobEntry entry = Any(random, i, torques, angles, durations), again = Rebuilt(entry);
            Assert.True(entry.SaysTheSameAs(again), $"{entry}\n{again}");
            Assert.Equal(entry.Received, again.Received);
            Assert.Equal((entry.Torque?.Unit, entry.Rotation?.Unit, entry.Duration?.Unit), (again.Torque?.Unit, again.Rotation?.Unit, again.Duration?.Unit));
        }
    }

    [Fact]
    public void Programs_built_again_decide_every_day_alike()
    {
        for (int seed = 0; seed < 200; seed++)
        {
            DayProgram program = DayProgram.All[seed % DayProgram.All.Length];
            var day = new PhysicalDay(seed, DayKind.BadAll, program, (TighteningOrder)(seed % 3));
            day.Work();
            TighteningProgram first = day.Run.Program.WithTorqueLimit(Torque.FromPoundForceFeet(150)).WithMostLoosenings(3).WithEffect(JobReason.Restarted, JobEffect.LookAt);
            Assert.Equal(
                LedgerLawTests.Describe(JobProgress.Replay(first, day.Arrived, PhysicalDay.Options)),
                LedgerLawTests.Describe(JobProgress.Replay(Rebuilt(first), day.Arrived, Rebuilt(PhysicalDay.Options))));
        }
    }

    [Fact]
    public void Every_criterion_comes_back()
    {
        var window = ToleranceWindow.FromLimits(Torque.FromPoundForceFeet(71.3), Torque.FromPoundForceFeet(74.1), Torque.FromPoundForceFeet(80.7));
        Criterion[] all =
        [
            Criterion.Torque(window), Criterion.Torque(window, DecisionRule.Iso14253, MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(1.7), coverageFactor: 2)),
            Criterion.TorqueAtLeast(Torque.FromPoundForceFeet(71.3)), Criterion.TorqueAtMost(Torque.FromPoundForceFeet(80.7)), Criterion.MoveAtMost(Angle.FromRadians(0.05)),
            Criterion.Move(ToleranceWindow.FromLimits(Angle.FromDegrees(8), Angle.FromDegrees(30))).AsWatched(),
            Criterion.Turn(ToleranceWindow.AtLeast(Angle.FromDegrees(90))), Criterion.RateAtMost(RotationRateLimit.FromRate(RotationalSpeed.FromRevolutionsPerMinute(3.3))), Criterion.FirmContact(),
        ];
        foreach (Criterion criterion in all)
        {
            Criterion again = Rebuilt(criterion);
            Assert.Equal((criterion.ToString(), criterion.Lower, criterion.Upper, criterion.Least), (again.ToString(), again.Lower, again.Upper, again.Least));
        }
    }

    private static JobEntry Any(Random random, int number, TorqueUnit[] torques, AngleUnit[] angles, DurationUnit[] durations)
    {
        DateTimeOffset time = DateTimeOffset.UnixEpoch.AddTicks(random.NextInt64(1L << 55)).ToOffset(TimeSpan.FromMinutes(random.Next(-840, 841)));
        JobEntry entry = random.Next(12) switch
        {
            0 => JobEntry.Loosened("w", number, time, "B1", "why"),
            1 => JobEntry.Skipped("w", number, time, "B1", "why").AtStep("full"),
            2 => JobEntry.Replaced("w", number, time, "B1", "why"),
            3 => JobEntry.Accepted("w", number, time, "B1", "who", "why", random.NextInt64()),
            4 => JobEntry.Withdrawn("w", number, time, "v", random.Next(), "who", "why"),
            5 => JobEntry.Explained("w", number, time, "v", 3, 3 + random.Next(9), "who", "why"),
            6 => JobEntry.Noted("w", number, time, "end"),
            _ => JobEntry.Pulled("w", number, time, "B1"),
        };
        if (random.Next(2) == 0) entry = entry.WithTool("t").WithOperator("o").WithReceived(time.AddSeconds(3));
        if (entry.Kind != JobEntryKind.Pulled) return entry;
        if (random.Next(4) > 0) entry = entry.WithTorque(Torque.FromNewtonMeters(random.NextDouble() * 100).ToUnit(torques[random.Next(torques.Length)]));
        else if (random.Next(2) == 0) entry = entry.WithTorque(Torque.FromNewtonMeters(random.NextDouble()), Torque.FromNewtonMeters(random.NextDouble()).ToUnit(torques[random.Next(torques.Length)]));
        if (random.Next(2) == 0) entry = entry.WithRotation(new Angle(random.NextDouble(), angles[random.Next(angles.Length)]));
        if (random.Next(2) == 0) entry = entry.WithDuration(Duration.FromSeconds(1 + random.NextDouble() * 50).ToUnit(durations[random.Next(durations.Length)]));
        if (random.Next(2) == 0) entry = entry.WithContact(random.Next(2) == 0);
        if (random.Next(2) == 0) entry = entry.AtStep("full");
        return random.Next(2) == 0 ? entry.ReadInMotion() : entry;
    }

    private static JobEntry Rebuilt(JobEntry e)
    {
        JobEntry again = e.Kind switch
        {
            JobEntryKind.Loosened => JobEntry.Loosened(e.Source, e.Sequence, e.Time, e.Fastener!, e.Reason!),
            JobEntryKind.Skipped => JobEntry.Skipped(e.Source, e.Sequence, e.Time, e.Fastener!, e.Reason!),
            JobEntryKind.Replaced => JobEntry.Replaced(e.Source, e.Sequence, e.Time, e.Fastener!, e.Reason!),
            JobEntryKind.Accepted => JobEntry.Accepted(e.Source, e.Sequence, e.Time, e.Fastener!, e.Operator!, e.Reason!, e.Seen!.Value),
            JobEntryKind.Withdrawn => JobEntry.Withdrawn(e.Source, e.Sequence, e.Time, e.OfSource!, e.OfSequence!.Value, e.Operator!, e.Reason!),
            JobEntryKind.Explained => JobEntry.Explained(e.Source, e.Sequence, e.Time, e.OfSource!, e.OfSequence!.Value, e.ToSequence!.Value, e.Operator!, e.Reason!),
            JobEntryKind.Noted => JobEntry.Noted(e.Source, e.Sequence, e.Time, e.Reason!),
            _ => JobEntry.Pulled(e.Source, e.Sequence, e.Time, e.Fastener!),
        };
        if (e.Step is not null) again = again.AtStep(e.Step);
        if (e.Tool is not null) again = again.WithTool(e.Tool);
        if (e.Operator is not null) again = again.WithOperator(e.Operator);
        if (e.Received is DateTimeOffset received) again = again.WithReceived(received);
        if (e.Torque is Torque torque) again = e.TorqueAtTool is Torque shown ? again.WithTorque(torque, shown) : again.WithTorque(torque);
        if (e.Rotation is Angle rotation) again = again.WithRotation(rotation);
        if (e.Duration is Duration duration) again = again.WithDuration(duration);
        if (e.HasContact is bool firm) again = again.WithContact(firm);
        return e.IsReadInMotion ? again.ReadInMotion() : again;
    }

    private static Criterion Rebuilt(Criterion c)
    {
        Criterion again = c.Measure switch
        {
            CriterionMeasure.Torque when c.Rule is not null => Criterion.Torque(Rebuilt(c.TorqueWindow!), c.Rule, MeasurementUncertainty.Standard(c.Uncertainty!.Value.StandardUncertainty)),
            CriterionMeasure.Torque => Criterion.Torque(Rebuilt(c.TorqueWindow!)),
            CriterionMeasure.Turn => Criterion.Turn(Rebuilt(c.RotationWindow!)),
            CriterionMeasure.Move => Criterion.Move(Rebuilt(c.RotationWindow!)),
            CriterionMeasure.Rate => Criterion.RateAtMost(RotationRateLimit.FromRate(c.RateLimit!.Rate)),
            _ => Criterion.FirmContact(),
        };
        if (c.Uncertainty is MeasurementUncertainty<Torque> u)
        {
            again = Criterion.Torque(Rebuilt(c.TorqueWindow!), c.Rule!, MeasurementUncertainty.Expanded(u.ExpandedWith(u.CoverageFactor), u.CoverageFactor));
        }

        return c.IsWatched ? again.AsWatched() : again;
    }

    private static ToleranceWindow<T> Rebuilt<T>(ToleranceWindow<T> w)
        where T : struct, IQuantity =>
        w is { Lower: { } lower, Target: { } target, Upper: { } upper } ? ToleranceWindow.FromLimits(lower, target, upper)
        : w.Lower is { } least ? ToleranceWindow.AtLeast(least) : ToleranceWindow.AtMost(w.Upper!.Value);

    private static TighteningProgram Rebuilt(TighteningProgram p)
    {
        var again = new TighteningProgram([.. p.Fasteners], [.. p.Steps.Select(Rebuilt)], p.Order);
        if (p.TorqueLimit is Torque limit) again = again.WithTorqueLimit(limit);
        if (p.MostLoosenings is int most) again = again.WithMostLoosenings(most);
        return p.ChangedEffects.Aggregate(again, (program, reason) => program.WithEffect(reason, p.EffectOf(reason)));
    }

    private static TighteningStep Rebuilt(TighteningStep s)
    {
        var again = new TighteningStep(s.Name, [.. s.Criteria.Select(Rebuilt)]);
        if (s.Threshold is Torque threshold) again = again.After(threshold);
        return s.Fasteners is null ? again : again.WithFasteners(s.Fasteners);
    }

    private static JobOptions Rebuilt(JobOptions o) => JobOptions.Default.WithTailLength(o.TailLength).WithClockTolerance(o.ClockTolerance)
        .WithSources([.. o.Sources.Select(source => source.IsSparse ? JobSource.Sparse(source.Name) : JobSource.Counting(source.Name, source.First!.Value))]);
}
