using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The tables of preloads of structural bolts: which sizes they have, and the values that no rounding explains.</summary>
internal sealed class StructuralPreloadTable
{
    public const string Europe = "EN 1090-2", Germany = "DIN EN 1993-1-8/NA", America = "AISC 360 Table J3.1";

    private static readonly Lazy<DataRow[]> Rows = new(() => [.. DataFile.Read("structural-preload-tables.csv")]);

    private static readonly Lazy<ILookup<string, double>> Diameters = new(
        () => Rows.Value.ToLookup(row => row["table"], row => ScrewThread.Parse(row["thread"]).Diameter));

    private readonly DataRow _row;

    private StructuralPreloadTable(DataRow row) => _row = row;

    public bool IsFromMemory => _row["confidence"] == "from memory";

    /// <summary>The printed preload in newtons, where the table has one of its own.</summary>
    public double? Printed => _row["printed_kn"].Length == 0 ? null : Si.Of(Force.FromKilonewtons(_row.Number("printed_kn")));

    /// <summary>The row of a thread, which the table must have, and of a grade that has one of its own.</summary>
    public static StructuralPreloadTable Of(string table, ScrewThread thread, string grade = "")
    {
        DataRow[] rows = Array.FindAll(Rows.Value, row => row["table"] == table && row["thread"] == thread.Designation);
        return (Array.Find(rows, row => row["grade"] == grade) ?? Array.Find(rows, row => row["grade"].Length == 0)) is DataRow found
            ? new StructuralPreloadTable(found)
            : throw new ArgumentException($"{table} has no structural bolt of {thread.Designation}; it has {SizesOf(table)}.", nameof(thread));
    }

    /// <summary>Refuses a nominal diameter that no size of the table has.</summary>
    public static void CheckDiameter(string table, Length diameter, string name)
    {
        double d = Domains.Length.Check(diameter, name);
        if (Diameters.Value[table].Any(known => Math.Abs(d - known) <= 1e-9 * known)) return;
        Guard.RefuseAgainst(name, diameter, $"that of a structural bolt of {table}: {SizesOf(table)}");
    }

    private static string SizesOf(string table) =>
        string.Join(", ", Rows.Value.Where(row => row["table"] == table).Select(row => row["thread"]).Distinct());
}
