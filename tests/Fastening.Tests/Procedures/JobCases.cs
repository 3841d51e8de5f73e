using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>
/// The cases that killed simpler rules, one for each, and good work beside them. Each tells null, or what is wrong. No test framework in it, so that a changed library can be
/// put under it.
/// </summary>
internal static class JobCases
{
    private static readonly string[] One = ["B1"];

    private static readonly TighteningProgram Torque100 = new(One, [By("full", 95, 105)], TighteningOrder.InSequence);
    private static readonly TighteningProgram Passes = new(One, [By("half", 47, 53), By("full", 95, 105)], TighteningOrder.InSequence);
    private static readonly TighteningProgram Turn = new(One, [By("snug", 57, 63), TighteningStep.ByRotation("turn", Newtons(55), Turned)], TighteningOrder.InSequence);
    private static readonly TighteningProgram Eye = new(One, [new("snug", Criterion.FirmContact()), new("turn", Criterion.Turn(Turned))], TighteningOrder.Free);
    private static readonly TighteningProgram Audit = new(
        One, [By("snug", 57, 63), TighteningStep.ByRotation("turn", Newtons(55), Turned), new("audit", Criterion.Torque(Window(95, 125)), Criterion.MoveAtMost(Angle.FromDegrees(2)))],
        TighteningOrder.InSequence);

