using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>A job told line by line: verdicts, what to do next, and what the record shows.</summary>
public class JobDayTests
{
    private static readonly DateTimeOffset Morning = CaseLog.Morning;
    private static readonly string[] Bolts = ["B1", "B2", "B3", "B4"];

    private static readonly TighteningProgram TwoPasses = new(
        Bolts, [At("half", 57, 63), At("full", 114, 126).WithFasteners(["B1", "B3", "B2", "B4"])], TighteningOrder.InSequence);

    private long _sequence;

    [Fact]
    public void Wrong_fastener_too_much_and_loosening()
    {
        var run = new JobRun(TwoPasses);
        Assert.Equal("B1, half: accepted", Pull(run, "B1", 60).ToString());
        Assert.Equal("B3, half: rejected: B2 is next. To do: pull it again in its turn", Pull(run, "B3", 60).ToString());
        JobUpdate high = Pull(run, "B2", 64);
        Assert.Equal("B2, half: rejected: torque 64 N·m is above 63 N·m; torque higher than its steps allow so far. To do: loosen it and begin again with its first step", high.ToString());
        Assert.Equal(JobEffect.Reject | JobEffect.Loosen, high.Effect);
        Assert.Equal("B2, half: rejected: it must be loosened first. To do: loosen it and begin again with its first step", Pull(run, "B2", 60).ToString());
        Assert.Equal("half: 1 of 4 done, 1 open, 2 rejected, 0 skipped; next: B2; to be loosened: B2", run.ToString());
        FastenerState state = run.Progress.StateOf("B2");
        Assert.Equal("B2: half Rejected, full Open; must be loosened: torque 64 N·m is above 63 N·m; torque higher than its steps allow so far", state.ToString());
        Assert.Equal((64, 64, 0), (state.PeakEver.NewtonMeters, state.In("half").Pull!.Torque!.Value.NewtonMeters, state.Loosenings));

        Assert.Equal("B2: accepted", run.Apply(JobEntry.Loosened("wrench 1", ++_sequence, Time(), "B2", "over the limit")).ToString());
        foreach (string bolt in Bolts[1..]) Pull(run, bolt, 60);
        Assert.Equal("full: 0 of 4 done, 4 open, 0 rejected, 0 skipped; next: B1", run.ToString());
        state = run.Progress.StateOf("B2");
        Assert.Equal((3, 1, "over the limit", false, 64.0, 60.0), (state.In("half").Pulls, state.Loosenings, state.Loosening!.Reason, state.MustBeLoosened, state.PeakEver.NewtonMeters, state.Peak.NewtonMeters));
    }

    [Fact]
    public void A_loosened_fastener_begins_with_its_first_step_and_the_others_wait()
    {
        var run = new JobRun(TwoPasses);
        foreach (string bolt in Bolts) Pull(run, bolt, 60);
        Pull(run, "B1", 120);
        Assert.Equal(
            "B3, full: rejected: torque 130 N·m is above 126 N·m; torque higher than its steps allow so far; torque above the highest that the program allows. "
            + "To do: loosen it, let a person look at it, and enter Accepted or Replaced",
            Pull(run, "B3", 130).ToString());
        run.Apply(JobEntry.Loosened("wrench 1", ++_sequence, Time(), "B3", "over the limit"));
        Assert.Equal(("half", "B3"), (run.OpenStep!.Name, run.NextFastener));
        Assert.Equal("B2, full: rejected: half is not finished. To do: finish the earlier step, then pull it again", Pull(run, "B2", 120).ToString());
        Assert.Equal(["B3"], run.Progress.ToLookAt.Select(state => state.Fastener));
        Assert.Empty(run.Progress.ToLoosen);
    }

