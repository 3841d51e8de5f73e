using UnitsNet;

namespace Fastening.Tests.House;

/// <content>Valid values for procedures.</content>
internal static partial class Samples
{
    private static string[] TwoBolts => ["B1", "B2"];

    private static IEnumerable<KeyValuePair<Type, object>> Procedures()
    {
        TighteningStep turn = TighteningStep.ByRotation("turn", Torque.FromNewtonMeters(30), Rotation60);
        var window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(90), Torque.FromNewtonMeters(140));
        var program = new TighteningProgram(TwoBolts, [turn.With(Criterion.Torque(window))], TighteningOrder.StepByStep);
        JobEntry entry = JobEntry.Pulled("wrench", 1, DateTimeOffset.UnixEpoch, "B1");
        yield return new(typeof(Criterion), Criterion.MoveAtMost(Angle.FromDegrees(2)));
        yield return new(typeof(Criterion[]), new[] { Criterion.Torque(window) });
        yield return new(typeof(TighteningStep), turn);
        yield return new(typeof(TighteningProgram), program);
        yield return new(typeof(JobEntry), entry);
        yield return new(typeof(JobOptions), JobOptions.Default);
        yield return new(typeof(JobSource), JobSource.Sparse("wrench"));
        yield return new(typeof(JobSource[]), new[] { JobSource.Sparse("wrench") });
        yield return new(typeof(JobRun), new JobRun(program));
        yield return new(typeof(JobProgress), JobProgress.Replay(program, [entry]));
        yield return new(typeof(FastenerState), JobProgress.Replay(program, [entry]).StateOf("B1"));
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
        yield return new((typeof(Torque), "limit"), Torque.FromNewtonMeters(200));
        yield return new((typeof(string), "source"), "wrench");
        yield return new((typeof(string), "tool"), "W-17");
        yield return new((typeof(string), "person"), "fitter 12");
        yield return new((typeof(string), "fastener"), "B1");
        yield return new((typeof(string), "step"), "turn");
        yield return new((typeof(string), "reason"), "nut damaged");
        yield return new((typeof(string), "ofSource"), "wrench");
        yield return new((typeof(long), "sequence"), 7L);
        yield return new((typeof(long), "ofSequence"), 7L);
        yield return new((typeof(long), "from"), 7L);
        yield return new((typeof(long), "to"), 9L);
        yield return new((typeof(long), "first"), 7L);
        yield return new((typeof(JobReason), "reason"), JobReason.Restarted);
        yield return new((typeof(JobEffect), "effect"), JobEffect.LookAt);
        yield return new((typeof(DateTimeOffset), "time"), DateTimeOffset.UnixEpoch);
    }
}
