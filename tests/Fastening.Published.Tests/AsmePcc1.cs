namespace Fastening.Published.Tests;

/// <summary>ASME PCC-1, legacy cross-pattern table; bolts numbered clockwise.</summary>
public sealed class AsmePcc1 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("legacy-", (row, output) => TighteningPattern.Cross((int)row["bolts"]).Order[PlaceOf(output)]),
    ];

    /// <summary>The place in "sequence[7]".</summary>
    private static int PlaceOf(string output) => int.Parse(output["sequence[".Length..^1], System.Globalization.CultureInfo.InvariantCulture);
}