    [Fact]
    public void A_person_decides_with_name_reason_and_what_was_known()
    {
        var run = new JobRun(new TighteningProgram(["B1"], [At("full", 114, 126)], TighteningOrder.Free));
        Pull(run, "B1", 160);
        run.Apply(JobEntry.Loosened("wrench 1", ++_sequence, Time(), "B1", "over the limit"));
        Pull(run, "B1", 120);
        FastenerState before = run.Progress.StateOf("B1");
        Assert.Equal("B1: full Done; to be looked at: torque above the highest that the program allows; loosened 1 times", before.ToString());
        Assert.Equal((true, false, false), (before.IsToLookAt, before.Conforms, run.Progress.IsConforming));
        JobUpdate outdated = run.Apply(JobEntry.Accepted("office", 1, Time(), "B1", "engineer 2", "gauged", seen: before.Facts + 1));
        Assert.Equal("B1: accepted with a remark: the decision was made without what the log says by now. To do: look again, and decide with what is known now", outdated.ToString());
        Assert.Equal("B1: accepted", run.Apply(JobEntry.Accepted("office", 2, Time(), "B1", "engineer 2", "thread gauged, sound", before.Facts)).ToString());
        FastenerState after = run.Progress.StateOf("B1");
        Assert.Equal("B1: full Done; loosened 1 times; accepted by engineer 2: thread gauged, sound", after.ToString());
        Assert.True(run.Progress.IsConforming && after.Conforms);
        Assert.Contains(JobReason.BeyondTorqueLimit, after.Ever);
        Assert.Equal("engineer 2", after.Decision!.Operator);
    }

    [Fact]
    public void Pulled_again_from_rest_is_remarked_with_its_advice()
    {
        var run = new JobRun(new TighteningProgram(["B1"], [At("full", 114, 126)], TighteningOrder.Free));
        Pull(run, "B1", 100);
        JobUpdate again = Pull(run, "B1", 118);
        Assert.Equal("B1, full: accepted with a remark: pulled again from rest after it stopped short. To do: loosen it and tighten it in one pull, or state that the torque was read in motion", again.ToString());
        Assert.Equal(["B1, full: Done, pulls: 2; pulled again from rest after it stopped short"], run.Progress.Remarks.Select(step => step.ToString()));
        Assert.True(run.Progress.IsConforming);
        JobEntry moving = JobEntry.Pulled("wrench 1", ++_sequence, Time(), "B1").WithTorque(Torque.FromNewtonMeters(119)).ReadInMotion();
        Assert.Equal([JobReason.PulledAgain], run.Apply(moving).Findings.Select(found => found.Reason));
    }

    [Fact]
    public void Skipped_goes_on_and_is_done_later_by_naming_the_step()
    {
        var program = new TighteningProgram(Bolts, [At("half", 57, 63), At("full", 114, 126)], TighteningOrder.StepByStep);
        var run = new JobRun(program);
        run.Apply(JobEntry.Skipped("form", 1, Time(), "B2", "no room for the wrench"));
        foreach (string bolt in new[] { "B1", "B3", "B4" }) Pull(run, bolt, 60);
        Assert.Equal("full", run.OpenStep!.Name);
        Assert.Equal("half: 3 of 4 done, 0 open, 0 rejected, 1 skipped", run.Progress.CountsOf("half").ToString());
        JobUpdate later = run.Apply(JobEntry.Pulled("wrench 1", ++_sequence, Time(), "B2").WithTorque(Torque.FromNewtonMeters(60)).AtStep("half"));
        Assert.Equal("B2, half: accepted with a remark: had been skipped in this step", later.ToString());
        Assert.Equal("no room for the wrench", run.Progress.StateOf("B2").In("half").Skip!.Reason);
        for (int i = 0; i < 4; i++) run.Apply(JobEntry.Skipped("form", 2 + i, Time(), Bolts[i], "end of the day").AtStep("full"));
        Assert.Null(run.OpenStep);
        Assert.False(run.Progress.IsConforming);
        Assert.StartsWith("some fasteners were skipped, the others are done", run.ToString(), StringComparison.Ordinal);
        Assert.Equal([JobReason.AlreadyDone], run.Apply(JobEntry.Skipped("form", 6, Time(), "B1", "r").AtStep("half")).Findings.Select(found => found.Reason));
    }

    /// <summary>Common practice: snug is gone over twice, and the tool names no step.</summary>
    [Theory]
    [InlineData(TighteningOrder.Free)]
    [InlineData(TighteningOrder.StepByStep)]
    [InlineData(TighteningOrder.InSequence)]
    public void A_second_click_at_snug_is_that_and_no_turn(TighteningOrder order)
    {
        TighteningStep turn = TighteningStep.ByRotation("turn", Torque.FromNewtonMeters(55), ToleranceWindow.FromLimits(Angle.FromDegrees(90), Angle.FromDegrees(180)));
        var run = new JobRun(new TighteningProgram(Bolts, [At("snug", 57, 63), turn], order));
        foreach (string bolt in Bolts) Pull(run, bolt, 60);
        foreach (string bolt in Bolts) Pull(run, bolt, 62.5);
        Assert.Empty(run.Progress.ToLoosen);
        foreach (string bolt in Bolts)
        {
            run.Apply(JobEntry.Pulled("wrench 1", ++_sequence, Time(), bolt).WithTorque(Torque.FromNewtonMeters(118)).WithRotation(Angle.FromDegrees(130)));
        }

        Assert.True(run.Progress.IsConforming, run.ToString());
    }

