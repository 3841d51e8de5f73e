namespace Fastening;

/// <summary>
/// Snug at a threshold torque. On the smoothed curve it is that rise through it before the peak that lies nearest to where the elastic line has
/// it, and the last one without a line; on the samples the last rise before the peak.
/// </summary>
internal static class SnugSearch
{
    /// <summary>The step, with its fraction; null when the smoothed torque does not rise through the threshold before its peak.</summary>
    public static double? OnCurve(SmoothedCurve curve, int peak, double threshold, in ElasticFit? elastic)
    {
        double? found = null;
        double place = elastic is ElasticFit fit ? fit.Line.PlaceOf(threshold) : double.PositiveInfinity, nearest = double.PositiveInfinity;
        for (int k = peak - 1; k >= SmoothedCurve.First; k--)
        {
            double level = curve.Level(k), next = curve.Level(k + 1);
            if (!(level < threshold && next >= threshold)) continue;
            double step = k + (threshold - level) / (next - level), distance = Math.Abs(curve.AngleAt(step) - place);
            if (found is null || distance < nearest) (found, nearest) = (step, distance);
        }

        return found;
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
