using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>A bolt that has turned stays turned, whatever its reading was refused for: a further turn must not pass for the only one.</summary>
public class TurnedFastenerTests
{
    private static readonly DateTimeOffset Morning = new(2025, 3, 4, 7, 0, 0, TimeSpan.FromHours(1));
    private static readonly string[] Bolts = ["B1", "B2"];

    private long _sequence;

    [Fact]
    public void Turned_before_its_step()
    {
        JobProgress job = Apply(Start(TighteningOrder.Free), "B1", 118, 130, "turn", out JobUpdate early);
        Assert.Equal([JobReason.StepNotReached, JobReason.RotationUncounted, JobReason.PulledTooHigh], early.Reasons);
        Assert.True(job.StateOf("turn", "B1").MustBeLoosened);

        job = Apply(job, "B1", 60, null, "snug", out _);
        job = Apply(job, "B1", 118, 130, "turn", out JobUpdate again);
        Assert.Equal(JobVerdict.Rejected, again.Verdict);
        Assert.Contains("it is to be loosened first, and was not", again.ToString(), StringComparison.Ordinal);

        job = job.Apply(JobEntry.Loosened("wrench 1", ++_sequence, Morning, "B1", "turned too early")).Progress;
        job = Apply(job, "B1", 60, null, "snug", out _);
        job = Apply(job, "B1", 118, 130, "turn", out JobUpdate clean);
        Assert.Equal(JobVerdict.Accepted, clean.Verdict);
    }

    [Fact]
    public void Turned_out_of_turn()
    {
        JobProgress job = Snugged(TighteningOrder.InSequence);
        job = Apply(job, "B2", 118, 130, "turn", out JobUpdate wrong);
        Assert.Equal("B2, turn: rejected: B1 is next; it was turned, and that turn does not count; to be loosened", wrong.ToString());
        job = Apply(job, "B1", 118, 130, "turn", out _);
        job = Apply(job, "B2", 118, 130, "turn", out JobUpdate twice);
        Assert.Equal(JobVerdict.Rejected, twice.Verdict);
        Assert.False(job.IsConforming);
    }

    [Fact]
    public void Turned_with_the_torque_missing()
    {
        JobProgress job = Apply(Snugged(TighteningOrder.Free), "B1", null, 130, "turn", out JobUpdate blind);
        Assert.Equal([JobReason.TorqueMissing, JobReason.RotationUncounted], blind.Reasons);
        Apply(job, "B1", 118, 130, "turn", out JobUpdate twice);
        Assert.Equal(JobVerdict.Rejected, twice.Verdict);
    }

    [Fact]
    public void Turned_again_when_done()
    {
        JobProgress job = Snugged(TighteningOrder.Free);
        foreach (string bolt in Bolts) job = Apply(job, bolt, 118, 130, "turn", out _);
        Assert.True(job.IsConforming);
        job = Apply(job, "B2", 118, 130, "turn", out JobUpdate twice);
        Assert.Equal([JobReason.AlreadyDone, JobReason.RotationUncounted], twice.Reasons);
        Assert.Equal(JobVerdict.Rejected, twice.Verdict);
        Assert.False(job.IsConforming);
        Assert.True(job.Apply(JobEntry.Undone("wrench 1", ++_sequence, Morning, "a line of another bolt")).Progress.IsConforming);
    }

    [Theory]
    [InlineData("no such step", JobReason.UnknownStep)]
    [InlineData("seat", JobReason.FastenerNotInStep)]
    public void Turned_in_a_step_that_it_does_not_have(string step, JobReason misfit)
    {
        JobProgress job = JobProgress.Start(new TighteningProgram(
            Bolts,
            [Snug, TighteningStep.ByTorque("seat", ToleranceWindow.FromLimits(Torque.FromNewtonMeters(60), Torque.FromNewtonMeters(66))).WithFasteners(["B2"]), Turn],
            TighteningOrder.Free));
        job = Apply(job, "B1", 60, null, "snug", out _);
        job = Apply(job, "B1", 118, 130, step, out JobUpdate stray);
        Assert.Equal([misfit, JobReason.RotationUncounted], stray.Reasons);
        Assert.EndsWith("; it was turned, and that turn does not count; to be loosened", stray.ToString(), StringComparison.Ordinal);
        Apply(job, "B1", 118, 130, "turn", out JobUpdate twice);
        Assert.Equal(JobVerdict.Rejected, twice.Verdict);
        Assert.Equal(1, job.StrayCount);

        JobProgress mended = job.Apply(JobEntry.Undone("wrench 1", ++_sequence, Morning, "the line was of another joint")).Progress;
        Apply(mended, "B1", 118, 130, "turn", out JobUpdate once);
        Assert.Equal(JobVerdict.Accepted, once.Verdict);
    }