    [Fact]
    public void Out_of_turn_is_healed_by_a_pull_in_turn_that_moves_nothing()
    {
        TighteningStep turn = TighteningStep.ByRotation("turn", Torque.FromNewtonMeters(55), ToleranceWindow.FromLimits(Angle.FromDegrees(90), Angle.FromDegrees(180)));
        var log = new CaseLog(new TighteningProgram(["B1", "B2"], [At("snug", 57, 63), turn], TighteningOrder.InSequence));
        log.Pull("B1", 60).Pull("B2", 60).Pull("B2", 118, 130).Pull("B1", 118, 130);
        Assert.Equal(([], "B2", false), (log.Job.ToLoosen.ToArray(), log.Job.NextFastener, log.Job.IsConforming));
        Assert.True(log.Pull("B2", 118, 0).Job.IsConforming, log.Job.ToString());
        Assert.Equal(130, log.Job.StateOf("B2").Turn.Degrees);
    }

    [Fact]
    public void A_repeat_is_ignored_and_another_entry_of_the_number_is_a_conflict()
    {
        var run = new JobRun(TwoPasses);
        JobEntry first = JobEntry.Pulled("wrench 1", 1, Time(), "B1").WithTorque(Torque.FromNewtonMeters(60));
        run.Apply(first);
        JobUpdate repeat = run.Apply(first.WithReceived(Morning.AddHours(1)));
        Assert.Equal((JobVerdict.Ignored, "B1: ignored: a repeat"), (repeat.Verdict, repeat.ToString()));
        JobUpdate other = run.Apply(JobEntry.Pulled("wrench 1", 1, Time(), "B2").WithTorque(Torque.FromNewtonMeters(300)));
        Assert.Equal(
            "B2, half: rejected: torque 300 N·m is above 63 N·m; sequence conflict: another entry holds this number; torque higher than its steps allow so far; torque above the highest that the program allows. "
            + "To do: loosen it, let a person look at it, and enter Accepted or Replaced; give the restarted counter a new source name, and replay the log",
            other.ToString());
        JobProgress job = run.Progress;
        Assert.Equal((1, 1, false), (job.Repeats, job.Conflicts, job.IsComplete));
        Assert.Equal(["B2"], job.ToLoosen);
        Assert.Equal(JobVerdict.Ignored, run.Apply(other.Entry).Verdict);
    }

    [Fact]
    public void A_late_line_takes_its_place_and_the_verdict_says_so()
    {
        var run = new JobRun(TwoPasses);
        JobEntry late = JobEntry.Pulled("wrench 2", 1, Time(), "B1").WithTorque(Torque.FromNewtonMeters(60));
        Assert.Equal(JobVerdict.Rejected, Pull(run, "B2", 60).Verdict);
        JobUpdate update = run.Apply(late);
        Assert.Equal("B1, half: accepted (late: put in its place)", update.ToString());
        Assert.True(update.WasLate);
        Assert.Equal(FastenerStatus.Done, run.Progress.StateOf("B2").In("half").Status);
    }

