using Fastening.Quality;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Sandia National Laboratories, worked risk values: index and share outside the limits of a normal population.</summary>
public sealed class SandiaRiskValues : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("cpk-sandia-", (row, output) => output == "Cpk" ? Of(row).Ppk.Value : Of(row).ShareOutside.DecimalFractions),
    ];

    /// <summary>The number of readings does not count for either value.</summary>
    private static ProcessPerformance Of(PublishedRow row) => ProcessPerformance.Of(
        ToleranceWindow.FromLimits(Length.FromMeters(row["LSL"]), Length.FromMeters(row["USL"])),
        SampleStatistics.FromSummary(2, Length.FromMeters(row["mean"]), Length.FromMeters(row["sd"])));
}
