using Fastening.Quality;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Montgomery, Introduction to Statistical Quality Control: chart constants (App. VI) and the confidence interval of C_p.</summary>
public sealed class MontgomeryQualityControl : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("spc-", Constant), new("montgomery-cp-ci", Interval)];

    private static double? Constant(PublishedRow row, string output)
    {
        ControlChart chart = ControlChart.ForSubgroupsOf((int)row["n"]);
        return output switch
        {
            "c4" => chart.C4,
            "d2" => chart.RangeMean,
            _ => chart.RangeDeviation,
        };
    }

    /// <summary>The mean does not count for C_p.</summary>
    private static double? Interval(PublishedRow row, string output)
    {
        ToleranceWindow<Length> window = ToleranceWindow.FromLimits(Length.FromMeters(row["LSL"]), Length.FromMeters(row["USL"]));
        CapabilityIndex index = ProcessPerformance.Of(
            window, SampleStatistics.FromSummary((int)row["n"], Length.FromMeters(51), Length.FromMeters(row["s"]))).Pp!;
        return output switch
        {
            "Cp" => index.Value,
            "lower" => index.Interval(row["confidence"]).Low,
            _ => index.Interval(row["confidence"]).High,
        };
    }
}
