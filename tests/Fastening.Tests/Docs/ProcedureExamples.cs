using UnitsNet;

namespace Fastening.Tests.Docs;

/// <summary>The code of the guide on running and proving a job, asserted.</summary>
public class ProcedureExamples
{
    private static readonly string[] Eight = ["B1", "B2", "B3", "B4", "B5", "B6", "B7", "B8"];

    [Fact]
    public void Pattern_example()
    {
        string[] bolts = Eight;

        #region tightening-pattern
        TighteningPattern cross = TighteningPattern.Cross(bolts.Length);        // 1, 5, 3, 7, 2, 6, 4, 8
        IReadOnlyList<string> crosswise = cross.Arrange(bolts);                 // B1, B5, B3, ...
        IReadOnlyList<TighteningStroke> strokes = cross.Strokes(bolts, target: Torque.FromNewtonMeters(120), shares: [Ratio.FromPercent(30), Ratio.FromPercent(70), Ratio.FromPercent(100)]);
        string first = strokes[0].ToString();                                   // "pass 1: B1, 36 N·m"
        TighteningPattern splice = TighteningPattern.Rectangle(rows: 4, columns: 6);    // from the centre outwards
        #endregion

        Assert.Equal("1, 5, 3, 7, 2, 6, 4, 8", cross.ToString());
        Assert.Equal(["B1", "B5", "B3"], crosswise.Take(3));
        Assert.Equal("pass 1: B1, 36 N·m", first);
        Assert.Equal([9, 16, 10, 15], splice.Order.Take(4));    // row 2 and row 3, columns 3 and 4
    }

