using System.Globalization;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>ISO 898-1: nominal stress areas and the mechanical properties of the classes.</summary>
public sealed class Iso898Part1 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("iso898-As-", (row, _) => ScrewThread
            .IsoMetric(Length.FromMillimeters(row["d_mm"]), Length.FromMillimeters(row["P_mm"])).StressArea.SquareMillimeters),
        new("iso898-1-class-", Strength),
        new("iso898-1-8.8-conflict", (row, output) => StrengthOf(row, output == "proof_d<=16" ? 16 : 16.1).ProofLoadStress?.Megapascals),
    ];

    /// <summary>The class of a row, for a thread of a diameter; strength does not depend on the pitch.</summary>
    internal static BoltStrength StrengthOf(PublishedRow row, double diameterMillimeters) =>
        PropertyClass.Parse(row.Text("property_class")).StrengthFor(
            ScrewThread.IsoMetric(Length.FromMillimeters(diameterMillimeters), Length.FromMillimeters(diameterMillimeters / 10)));

    private static double? Strength(PublishedRow row, string output)
    {
        string diameters = row.Text("d_mm");
        double largest = diameters == "all" ? 39 : double.Parse(diameters["d<=".Length..], CultureInfo.InvariantCulture);
        BoltStrength strength = StrengthOf(row, largest);
        return output switch
        {
            "Rm_min_MPa" => strength.TensileStrength.Megapascals,
            "Rel_or_Rp_min_MPa" => strength.YieldStrength.Megapascals,
            "Sp_MPa" => strength.ProofLoadStress?.Megapascals,
            _ => null,
        };
    }
}
