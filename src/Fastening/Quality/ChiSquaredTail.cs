using MathNet.Numerics;

namespace Fastening.Quality;

/// <summary>χ² with any degrees of freedom.</summary>
internal static class ChiSquaredTail
{
    /// <summary>P(χ² > value).</summary>
    public static double Above(double value, double degreesOfFreedom) =>
        value <= 0 ? 1 : SpecialFunctions.GammaUpperRegularized(degreesOfFreedom / 2, value / 2);

    /// <summary>The value below which a share p of the distribution lies.</summary>
    public static double Quantile(double p, double degreesOfFreedom) => 2 * SpecialFunctions.GammaLowerRegularizedInv(degreesOfFreedom / 2, p);
}
