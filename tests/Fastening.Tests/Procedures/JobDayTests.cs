using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>A job told line by line, each verdict by the rules of the trade as the documentation states them.</summary>
public class JobDayTests
{
    private static readonly DateTimeOffset Morning = new(2025, 3, 4, 7, 0, 0, TimeSpan.FromHours(1));
    private static readonly string[] Bolts = ["B1", "B2", "B3", "B4"];

    private static readonly TighteningProgram TwoPasses = new(
        Bolts, [At("half", 57, 63), At("full", 114, 126).WithFasteners(["B1", "B3", "B2", "B4"])], TighteningOrder.InSequence);

    private long _sequence;

    [Fact]
    public void Wrong_fastener_too_much_and_loosening()
    {
        JobProgress job = JobProgress.Start(TwoPasses);
        (job, JobUpdate update) = Next(job, "B1", 60);
        Assert.Equal("B1, half: accepted", update.ToString());
        (job, update) = Next(job, "B3", 60);
        Assert.Equal("B3, half: rejected: B2 is next", update.ToString());
        (job, update) = Next(job, "B2", 64);
        Assert.Equal("B2, half: rejected: torque 64 N·m is above 63 N·m; to be loosened", update.ToString());
        (job, update) = Next(job, "B2", 60);
        Assert.Equal("B2, half: rejected: it is to be loosened first, and was not", update.ToString());
        Assert.Equal("half: 1 of 4 done, 1 open, 2 rejected, 0 skipped; next: B2; to be loosened: B2", job.ToString());
        Assert.Equal("B2, half: Rejected, to be loosened, readings: 2, loosenings: 0", job.StateOf("half", "B2").ToString());
        Assert.Equal("torque 64 N·m is above 63 N·m", job.StateOf("half", "B2").ReasonsInWords);
        Assert.Equal(("half", "B2"), (job.OpenStep!.Name, job.NextFastener));

        update = job.Apply(JobEntry.Loosened("wrench 1", ++_sequence, Morning, "B2", "over the limit"));
        Assert.Equal("B2: accepted", update.ToString());
        job = update.Progress;
        foreach (string bolt in Bolts[1..]) (job, update) = Next(job, bolt, 60);
        Assert.Equal("full: 0 of 4 done, 4 open, 0 rejected, 0 skipped; next: B1", job.ToString());
        FastenerState second = job.StateOf("half", "B2");
        Assert.Equal((3, 1, "over the limit", false), (second.Readings, second.Loosenings, second.LooseningReason, second.MustBeLoosened));
    }

    [Fact]
    public void A_loosened_fastener_begins_with_its_first_step_and_the_others_wait()
    {
        JobProgress job = Bolts.Aggregate(JobProgress.Start(TwoPasses), (p, bolt) => Next(p, bolt, 60).Item1);
        job = Next(job, "B1", 120).Item1;
        job = Next(job, "B3", 130).Item1.Apply(JobEntry.Loosened("wrench 1", ++_sequence, Morning, "B3", "over the limit")).Progress;
        Assert.Equal(("half", "B3"), (job.OpenStep!.Name, job.NextFastener));
        (job, JobUpdate update) = Next(job, "B2", 120);
        Assert.Equal("B2, full: rejected: half is not finished", update.ToString());
        Assert.Empty(job.ToLoosen);
        (job, update) = Next(job, "B2", 60);
        Assert.Equal("B2, half: accepted, to be looked at: done in this step before", update.ToString());
    }

    [Fact]
    public void Skipped_goes_on_and_is_done_later_by_naming_the_step()
    {
        var program = new TighteningProgram(Bolts, [At("half", 57, 63), At("full", 114, 126)], TighteningOrder.StepByStep);
        JobProgress job = JobProgress.Start(program).Apply(JobEntry.Skipped("form", 1, Morning, "B2", "no room for the wrench")).Progress;
        foreach (string bolt in new[] { "B1", "B3", "B4" }) job = Next(job, bolt, 60).Item1;
        Assert.Equal("full", job.OpenStep!.Name);
        Assert.Equal("half: 3 of 4 done, 0 open, 0 rejected, 1 skipped", job.CountsOf("half").ToString());
        JobUpdate later = job.Apply(JobEntry.Tightened("wrench 1", ++_sequence, Morning, "B2").WithTorque(Torque.FromNewtonMeters(60)).AtStep("half"));
        Assert.Equal("B2, half: accepted, to be looked at: had been skipped in this step", later.ToString());
        Assert.Equal("no room for the wrench", later.Progress.StateOf("half", "B2").SkipReason);
        foreach (string bolt in Bolts) job = job.Apply(JobEntry.Skipped("form", 1 + ++_sequence, Morning, bolt, "end of the day").AtStep("full")).Progress;
        Assert.True(job.IsSettled && !job.IsConforming);
        Assert.Equal("some fasteners were skipped, the others are done", job.ToString());
    }

