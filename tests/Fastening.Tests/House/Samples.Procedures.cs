using UnitsNet;

namespace Fastening.Tests.House;

/// <content>Valid values for procedures.</content>
internal static partial class Samples
{
    private static string[] TwoBolts => ["B1", "B2"];

    private static IEnumerable<KeyValuePair<Type, object>> Procedures()
    {
        TighteningStep turn = TighteningStep.ByRotation("turn", Torque.FromNewtonMeters(30), Rotation60);
        var program = new TighteningProgram(
            TwoBolts, [turn.WithFinalTorque(ToleranceWindow.FromLimits(Torque.FromNewtonMeters(90), Torque.FromNewtonMeters(140)))], TighteningOrder.StepByStep);
        JobEntry entry = JobEntry.Tightened("wrench", 1, DateTimeOffset.UnixEpoch, "B1");
        yield return new(typeof(TighteningStep), turn);
        yield return new(typeof(TighteningProgram), program);
        yield return new(typeof(JobEntry), entry);
        yield return new(typeof(JobProgress), JobProgress.Start(program));
        yield return new(typeof(TighteningPattern), TighteningPattern.Cross(2));
        yield return new(typeof(IReadOnlyList<TighteningStep>), new[] { turn });
        yield return new(typeof(IEnumerable<JobEntry>), new[] { entry });
    }

    private static ToleranceWindow<Angle> Rotation60 =>
        ToleranceWindow.FromDeviations(Angle.FromDegrees(60), minus: Angle.FromDegrees(5), plus: Angle.FromDegrees(10));

    private static IEnumerable<KeyValuePair<(Type, string), object>> ProcedureNames()
    {
        yield return new((typeof(ToleranceWindow<Angle>), "rotation"), Rotation60);
        yield return new((typeof(IReadOnlyList<string>), "fasteners"), TwoBolts);
        yield return new((typeof(IReadOnlyList<Ratio>), "shares"), new[] { Ratio.FromPercent(30), Ratio.FromPercent(100) });
        yield return new((typeof(Torque), "threshold"), Torque.FromNewtonMeters(30));
        yield return new((typeof(string), "source"), "wrench");
        yield return new((typeof(string), "tool"), "W-17");
        yield return new((typeof(string), "person"), "fitter 12");
        yield return new((typeof(string), "fastener"), "B1");
        yield return new((typeof(string), "step"), "turn");
        yield return new((typeof(string), "reason"), "nut damaged");
        yield return new((typeof(long), "sequence"), 7L);
        yield return new((typeof(DateTimeOffset), "time"), DateTimeOffset.UnixEpoch);
    }
}
