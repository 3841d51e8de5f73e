using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>EN 1993-1-8:2005 §3.9: slip resistance of a preloaded bolt.</summary>
public sealed class En1993Part18 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("en1993-slip", (row, _) => SlipResistance.OfEn1993(
            row["ks"], (int)row["n"], row["mu"], Force.FromKilonewtons(row["FpC_kN"]), Force.Zero, row["gammaM3"]).Resistance.Kilonewtons),
        new("en-slip-", Tabulated),
    ];

    /// <summary>The preload is F_p,C of EN 1090-2 by the tabulated area; the slip factor stands in the row or in the name of the value.</summary>
    private static double? Tabulated(PublishedRow row, string output)
    {
        Force preload = PublishedPreload.StructuralEurope(
            PropertyClass.Parse(row.Text("class")), ScrewThread.Parse($"M{row["d_mm"]}"), StressAreaBasis.NominalTable).Preload;
        double slip = output == "Fs_kN" ? row["mu"] : double.Parse(output.Split('_')[1][2..], System.Globalization.CultureInfo.InvariantCulture);
        return SlipResistance.OfEn1993(row["ks"], (int)row["friction_faces"], slip, preload, Force.Zero, row["gamma_M3"]).Resistance.Kilonewtons;
    }
}
