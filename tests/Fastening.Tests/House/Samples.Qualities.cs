using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.House;

/// <content>Valid values for quality.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> Qualities()
    {
        Torque[] readings = [.. new[] { 49.2, 50.3, 50.9, 49.7, 50.6, 51.1, 49.9, 50.2 }.Select(x => Torque.FromNewtonMeters(x))];
        SampleStatistics<Torque> sample = SampleStatistics.Of(readings);
        SubgroupedReadings<Torque> audit = SubgroupedReadings.Consecutive(readings, 2);
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(47), Torque.FromNewtonMeters(52));
        ProcessCapability capability = ProcessCapability.Of(window, audit, WithinDeviation.Pooled);
        GaugeReading<Torque>[] study = [.. readings.Select((reading, i) => new GaugeReading<Torque>($"{i / 4}", $"{i / 2 % 2}", reading))];
        return
        [
            new(typeof(SampleStatistics<Torque>), sample),
            new(typeof(SubgroupedReadings<Torque>), audit),
            new(typeof(ControlChart), ControlChart.ForSubgroupsOf(5)),
            new(typeof(CapabilityIndex), capability.Cpk),
            new(typeof(ProcessCapability), capability),
            new(typeof(ProcessPerformance), capability.Performance),
            new(typeof(StatisticalToleranceInterval<Torque>), StatisticalToleranceInterval.TwoSided(sample, Ratio.FromPercent(90), 0.95)),
            new(typeof(GaugeStudy<Torque>), GaugeStudy.Anova(study)),
            new(typeof(GaugeReading<Torque>), study[0]),
            new(typeof(IReadOnlyList<Torque>), readings),
            new(typeof(IReadOnlyList<IReadOnlyList<Torque>>), new[] { readings, [.. readings.Reverse()] }),
            new(typeof(IReadOnlyList<GaugeReading<Torque>>), study),
        ];
    }

    private static IEnumerable<KeyValuePair<(Type, string), object>> QualityNames() =>
    [
        new((typeof(Ratio), "populationShare"), Ratio.FromPercent(90)),
        new((typeof(double), "confidence"), 0.95),
        new((typeof(int), "count"), 20),
        new((typeof(string), "part"), "joint 3"),
        new((typeof(string), "appraiser"), "B"),
    ];
}
