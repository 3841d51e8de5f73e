namespace Fastening;

/// <summary>
/// Stick–slip: within one window, at least three swings of the torque about the local line, each as large as the threshold. Windows overlap by
/// half, so that a burst is whole in one of them. A single drop, a knee or a spike makes fewer swings.
/// </summary>
internal static class StickSlipSearch
{
    private const int LeastSwings = 3;
    private const int Half = SmoothedCurve.StepsPerWindow / 2;

    /// <summary>The sample that completes the third swing; −1 when there is none.</summary>
    public static int Find(SmoothedCurve curve, ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double threshold)
    {
        for (int k = SmoothedCurve.First; k <= curve.Last; k += Half)
        {
            if (double.IsNaN(curve.Slope(k))) continue;
            int found = InWindow(curve, k, angles, torques, threshold);
            if (found >= 0) return found;
        }

        return -1;
    }

    private static int InWindow(SmoothedCurve curve, int step, ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double threshold)
    {
        double level = curve.Level(step), slope = curve.Slope(step), centre = curve.AngleAt(step);
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        int swings = 0;
        for (int i = curve.FirstSample(step - Half); i < curve.FirstSample(step + Half); i++)
        {
            double residual = torques[i] - level - slope * (angles[i] - centre);
            low = Math.Min(low, residual);
            high = Math.Max(high, residual);
            if (high - low < threshold) continue;
            if (++swings == LeastSwings) return i;
            (low, high) = (residual, residual);
        }

        return -1;
    }
}
