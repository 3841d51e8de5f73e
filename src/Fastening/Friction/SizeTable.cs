using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A dimension table of the package, one row per nominal diameter; the pitch of the thread does not matter.</summary>
/// <remarks>Columns in millimetres end in <c>_mm</c>, in inches in <c>_in</c>.</remarks>
internal sealed class SizeTable(string file, ThreadProfile profile, string? standard = null)
{
    private readonly Lazy<Dictionary<long, DataRow>> _rows = new(() => DataFile.Read(file)
        .Where(row => standard is null || row["standard"] == standard)
        .ToDictionary(row => Nanometers(Meters(row, profile == ThreadProfile.Unified ? "nominal_diameter_in" : "nominal_diameter_mm"))));

    /// <summary>The cells of the thread's row in metres; null when the table has no such size.</summary>
    public double? Find(ScrewThread thread, string column) =>
        thread.Profile == profile && _rows.Value.TryGetValue(Nanometers(Si.Of(thread.NominalDiameter)), out DataRow? row) ? Meters(row, column) : null;

    private static long Nanometers(double meters) => (long)Math.Round(meters * 1e9);

    private static double Meters(DataRow row, string column)
    {
        double number = row.Number(column);
        return Si.Of(column.EndsWith("_in", StringComparison.Ordinal) ? Length.FromInches(number) : Length.FromMillimeters(number));
    }
}
