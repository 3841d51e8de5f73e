using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Least washer-face diameter of hexagon heads (ISO 4014, ISO 4017) and the medium clearance hole (ISO 273), per nominal diameter.</summary>
internal static class HexagonHeadTable
{
    private static readonly Lazy<Dictionary<long, (double Outer, double Inner)>> Rings = new(Load);

    /// <summary>The ring in metres; the pitch does not matter.</summary>
    public static (double Outer, double Inner) RingFor(ScrewThread thread) =>
        thread.Profile == ThreadProfile.IsoMetric && Rings.Value.TryGetValue(Nanometers(thread.Diameter), out (double Outer, double Inner) ring)
            ? ring
            : throw new ArgumentException(
                $"ISO 4014 and ISO 273 have no hexagon head for {thread}; give the ring with BearingSurface.Annulus.", nameof(thread));

    private static Dictionary<long, (double Outer, double Inner)> Load()
    {
        Dictionary<long, double> holes = DataFile.Read("iso-273-clearance-holes.csv").ToDictionary(Key, row => Meters(row, "medium_hole_mm"));
        return DataFile.Read("iso-4014-hexagon-heads.csv").ToDictionary(Key, row => (Meters(row, "washer_face_min_mm"), holes[Key(row)]));
    }

    private static long Key(DataRow row) => Nanometers(Meters(row, "nominal_diameter_mm"));

    private static long Nanometers(double meters) => (long)Math.Round(meters * 1e9);

    private static double Meters(DataRow row, string column) => Si.Of(Length.FromMillimeters(row.Number(column)));
}
