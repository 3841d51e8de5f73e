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

    /// <summary>
    /// ∫ g_0(η) a(η) dη over a part of the axis: the share of a process that lies there and whose reading is accepted (JCGM 106:2012 §9). The variable
    /// is counted from the mean in standard deviations, so that a narrow process far from zero loses no digits.
    /// </summary>
    public static double AcceptedShare(double from, double to, in WindowLimits accepted, double mean, double spread, double measuring)
    {
        double ratio = spread / measuring, acceptLow = (accepted.Lower - mean) / measuring, acceptHigh = (accepted.Upper - mean) / measuring;
        double Density(double z) => NormalCurve.Between(acceptLow - z * ratio, acceptHigh - z * ratio) * NormalCurve.Density(z);
        double sum = 0;
        double[] cuts = Cuts((from - mean) / spread, (to - mean) / spread, acceptLow, acceptHigh, ratio);
        for (int i = 1; i < cuts.Length; i++)
        {
            if (cuts[i] > cuts[i - 1]) sum += GaussLegendreRule.Integrate(Density, cuts[i - 1], cuts[i], Order);
        }

        return sum;
    }

    private static double[] Cuts(double from, double to, double acceptLow, double acceptHigh, double ratio)
    {
        double low = Math.Max(from, Distances[0]), high = Math.Min(to, Distances[Distances.Length - 1]);
        var cuts = new List<double>(3 * Distances.Length + 2) { low, high };
        foreach (double distance in Distances)
        {
            cuts.Add(distance);
            cuts.Add((acceptLow + distance) / ratio);
            cuts.Add((acceptHigh + distance) / ratio);
        }

        return [.. cuts.Where(cut => cut >= low && cut <= high).OrderBy(cut => cut)];
    }
}