    public static IReadOnlyList<(string Name, Func<string?> Complaint)> All { get; } =
    [
        ("good: one pull", () => Conforms(new CaseLog(Torque100).Pull("B1", 100))),
        ("good: two passes", () => Conforms(new CaseLog(Passes).Pull("B1", 50).Pull("B1", 100))),
        ("good: snug and turn in two strokes", () => Conforms(new CaseLog(Turn).Pull("B1", 60).Pull("B1", 95, 70).Pull("B1", 118, 60))),
        ("good: snug and turn in three strokes", () => Conforms(new CaseLog(Turn).Pull("B1", 60).Pull("B1", 80, 40).Pull("B1", 95, 40).Pull("B1", 118, 40))),
        ("good: snug by eye and turn", () => Conforms(new CaseLog(Eye).Pull("B1", null, contact: true).Pull("B1", null, 130))),
        ("good: audit that does not move", () => Conforms(new CaseLog(Audit).Pull("B1", 60).Pull("B1", 118, 130).Pull("B1", 110, 0))),
        ("good: too little, then enough in motion", () => Conforms(new CaseLog(Torque100).Pull("B1", 90).Pull("B1", 100))),
        ("good: a typo of a good value, withdrawn, and the pull", () => Conforms(new CaseLog(Torque100).Then(log => log.Pull("B1", 99).Withdraw(log.Last)).Pull("B1", 100))),
        ("pulled too hard, loosened and done again: a person looks", () => IsLookedAt(new CaseLog(Torque100).Pull("B1", 290).Loosen("B1").Pull("B1", 100))),
        ("the same, looked at and accepted", () => Conforms(new CaseLog(Torque100).Pull("B1", 290).Loosen("B1").Accept("B1").Pull("B1", 100))),
        ("the same, replaced", () => Conforms(new CaseLog(Torque100).Pull("B1", 290).Replace("B1").Pull("B1", 100))),
        ("a typo far too high, withdrawn: it still warns", () => IsLookedAt(new CaseLog(Torque100).Then(log => log.Pull("B1", 290).Withdraw(log.Last)).Pull("B1", 100))),
        ("a decision lifts no loosening", () => Not(new CaseLog(Torque100).Pull("B1", 100).Pull("B1", 290, step: "none").Accept("B1"), "accepted at 290 N·m")),
        ("a decision makes no step done", () => Not(new CaseLog(Torque100).Pull("B1", 90).Accept("B1"), "accepted at 90 N·m")),
        ("a decision that did not see the earlier line", LateBehindADecision),
        ("a decision on as many facts, but others", SameCountOtherFacts),
        ("a line of a step that nobody has", () => Not(new CaseLog(Torque100).Pull("B1", 100).Pull("B1", 290, step: "tum"), "290 N·m at tum")),
        ("a pull that nobody measured", () => IsLookedAt(new CaseLog(Torque100).Pull("B1", 100).Pull("B1", null).Pull("B1", 100))),
        ("a turn that nobody measured, and one with an angle", () => Not(new CaseLog(Turn).Pull("B1", 60).Pull("B1", 118).Pull("B1", 125, 100), "an unmeasured turn, then 100°")),
        ("a turn of a fastener whose snugging was skipped", () => Not(new CaseLog(Turn).Skip("B1", "snug").Pull("B1", 118, 130, "turn").Pull("B1", 60, step: "snug"), "turned before it was snug")),
        ("an empty line is no look", () => Not(new CaseLog(Eye).Pull("B1", null).Pull("B1", null, contact: true).Pull("B1", null, 130), "an unmeasured turn before snug")),
        ("a loosening that never was", () => Not(new CaseLog(Turn).Pull("B1", 60).Pull("B1", 118, 130).Then(log => log.Loosen("B1").Withdraw(log.Last)).Pull("B1", 60).Pull("B1", 119, 130), "turned 260°, and 130° known")),
        ("a loosening that is withdrawn shows the work again", () => Not(new CaseLog(Torque100).Pull("B1", 100).Then(log => log.Loosen("B1").Withdraw(log.Last)), "it may hang loose")),
        ("a turn that never was, and a pull that moves nothing", () => Not(new CaseLog(Turn).Pull("B1", 60).Then(log => log.Pull("B1", 118, 130).Withdraw(log.Last)).Pull("B1", 118, 0), "it never turned")),
        ("a turn that is withdrawn and was real", () => Not(new CaseLog(Turn).Pull("B1", 60).Then(log => log.Pull("B1", 118, 130).Withdraw(log.Last)).Pull("B1", 119, 130), "turned 260°, and 130° known")),
        ("a replacement that never was", () => IsLookedAt(new CaseLog(Torque100).Pull("B1", 290).Loosen("B1").Then(log => log.Replace("B1").Withdraw(log.Last)).Pull("B1", 100))),
        ("a tool an hour ahead, and the loosening it missed", ToolAhead),
        ("a clock that died puts a pull before a replacement", DeadClock),
        ("a late line of another tool", TwoToolsOneLate),
        ("a loosening under a used number", LooseningUnderAUsedNumber),
        ("a pull under a used number", PullUnderAUsedNumber),
        ("a stamp later than its receipt", () => Not(new CaseLog(Torque100).Add(
            JobEntry.Pulled("gun", 1, CaseLog.Morning.AddHours(1), "B1").WithTorque(Newtons(100)).WithReceived(CaseLog.Morning)), "its clock tells no time")),
        ("a pull older than a loosening", OlderThanALoosening),
        ("two tools on one fastener in the same second", SameSecond),
        ("a lost line shows, and heals", TornLine),
        ("a gap that is explained", ExplainedGap),
        ("pulled to a later pass too early", () => new CaseLog(Passes).Pull("B1", 100, step: "full").Job.ToLoosen.Count == 1 ? null : "100 N·m where 53 are allowed"),
        ("turned on after it was done", () => Not(new CaseLog(Turn).Pull("B1", 60).Pull("B1", 118, 130).Pull("B1", 125, 70), "turned 200°")),
        ("a look after the turn changes nothing", () => Conforms(new CaseLog(Turn).Pull("B1", 60).Pull("B1", 118, 130).Pull("B1", 118, 0))),
        ("a look after the turn with little torque changes nothing", () => Conforms(new CaseLog(Turn).Pull("B1", 60).Pull("B1", 118, 130).Pull("B1", 40, 0, "turn"))),
        ("an audit that moves", () => Not(new CaseLog(Audit).Pull("B1", 60).Pull("B1", 118, 130).Pull("B1", 120, 5).Pull("B1", 120, 0), "it moved by 5°")),
        ("an audit that is not measured", () => Not(new CaseLog(Audit).Pull("B1", 60).Pull("B1", 118, 130).Pull("B1", 125).Pull("B1", 120, 0), "nobody knows how far it moved")),
        ("too low after it was done", () => Not(new CaseLog(Torque100).Pull("B1", 100).Pull("B1", 60), "the last pull is too low")),
        ("loosened last", () => Not(new CaseLog(Torque100).Pull("B1", 100).Loosen("B1"), "it is loose")),
        ("a run keeps what a replay says", RunThatNeedsAReplay),
    ];

