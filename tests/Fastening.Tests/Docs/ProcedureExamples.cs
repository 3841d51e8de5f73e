using UnitsNet;

namespace Fastening.Tests.Docs;

/// <summary>The code of the guides on running and on proving a job, asserted.</summary>
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
    public void Five_lines_example()
    {
        string[] bolts = Eight;
        var time = new DateTimeOffset(2025, 10, 25, 7, 12, 0, TimeSpan.FromHours(2));

        #region five-lines
        var window = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(120), minus: Ratio.FromPercent(5), plus: Ratio.FromPercent(5));
        var program = new TighteningProgram(bolts, [TighteningStep.ByTorque("full", window)], TighteningOrder.InSequence);
        var run = new JobRun(program);
        JobUpdate update = run.Apply(JobEntry.Pulled("wrench 7", sequence: 410, time, "B1").WithTorque(Torque.FromNewtonMeters(121)));
        string verdict = update.ToString();                                     // "B1, full: accepted"
        #endregion

        Assert.Equal("B1, full: accepted", verdict);
        Assert.Equal("B2", run.NextFastener);
    }

    [Fact]
    public void Program_example()
    {
        string[] bolts = Eight;
        IReadOnlyList<string> crosswise = TighteningPattern.Cross(8).Arrange(bolts);

        #region tightening-program
        var turned = ToleranceWindow.FromDeviations(Angle.FromDegrees(90), minus: Angle.FromDegrees(5), plus: Angle.FromDegrees(10));
        var audited = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(95), Torque.FromNewtonMeters(125));
        var snug = new TighteningStep("snug", Criterion.FirmContact());                                         // by eye
        var turn = new TighteningStep("turn", Criterion.Turn(turned), Criterion.TorqueAtMost(Torque.FromNewtonMeters(165)));
        var audit = new TighteningStep("audit", Criterion.Torque(audited), Criterion.MoveAtMost(Angle.FromDegrees(2)));
        TighteningProgram program = new TighteningProgram(bolts, [snug.WithFasteners(crosswise), turn.WithFasteners(crosswise), audit], TighteningOrder.StepByStep)
            .WithTorqueLimit(Torque.FromNewtonMeters(165)).WithMostLoosenings(2);
        StepJudgement judgement = turn.Judge(Torque.FromNewtonMeters(118), Angle.FromDegrees(84), duration: null);
        string why = judgement.ToString();                                      // "rejected: rotation 84° is below 85°. To do: turn it further"
        #endregion

        Assert.Equal("rejected: rotation 84° is below 85°. To do: turn it further", why);
        Assert.Equal("3 steps, 8 fasteners, order: StepByStep, at most 165 N·m", program.ToString());
    }

    [Fact]
    public void Job_example()
    {
        var window = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(60), Ratio.FromPercent(5), Ratio.FromPercent(5));
        TighteningStep step = TighteningStep.ByTorque("snug", window).WithFasteners(TighteningPattern.Cross(8).Arrange(Eight));
        var program = new TighteningProgram(Eight, [step], TighteningOrder.InSequence);
        var time = new DateTimeOffset(2025, 10, 25, 7, 12, 0, TimeSpan.FromHours(2));

        #region run-a-job
        var run = new JobRun(program, JobOptions.Default.WithSources(JobSource.Counting("wrench 7", first: 410)));
        run.Apply(JobEntry.Pulled("wrench 7", sequence: 410, time, "B1").WithTorque(Torque.FromNewtonMeters(60.5)));
        JobUpdate update = run.Apply(JobEntry.Pulled("wrench 7", sequence: 411, time.AddSeconds(40), "B2").WithTorque(Torque.FromNewtonMeters(66)));
        JobEffect effect = update.Effect;                                       // Reject, Loosen and LookAt: too much, and B5 was next
        run.Apply(JobEntry.Loosened("form", sequence: 1, time.AddMinutes(2), "B2", reason: "wrong bolt"));
        FastenerState state = run.Progress.StateOf("B2");                       // to be looked at: it had 66 N·m
        run.Apply(JobEntry.Accepted("form", sequence: 2, time.AddMinutes(5), "B2", person: "engineer 2", reason: "gauged", seen: state.Facts));
        string? next = run.NextFastener;                                        // "B5"
        #endregion

        Assert.Equal(JobEffect.Reject | JobEffect.Loosen | JobEffect.LookAt, effect);
        Assert.True(state.IsToLookAt && !state.MustBeLoosened);
        Assert.Equal(("B5", 0, 1), (next, run.Progress.ToLookAt.Count, run.Progress.CountsOf("snug").Done));
    }

    [Fact]
    public void Correction_example()
    {
        var program = new TighteningProgram(Eight, [TighteningStep.ByTorque("snug", ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(60), Ratio.FromPercent(5), Ratio.FromPercent(5)))], TighteningOrder.Free);
        var time = new DateTimeOffset(2025, 10, 25, 7, 12, 0, TimeSpan.FromHours(2));
        var run = new JobRun(program);
        run.Apply(JobEntry.Pulled("wrench 7", 410, time, "B1").WithTorque(Torque.FromNewtonMeters(66)));
        run.Apply(JobEntry.Noted("wrench 7", 415, time.AddMinutes(1), "end"));

        #region corrections
        run.Apply(JobEntry.Withdrawn("office", 1, time.AddMinutes(9), ofSource: "wrench 7", ofSequence: 410, person: "engineer 2", reason: "trial pull on the bench"));
        run.Apply(JobEntry.Explained("office", 2, time.AddMinutes(9), ofSource: "wrench 7", from: 411, to: 414, person: "engineer 2", reason: "pulls on another cover"));
        run.Apply(JobEntry.Replaced("office", 3, time.AddMinutes(20), "B1", reason: "it may have had 66 N·m"));
        #endregion

        Assert.Empty(run.Progress.ToLookAt);
        Assert.Empty(run.Progress.ToLoosen);
        Assert.True(run.Progress.IsComplete);
    }

    [Fact]
    public void Replay_example()
    {
        var program = new TighteningProgram(
            Eight, [TighteningStep.ByTorque("snug", ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(60), Ratio.FromPercent(5), Ratio.FromPercent(5)))], TighteningOrder.Free);
        List<JobEntry> log = [.. Eight.Select((bolt, i) => JobEntry.Pulled("wrench 7", i, DateTimeOffset.UnixEpoch.AddMinutes(i), bolt).WithTorque(Torque.FromNewtonMeters(60)))];

        #region replay-a-log
        JobProgress job = JobProgress.Replay(program, log);                     // a million entries in a tenth of a second
        bool proven = job.IsConforming;                                         // the log is whole, all is done, nothing to loosen or to look at
        JobProgress again = JobProgress.Replay(program, [.. log.Concat(log).Reverse()]);   // any order, any repeats: the same state
        #endregion

        Assert.True(proven && again.IsConforming);
        Assert.Equal((8, 8), (job.EntryCount, again.EntryCount));
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
