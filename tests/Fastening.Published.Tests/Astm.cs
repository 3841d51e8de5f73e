namespace Fastening.Published.Tests;

/// <summary>ASTM A325 and A449, as tabulated in Shigley and Mischke, 5th ed. (1989).</summary>
public sealed class Astm : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("astm-", (row, output) => SaeJ429.Strength(BoltGrade.Parse("ASTM " + row.Text("spec")), row, output)),
    ];
}
