using MathNet.Numerics.Integration;

namespace Fastening.Internals;

/// <summary>Probabilities of a normal quantity against a window: closed for one reading, by quadrature for a whole process.</summary>
internal static class NormalKnowledge
{
    private const int Order = 32;

    /// <summary>Distances from a step, in its own standard deviations, at which the quadrature begins anew: between them 32 points are exact to rounding.</summary>
    private static readonly double[] Distances = [-10, -6, -3, -1, 0, 1, 3, 6, 10];

    /// <summary>p_c = Φ((T_U − y)/u) − Φ((T_L − y)/u) (JCGM 106:2012 §7, from memory).</summary>
    public static double ProbabilityWithin(in WindowLimits window, double mean, double deviation)
    {
        if (deviation == 0) return window.Classify(mean) == Conformity.Within ? 1 : 0;
        return NormalCurve.Between((window.Lower - mean) / deviation, (window.Upper - mean) / deviation);
    }

    /// <summary>∫ g_0(η) a(η) dη over a part of the axis: the share of a process that lies there and whose reading is accepted (JCGM 106:2012 §9).</summary>
    public static double AcceptedShare(double from, double to, in WindowLimits accepted, double mean, double spread, double measuring)
    {
        WindowLimits window = accepted;
        double Density(double value) => ProbabilityWithin(window, value, measuring) * NormalCurve.Density((value - mean) / spread) / spread;
        double sum = 0;
        double[] cuts = Cuts(from, to, window, mean, spread, measuring);
        for (int i = 1; i < cuts.Length; i++)
        {
            if (cuts[i] > cuts[i - 1]) sum += GaussLegendreRule.Integrate(Density, cuts[i - 1], cuts[i], Order);
        }

        return sum;
    }

    private static double[] Cuts(double from, double to, in WindowLimits accepted, double mean, double spread, double measuring)
    {
        double low = Math.Max(from, mean + Distances[0] * spread), high = Math.Min(to, mean + Distances[Distances.Length - 1] * spread);
        var cuts = new List<double>(3 * Distances.Length + 2) { low, high };
        foreach (double distance in Distances)
        {
            cuts.Add(mean + distance * spread);
            cuts.Add(accepted.Lower + distance * measuring);
            cuts.Add(accepted.Upper + distance * measuring);
        }

        return [.. cuts.Where(cut => cut >= low && cut <= high).OrderBy(cut => cut)];
    }
}
