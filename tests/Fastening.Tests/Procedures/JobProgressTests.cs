using System.Globalization;
using System.Text;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace Fastening.Tests.Procedures;

/// <summary>The job against a second set of rules, over random programs and days; replay and split laws.</summary>
[Properties(Arbitrary = [typeof(AnyScript)])]
public class JobProgressTests
{
    [Property(MaxTest = 10_000)]
    public void Job_and_naive_model_agree_after_every_entry(AnyScript script)
    {
        (string[] fasteners, NaiveStep[] steps, TighteningOrder order) = script.Program();
        var program = new TighteningProgram(fasteners, [.. steps.Select(step => step.Build())], order);
        JobProgress job = JobProgress.Start(program);
        NaiveJob naive = NaiveJob.Start(fasteners, steps, order);
        var sequences = new Dictionary<string, long>();
        var log = new List<JobEntry>();
        for (int i = 1; i < script.Numbers.Length; i++)
        {
            JobEntry entry = script.EntryAt(i, job, sequences);
            log.Add(entry);
            JobUpdate update = job.Apply(entry);
            (JobVerdict verdict, HashSet<JobReason> reasons) = naive.Take(entry);
            Assert.True(verdict == update.Verdict && reasons.SetEquals(update.Reasons), $"{entry}: {update}, naive {verdict} {string.Join(", ", reasons)}");
            if (verdict == JobVerdict.Ignored) Assert.Same(job, update.Progress);
            job = update.Progress;
            AssertAgree(job, naive, steps, fasteners);
        }

        // Replay in one go, and split anywhere, come to the same state.
        string end = Describe(job);
        int split = script.Numbers.Length == 0 ? 0 : script.Numbers[0] % (log.Count + 1);
        Assert.Equal(end, Describe(JobProgress.Start(program).ApplyAll(log)));
        Assert.Equal(end, Describe(JobProgress.Start(program).ApplyAll(log.Take(split)).ApplyAll(log.Skip(split))));
        Assert.Equal(end, Describe(log.Skip(split).Aggregate(JobProgress.Start(program).ApplyAll(log.Take(split)), (p, e) => p.Apply(e).Progress)));
    }

    [Property(MaxTest = 1000)]
    public void Nothing_changes_when_the_log_is_sent_again_or_an_old_progress_goes_on(AnyScript script)
    {
        (string[] fasteners, NaiveStep[] steps, TighteningOrder order) = script.Program();
        JobProgress start = JobProgress.Start(new TighteningProgram(fasteners, [.. steps.Select(step => step.Build())], order));
        string atStart = Describe(start);
        var sequences = new Dictionary<string, long>();
        List<JobEntry> log = [];
        List<JobProgress> states = [start];
        for (int i = 1; i < script.Numbers.Length; i++)
        {
            log.Add(script.EntryAt(i, states[^1], sequences));
            states.Add(states[^1].Apply(log[^1]).Progress);
        }

        string end = Describe(states[^1]);
        Assert.Equal(end, Describe(states[^1].ApplyAll(log)));
        Assert.Equal(atStart, Describe(start));

        // A branch from the middle, ended in another way, leaves the states that share its rows as they were.
        int middle = states.Count / 2;
        string inTheMiddle = Describe(states[middle]);
        states[middle].ApplyAll(fasteners.Select((f, i) => JobEntry.Loosened("another", i, DateTimeOffset.UnixEpoch, f, "branch")));
        states[middle].ApplyAll(log.Skip(middle).Reverse());
        Assert.Equal(inTheMiddle, Describe(states[middle]));
        Assert.Equal(end, Describe(states[^1]));
    }

