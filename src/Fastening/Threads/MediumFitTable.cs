using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The limits of 6g/6H and 2A/2B from the data files of the package, by designation; read once at first use.</summary>
internal static class MediumFitTable
{
    private static readonly Lazy<Dictionary<string, (double, double, double, double)>> Rows = new(Read);

    /// <summary>Least external major and pitch diameter, greatest internal minor and pitch diameter; null when the tables lack the thread.</summary>
    public static (double ExternalMajor, double ExternalPitch, double InternalMinor, double InternalPitch)? Find(ScrewThread thread) =>
        Rows.Value.TryGetValue(thread.Designation, out (double, double, double, double) limits) ? limits : null;

    public static string FitOf(ScrewThread thread) => thread.Profile == ThreadProfile.IsoMetric ? "6g/6H" : "2A/2B";

    private static Dictionary<string, (double, double, double, double)> Read()
    {
        var rows = new Dictionary<string, (double, double, double, double)>(StringComparer.Ordinal);
        foreach (DataRow row in DataFile.Read("iso-965-limits-6g-6h.csv"))
        {
            rows.Add(row["thread"], (Metric("d_min_6g_mm"), Metric("d2_min_6g_mm"), Metric("D1_max_6H_mm"), Metric("D2_max_6H_mm")));
            double Metric(string column) => Si.Of(Length.FromMillimeters(row.Number(column)));
        }

        foreach (DataRow row in DataFile.Read("asme-b1-1-limits-2a-2b.csv"))
        {
            rows.Add(row["thread"], (Inch("d_min_2A_in"), Inch("d2_min_2A_in"), Inch("D1_max_2B_in"), Inch("D2_max_2B_in")));
            double Inch(string column) => Si.Of(Length.FromInches(row.Number(column)));
        }

        return rows;
    }
}