    [Fact]
    public void Pulled_beyond_all_its_windows_in_a_step_that_it_does_not_have()
    {
        TighteningStep full = TighteningStep.ByTorque("full", ToleranceWindow.FromLimits(Torque.FromNewtonMeters(114), Torque.FromNewtonMeters(126)));
        JobProgress job = JobProgress.Start(new TighteningProgram(Bolts, [Snug, full], TighteningOrder.Free));
        job = Apply(job, "B1", 60, null, "snug", out _);
        job = Apply(job, "B1", 126, null, "other", out JobUpdate within);
        Assert.Equal([JobReason.UnknownStep], within.Reasons);
        job = Apply(job, "B1", 127, null, "other", out JobUpdate beyond);
        Assert.Equal("B1: rejected: the program has no such step; it was pulled higher than it may be so far; to be loosened", beyond.ToString());
        job = Apply(job, "B1", 120, null, "full", out JobUpdate after);
        Assert.Equal([JobReason.MustBeLoosened], after.Reasons);

        // Where a step goes by rotation, a pull higher than those before it may have turned the bolt.
        JobProgress turned = JobProgress.Start(new TighteningProgram(Bolts, [Snug, full, Turn], TighteningOrder.Free));
        Apply(turned, "B1", 126, null, "other", out JobUpdate seated);
        Assert.Equal([JobReason.UnknownStep], seated.Reasons);
        Apply(turned, "B1", 127, null, "other", out JobUpdate unknown);
        Assert.Equal([JobReason.UnknownStep, JobReason.RotationUncounted], unknown.Reasons);
    }

    /// <summary>A tool that reports the turn alone, and no step: the torque of snugging is missing, and yet the bolt turned.</summary>
    [Theory]
    [InlineData(TighteningOrder.Free)]
    [InlineData(TighteningOrder.StepByStep)]
    [InlineData(TighteningOrder.InSequence)]
    public void Turned_before_anything_else(TighteningOrder order)
    {
        JobUpdate early = Start(order).Apply(JobEntry.Tightened("wrench 1", ++_sequence, Morning, "B1").WithRotation(Angle.FromDegrees(130)));
        Assert.Equal("B1, snug: rejected: the torque is missing; it was turned, and that turn does not count; to be loosened", early.ToString());
        JobProgress job = Apply(Start(order), "B1", 60, null, "snug", out _);
        JobUpdate between = job.Apply(JobEntry.Tightened("wrench 1", ++_sequence, Morning, "B1").WithRotation(Angle.FromDegrees(130)));
        Assert.Contains("B1", between.Progress.ToLoosen);
    }

    [Fact]
    public void Turned_and_made_snug_afterwards()
    {
        JobProgress job = Start(TighteningOrder.Free).Apply(JobEntry.Skipped("form", 1, Morning, "B1", "forgotten").AtStep("snug")).Progress;
        job = Apply(job, "B1", 118, 130, "turn", out JobUpdate loose);
        Assert.Equal(JobVerdict.Accepted, loose.Verdict);
        job = Apply(job, "B1", 60, null, "snug", out JobUpdate late);
        Assert.Equal([JobReason.WasSkipped, JobReason.RotationUncounted], late.Reasons);
        Assert.Equal(["B1"], job.ToLoosen);
    }

    [Fact]
    public void Pulled_harder_or_turned_below_the_threshold_when_it_was_done()
    {
        JobProgress job = Snugged(TighteningOrder.Free);
        foreach (string bolt in Bolts) job = Apply(job, bolt, 118, 130, "turn", out _);
        Assert.True(Apply(job, "B1", 118, null, "turn", out _).IsConforming);
        Assert.Equal(["B1"], Apply(job, "B1", 119, null, "turn", out _).ToLoosen);
        Assert.Equal(["B1"], Apply(job, "B1", 50, 130, "turn", out _).ToLoosen);
        Assert.Equal(["B1"], Apply(job, "B1", 60, 20, "snug", out _).ToLoosen);
    }

    /// <summary>All of a rotation cannot become less: 80° and then 60° are two strokes of 140° in all.</summary>
    [Fact]
    public void A_rotation_that_shrinks_is_that_of_a_stroke()
    {
        JobProgress job = Apply(Snugged(TighteningOrder.Free), "B1", 110, 80, "turn", out JobUpdate first);
        Assert.Equal([JobReason.RotationBelow], first.Reasons);
        Assert.Equal(JobVerdict.Accepted, Judge(job, 95).Verdict);
        Assert.Equal([JobReason.RotationBelow, JobReason.RotationUncounted], Judge(job, 60).Reasons);

        JobUpdate Judge(JobProgress before, double degrees)
        {
            Apply(before, "B1", 118, degrees, "turn", out JobUpdate update);
            return update;
        }
    }

