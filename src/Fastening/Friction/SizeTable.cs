using Fastening.Internals;

namespace Fastening;

/// <summary>A dimension table of the package, one row per nominal diameter; the pitch of the thread does not matter.</summary>
/// <remarks>Columns in millimetres end in <c>_mm</c>, in inches in <c>_in</c>.</remarks>
internal sealed class SizeTable(string file, ThreadStandard threads, string? standard = null)
{
    private readonly Lazy<Dictionary<long, DataRow>> _rows = new(() => DataFile.Read(file)
        .Where(row => standard is null || row["standard"] == standard)
        .ToDictionary(row => Nanometers(row.Meters(row.Has("nominal_diameter_in") ? "nominal_diameter_in" : "nominal_diameter_mm"))));

    /// <summary>Whether the sizes are those of the thread's standard.</summary>
    public bool IsFor(ScrewThread thread) => thread.Standard == threads;

    /// <summary>The cells of the thread's row in metres; null when the table has no such size.</summary>
    public double? Find(ScrewThread thread, string column) =>
        IsFor(thread) && _rows.Value.TryGetValue(Nanometers(Si.Of(thread.NominalDiameter)), out DataRow? row) ? row.Meters(column) : null;

    private static long Nanometers(double meters) => (long)Math.Round(meters * 1e9);
}
