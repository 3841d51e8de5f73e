using System.Globalization;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>ISO 898-1: nominal stress areas, mechanical properties of the classes, minimum ultimate tensile loads and proof loads.</summary>
public sealed class Iso898Part1 : PublishedSource
{
    /// <summary>
    /// The loads are the tabulated three-digit area times the stress, but these six follow only from the exact area: 125 000 N of M16, class
    /// 8.8, is 125 335 N rounded, where the tabulated 157 mm² would give 125 600 N.
    /// </summary>
    private static readonly HashSet<string> ByExactArea =
    [
        "iso898-Fm-M16-8.8", "iso898-Fm-M22-8.8", "iso898-Fm-M27-3.6", "iso898-Fp-M3-10.9", "iso898-Fp-M5-8.8", "iso898-Fp-M22-10.9",
    ];

    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("iso898-As-", (row, _) => ScrewThread
            .IsoMetric(Length.FromMillimeters(row["d_mm"]), Length.FromMillimeters(row["P_mm"])).StressArea.SquareMillimeters),
        new("iso898-1-class-", Strength),
        new("iso898-1-8.8-conflict", (row, output) => StrengthOf(row, output == "proof_d<=16" ? 16 : 16.1).ProofLoadStress?.Megapascals),
        new("iso898-Fm-", (row, _) => UltimateLoad(row).Newtons),
        new("iso898-Fp-", (row, _) => PropertyClass.Parse(row.Text("property_class"))
            .StrengthFor(CoarseThread(row)).ProofLoad(CoarseThread(row), Basis(row))!.Value.Newtons),
        new("iso898-hot-", HotStrength),
        new("interp-8.8-", HotStrength),
    ];

    /// <summary>The informative annex on elevated temperature; of class 5.6, for which two series are in circulation, the package holds none.</summary>
    private static double? HotStrength(PublishedRow row, string output)
    {
        if (row.Text("property_class") == "5.6") return null;
        BoltStrength room = StrengthOf(row, 16);
        Pressure hot = room.AtTemperature(Temperature.FromDegreesCelsius(row["temperature_C"])).YieldStrength;
        return output == "retention" ? hot / room.YieldStrength : hot.Megapascals;
    }

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

    /// <summary>The package has no class 3.6: there the strength is the row's own, and only area and product are checked.</summary>
    private static Force UltimateLoad(PublishedRow row)
    {
        ScrewThread thread = CoarseThread(row);
        Pressure tensile = Pressure.FromMegapascals(row["Rm_min_MPa"]);
        BoltStrength strength = PropertyClass.TryParse(row.Text("property_class"), out PropertyClass? propertyClass)
            ? propertyClass.StrengthFor(thread)
            : new BoltStrength(tensile, tensile);
        return strength.UltimateLoad(thread, Basis(row));
    }

    private static ScrewThread CoarseThread(PublishedRow row) => ScrewThread.Parse(row.Text("thread"));

    private static StressAreaBasis Basis(PublishedRow row) =>
        ByExactArea.Contains(row.Id) ? StressAreaBasis.Exact : StressAreaBasis.NominalTable;
}