    [Fact]
    public void Missing_lines_are_named_and_what_asks_for_loosening_waits_for_them()
    {
        var run = new JobRun(TwoPasses, JobOptions.Default.WithSources(JobSource.Counting("wrench 1", first: 1)));
        run.Apply(JobEntry.Pulled("wrench 1", 3, Time(), "B1").WithTorque(Torque.FromNewtonMeters(64)));
        JobProgress job = run.Progress;
        Assert.Equal(["wrench 1 #1 to #2"], job.Gaps.Select(gap => gap.ToString()));
        Assert.Equal((0, "B1", true), (job.ToLoosen.Count, job.WaitingForLines[0], job.StateOf("B1").IsWaitingForLines));
        Assert.Equal("half: 0 of 4 done, 3 open, 1 rejected, 0 skipped; next: B1; missing lines: wrench 1 #1 to #2: have them sent again, or explain them; waiting for lines: B1", job.ToString());
        run.Apply(JobEntry.Explained("office", 1, Time(), "wrench 1", 1, 1, "engineer 2", "trial pull on the bench"));
        Assert.Equal(["wrench 1 #2"], run.Progress.Gaps.Select(gap => gap.ToString()));
        JobEntry explained = JobEntry.Explained("office", 2, Time(), "wrench 1", 2, 9, "engineer 2", "another joint");
        run.Apply(explained);
        Assert.Equal(["B1"], run.Progress.ToLoosen);
        run.Apply(JobEntry.Withdrawn("office", 3, Time(), "office", 2, "engineer 2", "it was this joint"));
        Assert.Equal(["wrench 1 #2"], run.Progress.Gaps.Select(gap => gap.ToString()));
        Assert.Empty(JobProgress.Replay(TwoPasses, [explained, JobEntry.Noted("wrench 1", 12, Time(), "n"), JobEntry.Noted("wrench 1", 20, Time(), "n")], JobOptions.Default.WithSources(JobSource.Sparse("wrench 1"))).Gaps);
    }

    [Fact]
    public void A_withdrawal_of_a_withdrawal_says_that_it_does_nothing()
    {
        var run = new JobRun(TwoPasses);
        Pull(run, "B1", 60);
        run.Apply(JobEntry.Withdrawn("office", 1, Time(), "wrench 1", 1, "p", "r"));
        JobUpdate second = run.Apply(JobEntry.Withdrawn("office", 2, Time(), "office", 1, "p", "r"));
        Assert.Equal("Withdrawn office #1: accepted with a remark: a withdrawal cannot be withdrawn", second.ToString());
        Assert.Equal((1, FastenerStatus.Open), (run.Progress.WithdrawnCount, run.Progress.StateOf("B1").In("half").Status));
    }

    [Fact]
    public void An_unknown_fastener_is_counted_until_it_is_withdrawn()
    {
        var run = new JobRun(TwoPasses);
        Assert.Equal("B9: rejected: the program has no such fastener. To do: withdraw the line and enter it with the right fastener", Pull(run, "B9", 60).ToString());
        Assert.Equal(1, run.Progress.Strays);
        run.Apply(JobEntry.Withdrawn("office", 1, Time(), "wrench 1", 1, "p", "it was B1"));
        Assert.Equal(0, run.Progress.Strays);
    }

    [Fact]
    public void Loosened_more_often_than_permitted_is_to_be_looked_at()
    {
        var log = new CaseLog(new TighteningProgram(["B1"], [At("full", 114, 126)], TighteningOrder.Free).WithMostLoosenings(1));
        Assert.Empty(log.Loosen("B1").Job.ToLookAt);
        Assert.Equal([JobReason.LoosenedTooOften], log.Loosen("B1").Job.StateOf("B1").ToLookAtFor.Select(found => found.Reason));
        Assert.Empty(log.Replace("B1").Job.ToLookAt);
    }