    [Fact]
    public void Undo_takes_back_the_last_entry_of_the_same_source_once()
    {
        JobProgress job = Next(JobProgress.Start(TwoPasses), "B1", 70).Item1;
        Assert.True(job.StateOf("half", "B1").MustBeLoosened);
        JobUpdate foreign = job.Apply(JobEntry.Undone("wrench 2", 1, Morning, "not mine"));
        Assert.Equal([JobReason.NothingToUndo], foreign.Reasons);
        JobUpdate undone = job.Apply(JobEntry.Undone("wrench 1", ++_sequence, Morning, "calibration pull, not the bolt"));
        Assert.Equal("undo of B1, half: accepted", undone.ToString());
        FastenerState first = undone.Progress.StateOf("half", "B1");
        Assert.Equal((FastenerStatus.Open, 0, false, 1L), (first.Status, first.Readings, first.MustBeLoosened, undone.Progress.UndoneCount));
        Assert.Equal([JobReason.NothingToUndo], undone.Progress.Apply(JobEntry.Undone("wrench 1", ++_sequence, Morning, "again")).Reasons);
    }

    [Fact]
    public void A_repeat_changes_nothing_and_a_clock_that_goes_back_is_told()
    {
        JobProgress job = Next(JobProgress.Start(TwoPasses), "B1", 60).Item1;
        JobUpdate repeat = job.Apply(JobEntry.Tightened("wrench 1", _sequence, Morning, "B2").WithTorque(Torque.FromNewtonMeters(60)));
        Assert.Same(job, repeat.Progress);
        Assert.Equal("B2: ignored: the sequence number is not new: a repeat, or too late", repeat.ToString());

        // 06:30 UTC is later than 07:00 at UTC+1; 05:59 UTC is earlier.
        JobEntry Utc(int hour, int minute) => JobEntry
            .Tightened("wrench 1", ++_sequence, new DateTimeOffset(2025, 3, 4, hour, minute, 0, TimeSpan.Zero), job.NextFastener!).WithTorque(Torque.FromNewtonMeters(60));
        JobUpdate later = job.Apply(Utc(6, 30));
        Assert.Equal(JobVerdict.Accepted, later.Verdict);
        JobUpdate earlier = job.Apply(Utc(5, 59));
        Assert.Equal("B2, half: accepted, to be looked at: the clock of the source went back", earlier.ToString());
        Assert.Equal(FastenerStatus.Done, earlier.Progress.StateOf("half", "B2").Status);
    }

    /// <summary>A counter that begins anew gives old numbers to new readings: refused and counted once each, however often the log is sent.</summary>
    [Fact]
    public void A_number_that_another_entry_has_used_is_refused_and_counted()
    {
        JobProgress job = Next(JobProgress.Start(TwoPasses), "B1", 60).Item1;
        JobEntry anew = JobEntry.Tightened("wrench 1", 0, Morning.AddHours(1), "B2").WithTorque(Torque.FromNewtonMeters(300));
        JobUpdate update = job.Apply(anew);
        Assert.Equal(
            "B2: rejected: it was pulled higher than it may be so far; another entry has used its number: the source counts anew, or two have one name; to be loosened",
            update.ToString());
        Assert.Equal((1, 1), (update.Progress.ConflictCount, update.Progress.EntryCount));
        Assert.Equal("half: 1 of 4 done, 3 open, 0 rejected, 0 skipped; next: B2; to be loosened: B2; numbers used by another entry: 1", update.Progress.ToString());
        Assert.Equal(JobVerdict.Ignored, update.Progress.Apply(anew).Verdict);
        Assert.Equal([JobReason.NothingToUndo], update.Progress.Apply(JobEntry.Undone("wrench 1", 2, Morning.AddHours(1), "which of both?")).Reasons);
        Assert.Equal(2, update.Progress.Apply(JobEntry.Tightened("wrench 1", 1, Morning.AddHours(2), "B3")).Progress.ConflictCount);

        JobUpdate foreign = job.Apply(JobEntry.Tightened("wrench 1", 1, Morning.AddHours(1), "X9").WithTorque(Torque.FromNewtonMeters(300)));
        Assert.Equal(("X9", 0), (foreign.Fastener, foreign.Progress.ToLoosen.Count));

        // A reading that comes again under a later time is no other reading, and condemns nothing.
        JobUpdate restamped = job.Apply(JobEntry.Tightened("wrench 1", 1, Morning.AddHours(1), "B1").WithTorque(Torque.FromNewtonMeters(60)));
        Assert.Equal((JobVerdict.Rejected, 0), (restamped.Verdict, restamped.Progress.ToLoosen.Count));
    }

