using System.Diagnostics.CodeAnalysis;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A bolt grade of SAE J429 or ASTM: <c>SAE J429 5</c>, <c>ASTM A193 B7</c>, <c>ASTM F3125 A325</c>.</summary>
/// <remarks>
/// Strength depends on the size: SAE J429 grade 5 is weaker above 1 in. A325 and A490 are the older standards of the structural bolts that
/// F3125 replaced; there A325 is weaker above 1 in, in F3125 it is not. What is from memory says so in <see cref="BoltStrength.Provenance"/>.
/// </remarks>
/// <example><code>BoltGrade.Parse("SAE J429 5").StrengthFor(ScrewThread.Parse("1/2-13 UNC")).TensileStrength.KilopoundsForcePerSquareInch   // 120</code></example>
public sealed class BoltGrade
{
    private const int Longest = 40;

    private static readonly BoltGrade[] Table = [.. DataFile.Read("sae-astm-bolt-grades.csv").GroupBy(row => row["designation"]).Select(Read)];
    private static readonly Dictionary<string, BoltGrade> BySpelling = Table
        .SelectMany(grade => Spellings(grade.Designation).Select(text => (text, grade)))
        .ToDictionary(x => x.text, x => x.grade, StringComparer.OrdinalIgnoreCase);

    private readonly StrengthTable _strengths;

    private BoltGrade(string designation, bool isStructural, IEnumerable<StrengthBand> bands)
    {
        Designation = designation;
        IsStructural = isStructural;
        _strengths = new StrengthTable(designation, bands);
    }

    /// <summary>Every grade of the table.</summary>
    public static IReadOnlyList<BoltGrade> All { get; } = Array.AsReadOnly(Table);

    /// <summary>Standard and grade: <c>SAE J429 5</c>.</summary>
    public string Designation { get; }

    internal bool IsStructural { get; }

    /// <summary>Reads a designation: organisation, standard and grade, where the organisation and the word grade may be left out.</summary>
    /// <remarks><c>SAE J429 5</c>, <c>J429 Grade 5</c> and <c>SAE Grade 5</c> are the same; so are <c>ASTM A193 B7</c> and <c>A193 Gr. B7</c>. A number alone is no grade.</remarks>
    /// <param name="designation">The designation; case and spaces do not matter.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="FormatException">The table has no such grade; the message lists those it has.</exception>
    /// <example><code>BoltGrade.Parse("ASTM A193 B7")</code></example>
    public static BoltGrade Parse(string designation) => TryParse(Guard.NotNull(designation), out BoltGrade? found)
        ? found
        : throw new FormatException($"{Quoted.Text(designation)} is not a bolt grade of the table: {string.Join(", ", All)}.");

    /// <summary>Reads a designation as <see cref="Parse"/> does, without an exception.</summary>
    /// <param name="designation">The text; null is not a designation.</param>
    /// <param name="grade">The grade, or null.</param>
    /// <returns>Whether the table has the grade.</returns>
    /// <example><code>bool known = BoltGrade.TryParse("ASTM A193 B7", out BoltGrade? grade);   // true</code></example>
    public static bool TryParse(string? designation, [NotNullWhen(true)] out BoltGrade? grade)
    {
        grade = null;
        return designation is { Length: <= Longest } && BySpelling.TryGetValue(Plain(designation), out grade);
    }

    /// <summary>The minimum strength for a thread of this grade.</summary>
    /// <param name="thread">A thread within the sizes of the grade: unified, or ISO metric for A325M, A490M and A193.</param>
    /// <returns>Tensile strength, yield strength and, except for ASTM A193, proof stress.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The grade does not cover the thread.</exception>
    /// <example><code>BoltGrade.Parse("SAE J429 8").StrengthFor(ScrewThread.Parse("1/2-13 UNC")).ProofLoadStress?.KilopoundsForcePerSquareInch   // 120</code></example>
    public BoltStrength StrengthFor(ScrewThread thread) => _strengths.For(thread);

    /// <inheritdoc />
    public override string ToString() => Designation;

    private static BoltGrade Read(IGrouping<string, DataRow> rows) => new(rows.Key, rows.First()["structural_bolt"] == "yes", rows.Select(Band));

    private static StrengthBand Band(DataRow row)
    {
        bool metric = row["threads"] == "metric";
        Func<double, Pressure> stress = metric ? x => Pressure.FromMegapascals(x) : x => Pressure.FromKilopoundsForcePerSquareInch(x);
        Func<double, Length> length = metric ? x => Length.FromMillimeters(x) : x => Length.FromInches(x);
        return new StrengthBand(
            metric ? ThreadStandard.IsoMetric : ThreadStandard.Unified,
            Si.Of(length(row.Number("least_diameter"))),
            Si.Of(length(row.Number("greatest_diameter"))),
            row["sizes"],
            new BoltStrength(
                stress(row.Number("tensile")),
                stress(row.Number("yield")),
                row["proof"].Length == 0 ? null : stress(row.Number("proof")),
                new Provenance(row["source"], row["confidence"])));
    }

    /// <summary>With and without the organisation; SAE alone means SAE J429.</summary>
    private static IEnumerable<string> Spellings(string designation)
    {
        yield return designation;
        yield return designation.Substring(designation.IndexOf(' ') + 1);
        if (designation.StartsWith("SAE J429 ", StringComparison.Ordinal)) yield return designation.Remove("SAE ".Length, "J429 ".Length);
    }

    /// <summary>Single spaces, and no word for grade.</summary>
    private static string Plain(string designation) => string.Join(
        " ",
        designation.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Where(word => !IsWordForGrade(word.TrimEnd('.'))));

    private static bool IsWordForGrade(string word) =>
        word.Equals("grade", StringComparison.OrdinalIgnoreCase) || word.Equals("gr", StringComparison.OrdinalIgnoreCase);
}
