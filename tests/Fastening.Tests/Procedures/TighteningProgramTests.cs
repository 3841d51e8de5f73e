using UnitsNet;

namespace Fastening.Tests.Procedures;

public class TighteningProgramTests
{
    private static readonly string[] Bolts = ["B1", "B2", "B3"];

    [Fact]
    public void Programs_that_can_never_be_carried_out_are_refused_with_the_reason()
    {
        TighteningStep half = At("half", 50, 55), full = At("full", 100, 110), low = At("low", 30, 40);
        Assert.Contains("at least one fastener", Refusal([], half), StringComparison.Ordinal);
        Assert.Contains("at least one step", Refusal(Bolts), StringComparison.Ordinal);
        Assert.Contains("'B1' twice", Refusal(["B1", "B2", "B1"], half), StringComparison.Ordinal);
        Assert.Contains("two steps named 'half'", Refusal(Bolts, half, At("half", 100, 110)), StringComparison.Ordinal);
        Assert.Contains("tightens 'B9', which is none of its fasteners", Refusal(Bolts, half.WithFasteners(["B1", "B9"])), StringComparison.Ordinal);
        Assert.Contains("no step tightens 'B3'", Refusal(Bolts, half.WithFasteners(["B1", "B2"])), StringComparison.Ordinal);
        Assert.Contains("'low' asks for at most 40 N·m, and step 'half' before it has put at least 50 N·m on 'B1'", Refusal(Bolts, half, low, full), StringComparison.Ordinal);
        Assert.Contains("'low' asks for at most 40 N·m, and step 'full'", Refusal(Bolts, full, TighteningStep.ByRotation("turn", Torque.FromNewtonMeters(60), Turn(60)), low), StringComparison.Ordinal);
        Assert.Contains("step 'turn' before it has put at least 60 N·m", Refusal(Bolts, TighteningStep.ByRotation("turn", Torque.FromNewtonMeters(60), Turn(60)), low), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lower_torque_on_other_fasteners_and_a_window_that_overlaps_are_no_step_down()
    {
        TighteningStep full = At("full", 100, 110), low = At("low", 30, 40);
        _ = new TighteningProgram(Bolts, [full.WithFasteners(["B1", "B2"]), low.WithFasteners(["B3"])], TighteningOrder.Free);
        _ = new TighteningProgram(Bolts, [full, At("again", 95, 100)], TighteningOrder.Free);
        Assert.Contains("on 'B2'", Refusal(Bolts, full.WithFasteners(["B1", "B2"]), low.WithFasteners(["B3", "B2"])), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_step_has_its_own_fasteners_in_its_own_order()
    {
        var program = new TighteningProgram(Bolts, [At("half", 50, 55), At("full", 100, 110).WithFasteners(["B3", "B1"])], TighteningOrder.InSequence);
        Assert.Equal(Bolts, program.FastenersOf("half"));
        Assert.Equal(["B3", "B1"], program.FastenersOf("full"));
        Assert.Throws<ArgumentException>(() => program.FastenersOf("none"));
        Assert.Equal(FastenerStatus.NotInStep, JobProgress.Replay(program, []).StateOf("B2").In("full").Status);
    }

    [Fact]
    public void Effects_are_changed_only_where_nothing_slips_through()
    {
        var program = new TighteningProgram(Bolts, [At("full", 95, 105)], TighteningOrder.Free);
        Assert.Equal(Enum.GetValues<JobReason>(), EffectTable.All);
        Assert.Equal(JobEffect.Reject | JobEffect.Loosen, program.EffectOf(JobReason.TorqueAbove));
        TighteningProgram strict = program.WithEffect(JobReason.Restarted, JobEffect.Reject | JobEffect.Loosen).WithMostLoosenings(1).WithTorqueLimit(Torque.FromNewtonMeters(120));
        Assert.Equal([JobReason.Restarted], strict.ChangedEffects);
        Assert.Equal((1, 120.0, JobEffect.Reject | JobEffect.Loosen), (strict.MostLoosenings, strict.TorqueLimit!.Value.NewtonMeters, strict.EffectOf(JobReason.Restarted)));
        Assert.Equal(JobEffect.Remark, program.EffectOf(JobReason.Restarted));
        Assert.Empty(strict.WithEffect(JobReason.Restarted, JobEffect.Remark).ChangedEffects);
        Assert.Throws<ArgumentException>(() => program.WithEffect(JobReason.TorqueBelow, JobEffect.Remark));
        Assert.Throws<ArgumentException>(() => program.WithEffect(JobReason.TorqueAbove, JobEffect.Reject));
        Assert.Throws<ArgumentOutOfRangeException>(() => program.WithEffect(JobReason.Restarted, JobEffect.None));
        Assert.Throws<ArgumentOutOfRangeException>(() => program.WithEffect(JobReason.Restarted, (JobEffect)64));
        Assert.Throws<ArgumentOutOfRangeException>(() => program.WithEffect((JobReason)6, JobEffect.Reject));
        Assert.Throws<ArgumentOutOfRangeException>(() => program.WithTorqueLimit(Torque.FromNewtonMeters(94)));
        Assert.Throws<ArgumentOutOfRangeException>(() => program.WithMostLoosenings(-1));
    }

    private static TighteningStep At(string name, double low, double high) =>
        TighteningStep.ByTorque(name, ToleranceWindow.FromLimits(Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(high)));

    private static ToleranceWindow<Angle> Turn(double degrees) =>
        ToleranceWindow.FromDeviations(Angle.FromDegrees(degrees), minus: Angle.FromDegrees(5), plus: Angle.FromDegrees(10));

    private static string Refusal(string[] fasteners, params TighteningStep[] steps) =>
        Assert.Throws<ArgumentException>(() => new TighteningProgram(fasteners, steps, TighteningOrder.StepByStep)).Message;
}
