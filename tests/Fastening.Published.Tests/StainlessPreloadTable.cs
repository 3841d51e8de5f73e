namespace Fastening.Published.Tests;

/// <summary>A table of preload and torque of austenitic bolts, 90 % of the minimum R_p0.2 of ISO 3506-1, computed after VDI 2230.</summary>
public sealed class StainlessPreloadTable : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
        [new("stainless-vdi-", (row, output) => Vdi2230.Assembly(row, row["Rp0.2_MPa"], output))];
}
