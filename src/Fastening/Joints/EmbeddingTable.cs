using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The published embedding of surfaces, by roughness and direction of the load.</summary>
internal static class EmbeddingTable
{
    private const double MetersPerMicrometer = 1e-6;

    private static readonly Dictionary<(SurfaceRoughness, EmbeddingLoad), EmbeddingRow> Rows = DataFile.Read("embedding.csv").ToDictionary(
        row => (Value<SurfaceRoughness>(row["roughness"]), Value<EmbeddingLoad>(row["load"])),
        row => new EmbeddingRow(Meters(row, "thread_um", "an engaged thread"), Meters(row, "head_or_nut_um", "a face"), Meters(row, "interface_um", "an interface")));

    public static EmbeddingRow Of(SurfaceRoughness roughness, EmbeddingLoad load) => Rows[(roughness, load)];

    private static Stated<Length> Meters(DataRow row, string column, string surface) =>
        Stated<Length>.Of(row.Number(column) * MetersPerMicrometer, $"embedding of {surface}, VDI 2230 Table 5");

    private static T Value<T>(string name)
        where T : struct => Enum.TryParse(name, out T value) ? value : throw new InvalidDataException($"Unknown {typeof(T).Name} '{name}'.");
}