    private static string? LateBehindADecision()
    {
        var log = new CaseLog(Torque100);
        JobEntry early = JobEntry.Pulled("gun", 1, log.Time(), "B1").WithTorque(Newtons(290));
        log.Pull("B1", 290).Loosen("B1").Accept("B1").Pull("B1", 100);
        return Conforms(log) ?? IsLookedAt(log.Add(early));
    }

    /// <summary>One line less by a withdrawal, one more that came late: a count would not tell.</summary>
    private static string? SameCountOtherFacts()
    {
        var log = new CaseLog(Torque100);
        JobEntry unseen = JobEntry.Pulled("gun", 1, log.Time(), "B1").WithTorque(Newtons(290));
        log.Pull("B1", 106);
        JobEntry seen = log.Last;
        log.Loosen("B1").Accept("B1").Pull("B1", 100);
        List<JobEntry> other = [.. log.Entries.Where(entry => entry != seen), unseen];
        JobProgress job = JobProgress.Replay(Torque100, other, JobOptions.Default.WithSources(JobSource.Sparse("wrench"), JobSource.Sparse("gun")));
        return job.IsConforming ? "106 N·m was accepted, and 290 N·m is what was pulled" : null;
    }

    private static string? ToolAhead()
    {
        DateTimeOffset time = CaseLog.Morning;
        JobEntry pull = JobEntry.Pulled("gun", 1, time.AddHours(1), "B1").WithTorque(Newtons(100)).WithReceived(time);
        JobEntry loosened = JobEntry.Loosened("form", 1, time.AddMinutes(10), "B1", "r").WithReceived(time.AddMinutes(10));
        return Not(new CaseLog(Torque100).Add(pull).Add(loosened), "it is loose");
    }

    private static string? DeadClock()
    {
        DateTimeOffset time = CaseLog.Morning;
        var log = new CaseLog(Torque100);
        log.Add(JobEntry.Pulled("gun", 1, time, "B1").WithTorque(Newtons(100)));
        log.Add(JobEntry.Replaced("form", 1, time.AddMinutes(5), "B1", "r"));
        log.Add(JobEntry.Pulled("gun", 2, DateTimeOffset.UnixEpoch, "B1").WithTorque(Newtons(290)).WithReceived(time.AddMinutes(10)));
        log.Add(JobEntry.Loosened("form", 2, time.AddMinutes(15), "B1", "r"));
        return IsLookedAt(log.Add(JobEntry.Pulled("wrench", 1, time.AddMinutes(20), "B1").WithTorque(Newtons(100))));
    }

    /// <summary>Two tools take bolts in turn; the lines of one come 25 s late. Good work, and nothing to be loosened.</summary>
    private static string? TwoToolsOneLate()
    {
        string[] bolts = [.. Enumerable.Range(1, 48).Select(i => $"B{i}")];
        var program = new TighteningProgram(bolts, [By("half", 47, 53), By("full", 95, 105)], TighteningOrder.InSequence);
        var lines = new List<(long Arrives, JobEntry Entry)>();
        long seconds = 0, one = 0, two = 0;
        foreach (double torque in new[] { 50.0, 100 })
        {
            for (int i = 0; i < bolts.Length; i++, seconds += 10)
            {
                JobEntry entry = i % 2 == 0 ? JobEntry.Pulled("one", ++one, CaseLog.Morning.AddSeconds(seconds), bolts[i]) : JobEntry.Pulled("two", ++two, CaseLog.Morning.AddSeconds(seconds), bolts[i]);
                lines.Add((seconds + (i % 2) * 25, entry.WithTorque(Newtons(torque))));
            }
        }

        JobEntry[] arrived = [.. lines.OrderBy(line => line.Arrives).Select(line => line.Entry)];
        var run = new JobRun(program);
        foreach (JobEntry entry in arrived) run.Apply(entry);
        return !JobProgress.Replay(program, arrived).IsConforming ? "good work does not conform" : run.Progress.IsConforming ? null : "good work does not conform in the run";
    }