    /// <summary>Where torque decides, the last pull says how the bolt is: a good one replaces the old, a low one undoes it.</summary>
    [Fact]
    public void A_later_pull_of_a_fastener_that_is_done_decides()
    {
        JobProgress job = Bolts.Aggregate(JobProgress.Start(TwoPasses), (p, bolt) => Next(p, bolt, 60).Item1);
        foreach (string bolt in new[] { "B1", "B3", "B2", "B4" }) job = Next(job, bolt, 120).Item1;
        Assert.True(job.IsConforming);

        (JobProgress low, JobUpdate update) = Next(job, "B3", 40);
        Assert.Equal("B3, full: rejected: torque 40 N·m is below 114 N·m; done in this step before", update.ToString());
        Assert.False(low.IsConforming);
        Assert.Equal(["B3"], low.RemainingIn("full"));
        (JobProgress again, _) = Next(low, "B3", 119);
        Assert.True(again.IsConforming);

        (JobProgress good, update) = Next(job, "B3", 123);
        Assert.Equal(JobVerdict.Flagged, update.Verdict);
        Assert.Equal(123, good.StateOf("full", "B3").Torque!.Value.NewtonMeters);
        Assert.Equal("every fastener is done; to be looked at: 1", good.ToString());
        Assert.Equal("done in this step before", Assert.Single(good.ToLookAt).ReasonsInWords);
    }

    [Fact]
    public void A_fastener_that_is_to_be_loosened_and_skipped_leaves_something_to_do()
    {
        var program = new TighteningProgram(["B1"], [At("full", 114, 126)], TighteningOrder.Free);
        JobProgress job = Next(JobProgress.Start(program), "B1", 160).Item1;
        (job, _) = Next(job, "B1", 120);
        Assert.Equal(160, job.StateOf("full", "B1").Torque!.Value.NewtonMeters);
        job = job.Apply(JobEntry.Skipped("form", 1, Morning, "B1", "galled")).Progress;
        Assert.False(job.IsSettled);
        Assert.Equal("some fasteners were skipped, the others are done; to be loosened: B1", job.ToString());
    }

    [Fact]
    public void Pulled_to_a_later_step_too_early_it_holds_more_than_its_own_allows()
    {
        var program = new TighteningProgram(Bolts, [At("half", 57, 63), At("full", 114, 126)], TighteningOrder.StepByStep);
        JobProgress job = JobProgress.Start(program);
        JobUpdate early = job.Apply(JobEntry.Tightened("wrench 1", ++_sequence, Morning, "B1").WithTorque(Torque.FromNewtonMeters(118)).AtStep("full"));
        Assert.Equal("B1, full: rejected: half is not finished; it was pulled higher than it may be so far; to be loosened", early.ToString());
    }