    /// <summary>The most that a bolt was told to have turned stays in mind, whatever came between.</summary>
    [Theory]
    [InlineData("118/0")]
    [InlineData("40/100")]
    [InlineData("skip")]
    public void A_rotation_stays_told(string between)
    {
        JobProgress job = Apply(Snugged(TighteningOrder.Free), "B1", 90, 130, "turn", out _);
        job = between switch
        {
            "skip" => job.Apply(JobEntry.Skipped("form", 1, Morning, "B1", "no time").AtStep("turn")).Progress,
            "118/0" => Apply(job, "B1", 118, 0, "turn", out _),
            _ => Apply(job, "B1", 40, 100, "turn", out _),
        };
        job = Apply(job, "B1", 118, 100, "turn", out JobUpdate last);
        Assert.Equal(JobVerdict.Rejected, last.Verdict);
        Assert.Equal(["B1"], job.ToLoosen);
    }

    [Fact]
    public void Turned_too_little_and_made_snug_afterwards()
    {
        JobProgress job = Start(TighteningOrder.Free).Apply(JobEntry.Skipped("form", 1, Morning, "B1", "forgotten").AtStep("snug")).Progress;
        job = Apply(job, "B1", 118, 80, "turn", out _);
        Assert.Equal(["B1"], Apply(job, "B1", 60, null, "snug", out _).ToLoosen);
    }

    /// <summary>Common practice: snug is gone over twice, and the tool names no step.</summary>
    [Theory]
    [InlineData(TighteningOrder.Free)]
    [InlineData(TighteningOrder.StepByStep)]
    [InlineData(TighteningOrder.InSequence)]
    public void A_second_click_at_snug_is_that_and_no_turn(TighteningOrder order)
    {
        JobProgress job = Start(order);
        foreach (string bolt in Bolts.Concat(Bolts).Append(Bolts[0]))
        {
            JobUpdate update = job.Apply(JobEntry.Tightened("wrench 1", ++_sequence, Morning, bolt).WithTorque(Torque.FromNewtonMeters(60)));
            Assert.NotEqual(JobVerdict.Rejected, update.Verdict);
            job = update.Progress;
        }

        foreach (string bolt in Bolts) job = Apply(job, bolt, 118, 130, "turn", out _);
        Assert.True(job.IsConforming);
    }

    [Fact]
    public void A_pull_harder_than_all_before_says_that_its_turn_does_not_count()
    {
        JobProgress job = Snugged(TighteningOrder.Free);
        foreach (string bolt in Bolts) job = Apply(job, bolt, 118, 130, "turn", out _);
        Apply(job, "B1", 120, null, "turn", out JobUpdate audit);
        Assert.Equal("B1, turn: rejected: the rotation is missing; done in this step before; it was turned, and that turn does not count; to be loosened", audit.ToString());
    }

    [Fact]
    public void What_did_not_turn_is_no_worse_than_before()
    {
        JobProgress job = Apply(Start(TighteningOrder.Free), "B1", 63, 0, "turn", out JobUpdate still);
        Assert.Equal([JobReason.RotationBelow, JobReason.StepNotReached], still.Reasons);
        job = Apply(job, "B1", 50, 130, "turn", out JobUpdate below);
        Assert.Equal([JobReason.ThresholdNotReached, JobReason.StepNotReached], below.Reasons);
        Assert.False(job.StateOf("turn", "B1").MustBeLoosened);
    }

    private static TighteningStep Snug => TighteningStep.ByTorque("snug", ToleranceWindow.FromLimits(Torque.FromNewtonMeters(57), Torque.FromNewtonMeters(63)));

    private static TighteningStep Turn => TighteningStep.ByRotation(
        "turn", Torque.FromNewtonMeters(55), ToleranceWindow.FromLimits(Angle.FromDegrees(90), Angle.FromDegrees(180)));

    private static JobProgress Start(TighteningOrder order) => JobProgress.Start(new TighteningProgram(Bolts, [Snug, Turn], order));

    private JobProgress Snugged(TighteningOrder order) => Bolts.Aggregate(Start(order), (job, bolt) => Apply(job, bolt, 60, null, "snug", out _));

    private JobProgress Apply(JobProgress job, string bolt, double? torque, double? degrees, string step, out JobUpdate update)
    {
        JobEntry entry = JobEntry.Tightened("wrench 1", ++_sequence, Morning, bolt).AtStep(step);
        if (torque is double newtonMeters) entry = entry.WithTorque(Torque.FromNewtonMeters(newtonMeters));
        if (degrees is double rotation) entry = entry.WithRotation(Angle.FromDegrees(rotation));
        update = job.Apply(entry);
        return update.Progress;
    }
}
