using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>Published procedures written as programs. The standards state torques and rotations; every tolerance on a torque here is the test's own.</summary>
public class PublishedProcedureTests
{
    private static readonly DateTimeOffset Time = new(2025, 5, 6, 8, 0, 0, TimeSpan.Zero);
    private static readonly string[] Bolts = ["N1", "N2", "N3", "N4", "F1", "F2", "F3", "F4"];

    [Fact]
    public void The_torque_method_of_EN_1090_2_is_two_torque_steps_all_bolts_of_the_first_before_the_second()
    {
        // M20 10.9, k = 0.119: F_p,C = 0.7 · 1000 · 245 N = 171.5 kN, M_r = 0.119 · 0.020 m · 171.5 kN = 408.17 N·m; 0.75 and 1.10 of it.
        StructuralTightening method = StructuralTightening.TorqueMethod(PropertyClass.Parse("10.9"), ScrewThread.Parse("M20"), 0.119);
        TighteningProgram program = Outwards(
            TighteningStep.ByTorque("0.75 M_r", Around(method.FirstTorque)),
            TighteningStep.ByTorque("1.10 M_r", Around(method.FinalTorque!.Value)));
        Close.To(0.75 * 408.17, program.Steps[0].TorqueWindow!.Target!.Value.NewtonMeters, 1e-9);
        Close.To(1.10 * 408.17, program.Steps[1].TorqueWindow!.Target!.Value.NewtonMeters, 1e-9);

        int number = 0;
        JobEntry Pull(string bolt, double torque) => JobEntry.Pulled("wrench", ++number, Time.AddMinutes(number), bolt).WithTorque(Torque.FromNewtonMeters(torque));
        List<JobEntry> log = [.. Bolts[1..].Select(bolt => Pull(bolt, 306))];
        JobEntry tooEarly = Pull("N1", 449), waits = JobEntry.Pulled("wrench", number, Time.AddMinutes(number), "N2").WithTorque(Torque.FromNewtonMeters(449));
        Assert.Contains(JobReason.TorqueAbove, Reasons(program, log, tooEarly));             // its first step is still open
        Assert.Equal([JobReason.StepNotReached], Reasons(program, log, waits));              // the second step waits for N1
        number--;
        log.Add(Pull("N1", 306));
        log.AddRange(Bolts.Select(bolt => Pull(bolt, 449)));
        Assert.True(JobProgress.Replay(program, log).IsConforming);
    }

    [Fact]
    public void The_combined_method_of_EN_1090_2_is_a_torque_and_a_rotation_past_it()
    {
        // M20, 60 mm clamped: three diameters, from two to below six, 90° (from memory); the standard states no tolerance, ±10° is the test's.
        StructuralTightening method = StructuralTightening.CombinedMethodK2(
            PropertyClass.Parse("10.9"), ScrewThread.Parse("M20"), 0.119, Length.FromMillimeters(60));
        Angle further = method.FurtherRotation!.Rotation;
        TighteningStep turn = TighteningStep.ByRotation(
            "turn", threshold: Around(method.FirstTorque).Lower!.Value, ToleranceWindow.FromDeviations(further, Angle.FromDegrees(10), Angle.FromDegrees(10)));
        TighteningProgram program = Outwards(TighteningStep.ByTorque("0.75 M_r", Around(method.FirstTorque)), turn);
        Assert.Equal(90, program.Steps[1].Criteria[0].RotationWindow!.Target!.Value.Degrees);
        Assert.Equal(JobVerdict.Accepted, turn.Judge(Torque.FromNewtonMeters(520), Angle.FromDegrees(84), null).Verdict);
        Assert.Equal([JobReason.TurnBelow], turn.Judge(Torque.FromNewtonMeters(520), Angle.FromDegrees(60), null).Findings.Select(found => found.Reason));
        Assert.Equal([JobReason.ThresholdNotReached], turn.Judge(Torque.FromNewtonMeters(200), Angle.FromDegrees(84), null).Findings.Select(found => found.Reason));
    }

    /// <summary>RCSC 2014: 120° to 4 diameters, 180° to 8, 240° to 12, −30° +60°; before 2014 ±30° to half a turn, ±45° from two thirds.</summary>
    [Theory]
    [InlineData("2014", 3.9, 120, 90, 180)]
    [InlineData("2014", 6, 180, 150, 240)]
    [InlineData("2014", 10, 240, 210, 300)]
    [InlineData("before 2014", 3.9, 120, 90, 150)]
    [InlineData("before 2014", 6, 180, 150, 210)]
    [InlineData("before 2014", 10, 240, 195, 285)]
    public void The_turn_of_nut_of_RCSC_is_a_rotation_from_snug_without_a_torque(string edition, double diameters, double turn, double least, double most)
    {
        Length diameter = Length.FromInches(0.75);
        PublishedRotation published = edition == "2014"
            ? PublishedRotation.Rcsc2014(diameters * diameter, diameter, SlopedFaces.None)
            : PublishedRotation.RcscBefore2014(diameters * diameter, diameter, SlopedFaces.None);
        TighteningProgram program = Outwards(TighteningStep.ByRotation("turn of nut", threshold: Torque.Zero, published.Window!));
        JobEntry Marks(int number, double degrees) => JobEntry.Pulled("match marks", number, Time.AddMinutes(number), "N1").WithRotation(Angle.FromDegrees(degrees));
        Assert.Empty(Reasons(program, [], Marks(1, turn)));
        Assert.Empty(Reasons(program, [], Marks(1, least)));
        Assert.Empty(Reasons(program, [], Marks(1, most)));
        Assert.Equal([JobReason.TurnBelow], Reasons(program, [], Marks(1, least - 1)));
        Assert.Contains(JobReason.TurnAbove, Reasons(program, [], Marks(1, most + 1)));

        // Too little is turned on; too much is a new bolt.
        Assert.Empty(Reasons(program, [Marks(1, least - 1)], Marks(2, turn - least + 1)));
        Assert.True(JobProgress.Replay(program, [Marks(1, most + 1)]).StateOf("N1").MustBeLoosened);
    }

    private static JobReason[] Reasons(TighteningProgram program, IEnumerable<JobEntry> log, JobEntry last)
    {
        var run = new JobRun(program);
        foreach (JobEntry entry in log) run.Apply(entry);
        return [.. run.Apply(last).Findings.Select(found => found.Reason)];
    }

    /// <summary>Two rows of four, from the most rigid part outwards: from the centre, where nothing else is said of the plate.</summary>
    private static TighteningProgram Outwards(params TighteningStep[] steps)
    {
        IReadOnlyList<string> order = TighteningPattern.Rectangle(rows: 2, columns: 4).Arrange(Bolts);
        return new TighteningProgram(Bolts, [.. steps.Select(step => step.WithFasteners(order))], TighteningOrder.StepByStep);
    }

    private static ToleranceWindow<Torque> Around(Torque torque) => ToleranceWindow.FromDeviations(torque, minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(4));
}
