using Fastening.Internals;

namespace Fastening;

/// <summary>The published embedding of one surface of each kind, in metres.</summary>
internal static class EmbeddingTable
{
    private const double MetersPerMicrometer = 1e-6;

    private static readonly Dictionary<(SurfaceRoughness, EmbeddingLoad), (double Thread, double Face, double Interface)> Rows =
        DataFile.Read("embedding.csv").ToDictionary(
            row => (Value<SurfaceRoughness>(row["roughness"]), Value<EmbeddingLoad>(row["load"])),
            row => (Meters(row, "thread_um"), Meters(row, "head_or_nut_um"), Meters(row, "interface_um")));

    public static (double Thread, double Face, double Interface) Of(SurfaceRoughness roughness, EmbeddingLoad load) => Rows[(roughness, load)];

    private static double Meters(DataRow row, string column) => row.Number(column) * MetersPerMicrometer;

    private static T Value<T>(string name)
        where T : struct => Enum.TryParse(name, out T value) ? value : throw new InvalidDataException($"Unknown {typeof(T).Name} '{name}'.");
}
