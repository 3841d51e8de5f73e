using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>Student's t with a shift: (Z + δ)/√(χ²/ν), as the ratio of a mean to a standard deviation is distributed. By quadrature.</summary>
internal static class NoncentralT
{
    private const double Reach = 9.5;
    private const double Fall = 45;
    private const int Panels = 24;

    /// <summary>P(T ≤ t).</summary>
    public static double Below(double t, double degreesOfFreedom, double shift)
    {
        if (t < 0) return 1 - Below(-t, degreesOfFreedom, -shift);

        // Of the two orders of integration, the one whose inner probability changes slowly against its outer density.
        return t * t <= 2 * degreesOfFreedom ? OverDeviation(t, degreesOfFreedom, shift) : OverMean(t, degreesOfFreedom, shift);
    }

    /// <summary>
    /// Over the logarithm of the deviation, in which its density is smooth whatever the degrees of freedom: in the deviation itself it has a
    /// fractional power at 0, which costs five digits at ν = 1.5.
    /// </summary>
    private static double OverDeviation(double t, double degreesOfFreedom, double shift)
    {
        // Where the density has come down by e to the −q on either side; e^x − 1 − x ≥ x²/2 above, x²/(2 + x) below, and e^x − 1 − x ≥ q at ln(2 + 2q).
        double q = 2 * Fall / degreesOfFreedom;
        double low = -(q + Math.Sqrt(q * q + 8 * q)) / 4;
        double high = Math.Min(Math.Sqrt(2 * q), Math.Log(2 + 2 * q)) / 2;
        double mass = 0, sum = 0;
        (double[] nodes, double[] weights) = GaussPanels.Over(low, high, Panels + (int)(high - low));
        for (int i = 0; i < nodes.Length; i++)
        {
            // Density over that at 1; its own sum makes it whole, without the logarithm of a large gamma function.
            double y = nodes[i], s = Math.Exp(y);
            double density = weights[i] * Math.Exp(degreesOfFreedom * (y - (s - 1) * (s + 1) / 2));
            mass += density;
            sum += density * NormalCurve.Below(t * s - shift);
        }

        return sum / mass;
    }

    private static double OverMean(double t, double degreesOfFreedom, double shift)
    {
        double Inside(double z)
        {
            double s = (z + shift) / t;
            return NormalCurve.Density(z) * ChiSquaredTail.Above(degreesOfFreedom * s * s, degreesOfFreedom);
        }

        if (-shift >= Reach) return 1;
        if (-shift < -Reach) return NormalCurve.Below(-shift) + GaussPanels.Integrate(Inside, -Reach, Reach, Panels);

        // The tail starts with the power ν of z + δ, which is smooth in the fourth root of it.
        double end = Math.Sqrt(Math.Sqrt(Reach + shift));
        return NormalCurve.Below(-shift) + GaussPanels.Integrate(u => 4 * u * u * u * Inside(u * u * u * u - shift), 0, end, Panels);
    }
}
