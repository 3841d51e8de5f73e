using Fastening.Internals;

namespace Fastening;

/// <summary>Student's t with a shift: (Z + δ)/√(χ²/ν), as the ratio of a mean to a standard deviation is distributed. By quadrature.</summary>
internal static class NoncentralT
{
    private const double Reach = 9.5;
    private const int Panels = 24;

    /// <summary>P(T ≤ t).</summary>
    public static double Below(double t, double degreesOfFreedom, double shift)
    {
        if (t < 0) return 1 - Below(-t, degreesOfFreedom, -shift);

        // Of the two orders of integration, the one whose inner probability changes slowly against its outer density.
        return t * t <= 2 * degreesOfFreedom ? OverDeviation(t, degreesOfFreedom, shift) : OverMean(t, degreesOfFreedom, shift);
    }

    private static double OverDeviation(double t, double degreesOfFreedom, double shift)
    {
        double spread = Reach / Math.Sqrt(2 * degreesOfFreedom);
        double mass = 0, sum = 0;
        (double[] nodes, double[] weights) = GaussPanels.Over(Math.Max(0, 1 - 1.2 * spread), 1 + 1.2 * spread, Panels);
        for (int i = 0; i < nodes.Length; i++)
        {
            // Density of √(χ²/ν) over that at 1; its own sum makes it whole, without the logarithm of a large gamma function.
            double s = nodes[i];
            double density = weights[i] * Math.Exp((degreesOfFreedom - 1) * Math.Log(s) - degreesOfFreedom * (s - 1) * (s + 1) / 2);
            mass += density;
            sum += density * NormalCurve.Below(t * s - shift);
        }

        return sum / mass;
    }

    private static double OverMean(double t, double degreesOfFreedom, double shift)
    {
        double low = Math.Max(-shift, -Reach);
        if (low >= Reach) return 1;
        return NormalCurve.Below(-shift) + GaussPanels.Integrate(
            z =>
            {
                double s = (z + shift) / t;
                return NormalCurve.Density(z) * ChiSquaredTail.Above(degreesOfFreedom * s * s, degreesOfFreedom);
            },
            low,
            Reach,
            Panels);
    }
}
