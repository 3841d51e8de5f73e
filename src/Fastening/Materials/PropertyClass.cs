using System.Diagnostics.CodeAnalysis;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A property class of bolts, screws and studs: of steel after ISO 898-1:2013 (<c>8.8</c>), of stainless steel after ISO 3506-1 (<c>A2-70</c>).</summary>
/// <remarks>
/// ISO 898-1 covers M1.6 to M39; class 8.8 is stronger above 16 mm, class 9.8 ends at 16 mm. ISO 3506-1:2009 has austenitic (A1 to A5),
/// martensitic (C1, C3, C4) and ferritic (F1) steel grades; class 100 is of its 2020 edition. What is from memory says so in
/// <see cref="BoltStrength.Provenance"/>.
/// </remarks>
/// <example><code>PropertyClass.Parse("8.8").StrengthFor(ScrewThread.Parse("M16")).TensileStrength.Megapascals    // 800
/// PropertyClass.Parse("A4-70").StrengthFor(ScrewThread.Parse("M16")).YieldStrength.Megapascals     // 450</code></example>
public sealed class PropertyClass
{
    private const string CarbonSteel = "ISO 898-1", StainlessSteel = "ISO 3506-1";
    private const int Longest = 8;

    private static readonly PropertyClass[] Table = [.. ReadCarbonSteel(), .. ReadStainlessSteel()];
    private static readonly Dictionary<string, PropertyClass> ByDesignation =
        Table.ToDictionary(c => c.Designation, StringComparer.OrdinalIgnoreCase);

    private readonly StrengthTable _strengths;

    private PropertyClass(string standard, string designation, Pressure nominalTensile, Pressure? nominalYield, IEnumerable<StrengthBand> bands)
    {
        Standard = standard;
        Designation = designation;
        NominalTensileStrength = nominalTensile;
        NominalYieldStrength = nominalYield;
        _strengths = new StrengthTable(
            $"{standard} class {designation}", bands, standard == CarbonSteel ? HotStrengthTable.Of(designation) : null);
    }

    /// <summary>Every class: those of ISO 898-1, weakest first, then those of ISO 3506-1.</summary>
    public static IReadOnlyList<PropertyClass> All { get; } = Array.AsReadOnly(Table);

    /// <summary>The standard: <c>ISO 898-1</c> or <c>ISO 3506-1</c>.</summary>
    public string Standard { get; }

    /// <summary>The designation: <c>8.8</c>, <c>A2-70</c>.</summary>
    public string Designation { get; }

    /// <summary>
    /// Nominal tensile strength, as the designation says it: 800 MPa for 8.8, 700 MPa for A2-70. EN 1993-1-8 calls it f_ub. The minimum may be
    /// higher: see <see cref="StrengthFor"/>.
    /// </summary>
    public Pressure NominalTensileStrength { get; }

    /// <summary>Nominal yield strength, as the designation says it: 640 MPa for 8.8; null for ISO 3506-1. EN 1993-1-8 calls it f_yb.</summary>
    public Pressure? NominalYieldStrength { get; }

    /// <summary>Reads a designation such as <c>8.8</c>, <c>10.9</c>, <c>A2-70</c> or <c>A4L-80</c> (L, low carbon, has the strength of A4-80).</summary>
    /// <param name="designation">The designation, with a decimal point or a hyphen.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="FormatException">Neither standard has the class; the message lists those there are.</exception>
    /// <example><code>PropertyClass.Parse("10.9")</code></example>
    public static PropertyClass Parse(string designation) => TryParse(Guard.NotNull(designation), out PropertyClass? found)
        ? found
        : throw new FormatException(
            $"{Quoted.Text(designation)} is not a property class{(designation.Contains(',') ? " (write a decimal point)" : "")} of {CarbonSteel} ({ListCarbonSteel()}) or {StainlessSteel} ({ListStainlessSteel()}).");