    /// <summary>By hand: 100 mm straight on behind 400 mm gives 1.25 times the torque; 96 N·m shown are 120 N·m at the bolt, and 114 to 126 are 91.2 to 100.8.</summary>
    [Fact]
    public void What_a_tool_did_comes_out_as_it_stood_at_the_tool()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400)).WithAdapter(Length.FromMillimeters(100), Angle.Zero);
        var program = new TighteningProgram(["B1", "B2", "B3"], [At("full", 114, 126)], TighteningOrder.Free);
        JobEntry Pull(string bolt) => JobEntry.Tightened("tablet", ++_sequence, Morning, bolt).WithOperator("fitter 12");
        JobProgress job = JobProgress.Start(program).ApplyAll([
            Pull("B1").WithTorqueAtTool(Torque.FromNewtonMeters(96), wrench).WithTool("W-17"),
            Pull("B2").WithTorque(Torque.FromNewtonMeters(119)).WithTool("W-18"),
            Pull("B3").WithTorque(Torque.FromNewtonMeters(121))]);
        Assert.True(job.IsConforming);
        Assert.Equal(120, job.StateOf("full", "B1").Torque!.Value.NewtonMeters, 1e-9);
        Assert.Equal("fitter 12", job.StateOf("full", "B1").Reading!.Operator);

        ToolReading behind = Assert.Single(job.ReadingsOf("full", "W-17"));
        Assert.Equal(("B1", 96), (behind.Fastener, behind.Indicated.NewtonMeters));
        Close.To(91.2, behind.Window.Lower!.Value.NewtonMeters);
        Close.To(100.8, behind.Window.Upper!.Value.NewtonMeters);
        Assert.Equal(["B3"], job.ReadingsOf("full", "tablet").Select(reading => reading.Fastener));
        Assert.Equal(119, Assert.Single(job.ReadingsOf("full", "W-18")).Indicated.NewtonMeters);
        Assert.Null(Pull("B1").WithTorqueAtTool(Torque.FromNewtonMeters(96), wrench).WithTorque(Torque.FromNewtonMeters(90)).TorqueAtTool);
        TighteningStep turn = TighteningStep.ByRotation("turn", Torque.Zero, ToleranceWindow.FromLimits(Angle.FromDegrees(80), Angle.FromDegrees(100)));
        ArgumentException refused = Assert.Throws<ArgumentException>(() => JobProgress.Start(new TighteningProgram(["B1"], [turn], TighteningOrder.Free)).ReadingsOf("turn", "W-17"));
        Assert.StartsWith("step is 'turn'; it goes by rotation alone", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_torque_window_that_takes_an_untouched_bolt_for_tight_is_refused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => At("full", 0, 126));
        Assert.Contains("its lower limit must be greater than 0, or a fastener that was never tightened conforms", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => TighteningStep.ByRotation("turn", Torque.Zero, ToleranceWindow.FromLimits(Angle.Zero, Angle.FromDegrees(90))));
        TighteningStep.ByTorqueAndRotation(
            "both", ToleranceWindow.FromLimits(Torque.FromNewtonMeters(114), Torque.FromNewtonMeters(126)), ToleranceWindow.FromLimits(Angle.Zero, Angle.FromDegrees(90)));
    }

    [Fact]
    public void Entries_are_checked_and_told_the_same_in_every_culture()
    {
        JobEntry reading = JobEntry.Tightened("wrench 1", 1234, Morning, "B1").WithTorque(Torque.FromNewtonMeters(60.5)).WithRotation(Angle.FromDegrees(12.5));
        CommaCulture.Run(() => Assert.Equal("wrench 1 #1234 2025-03-04 07:00:00 +01:00: Tightened B1 at half, 60.5 N·m, 12.5°", reading.AtStep("half").ToString()));
        Assert.Equal("sequence", Assert.Throws<ArgumentOutOfRangeException>(() => JobEntry.Tightened("w", -1, Morning, "B1")).ParamName);
        Assert.Throws<ArgumentException>(() => JobEntry.Skipped("w", 1, Morning, "B1", " "));
        Assert.Throws<InvalidOperationException>(() => JobEntry.Undone("w", 1, Morning, "x").WithTorque(Torque.Zero));
        Assert.Throws<InvalidOperationException>(() => JobEntry.Loosened("w", 1, Morning, "B1", "x").AtStep("half"));
    }

    [Fact]
    public void Memory_does_not_grow_with_the_log()
    {
        List<JobEntry> log = [.. Enumerable.Range(1, 200_000).Select(i => JobEntry.Tightened($"wrench {i % 3}", i, Morning, Bolts[i % 4]).WithTorque(Torque.FromNewtonMeters(60)))];
        List<JobEntry> short1000 = log[..1000];
        JobProgress start = JobProgress.Start(TwoPasses);
        long Allocated(List<JobEntry> entries) => Allocation.Of(() => start.ApplyAll(entries));

        // One byte for each entry of the long log would already be three times the slack.
        Assert.InRange(Allocated(log), 1, Allocated(short1000) + 65_536);
    }

    private static TighteningStep At(string name, double low, double high) =>
        TighteningStep.ByTorque(name, ToleranceWindow.FromLimits(Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(high)));

    private (JobProgress, JobUpdate) Next(JobProgress job, string bolt, double torque)
    {
        JobUpdate update = job.Apply(JobEntry.Tightened("wrench 1", ++_sequence, Morning, bolt).WithTorque(Torque.FromNewtonMeters(torque)));
        return (update.Progress, update);
    }
}
