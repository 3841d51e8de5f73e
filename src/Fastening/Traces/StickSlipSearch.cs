namespace Fastening;

/// <summary>
/// Stick–slip: within one window, at least three swings of the torque about the local line, each as large as the threshold, in the median of
/// three samples that turn the fastener on: spikes and a tool that lets go do not swing. Windows overlap by half, so that a burst is whole in
/// one of them. A single drop or a knee makes fewer swings.
/// </summary>
internal static class StickSlipSearch
{
    private const int LeastSwings = 3;

    /// <summary>The sample that completes the third swing; −1 when there is none.</summary>
    public static int Find(SmoothedCurve curve, ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double threshold)
    {
        for (int k = SmoothedCurve.First; k <= curve.Last; k += SmoothedCurve.Half)
        {
            if (double.IsNaN(curve.Slope(k))) continue;
            int found = InWindow(curve, k, angles, torques, threshold);
            if (found >= 0) return found;
        }

        return -1;
    }

    private static int InWindow(SmoothedCurve curve, int step, ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double threshold)
    {
        double level = curve.Level(step), slope = curve.Slope(step), centre = curve.AngleAt(step), furthest = double.NegativeInfinity;
        double low = double.PositiveInfinity, high = double.NegativeInfinity, older = double.NaN, old = double.NaN;
        int swings = 0;
        for (int i = curve.FirstSample(step - SmoothedCurve.Half); i < curve.FirstSample(step + SmoothedCurve.Half); i++)
        {
            furthest = Math.Max(furthest, angles[i]);
            if (furthest - angles[i] > curve.Step) continue;
            double now = torques[i] - level - slope * (angles[i] - centre), middle = Median(older, old, now);
            (older, old) = (old, now);
            if (double.IsNaN(middle)) continue;
            low = Math.Min(low, middle);
            high = Math.Max(high, middle);
            if (high - low < threshold) continue;
            if (++swings == LeastSwings) return i;
            (low, high) = (middle, middle);
        }

        return -1;
    }

    private static double Median(double a, double b, double c) => Math.Max(Math.Min(a, b), Math.Min(Math.Max(a, b), c));
}