    private static string? LooseningUnderAUsedNumber()
    {
        var log = new CaseLog(Torque100);
        log.Pull("B1", 100);
        return Not(log.Add(JobEntry.Loosened("wrench", 1, log.Time(), "B1", "r")), "it was loosened under a used number");
    }

    private static string? PullUnderAUsedNumber()
    {
        var log = new CaseLog(Torque100);
        log.Pull("B1", 100);
        return Not(log.Add(JobEntry.Pulled("wrench", 1, log.Time(), "B1").WithTorque(Newtons(99))), "the counter began again");
    }

    private static string? OlderThanALoosening()
    {
        var log = new CaseLog(Torque100);
        JobEntry pull = JobEntry.Pulled("gun", 1, log.Time(), "B1").WithTorque(Newtons(100));
        return Not(log.Loosen("B1").Add(pull), "it was loosened after the pull");
    }

    private static string? SameSecond()
    {
        var log = new CaseLog(Torque100);
        DateTimeOffset time = log.Time();
        log.Add(JobEntry.Loosened("form", 1, time, "B1", "r")).Add(JobEntry.Pulled("gun", 1, time.AddSeconds(0.5), "B1").WithTorque(Newtons(100)));
        return Not(log, "nobody knows which came first");
    }

    private static string? TornLine()
    {
        var log = new CaseLog(Passes);
        log.Pull("B1", 50).Pull("B1", 290, step: "none").Loosen("B1");
        JobEntry lost = log.Entries[1];
        log.Replace("B1").Pull("B1", 50).Pull("B1", 100);
        log.Entries.Remove(lost);
        return Not(log, "a line is lost") ?? Conforms(log.Add(lost));
    }

    private static string? ExplainedGap()
    {
        var log = new CaseLog(Torque100);
        log.Pull("B1", 100).Add(JobEntry.Noted("wrench", 9, log.Time(), "end"));
        string? open = Not(log, "lines 2 to 8 are missing");
        return open ?? Conforms(log.Add(JobEntry.Explained("form", 1, log.Time(), "wrench", 2, 8, "p", "another joint")));
    }

    /// <summary>A number was explained, and its line comes when the run holds nothing from before it any more.</summary>
    private static string? RunThatNeedsAReplay()
    {
        var log = new CaseLog(Torque100);
        log.Pull("B1", 100).Pull("B1", 290, step: "none");
        JobEntry lost = log.Last;
        log.Entries.Remove(lost);
        for (int i = 0; i < 5; i++) log.Pull("B1", 100);
        log.Add(JobEntry.Explained("form", 1, log.Time(), "wrench", 2, 2, "p", "another joint"));
        var run = new JobRun(Torque100, JobOptions.Default.WithTailLength(1));
        foreach (JobEntry entry in log.Entries) run.Apply(entry);
        if (!run.Progress.IsConforming) return "good work does not conform in a run";
        if (run.Apply(lost).Verdict != JobVerdict.NeedsReplay) return "an old line is not told to need a replay";
        return run.Progress.IsConforming ? "a line is not placed, and the run conforms" : Not(log.Add(lost), "290 N·m at none");
    }

    private static string? Conforms(CaseLog log) => log.Job is { IsConforming: false } job ? $"does not conform: {job}" : null;

    private static string? Not(CaseLog log, string why) => log.Job.IsConforming ? $"conforms, and {why}" : null;

    /// <summary>All done, and nothing but a look is missing.</summary>
    private static string? IsLookedAt(CaseLog log)
    {
        JobProgress job = log.Job;
        return job.IsConforming ? "conforms, and nobody has looked" : job.ToLookAt.Count == 1 ? null : $"nothing to look at: {job}";
    }

    private static CaseLog Then(this CaseLog log, Action<CaseLog> more)
    {
        more(log);
        return log;
    }

    private static ToleranceWindow<Angle> Turned => ToleranceWindow.FromLimits(Angle.FromDegrees(90), Angle.FromDegrees(180));

    private static TighteningStep By(string name, double low, double high) => TighteningStep.ByTorque(name, Window(low, high));

    private static ToleranceWindow<Torque> Window(double low, double high) => ToleranceWindow.FromLimits(Newtons(low), Newtons(high));

    private static Torque Newtons(double value) => Torque.FromNewtonMeters(value);
}
