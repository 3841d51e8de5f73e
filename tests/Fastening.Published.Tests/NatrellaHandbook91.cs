using Fastening.Quality;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Natrella, NBS Handbook 91, Table A-6: two-sided tolerance factors, Howe's beside the exact ones.</summary>
public sealed class NatrellaHandbook91 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("tolk-9590-", (row, output) => output == "k2_exact"
            ? StatisticalToleranceInterval.TwoSidedFactor((int)row["n"], Ratio.FromDecimalFractions(row["P"]), row["gamma"])
            : StatisticalToleranceInterval.HoweFactor((int)row["n"], Ratio.FromDecimalFractions(row["P"]), row["gamma"])),
    ];
}
