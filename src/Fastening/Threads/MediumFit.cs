using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The limits of the usual fit of a standard from a data file of the package, by designation; read once at first use.</summary>
internal sealed class MediumFit
{
    private readonly Lazy<Dictionary<string, StatedLimits>> _rows;

    public MediumFit(string file, string external, string internalClass, string unit, string covers)
    {
        Name = $"{external}/{internalClass}";
        Covers = covers;
        _rows = new(() => DataFile.Read(file).ToDictionary(row => row["thread"], Limits, StringComparer.Ordinal));

        StatedLimits Limits(DataRow row) => new(
            Limit(row, $"d_min_{external}_{unit}", "least major diameter of the external thread"),
            Limit(row, $"d2_min_{external}_{unit}", "least pitch diameter of the external thread"),
            Limit(row, $"D1_max_{internalClass}_{unit}", "greatest minor diameter of the internal thread"),
            Limit(row, $"D2_max_{internalClass}_{unit}", "greatest pitch diameter of the internal thread"));

        Stated<Length> Limit(DataRow row, string column, string name)
        {
            Length limit = row.Length(column);
            return new(limit, Si.Of(limit), $"{name}, {row["thread"]} {Name}");
        }
    }

    /// <summary>The tolerance classes, external over internal.</summary>
    public string Name { get; }

    /// <summary>The threads of the table, as a refusal says it.</summary>
    public string Covers { get; }

    /// <summary>Least external major and pitch diameter, greatest internal minor and pitch diameter; null when the table lacks the thread.</summary>
    public StatedLimits? Find(ScrewThread thread) => _rows.Value.TryGetValue(thread.Designation, out StatedLimits? limits) ? limits : null;
}