    /// <summary>Reads a designation without an exception.</summary>
    /// <param name="designation">The text; null is not a designation.</param>
    /// <param name="propertyClass">The class, or null.</param>
    /// <returns>Whether one of the standards has the class.</returns>
    /// <example><code>bool known = PropertyClass.TryParse("A4-70", out PropertyClass? propertyClass);   // true</code></example>
    public static bool TryParse(string? designation, [NotNullWhen(true)] out PropertyClass? propertyClass)
    {
        string text = designation?.Trim() ?? "";
        propertyClass = null;
        if (text.Length is 0 or > Longest) return false;
        if (ByDesignation.TryGetValue(text, out propertyClass)) return true;
        return IsLowCarbon(text) && ByDesignation.TryGetValue(text.Remove(2, 1), out propertyClass);
    }

    /// <summary>The minimum strength for a thread of this class.</summary>
    /// <param name="thread">An ISO metric thread: M1.6 to M39, or to M16 (9.8) or M24 (ISO 3506-1 classes 70, 80 and 100 of austenitic steel, F1).</param>
    /// <returns>Tensile strength, yield strength and, for ISO 898-1, proof stress.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The standard does not cover the thread.</exception>
    /// <example><code>PropertyClass.Parse("10.9").StrengthFor(ScrewThread.Parse("M16")).YieldStrength.Megapascals   // 940</code></example>
    public BoltStrength StrengthFor(ScrewThread thread) => _strengths.For(thread);

    /// <inheritdoc />
    public override string ToString() => Designation;

    private static bool IsLowCarbon(string text) => text.Length > 3 && text[0] is 'A' or 'a' && text[1] is '2' or '4' && text[2] is 'L' or 'l';

    private static IEnumerable<PropertyClass> ReadCarbonSteel() => DataFile.Read("iso-898-1-property-classes.csv")
        .GroupBy(row => row["designation"])
        .Select(rows => new PropertyClass(
            CarbonSteel, rows.Key, Megapascals(rows.First(), "nominal_tensile_mpa"), Megapascals(rows.First(), "nominal_yield_mpa"),
            rows.Select(row => Band(row, "ISO 898-1:2013 Table 3", Megapascals(row, "proof_mpa")))));

    private static IEnumerable<PropertyClass> ReadStainlessSteel() => DataFile.Read("iso-3506-1-property-classes.csv")
        .SelectMany(row => row["steel_grades"].Split(' ').Select(grade => new PropertyClass(
            StainlessSteel, $"{grade}-{row["property_class"]}", Megapascals(row, "tensile_mpa"), null, [Band(row, row["source"], null)])))
        .OrderBy(c => c.Designation.Substring(0, 2), StringComparer.Ordinal).ThenBy(c => c.NominalTensileStrength);

    private static StrengthBand Band(DataRow row, string source, Pressure? proof) => new(
        ThreadStandard.IsoMetric,
        Si.Of(Length.FromMillimeters(row.Number("least_diameter_mm"))),
        Si.Of(Length.FromMillimeters(row.Number("greatest_diameter_mm"))),
        $"from M{row["least_diameter_mm"]} to M{row["greatest_diameter_mm"]}",
        new BoltStrength(Megapascals(row, "tensile_mpa"), Megapascals(row, "yield_mpa"), proof, new Provenance(source, row["confidence"])));

    private static Pressure Megapascals(DataRow row, string column) => Pressure.FromMegapascals(row.Number(column));

    private static string ListCarbonSteel() => string.Join(", ", Table.Where(c => c.Standard == CarbonSteel));

    /// <summary>Steel grades with the same classes stand together: <c>A1/A2-50/70</c>.</summary>
    private static string ListStainlessSteel() => string.Join(", ", Table
        .Where(c => c.Standard == StainlessSteel)
        .GroupBy(c => c.Designation.Substring(0, 2), (grade, classes) => (grade, classes: string.Join("/", classes.Select(c => c.Designation.Substring(3)))))
        .GroupBy(x => x.classes, (classes, grades) => $"{string.Join("/", grades.Select(x => x.grade))}-{classes}"));
}
