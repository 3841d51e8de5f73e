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
        Maker("JobEntry", draw => JobEntry.Tightened("wrench", 1 + draw.Next(50), DateTimeOffset.UnixEpoch.AddSeconds(draw.Next(9000)), draw.Of(FourBolts))
            .WithTorque(draw.NewtonMeters(40, 60)).WithRotation(draw.Degrees(20, 60))),
        Maker("IEnumerable<JobEntry>", draw => Enumerable.Range(0, 4).Select(_ => draw.Any<JobEntry>("JobEntry")).ToArray()),
        Maker("JobProgress", draw => JobProgress.Start(draw.Any<TighteningProgram>("TighteningProgram")).ApplyAll(draw.Any<IEnumerable<JobEntry>>("IEnumerable<JobEntry>"))),
    ];
}
