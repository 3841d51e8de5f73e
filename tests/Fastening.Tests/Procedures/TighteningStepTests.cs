using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>A torque and a rotation window, a reading, and four numbers between 0 and 1 by which the windows shrink.</summary>
public sealed record AnyShrink(double[] Numbers)
{
    public static Arbitrary<AnyShrink> Shrinks() => Arb.From(Gen.ArrayOf(Domain.Uniform(0, 1), 13).Select(numbers => new AnyShrink(numbers)));
}

[Properties(Arbitrary = [typeof(AnyShrink)])]
public class TighteningStepTests
{
    private static readonly ToleranceWindow<Torque> Torque50 = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(48), Torque.FromNewtonMeters(52));
    private static readonly ToleranceWindow<Angle> Rotation60 = ToleranceWindow.FromLimits(Angle.FromDegrees(55), Angle.FromDegrees(70));

    /// <summary>Control, torque, rotation, duration (NaN = not measured), rate limit 20°/s or none; what is expected, by the table of the trade.</summary>
    [Theory]
    [InlineData("torque", 48, double.NaN, double.NaN, JobVerdict.Accepted)]
    [InlineData("torque", 52, double.NaN, double.NaN, JobVerdict.Accepted)]
    [InlineData("torque", 52.1, double.NaN, double.NaN, JobVerdict.Rejected, JobReason.TorqueAbove)]
    [InlineData("torque", double.NaN, 60, double.NaN, JobVerdict.Rejected, JobReason.TorqueMissing)]
    [InlineData("torque, rate", 50, 60, 2, JobVerdict.Rejected, JobReason.RateAbove)]
    [InlineData("torque, rate", 50, 60, 3, JobVerdict.Accepted)]
    [InlineData("torque, rate", 50, 60, double.NaN, JobVerdict.Rejected, JobReason.RateMissing)]
    [InlineData("watched", 50, 60, double.NaN, JobVerdict.Accepted)]
    [InlineData("watched", 50, 71, double.NaN, JobVerdict.Remarked, JobReason.MoveAbove)]
    [InlineData("watched", 50, double.NaN, double.NaN, JobVerdict.Remarked, JobReason.MoveMissing)]
    [InlineData("watched", 47, 54, double.NaN, JobVerdict.Rejected, JobReason.TorqueBelow, JobReason.MoveBelow)]
    [InlineData("watched, rate", 50, 60, 2, JobVerdict.Remarked, JobReason.RateAbove)]
    [InlineData("both", 50, 60, double.NaN, JobVerdict.Accepted)]
    [InlineData("both", 50, 71, double.NaN, JobVerdict.Rejected, JobReason.TurnAbove)]
    [InlineData("both", 53, double.NaN, double.NaN, JobVerdict.Rejected, JobReason.TorqueAbove, JobReason.TurnMissing)]
    [InlineData("rotation", 30, 55, double.NaN, JobVerdict.Accepted)]
    [InlineData("rotation", 500, 70, double.NaN, JobVerdict.Accepted)]
    [InlineData("rotation", 29.9, 60, double.NaN, JobVerdict.Rejected, JobReason.ThresholdNotReached)]
    [InlineData("rotation", double.NaN, 60, double.NaN, JobVerdict.Rejected, JobReason.TorqueMissing)]
    [InlineData("rotation from snug", double.NaN, 60, double.NaN, JobVerdict.Accepted)]
    [InlineData("rotation, final torque", 47, 60, double.NaN, JobVerdict.Rejected, JobReason.TorqueBelow)]
    [InlineData("rotation, final torque", 29, 60, double.NaN, JobVerdict.Rejected, JobReason.TorqueBelow, JobReason.ThresholdNotReached)]
    public void Verdicts(string kind, double torque, double rotation, double seconds, JobVerdict verdict, params JobReason[] reasons)
    {
        StepJudgement judgement = Judge(Step(kind, Torque50, Rotation60), torque, rotation, seconds);
        Assert.Equal(verdict, judgement.Verdict);
        Assert.Equal(reasons, judgement.Findings.Select(found => found.Reason));
    }

    [Fact]
    public void Reasons_are_told_with_their_figures() => Assert.Equal(
        "rejected: torque 52.5 N·m is above 52 N·m; rotation 54° is below 55°; rate of rotation 27°/s is above 20°/s. "
        + "To do: loosen it and begin again with its first step; turn it further; pull it again, slower",
        Judge(Step("both, rate", Torque50, Rotation60), 52.5, 54, 2).ToString());

    [Property(MaxTest = 2000)]
    public void Verdict_never_improves_when_a_window_shrinks(AnyShrink any)
    {
        double[] n = any.Numbers;
        double torqueLow = 100 * n[0], torqueHigh = torqueLow + 1 + 100 * n[1], turnLow = 100 * n[2], turnHigh = turnLow + 1 + 100 * n[3];
        ToleranceWindow<Torque> wide = Newtons(torqueLow, torqueHigh), narrow = Newtons(torqueLow + n[4] * 0.5 * (torqueHigh - torqueLow), torqueHigh - n[5] * 0.5 * (torqueHigh - torqueLow));
        ToleranceWindow<Angle> broad = Turned(turnLow, turnHigh), slim = Turned(turnLow + n[6] * 0.5 * (turnHigh - turnLow), turnHigh - n[7] * 0.5 * (turnHigh - turnLow));

        // One reading in five lies on a limit of the narrow windows.
        double torque = n[8] < 0.1 ? narrow.Lower!.Value.NewtonMeters : n[8] < 0.2 ? narrow.Upper!.Value.NewtonMeters : 220 * n[9];
        double rotation = n[10] < 0.1 ? slim.Lower!.Value.Degrees : n[10] < 0.2 ? double.NaN : 220 * n[11];
        foreach (string kind in new[] { "torque", "torque, rate", "watched", "watched, rate", "both", "both, rate", "rotation", "rotation, rate" })
        {
            StepJudgement before = Judge(Step(kind, wide, broad), torque, rotation, 1 + 5 * n[12]);
            StepJudgement after = Judge(Step(kind, narrow, slim), torque, rotation, 1 + 5 * n[12]);
            Assert.True(after.Verdict >= before.Verdict, $"{kind}: {before} became {after}");
            Assert.True(ReasonsOf(after).IsSupersetOf(ReasonsOf(before)), $"{kind}: {before} became {after}");
            AssertJobFollows(Step(kind, wide, broad), before, torque, rotation, 1 + 5 * n[12]);
        }
    }

    [Fact]
    public void What_no_reading_can_meet_is_refused_with_the_reason()
    {
        TighteningStep turn = TighteningStep.ByRotation("turn", Torque.FromNewtonMeters(60), Rotation60);
        Assert.Contains("60 N·m, above the upper limit of the torque, 52 N·m", Refusal(() => turn.With(Criterion.Torque(Torque50))), StringComparison.Ordinal);
        Assert.Equal(2, TighteningStep.ByRotation("turn", Torque.FromNewtonMeters(52), Rotation60).With(Criterion.Torque(Torque50)).Criteria.Count);
        Assert.Contains("no tightening can meet it", Refusal(() => TighteningStep.ByTorque("x", Newtons(-5, 0))), StringComparison.Ordinal);
        Assert.Contains("no tightening can meet it", Refusal(() => TighteningStep.ByRotation("x", Torque.Zero, Turned(2e7, 3e7))), StringComparison.Ordinal);
        Assert.Contains("longer than any reading", Refusal(() => turn.With(Criterion.RateAtMost(RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(1e-6))))), StringComparison.Ordinal);
        Assert.Contains("name is empty", Refusal(() => TighteningStep.ByTorque(" ", Torque50)), StringComparison.Ordinal);
        Assert.Contains("'B1' twice", Refusal(() => turn.WithFasteners(["B1", "B2", "B1"])), StringComparison.Ordinal);
        Assert.Contains("at least one fastener", Refusal(() => turn.WithFasteners([])), StringComparison.Ordinal);
        Assert.Contains("two of Torque that decide", Refusal(() => TighteningStep.ByTorque("x", Torque50).With(Criterion.Torque(Torque50))), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => TighteningStep.ByTorque("x", Torque50).After(Torque.FromNewtonMeters(40)));
        Assert.Throws<InvalidOperationException>(() => Criterion.Turn(Rotation60).AsWatched());
        Assert.Contains("never tightened", Refusal(() => new TighteningStep("x", Criterion.Torque(Torque50).AsWatched(), Criterion.MoveAtMost(Angle.FromDegrees(2)))), StringComparison.Ordinal);
        Assert.Contains("never tightened", Refusal(() => new TighteningStep("x", Criterion.TorqueAtMost(Torque.FromNewtonMeters(50)))), StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => RotationRateLimit.FromRate(RotationalSpeed.Zero));
    }

    /// <summary>The judge against plain comparisons, with and without a guard band: the trade's words for four places of a number on a line.</summary>
    [Property(MaxTest = 5000)]
    public void The_judge_says_what_plain_comparisons_say(AnyShrink any)
    {
        double[] n = any.Numbers;
        double low = Math.Round(1 + 100 * n[0]), high = low + 10 + Math.Round(50 * n[1]), band = Math.Round(4 * n[2]);
        double reading = n[3] < 0.2 ? low : n[3] < 0.4 ? high - band : n[3] < 0.5 ? low - band : Math.Round(low - 10 + 80 * n[4]);
        reading = Math.Max(reading, 0);
        Criterion criterion = n[5] < 0.5 ? Criterion.Torque(Newtons(low, high))
            : Criterion.Torque(Newtons(low, high), DecisionRule.IlacG8, MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(band), coverageFactor: 2));
        if (n[5] < 0.5) band = 0;
        JobReason? expected = reading < low - band ? JobReason.TorqueBelow : reading > high + band ? JobReason.TorqueAbove
            : reading < low + band || reading > high - band ? JobReason.TorqueUnsure : null;
        StepJudgement judged = new TighteningStep("s", criterion).Judge(Torque.FromNewtonMeters(reading), null, null);
        Assert.Equal(expected is JobReason one ? [one] : [], judged.Findings.Select(found => found.Reason));
        Assert.Equal(expected is null ? JobVerdict.Accepted : JobVerdict.Rejected, judged.Verdict);
    }

    [Fact]
    public void A_rule_that_accepts_outside_the_limits_or_leaves_nothing_is_refused()
    {
        MeasurementUncertainty<Torque> u = MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(3), coverageFactor: 2);
        Assert.Contains("accepts readings outside the limits", Refusal(() => Criterion.Torque(Torque50, DecisionRule.Uncritical, u)), StringComparison.Ordinal);
        Assert.Contains("leaves nothing of it", Refusal(() => Criterion.Torque(Torque50, DecisionRule.IlacG8, u)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_keeps_no_hold_of_the_list_it_was_given()
    {
        string[] names = ["B1", "B2"];
        TighteningStep step = TighteningStep.ByTorque("x", Torque50).WithFasteners(names);
        names[0] = "other";
        Assert.Equal(["B1", "B2"], step.Fasteners);
    }

    /// <summary>In a job, a first reading in its turn gets the verdict that the step gives it by itself.</summary>
    private static void AssertJobFollows(TighteningStep step, StepJudgement judgement, double torque, double rotation, double seconds)
    {
        JobEntry entry = JobEntry.Pulled("wrench", 1, DateTimeOffset.UnixEpoch, "B1").WithTorque(Torque.FromNewtonMeters(torque)).WithDuration(Duration.FromSeconds(seconds));
        if (!double.IsNaN(rotation)) entry = entry.WithRotation(Angle.FromDegrees(rotation));
        var run = new JobRun(new TighteningProgram(["B1"], [step], TighteningOrder.InSequence));
        JobUpdate update = run.Apply(entry);
        Assert.Equal(judgement.Verdict, update.Verdict);
        Assert.True(update.Findings.Select(found => found.Reason).ToHashSet().IsSupersetOf(ReasonsOf(judgement)), $"{judgement} became {update}");
        Assert.Equal(judgement.Verdict == JobVerdict.Rejected ? FastenerStatus.Rejected : FastenerStatus.Done, run.Progress.StateOf("B1").In(step.Name).Status);
    }

    private static HashSet<JobReason> ReasonsOf(StepJudgement judgement) => [.. judgement.Findings.Select(found => found.Reason)];

    private static TighteningStep Step(string kind, ToleranceWindow<Torque> torque, ToleranceWindow<Angle> rotation)
    {
        TighteningStep step = kind.Split(',')[0] switch
        {
            "torque" => TighteningStep.ByTorque("s", torque),
            "watched" => TighteningStep.ByTorqueWatchingRotation("s", torque, rotation),
            "both" => TighteningStep.ByTorqueAndRotation("s", torque, rotation),
            "rotation from snug" => TighteningStep.ByRotation("s", Torque.Zero, rotation),
            _ => TighteningStep.ByRotation("s", Torque.FromNewtonMeters(30), rotation),
        };
        if (kind.EndsWith("final torque", StringComparison.Ordinal)) step = step.With(Criterion.Torque(torque));
        var slow = Criterion.RateAtMost(RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(20)));
        return kind.EndsWith("rate", StringComparison.Ordinal) ? step.With(kind.StartsWith("watched", StringComparison.Ordinal) ? slow.AsWatched() : slow) : step;
    }

    private static StepJudgement Judge(TighteningStep step, double torque, double rotation, double seconds) => step.Judge(
        double.IsNaN(torque) ? null : Torque.FromNewtonMeters(torque),
        double.IsNaN(rotation) ? null : Angle.FromDegrees(rotation),
        double.IsNaN(seconds) ? null : Duration.FromSeconds(seconds));

    private static ToleranceWindow<Torque> Newtons(double low, double high) => ToleranceWindow.FromLimits(Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(high));

    private static ToleranceWindow<Angle> Turned(double low, double high) => ToleranceWindow.FromLimits(Angle.FromDegrees(low), Angle.FromDegrees(high));

    private static string Refusal(Func<object> build) => Assert.Throws<ArgumentException>(build).Message;
}
