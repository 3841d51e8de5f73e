using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The tables of preloads of structural bolts: which sizes they have, and the values that no rounding explains.</summary>
internal sealed class StructuralPreloadTable
{
    public const string Europe = "EN 1090-2", Germany = "DIN EN 1993-1-8/NA", America = "AISC 360 Table J3.1";

    private static readonly Lazy<ILookup<string, DataRow>> Rows = new(
        () => DataFile.Read("structural-preload-tables.csv").ToLookup(row => Key(row["table"], row["thread"])));

    private readonly DataRow _row;

    private StructuralPreloadTable(DataRow row) => _row = row;

    public bool IsFromMemory => _row["confidence"] == "from memory";

    /// <summary>The printed preload in newtons, where the table has one of its own.</summary>
    public double? Printed => _row["printed_kn"].Length == 0 ? null : Si.Of(Force.FromKilonewtons(_row.Number("printed_kn")));

    /// <summary>The row of a thread, and of a grade that has one of its own; null when the table does not have the size.</summary>
    public static StructuralPreloadTable? Find(string table, ScrewThread thread, string grade = "")
    {
        IEnumerable<DataRow> rows = Rows.Value[Key(table, thread.Designation)];
        return (rows.FirstOrDefault(row => row["grade"] == grade) ?? rows.FirstOrDefault(row => row["grade"].Length == 0)) is DataRow found
            ? new StructuralPreloadTable(found)
            : null;
    }

    private static string Key(string table, string thread) => $"{table}: {thread}";
}
