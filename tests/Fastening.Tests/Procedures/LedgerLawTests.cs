using System.Globalization;
using System.Text;

namespace Fastening.Tests.Procedures;

/// <summary>
/// Laws of the ledger and of the merge, over the lines of random days: what may grow and what is cleared, and that the state depends on the set of the lines alone.
/// </summary>
public class LedgerLawTests
{
    private const int Days = 400;

    private static readonly TighteningOrder[] Orders = [TighteningOrder.Free, TighteningOrder.StepByStep, TighteningOrder.InSequence];

    /// <summary>I1 to I7 of the design, at every line of every day.</summary>
    [Fact]
    public void What_is_known_only_grows_and_each_cure_clears_its_own()
    {
        int loosened = 0, accepted = 0, withdrawn = 0;
        foreach (PhysicalDay day in SomeDays())
        {
            var log = new MergedLog(day.Run.Program, PhysicalDay.Options);
            foreach (LogLine line in Arranged(day, log))
            {
                MergedLog before = log.Copy();
                JobOutcome outcome = log.Take(line.Entry, line.Place);
                for (int f = 0; f < log.Ledger.Rows.Count; f++) CheckGrowth(line, outcome, before.Ledger.Rows[f], log.Ledger.Rows[f], f == IndexOf(line.Entry, log));
                loosened += line.Entry.Kind == JobEntryKind.Loosened ? 1 : 0;
                accepted += line.Entry.Kind == JobEntryKind.Accepted ? 1 : 0;
                withdrawn += (line.Place.Flags & LineFlags.Withdrawn) != 0 ? 1 : 0;
            }
        }

        Assert.True(loosened > 100 && accepted > 100 && withdrawn > 100, $"{loosened} loosened, {accepted} accepted, {withdrawn} withdrawn");
    }

