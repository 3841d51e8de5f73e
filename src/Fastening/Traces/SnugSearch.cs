namespace Fastening;

/// <summary>Snug at a threshold torque: the last rise through it before the peak, on the smoothed curve where it reaches, on the samples where not.</summary>
internal static class SnugSearch
{
    /// <summary>The step, with its fraction; null when the smoothed torque does not rise through the threshold before its peak.</summary>
    public static double? OnCurve(SmoothedCurve curve, int peak, double threshold)
    {
        if (!(curve.Level(peak) >= threshold)) return null;
        for (int k = peak - 1; k >= SmoothedCurve.First; k--)
        {
            double level = curve.Level(k), next = curve.Level(k + 1);
            if (level < threshold && next >= threshold) return k + (threshold - level) / (next - level);
        }

        return null;
    }

    /// <summary>The first sample of the last rise through the threshold before the peak; −1 when there is none.</summary>
    public static int OnSamples(ReadOnlySpan<double> torques, int peak, double threshold)
    {
        if (torques[peak] < threshold) return -1;
        for (int i = peak; i > 0; i--)
        {
            if (torques[i - 1] < threshold) return i;
        }

        return -1;
    }
}
