namespace Fastening.Quality;

/// <summary>
/// Uniform between −w and w with w itself uniform from 1 − q to 1 + q (JCGM 101:2008 §6.4.3.2, from memory): flat in the middle, logarithmic flanks.
/// </summary>
internal static class CurvilinearTrapezoid
{
    private const int Steps = 40;

    /// <summary>The x ≥ 0 above which a share of the distribution lies, up to ½.</summary>
    /// <remarks>On the flank x = (1 + q)(1 − e) the share is (1 + q)/(4q) · (e + (1 − e) ln(1 − e)), the integral of the density.</remarks>
    public static double FromTail(double tail, double doubt)
    {
        double edge = 1 + doubt, flat = 1 - doubt;
        double height = Math.Log(edge / flat) / (4 * doubt);
        double fromMiddle = (0.5 - tail) / height;
        if (fromMiddle <= flat) return fromMiddle;
        double target = 4 * doubt * tail / edge;
        if (target <= 0) return edge;

        // Too far in to begin with (Flank(e) > e²/2): Newton on a convex curve then comes from one side.
        double e = Math.Min(Math.Sqrt(2 * target), 1 - flat / edge);
        for (int step = 0; step < Steps; step++)
        {
            double change = (Flank(e) - target) / -Math.Log(1 - e);
            e -= change;
            if (!(Math.Abs(change) > 1e-14 * e)) break;
        }

        return edge * (1 - e);
    }

    /// <summary>e + (1 − e) ln(1 − e), near 0 by its series, Σ eᵏ/(k (k − 1)).</summary>
    private static double Flank(double e)
    {
        if (e > 0.05) return e + (1 - e) * Math.Log(1 - e);
        double power = e * e, sum = 0;
        for (int k = 2; k < 14; k++, power *= e) sum += power / (k * (k - 1.0));
        return sum;
    }
}