    [Fact]
    public void Program_example()
    {
        string[] bolts = Eight;
        IReadOnlyList<string> crosswise = TighteningPattern.Cross(8).Arrange(bolts);

        #region tightening-program
        var snugWindow = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(60), minus: Ratio.FromPercent(5), plus: Ratio.FromPercent(5));
        var turnWindow = ToleranceWindow.FromDeviations(Angle.FromDegrees(90), minus: Angle.FromDegrees(5), plus: Angle.FromDegrees(10));
        TighteningStep snug = TighteningStep.ByTorque("snug", snugWindow).WithFasteners(crosswise);
        TighteningStep turn = TighteningStep.ByRotation("turn", threshold: Torque.FromNewtonMeters(55), turnWindow)
            .WithRateLimit(RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(30)))
            .WithFasteners(crosswise);
        var program = new TighteningProgram(bolts, [snug, turn], TighteningOrder.InSequence);
        StepJudgement judgement = turn.Judge(Torque.FromNewtonMeters(118), Angle.FromDegrees(84), Duration.FromSeconds(4));
        string why = judgement.ToString();                                      // "rejected: rotation 84° is below 85°"
        #endregion

        Assert.Equal("rejected: rotation 84° is below 85°", why);
        Assert.Equal("2 steps, 8 fasteners, order: InSequence", program.ToString());
    }

    [Fact]
    public void Job_example()
    {
        var window = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(60), Ratio.FromPercent(5), Ratio.FromPercent(5));
        TighteningStep step = TighteningStep.ByTorque("snug", window).WithFasteners(TighteningPattern.Cross(8).Arrange(Eight));
        var program = new TighteningProgram(Eight, [step], TighteningOrder.InSequence);
        var time = new DateTimeOffset(2025, 10, 25, 7, 12, 0, TimeSpan.FromHours(2));

        #region run-a-job
        JobProgress job = JobProgress.Start(program);
        JobUpdate update = job.Apply(JobEntry.Tightened("wrench 7", sequence: 410, time, "B1").WithTorque(Torque.FromNewtonMeters(60.5)));
        string good = update.ToString();                                        // "B1, snug: accepted"
        job = update.Progress;
        update = job.Apply(JobEntry.Tightened("wrench 7", sequence: 411, time, "B2").WithTorque(Torque.FromNewtonMeters(66)));
        string bad = update.ToString();                                         // rejected: too much, and B5 was next
        job = update.Progress;
        FastenerState state = job.StateOf("snug", "B2");                        // Rejected, MustBeLoosened
        job = job.Apply(JobEntry.Loosened("form", sequence: 1, time, "B2", reason: "wrong bolt")).Progress;
        string? next = job.NextFastener;                                        // "B5"
        StepCounts counts = job.CountsOf("snug");                               // 1 of 8 done
        #endregion

        Assert.Equal("B1, snug: accepted", good);
        Assert.Equal("B2, snug: rejected: torque 66 N·m is above 63 N·m; B5 is next; to be loosened", bad);
        Assert.Equal((FastenerStatus.Rejected, true, "B5", 1), (state.Status, state.MustBeLoosened, next, counts.Done));
    }

    [Fact]
    public void Replay_example()
    {
        var program = new TighteningProgram(
            Eight, [TighteningStep.ByTorque("snug", ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(60), Ratio.FromPercent(5), Ratio.FromPercent(5)))], TighteningOrder.Free);
        List<JobEntry> log = [.. Eight.Select((bolt, i) => JobEntry.Tightened("wrench 7", i, DateTimeOffset.UnixEpoch, bolt).WithTorque(Torque.FromNewtonMeters(60)))];

        #region replay-a-log
        JobProgress today = JobProgress.Start(program).ApplyAll(log);           // a million entries in less than a second
        JobProgress again = today.ApplyAll(log);                                // the same lines sent twice change nothing
        bool proven = again.IsConforming && again.EntryCount == today.EntryCount;
        #endregion

        Assert.True(proven);
        Assert.Equal(8, today.EntryCount);
    }

    [Fact]
    public void Recall_example()
    {
        static Torque[] Five(double newtonMeters) => [.. Enumerable.Repeat(Torque.FromNewtonMeters(newtonMeters), 5)];
        DateTimeOffset lastGood = new(2025, 4, 14, 9, 30, 0, TimeSpan.FromHours(2)), performed = lastGood.AddMonths(6), at = performed.AddDays(-1);
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(150), Ratio.FromPercent(5), Ratio.FromPercent(5));
        DateTimeOffset firstUse = lastGood.AddDays(2), now = performed;

        #region recall-work
        TorqueTool wrench = TorqueTool.WithRange(
            "W-7", TorqueToolClass.Parse("II A"), Torque.FromNewtonMeters(40), Torque.FromNewtonMeters(200));
        var found = new ToolCalibration(wrench, CalibrationState.AsFound, performed,
            [
                CalibrationPoint.At(Torque.FromNewtonMeters(40), Five(39)),         // five readings of the reference at each
                CalibrationPoint.At(Torque.FromNewtonMeters(120), Five(114)),
                CalibrationPoint.At(Torque.FromNewtonMeters(200), Five(190)),
            ],
            new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.5), coverageFactor: 2)).WithResolution(Torque.FromNewtonMeters(0.5)));
        CalibrationVerdict verdict = found.Judge(DecisionRule.IlacG8);              // does not comply: worst deviation +5.26 %
        ToolRecall recall = found.Rejudge(lastGood, [new ToolReading("B4", at, Torque.FromNewtonMeters(149), window)], DecisionRule.IlacG8);
        RejudgedReading again = recall.ToRevisit[0];                                // shown 149 N·m, gave 141.6 N·m: now Below
        DueStatus due = CalibrationInterval.Iso6789.StatusAt(firstUse, cycles: 2_310, at: now);
        #endregion

        Assert.False(verdict.Conforms);
        Assert.StartsWith("does not comply: worst deviation +5.26 %", verdict.ToString(), StringComparison.Ordinal);
        Assert.Equal((Conformity.Within, Conformity.Below), (again.Before, again.After));
        Close.To(149 * 0.95, again.DeliveredTorque!.Value.NewtonMeters);
        Assert.False(due.IsDue);
    }
}
