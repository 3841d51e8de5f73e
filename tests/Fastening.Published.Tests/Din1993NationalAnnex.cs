namespace Fastening.Published.Tests;

/// <summary>DIN EN 1993-1-8/NA, Table NA.A.2: the regular preloading force F_p,C* of class 10.9, printed by tens of kilonewtons.</summary>
public sealed class Din1993NationalAnnex : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("en1993-1-8NA-FpCstar-", (row, _) => PublishedPreload
            .StructuralGermany(PropertyClass.Parse("10.9"), ScrewThread.Parse(row.Text("thread"))).Tabulated?.Kilonewtons),
    ];
}
