namespace Fastening;

/// <summary>The diameter at which a cone begins, and how deep below it a layer lies.</summary>
internal readonly record struct ConeStart(double Diameter, double Depth)
{
    /// <summary>No cone opens from a tapped part; only a narrow layer may begin one.</summary>
    public static ConeStart Nowhere { get; } = new(double.PositiveInfinity, 0);

    public double At(double growth) => Diameter + growth * Depth;
}
