using UnitsNet;

namespace Fastening.Tests.Answers;

/// <content>Procedures.</content>
internal static partial class RandomObjects
{
    private static readonly string[] FourBolts = ["B1", "B2", "B3", "B4"];

    private static (string Name, Func<Draw, object> Make)[] ProcedureMakers() =>
    [
        Maker("IReadOnlyList<String>", _ => FourBolts),
        Maker("TighteningPattern", draw => draw.Next(3) switch { 0 => TighteningPattern.Cross(4), 1 => TighteningPattern.Circular(4), _ => TighteningPattern.Row(4) }),
        Maker("TighteningStep", draw => draw.Next(3) switch
        {
            0 => TighteningStep.ByRotation("turn", draw.NewtonMeters(20, 40), draw.Any<ToleranceWindow<Angle>>("ToleranceWindow<Angle>")),
            1 => TighteningStep.ByTorque("turn", draw.Any<ToleranceWindow<Torque>>("ToleranceWindow<Torque>")),
            _ => TighteningStep.ByTorqueWatchingRotation("turn", draw.Any<ToleranceWindow<Torque>>("ToleranceWindow<Torque>"), draw.Any<ToleranceWindow<Angle>>("ToleranceWindow<Angle>")),
        }),
        Maker("IReadOnlyList<TighteningStep>", draw => new[] { draw.Any<TighteningStep>("TighteningStep") }),
        Maker("TighteningProgram", draw => new TighteningProgram(
            FourBolts, draw.Any<IReadOnlyList<TighteningStep>>("IReadOnlyList<TighteningStep>"), draw.Of(Enum.GetValues<TighteningOrder>()))),
        Maker("Criterion", draw => draw.Next(4) switch
        {
            0 => Criterion.Torque(draw.Any<ToleranceWindow<Torque>>("ToleranceWindow<Torque>")),
            1 => Criterion.Move(draw.Any<ToleranceWindow<Angle>>("ToleranceWindow<Angle>")),
            2 => Criterion.RateAtMost(RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(5 + draw.Next(30)))),
            _ => Criterion.FirmContact(),
        }),
        Maker("Criterion[]", draw => new[] { draw.Any<Criterion>("Criterion"), Criterion.FirmContact().AsWatched() }),
        Maker("JobSource", draw => draw.Next(2) == 0 ? JobSource.Sparse("wrench") : JobSource.Counting("wrench", draw.Next(4))),
        Maker("JobSource[]", draw => new[] { draw.Any<JobSource>("JobSource") }),
        Maker("JobOptions", draw => JobOptions.Default.WithTailLength(1 + draw.Next(4)).WithSources(draw.Any<JobSource>("JobSource"))),
        Maker("JobEntry", draw => draw.Next(14) switch
        {
            0 => JobEntry.Loosened("form", 1 + draw.Next(50), DateTimeOffset.UnixEpoch.AddSeconds(draw.Next(9000)), draw.Of(FourBolts), "r"),
            1 => JobEntry.Withdrawn("form", 1 + draw.Next(50), DateTimeOffset.UnixEpoch.AddSeconds(draw.Next(9000)), "wrench", draw.Next(50), "p", "r"),
            2 => JobEntry.Explained("form", 1 + draw.Next(50), DateTimeOffset.UnixEpoch.AddSeconds(draw.Next(9000)), "wrench", draw.Next(9), 9 + draw.Next(50), "p", "r"),
            3 => JobEntry.Accepted("form", 1 + draw.Next(50), DateTimeOffset.UnixEpoch.AddSeconds(draw.Next(9000)), draw.Of(FourBolts), "p", "r", draw.Next(50)),
            _ => JobEntry.Pulled("wrench", 1 + draw.Next(50), DateTimeOffset.UnixEpoch.AddSeconds(draw.Next(9000)), draw.Of(FourBolts))
                .WithTorque(draw.NewtonMeters(40, 60)).WithRotation(draw.Degrees(20, 60)),
        }),
        Maker("IEnumerable<JobEntry>", draw => Enumerable.Range(0, 8).Select(_ => draw.Any<JobEntry>("JobEntry")).ToArray()),
        Maker("JobRun", draw =>
        {
            var run = new JobRun(draw.Any<TighteningProgram>("TighteningProgram"), draw.Any<JobOptions>("JobOptions"));
            foreach (JobEntry entry in draw.Any<IEnumerable<JobEntry>>("IEnumerable<JobEntry>")) run.Apply(entry);
            return run;
        }),
        Maker("JobProgress", draw => JobProgress.Replay(draw.Any<TighteningProgram>("TighteningProgram"), draw.Any<IEnumerable<JobEntry>>("IEnumerable<JobEntry>"))),
        Maker("FastenerState", draw => draw.Any<JobProgress>("JobProgress").StateOf(draw.Of(FourBolts))),
    ];
}
