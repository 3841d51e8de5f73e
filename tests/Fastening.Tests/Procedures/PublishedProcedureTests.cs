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

        JobProgress job = JobProgress.Start(program);
        int number = 0;
        JobEntry Pull(string bolt, double torque) => JobEntry.Tightened("wrench", ++number, Time, bolt).WithTorque(Torque.FromNewtonMeters(torque));
        foreach (string bolt in Bolts[1..]) job = job.Apply(Pull(bolt, 306)).Progress;
        Assert.Contains(JobReason.TorqueAbove, job.Apply(Pull("N1", 449)).Reasons);      // its first step is still open
        Assert.Equal([JobReason.StepNotReached], job.Apply(Pull("N2", 449)).Reasons);        // the second step waits for N1
        job = job.Apply(Pull("N1", 306)).Progress;
        foreach (string bolt in Bolts) job = job.Apply(Pull(bolt, 449)).Progress;
        Assert.True(job.IsConforming);
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
        Assert.Equal(90, program.Steps[1].RotationWindow!.Target!.Value.Degrees);
        Assert.Equal(JobVerdict.Accepted, turn.Judge(Torque.FromNewtonMeters(520), Angle.FromDegrees(84), null).Verdict);
        Assert.Equal([JobReason.RotationBelow], turn.Judge(Torque.FromNewtonMeters(520), Angle.FromDegrees(60), null).Reasons);
        Assert.Equal([JobReason.ThresholdNotReached], turn.Judge(Torque.FromNewtonMeters(200), Angle.FromDegrees(84), null).Reasons);
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
        JobProgress job = JobProgress.Start(Outwards(TighteningStep.ByRotation("turn of nut", threshold: Torque.Zero, published.Window!)));
        JobUpdate Turned(double degrees) => job.Apply(JobEntry.Tightened("match marks", 1, Time, "N1").WithRotation(Angle.FromDegrees(degrees)));
        Assert.Equal(JobVerdict.Accepted, Turned(turn).Verdict);
        Assert.Equal(JobVerdict.Accepted, Turned(least).Verdict);
        Assert.Equal(JobVerdict.Accepted, Turned(most).Verdict);
        Assert.Equal([JobReason.RotationBelow], Turned(least - 1).Reasons);
        Assert.Equal([JobReason.RotationAbove], Turned(most + 1).Reasons);

        // Too little is turned on, and the whole rotation reported; too much is a new bolt.
        JobProgress shortTurn = Turned(least - 1).Progress;
        Assert.Equal(JobVerdict.Accepted, shortTurn.Apply(JobEntry.Tightened("match marks", 2, Time, "N1").WithRotation(Angle.FromDegrees(turn))).Verdict);
        Assert.True(Turned(most + 1).Progress.StateOf("turn of nut", "N1").MustBeLoosened);
    }

    /// <summary>Two rows of four, from the most rigid part outwards: from the centre, where nothing else is said of the plate.</summary>
    private static TighteningProgram Outwards(params TighteningStep[] steps)
    {
        IReadOnlyList<string> order = TighteningPattern.Rectangle(rows: 2, columns: 4).Arrange(Bolts);
        return new TighteningProgram(Bolts, [.. steps.Select(step => step.WithFasteners(order))], TighteningOrder.StepByStep);
    }

    private static ToleranceWindow<Torque> Around(Torque torque) => ToleranceWindow.FromDeviations(torque, minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(4));
}
