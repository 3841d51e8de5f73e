using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>EN 1993-1-8:2005 §3.9: slip resistance of a preloaded bolt.</summary>
public sealed class En1993Part18 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("en1993-slip", (row, _) => SlipResistance.OfEn1993(
            row["ks"], (int)row["n"], row["mu"], Force.FromKilonewtons(row["FpC_kN"]), Force.Zero, row["gammaM3"]).Resistance.Kilonewtons),
    ];
}