    [Fact]
    public void State_depends_on_the_set_of_the_lines_and_not_on_their_order()
    {
        var random = new Random(14);
        foreach (PhysicalDay day in SomeDays())
        {
            string asTheyCame = Describe(JobProgress.Replay(day.Run.Program, day.Arrived, PhysicalDay.Options));
            JobEntry[] mixed = [.. day.Arrived, .. day.Arrived.Where(_ => random.Next(3) == 0)];
            random.Shuffle(mixed);
            Assert.Equal(asTheyCame, Describe(JobProgress.Replay(day.Run.Program, mixed, PhysicalDay.Options)));
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    [InlineData(4096)]
    public void A_run_is_its_replay_or_says_that_it_is_not(int tail)
    {
        var random = new Random(tail);
        int same = 0;
        JobOptions options = PhysicalDay.Options.WithTailLength(tail);
        foreach (PhysicalDay day in SomeDays())
        {
            JobEntry[] lines = [.. day.Arrived, .. day.Arrived.Where(_ => random.Next(4) == 0)];
            if (random.Next(2) == 0) random.Shuffle(lines);
            var run = new JobRun(day.Run.Program, options);
            foreach (JobEntry line in lines) run.Apply(line);
            JobProgress live = run.Progress, replayed = JobProgress.Replay(day.Run.Program, lines, options);
            if (live.NeedsReplay || live.AssumedRepeats > 0 || replayed.Conflicts > 0) continue;
            Assert.True(Describe(replayed) == Describe(live), $"{day}\n{Describe(replayed)}\n{Describe(live)}");
            same++;
        }

        Assert.True(same > (tail > 6 ? Days : 15), $"only {same} days can be compared");
    }

    /// <summary>With the steps named, a program with narrower windows conforms no log that the wider one does not.</summary>
    [Fact]
    public void A_narrower_window_never_helps()
    {
        int narrowConforms = 0, wideConforms = 0;
        for (int seed = 0; seed < 3000; seed++)
        {
            var random = new Random(seed);
            double inward = random.NextDouble() * 4;
            TighteningProgram wide = Snugged(57, 63, 90, 180), narrow = Snugged(57 + inward, 63 - inward / 2, 90 + inward, 180 - 10 * inward);
            var log = new CaseLog(wide);
            int lines = random.Next(2, 7);
            for (int i = 0; i < lines; i++)
            {
                if (random.Next(8) == 0) log.Loosen("B1");
                else if (random.Next(2) == 0) log.Pull("B1", 56 + 8 * random.NextDouble(), step: "snug");
                else log.Pull("B1", 90 + 40 * random.NextDouble(), 40 + 100 * random.NextDouble(), "turn");
            }

            bool isNarrow = JobProgress.Replay(narrow, log.Entries).IsConforming, isWide = JobProgress.Replay(wide, log.Entries).IsConforming;
            Assert.True(isWide || !isNarrow, string.Join("\n", log.Entries));
            narrowConforms += isNarrow ? 1 : 0;
            wideConforms += isWide ? 1 : 0;
        }

        Assert.True(narrowConforms > 30 && wideConforms > narrowConforms, $"{narrowConforms} of {wideConforms}");
    }

    internal static string Describe(JobProgress job)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{job} {job.EntryCount} {job.WithdrawnCount} {job.IsComplete} {job.IsConforming} {string.Join(",", job.Gaps)}");
        foreach (string fastener in job.Program.Fasteners)
        {
            FastenerState state = job.StateOf(fastener);
            text.AppendLine(CultureInfo.InvariantCulture, $"{state} {state.Peak} {state.PeakEver} {state.Turn} {state.TurnEver} {state.Facts} {state.Replacements} {string.Join(",", state.Ever)} {state.Cause}");
            foreach (StepState step in state.Steps) text.AppendLine(CultureInfo.InvariantCulture, $"{step} {step.Pull} {step.Turn} {step.Skip}");
        }

        return text.ToString();
    }

    private static IEnumerable<PhysicalDay> SomeDays()
    {
        for (int seed = 0; seed < Days; seed++)
        {
            foreach (DayKind kind in new[] { DayKind.BadAll, DayKind.BadDecisions, DayKind.BadClocks, DayKind.BadLines })
            {
                var day = new PhysicalDay(seed, kind, DayProgram.All[seed % DayProgram.All.Length], Orders[seed % 3]);
                day.Work();
                yield return day;
            }
        }
    }

    private static List<LogLine> Arranged(PhysicalDay day, MergedLog log) =>
        LogOrder.Arrange(day.Arrived.Select(entry => new LogLine(entry)), log.Sources, new HashSet<(string, long)>());

    private static int IndexOf(JobEntry entry, MergedLog log) => entry.Fastener is string name && log.Program.TryFindFastener(name, out int index) ? index : -1;

    private static void CheckGrowth(LogLine line, in JobOutcome outcome, FastenerLedger before, FastenerLedger after, bool isConcerned)
    {
        ReasonSet said = outcome.Reasons;
        bool isFirm = !said.Meets(ReasonSet.Of(JobReason.Withdrawn, JobReason.NumberReused, JobReason.OrderUnsure));
        bool isReplaced = isConcerned && isFirm && line.Entry.Kind == JobEntryKind.Replaced;
        if (!isConcerned)
        {
            Assert.Equal((before.Run, before.Unsettled, before.Ever, before.Facts, before.Peak, before.Turn), (after.Run, after.Unsettled, after.Ever, after.Facts, after.Peak, after.Turn));
            return;
        }

        Assert.Equal(default, after.Run.Without(after.Ever));                                                             // I2
        if (isReplaced)
        {
            Assert.Equal((said, said, said, 0.0, 0.0), (after.Run, after.Unsettled, after.Ever, after.PeakEver, after.TurnEver));
            return;
        }

        Assert.Equal(default, before.Ever.Without(after.Ever));                                                           // I1
        Assert.True(after.PeakEver >= before.PeakEver && after.TurnEver >= before.TurnEver);
        switch (line.Entry.Kind)
        {
            case JobEntryKind.Loosened when isFirm:
                Assert.Equal((said, 0.0, 0.0), (after.Run, after.Peak, after.Turn));                                      // I3
                Assert.Equal(before.Unsettled | said, after.Unsettled);
                Assert.All(after.Cells, cell => Assert.True(cell.Status is FastenerStatus.Open or FastenerStatus.NotInStep));
                break;
            case JobEntryKind.Loosened or JobEntryKind.Replaced:
                Assert.Equal((before.Run | said, before.Unsettled | said, before.Peak, before.Turn), (after.Run, after.Unsettled, after.Peak, after.Turn));
                Assert.All(after.Cells, cell => Assert.True(cell.Status is FastenerStatus.Open or FastenerStatus.NotInStep));     // I7
                break;
            case JobEntryKind.Accepted:
                Assert.Equal(before.Run | said, after.Run);                                                               // I4
                Assert.Equal(before.Cells.Select(cell => cell.Status), after.Cells.Select(cell => cell.Status));
                bool isSettled = isFirm && line.Entry.Seen == (long)before.Facts;
                Assert.Equal(isSettled ? said : before.Unsettled | said, after.Unsettled);                                // I5
                Assert.Equal(isFirm && !isSettled, said.Has(JobReason.DecisionOutdated));
                break;
            case JobEntryKind.Pulled:
                Assert.Equal(before.Run | said, after.Run);
                if (!isFirm || outcome.Step < 0) Assert.Equal((before.Peak, before.Turn), (after.Peak, after.Turn));      // I6
                if (said.Has(JobReason.Withdrawn)) Assert.Equal(before.Cells.Select(cell => cell.Status), after.Cells.Select(cell => cell.Status));
                break;
        }
    }

    private static TighteningProgram Snugged(double low, double high, double least, double most) => new(
        ["B1"],
        [
            TighteningStep.ByTorque("snug", ToleranceWindow.FromLimits(UnitsNet.Torque.FromNewtonMeters(low), UnitsNet.Torque.FromNewtonMeters(high))),
            TighteningStep.ByRotation("turn", UnitsNet.Torque.FromNewtonMeters(55), ToleranceWindow.FromLimits(UnitsNet.Angle.FromDegrees(least), UnitsNet.Angle.FromDegrees(most))),
        ],
        TighteningOrder.Free);
}
