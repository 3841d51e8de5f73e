using Fastening.Internals;

namespace Fastening;

/// <summary>The limits of the usual fit of a standard from a data file of the package, by designation; read once at first use.</summary>
internal sealed class MediumFit
{
    private readonly Lazy<Dictionary<string, (double, double, double, double)>> _rows;

    public MediumFit(string file, string external, string internalClass, string unit, string covers)
    {
        Name = $"{external}/{internalClass}";
        Covers = covers;
        _rows = new(() => DataFile.Read(file).ToDictionary(row => row["thread"], Limits, StringComparer.Ordinal));

        (double, double, double, double) Limits(DataRow row) => (
            row.Meters($"d_min_{external}_{unit}"),
            row.Meters($"d2_min_{external}_{unit}"),
            row.Meters($"D1_max_{internalClass}_{unit}"),
            row.Meters($"D2_max_{internalClass}_{unit}"));
    }

    /// <summary>The tolerance classes, external over internal.</summary>
    public string Name { get; }

    /// <summary>The threads of the table, as a refusal says it.</summary>
    public string Covers { get; }

    /// <summary>Least external major and pitch diameter, greatest internal minor and pitch diameter; null when the table lacks the thread.</summary>
    public (double ExternalMajor, double ExternalPitch, double InternalMinor, double InternalPitch)? Find(ScrewThread thread) =>
        _rows.Value.TryGetValue(thread.Designation, out (double, double, double, double) limits) ? limits : null;
}
