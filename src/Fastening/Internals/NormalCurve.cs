using MathNet.Numerics;

namespace Fastening.Internals;

/// <summary>The standard normal curve.</summary>
internal static class NormalCurve
{
    private const double RootTwo = 1.4142135623730951;
    private const double DensityAtZero = 0.3989422804014327;

    public static double Density(double z) => DensityAtZero * Math.Exp(-0.5 * z * z);

    /// <summary>Φ(z).</summary>
    public static double Below(double z) => 0.5 * SpecialFunctions.Erfc(-z / RootTwo);

    /// <summary>Φ(high) − Φ(low), taken in the tail where both are small, so that nothing cancels.</summary>
    public static double Between(double low, double high) => low > 0 ? Below(-low) - Below(-high) : Below(high) - Below(low);

    /// <summary>The z below which a share p of the curve lies.</summary>
    public static double Quantile(double p) => -RootTwo * SpecialFunctions.ErfcInv(2 * p);
}