    /// <summary>By hand: 100 mm straight on behind 400 mm gives 1.25 times the torque; 96 N·m shown are 120 N·m at the bolt, and 114 to 126 are 91.2 to 100.8.</summary>
    [Fact]
    public void What_a_tool_did_comes_out_as_it_stood_at_the_tool()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400)).WithAdapter(Length.FromMillimeters(100), Angle.Zero);
        var program = new TighteningProgram(["B1", "B2", "B3"], [At("full", 114, 126)], TighteningOrder.Free);
        JobEntry Of(string bolt) => JobEntry.Pulled("tablet", ++_sequence, Time(), bolt).WithOperator("fitter 12");
        Torque shown = Torque.FromNewtonMeters(96);
        JobProgress job = JobProgress.Replay(program, [
            Of("B1").WithTorque(wrench.FastenerTorqueAt(shown), shown).WithTool("W-17"),
            Of("B2").WithTorque(Torque.FromNewtonMeters(119)).WithTool("W-18"),
            Of("B3").WithTorque(Torque.FromNewtonMeters(121))]);
        Assert.True(job.IsConforming);
        JobEntry pull = job.StateOf("B1").In("full").Pull!;
        Assert.Equal(120, pull.Torque!.Value.NewtonMeters, 1e-9);
        Assert.Equal("fitter 12", pull.Operator);

        ToolReading behind = Assert.Single(job.ReadingsOf("full", "W-17"));
        Assert.Equal(("B1", 96), (behind.Fastener, behind.Indicated.NewtonMeters));
        Close.To(91.2, behind.Window.Lower!.Value.NewtonMeters);
        Close.To(100.8, behind.Window.Upper!.Value.NewtonMeters);
        Assert.Equal(["B3"], job.ReadingsOf("full", "tablet").Select(reading => reading.Fastener));
        Assert.Equal(119, Assert.Single(job.ReadingsOf("full", "W-18")).Indicated.NewtonMeters);
        Assert.Null(Of("B1").WithTorque(shown, shown).WithTorque(Torque.FromNewtonMeters(90)).TorqueAtTool);
        TighteningStep turn = TighteningStep.ByRotation("turn", Torque.Zero, ToleranceWindow.FromLimits(Angle.FromDegrees(80), Angle.FromDegrees(100)));
        ArgumentException refused = Assert.Throws<ArgumentException>(() => JobProgress.Replay(new TighteningProgram(["B1"], [turn], TighteningOrder.Free), []).ReadingsOf("turn", "W-17"));
        Assert.StartsWith("step is 'turn'; it has no torque window", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_torque_window_that_takes_an_untouched_bolt_for_tight_is_refused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => At("full", 0, 126));
        Assert.Contains("a fastener which was never tightened", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => TighteningStep.ByRotation("turn", Torque.Zero, ToleranceWindow.FromLimits(Angle.Zero, Angle.FromDegrees(90))));
    }

    [Fact]
    public void Entries_are_checked_and_told_the_same_in_every_culture()
    {
        JobEntry pull = JobEntry.Pulled("wrench 1", 1234, Morning, "B1").WithTorque(Torque.FromNewtonMeters(60.5)).WithRotation(Angle.FromDegrees(12.5));
        CommaCulture.Run(() => Assert.Equal("wrench 1 #1234 2025-03-04 07:00:00 +01:00: Pulled B1 at half, 60.5 N·m, 12.5°", pull.AtStep("half").ToString()));
        Assert.Equal("sequence", Assert.Throws<ArgumentOutOfRangeException>(() => JobEntry.Pulled("w", -1, Morning, "B1")).ParamName);
        Assert.Equal("to", Assert.Throws<ArgumentOutOfRangeException>(() => JobEntry.Explained("w", 1, Morning, "v", 5, 4, "p", "r")).ParamName);
        Assert.Throws<ArgumentException>(() => JobEntry.Skipped("w", 1, Morning, "B1", " "));
        Assert.Throws<InvalidOperationException>(() => JobEntry.Noted("w", 1, Morning, "x").WithTorque(Torque.Zero));
        Assert.Throws<InvalidOperationException>(() => JobEntry.Loosened("w", 1, Morning, "B1", "x").AtStep("half"));
    }

    [Fact]
    public void A_progress_is_a_copy_that_stays()
    {
        var run = new JobRun(TwoPasses);
        Pull(run, "B1", 60);
        JobProgress early = run.Progress;
        string told = LedgerLawTests.Describe(early);
        Pull(run, "B2", 300);
        run.Apply(JobEntry.Loosened("wrench 1", ++_sequence, Time(), "B1", "r"));
        Assert.Equal(told, LedgerLawTests.Describe(early));
    }

    [Fact]
    public void Memory_does_not_grow_with_the_log()
    {
        List<JobEntry> log = [.. Enumerable.Range(1, 200_000).Select(i => JobEntry.Pulled($"wrench {i % 3}", (i + 2) / 3, Morning.AddSeconds(10 * i), Bolts[i % 4]).WithTorque(Torque.FromNewtonMeters(60)))];
        List<JobEntry> short1000 = log[..1000];
        long Allocated(List<JobEntry> entries) => Allocation.Of(() => JobProgress.Replay(TwoPasses, entries));

        // One byte for each entry of the long log would already be three times the slack.
        Assert.InRange(Allocated(log), 1, Allocated(short1000) + 65_536);
    }

    private static TighteningStep At(string name, double low, double high) =>
        TighteningStep.ByTorque(name, ToleranceWindow.FromLimits(Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(high)));

    private JobUpdate Pull(JobRun run, string bolt, double torque) =>
        run.Apply(JobEntry.Pulled("wrench 1", ++_sequence, Time(), bolt).WithTorque(Torque.FromNewtonMeters(torque)));

    private int _minutes;

    private DateTimeOffset Time() => Morning.AddMinutes(++_minutes);
}