    [Fact]
    public void Scripts_reach_every_reason_and_every_status()
    {
        // A generator that never gets there would make the agreement above worth little.
        HashSet<JobReason> reasons = [];
        HashSet<FastenerStatus> statuses = [];
        int conforming = 0;
        for (int seed = 0; seed < 400; seed++)
        {
            var random = new Random(seed);
            var script = new AnyScript([.. Enumerable.Range(0, 40).Select(_ => random.Next())]);
            (string[] fasteners, NaiveStep[] steps, TighteningOrder order) = script.Program();
            JobProgress job = JobProgress.Start(new TighteningProgram(fasteners, [.. steps.Select(step => step.Build())], order));
            var sequences = new Dictionary<string, long>();
            for (int i = 1; i < script.Numbers.Length; i++)
            {
                JobUpdate update = job.Apply(script.EntryAt(i, job, sequences));
                reasons.UnionWith(update.Reasons);
                job = update.Progress;
                statuses.UnionWith(from step in steps from f in fasteners select job.StateOf(step.Name, f).Status);
            }

            if (job.IsConforming) conforming++;
        }

        Assert.Equal(Enum.GetValues<JobReason>(), reasons.Order());
        Assert.Equal(Enum.GetValues<FastenerStatus>(), statuses.Order());
        Assert.True(conforming > 20, $"only {conforming} of 400 days end with every fastener done");
    }

    private static void AssertAgree(JobProgress job, NaiveJob naive, NaiveStep[] steps, string[] fasteners)
    {
        Assert.Equal((naive.Entries, naive.Strays, naive.Undone, naive.Conflicts), (job.EntryCount, job.StrayCount, job.UndoneCount, job.ConflictCount));
        Assert.Equal((naive.OpenStep?.Name, naive.NextFastener), (job.OpenStep?.Name, job.NextFastener));
        Assert.Equal(naive.Cells.Values.All(c => c.Settled) && naive.MustBeLoosened.Count == 0, job.IsSettled);
        Assert.Equal(job.Program.Fasteners.Where(naive.MustBeLoosened.Contains), job.ToLoosen);
        Assert.Equal(naive.Cells.Values.All(c => c.Status == FastenerStatus.Done) && naive.MustBeLoosened.Count == 0, job.IsConforming);
        foreach (NaiveStep step in steps)
        {
            StepCounts counts = job.CountsOf(step.Name);
            int Of(FastenerStatus status) => step.Order.Count(f => naive.Cells[(step.Name, f)].Status == status);
            Assert.Equal(
                (Of(FastenerStatus.Open), Of(FastenerStatus.Done), Of(FastenerStatus.Rejected), Of(FastenerStatus.Skipped), step.Order.Length),
                (counts.Open, counts.Done, counts.Rejected, counts.Skipped, counts.Fasteners));
            foreach (string fastener in fasteners)
            {
                FastenerState state = job.StateOf(step.Name, fastener);
                NaiveCell? cell = naive.Cells.GetValueOrDefault((step.Name, fastener));
                Assert.Equal(cell?.Status ?? FastenerStatus.NotInStep, state.Status);
                Assert.Equal((naive.Loosenings[fastener].Count, naive.MustBeLoosened.Contains(fastener)), (state.Loosenings, state.MustBeLoosened));
                Assert.Equal(naive.Loosenings[fastener].Reason, state.LooseningReason ?? "");
                if (cell is null) continue;
                Assert.Equal((cell.Readings, cell.Reading, cell.SkipReason), (state.Readings, state.Reading, state.SkipReason));
                Assert.True(cell.Reasons.SetEquals(state.Reasons), state.ToString());
            }
        }
    }

    /// <summary>Everything that a progress shows.</summary>
    private static string Describe(JobProgress job)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{job.EntryCount} {job.StrayCount} {job.UndoneCount} {job.OpenStep?.Name} {job.NextFastener} {job.IsSettled} {job.IsConforming} {job}");
        foreach (TighteningStep step in job.Program.Steps)
        {
            text.AppendLine(job.CountsOf(step.Name).ToString());
            foreach (string fastener in job.Program.Fasteners)
            {
                FastenerState s = job.StateOf(step.Name, fastener);
                text.AppendLine(CultureInfo.InvariantCulture, $"{s} {s.Reading} {string.Join(",", s.Reasons)} {s.SkipReason} {s.LooseningReason} {s.MustBeLoosened}");
            }
        }

        return text.ToString();
    }
}
