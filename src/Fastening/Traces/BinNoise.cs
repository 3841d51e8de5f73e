using System.Buffers;

namespace Fastening;

/// <summary>
/// How much the means of neighbouring bins scatter, from the median of their bends, and the bins that stand far from their neighbours: a spike,
/// a torque that was let go. Those are set aside; stick–slip stays.
/// </summary>
internal static class BinNoise
{
    // Standard deviation over median absolute deviation of a normal distribution, and the variance of y₁ − (y₀ + y₂)/2 in that of y.
    private const double MedianToDeviation = 1.4826;
    private const double VarianceOfBend = 1.5;

    private const double NoisesAside = 8;
    private const double ShareAside = 0.05;
    private const int Neighbours = 2;

    /// <summary>Sets bins aside and returns the standard deviation of a bin.</summary>
    public static double SetAside(TraceBins bins)
    {
        int[] filled = ArrayPool<int>.Shared.Rent(bins.Count);
        double[] work = ArrayPool<double>.Shared.Rent(bins.Count);
        int count = 0;
        for (int k = 0; k < bins.Count; k++)
        {
            if (!double.IsNaN(bins.Torques[k])) filled[count++] = k;
        }

        double noise = Noise(bins, filled.AsSpan(0, count), work);
        SetAside(bins, filled.AsSpan(0, count), work, noise);
        ArrayPool<double>.Shared.Return(work);
        ArrayPool<int>.Shared.Return(filled);
        return noise;
    }

    private static double Noise(TraceBins bins, ReadOnlySpan<int> filled, double[] bends)
    {
        int count = filled.Length - 2;
        if (count < 1) return 0;
        for (int n = 0; n < count; n++)
        {
            double x0 = bins.Angles[filled[n]], x1 = bins.Angles[filled[n + 1]], x2 = bins.Angles[filled[n + 2]];
            double y0 = bins.Torques[filled[n]], y2 = bins.Torques[filled[n + 2]];
            double share = x2 > x0 ? (x1 - x0) / (x2 - x0) : 0.5;
            bends[n] = Math.Abs(bins.Torques[filled[n + 1]] - y0 - share * (y2 - y0));
        }

        Array.Sort(bends, 0, count);
        return MedianToDeviation / Math.Sqrt(VarianceOfBend) * bends[count / 2];
    }

    private static void SetAside(TraceBins bins, ReadOnlySpan<int> filled, double[] medians, double noise)
    {
        double highest = double.NegativeInfinity;
        for (int n = Neighbours; n < filled.Length - Neighbours; n++)
        {
            medians[n] = MedianOfFive(bins.Torques, filled.Slice(n - Neighbours, 2 * Neighbours + 1));
            highest = Math.Max(highest, medians[n]);
        }

        double limit = Math.Max(NoisesAside * noise, ShareAside * Math.Abs(highest));
        for (int n = Neighbours; n < filled.Length - Neighbours; n++)
        {
            int k = filled[n];
            if (Math.Abs(bins.Torques[k] - medians[n]) > limit) bins.Angles[k] = bins.Torques[k] = double.NaN;
        }
    }

    private static double MedianOfFive(ReadOnlySpan<double> torques, ReadOnlySpan<int> bins)
    {
        Span<double> sorted = stackalloc double[2 * Neighbours + 1];
        for (int n = 0; n < sorted.Length; n++)
        {
            double torque = torques[bins[n]];
            int at = n;
            for (; at > 0 && sorted[at - 1] > torque; at--) sorted[at] = sorted[at - 1];
            sorted[at] = torque;
        }

        return sorted[Neighbours];
    }
}
