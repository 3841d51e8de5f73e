using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.Answers;

/// <content>Capability, charts, gauges and the calibration of tools.</content>
internal static partial class RandomObjects
{
    private static DateTimeOffset Calibrated => new(2026, 3, 2, 9, 0, 0, TimeSpan.FromHours(1));

    private static (string Name, Func<Draw, object> Make)[] QualityMakers() =>
    [
        Maker("IReadOnlyList<Torque>", draw => Readings(draw, 12)),
        Maker("IReadOnlyList<IReadOnlyList<Torque>>", draw => new[] { Readings(draw, 4), Readings(draw, 4), Readings(draw, 4) }),
        Maker("SampleStatistics<Torque>", draw => SampleStatistics.Of(draw.Any<IReadOnlyList<Torque>>("IReadOnlyList<Torque>"))),
        Maker("SubgroupedReadings<Torque>", draw => draw.Chance(0.7) ? SubgroupedReadings.Consecutive(Readings(draw, 12), draw.Of(2, 3, 4)) : SubgroupedReadings.Individual(Readings(draw, 12))),
        Maker("ControlChart", draw => ControlChart.ForSubgroupsOf(2 + draw.Next(12))),
        Maker("ProcessCapability", draw => ProcessCapability.Of(
            draw.Any<ToleranceWindow<Torque>>("ToleranceWindow<Torque>"), draw.Any<SubgroupedReadings<Torque>>("SubgroupedReadings<Torque>"), draw.Of(Enum.GetValues<WithinDeviation>()))),
        Maker("ProcessPerformance", draw => draw.Any<ProcessCapability>("ProcessCapability").Performance),
        Maker("CapabilityIndex", draw => draw.Chance(0.5) ? draw.Any<ProcessCapability>("ProcessCapability").Cpk
            : draw.Any<ProcessPerformance>("ProcessPerformance").Pp ?? throw new InvalidOperationException("one limit has no such index")),
        Maker("StatisticalToleranceInterval<Torque>", draw => StatisticalToleranceInterval.TwoSided(
            draw.Any<SampleStatistics<Torque>>("SampleStatistics<Torque>"), draw.Percent(80, 98), draw.Between(0.9, 0.99))),
        Maker("IReadOnlyList<GaugeReading<Torque>>", Study),
        Maker("GaugeReading<Torque>", draw => draw.Of(Study(draw))),
        Maker("GaugeStudy<Torque>", draw => draw.Next(3) switch
        {
            0 => GaugeStudy.Anova(Study(draw)),
            1 => GaugeStudy.AnovaWithoutInteraction(Study(draw)),
            _ => GaugeStudy.AverageAndRange(Study(draw)),
        }),
        Maker("TorqueToolClass", draw => draw.Of(TorqueToolClass.All)),
        Maker("TorqueTool", draw => TorqueTool.WithRange("W-17", draw.Any<TorqueToolClass>("TorqueToolClass"), draw.NewtonMeters(35, 45), draw.NewtonMeters(180, 220))),
        Maker("CalibrationPoint", draw => PointAt(draw, draw.NewtonMeters(40, 200))),
        Maker("IReadOnlyList<CalibrationPoint>", draw => new[] { PointAt(draw, draw.NewtonMeters(40, 60)), PointAt(draw, draw.NewtonMeters(100, 140)), PointAt(draw, draw.NewtonMeters(180, 220)) }),
        Maker("CalibrationUncertainty", draw =>
        {
            var uncertainty = new CalibrationUncertainty(MeasurementUncertainty.Expanded(draw.Percent(0.2, 1), 2));
            if (draw.Chance(0.7)) uncertainty = uncertainty.WithResolution(draw.NewtonMeters(0.05, 0.5));
            return draw.Chance(0.4) ? uncertainty.WithReproducibility(draw.NewtonMeters(0.1, 1), draw.NewtonMeters(40, 60)) : uncertainty;
        }),
        Maker("CalibrationInterval", draw => new CalibrationInterval(6 + draw.Next(12), 1000 + draw.Next(5000))),
        Maker("ToolCalibration", Calibration),
        Maker("ToolReading", Reading),
        Maker("IEnumerable<ToolReading>", draw => Enumerable.Range(0, 6).Select(_ => Reading(draw)).ToArray()),
        Maker("ToolRecall", draw => Calibration(draw).Rejudge(
            Calibrated.AddMonths(-6), draw.Any<IEnumerable<ToolReading>>("IEnumerable<ToolReading>"), draw.Any<DecisionRule>("DecisionRule"))),
        Maker("IReadOnlyList<Ratio>", draw => new[] { draw.Percent(15, 40), draw.Percent(45, 70), Ratio.FromPercent(100) }),
    ];

    private static Torque[] Readings(Draw draw, int count) => [.. Enumerable.Range(0, count).Select(_ => draw.NewtonMeters(48.5, 51.5))];

    private static GaugeReading<Torque>[] Study(Draw draw) =>
        [.. Enumerable.Range(0, 18).Select(i => new GaugeReading<Torque>($"part {i / 6}", $"person {i / 3 % 2}", Torque.FromNewtonMeters(48 + i / 6 + 0.2 * (i / 3 % 2) + draw.Between(0, 0.6))))];

    private static CalibrationPoint PointAt(Draw draw, Torque torque)
    {
        double center = torque.NewtonMeters;
        return CalibrationPoint.At(torque, [.. Enumerable.Range(0, 10).Select(_ => Torque.FromNewtonMeters(center * draw.Between(0.97, 1.03)))]);
    }

    private static ToolCalibration Calibration(Draw draw)
    {
        var tool = draw.Any<TorqueTool>("TorqueTool");
        CalibrationPoint[] points = [.. tool.Class.Points.Select(share => PointAt(draw, Torque.FromNewtonMeters(Math.Max(tool.LowTorque.NewtonMeters, tool.HighTorque.NewtonMeters * share.DecimalFractions))))];
        return new ToolCalibration(
            tool, draw.Of(Enum.GetValues<CalibrationState>()), Calibrated, draw.Chance(0.7) ? points : draw.Any<IReadOnlyList<CalibrationPoint>>("IReadOnlyList<CalibrationPoint>"),
            draw.Any<CalibrationUncertainty>("CalibrationUncertainty"));
    }

    private static ToolReading Reading(Draw draw) => new(
        $"B{draw.Next(9)}", Calibrated.AddDays(-draw.Next(300)), draw.NewtonMeters(44, 56), draw.Any<ToleranceWindow<Torque>>("ToleranceWindow<Torque>"));
}
