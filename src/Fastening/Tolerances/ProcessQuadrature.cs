using MathNet.Numerics.Integration;

namespace Fastening.Internals;

/// <summary>
/// Shares of a normal process whose readings are accepted or rejected: ∫ g_0(η) a(η) dη over a part of the axis (JCGM 106:2012 §9). The variable is
/// counted from the mean in standard deviations, so that a narrow process far from zero loses no digits. Each share is summed by itself: none is the
/// difference of two larger ones.
/// </summary>
internal sealed class ProcessQuadrature
{
    private const int Order = 32;

    /// <summary>Distances from a step, in its own standard deviations, at which the quadrature begins again: between them 32 points are exact to rounding.</summary>
    private static readonly double[] Distances = [-10, -6, -3, -1, 0, 1, 3, 6, 10];

    private readonly double _mean, _spread, _ratio, _acceptLow, _acceptHigh;

    public ProcessQuadrature(in WindowLimits accepted, double mean, double spread, double measuring)
    {
        (_mean, _spread, _ratio) = (mean, spread, spread / measuring);
        _acceptLow = (accepted.Lower - mean) / measuring;
        _acceptHigh = (accepted.Upper - mean) / measuring;
    }

    /// <summary>The share of the process that lies between two values and whose reading is accepted.</summary>
    public double Accepted(double from, double to) =>
        Integrate(from, to, z => NormalCurve.Between(_acceptLow - z * _ratio, _acceptHigh - z * _ratio));

    /// <summary>The share of the process that lies between two values and whose reading is rejected.</summary>
    public double Rejected(double from, double to) =>
        Integrate(from, to, z => NormalCurve.Below(_acceptLow - z * _ratio) + NormalCurve.Below(z * _ratio - _acceptHigh));

    private double Integrate(double from, double to, Func<double, double> probability)
    {
        double sum = 0;
        double[] cuts = Cuts((from - _mean) / _spread, (to - _mean) / _spread);
        for (int i = 1; i < cuts.Length; i++)
        {
            if (cuts[i] > cuts[i - 1]) sum += GaussLegendreRule.Integrate(z => probability(z) * NormalCurve.Density(z), cuts[i - 1], cuts[i], Order);
        }

        return sum;
    }

    private double[] Cuts(double from, double to)
    {
        double low = Math.Max(from, Distances[0]), high = Math.Min(to, Distances[Distances.Length - 1]);
        var cuts = new List<double>(3 * Distances.Length + 2) { low, high };
        foreach (double distance in Distances)
        {
            cuts.Add(distance);
            cuts.Add((_acceptLow + distance) / _ratio);
            cuts.Add((_acceptHigh + distance) / _ratio);
        }

        return [.. cuts.Where(cut => cut >= low && cut <= high).OrderBy(cut => cut)];
    }
}
