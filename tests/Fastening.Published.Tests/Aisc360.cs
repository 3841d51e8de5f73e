using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>AISC 360-05, Tables J3.1 and J3.1M: minimum pretension, 70 % of the tensile strength, rounded to the kip or kilonewton.</summary>
public sealed class Aisc360 : PublishedSource
{
    /// <summary>Threads per inch of the coarse series, by diameter in inches (ASME B1.1).</summary>
    private static readonly Dictionary<double, double> CoarseSeries = new()
    {
        [0.5] = 13,
        [0.75] = 10,
        [1.125] = 7,
        [1.25] = 7,
        [1.375] = 6,
        [1.5] = 6,
    };

    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("aisc360-05-pretension-M", (row, output) => Pretension(output, ScrewThread.Parse(row.Text("thread")))?.Kilonewtons),
        new("aisc360-05-pretension-0", UnifiedPretension),
        new("aisc360-05-pretension-1", UnifiedPretension),
    ];

    private static double? UnifiedPretension(PublishedRow row, string output) =>
        Pretension(output, ScrewThread.Unified(Length.FromInches(row["d_in"]), CoarseSeries[row["d_in"]]))?.KilopoundsForce;

    /// <summary>The outputs are named by grade and unit: A325_kip.</summary>
    private static Force? Pretension(string output, ScrewThread thread) =>
        PublishedPreload.StructuralAmerica(BoltGrade.Parse("ASTM " + output.Split('_')[0]), thread).Tabulated;
}
