using Fastening.Quality;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Berthouex and Brown, Statistics for Environmental Engineers, Table 21.1: exact two-sided tolerance factors.</summary>
public sealed class BerthouexBrownStatistics : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("tolk-95-", (row, output) => StatisticalToleranceInterval.TwoSidedFactor(
            (int)row["n"], Ratio.FromDecimalFractions(output switch { "p90" => 0.90, "p95" => 0.95, _ => 0.99 }), row["gamma"])),
    ];
}
