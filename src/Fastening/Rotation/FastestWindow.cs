namespace Fastening.Internals;

/// <summary>
/// The highest mean rate over any window of one length. The rotation is linear between samples, so the mean over a sliding window has its
/// extremes where the window begins or ends at a sample; both are tried. A record no longer than the window gives one value, over all of it.
/// Two passes, two pointers, no allocation.
/// </summary>
internal readonly record struct FastestWindow(double Rate, double EndSeconds)
{
    public static FastestWindow Of(ReadOnlySpan<double> times, ReadOnlySpan<double> angles, double window)
    {
        double first = times[0];
        double last = times[times.Length - 1];
        if (window >= last - first) return new FastestWindow((angles[angles.Length - 1] - angles[0]) / (last - first), last);

        var best = new FastestWindow(double.NegativeInfinity, last);
        int behind = 0;
        for (int i = 0; i < times.Length; i++)
        {
            double begin = times[i] - window;
            if (begin < first) continue;
            best = best.OrFaster((angles[i] - Interpolate(times, angles, begin, ref behind)) / window, times[i]);
        }

        int ahead = 0;
        for (int j = 0; j < times.Length; j++)
        {
            double end = times[j] + window;
            if (end > last) break;
            best = best.OrFaster((Interpolate(times, angles, end, ref ahead) - angles[j]) / window, end);
        }

        return best;
    }

    private FastestWindow OrFaster(double rate, double end) => rate > Rate ? new FastestWindow(rate, end) : this;

    /// <summary>The angle at a time; the index only moves forward. Between repeated time stamps it takes the later sample.</summary>
    private static double Interpolate(ReadOnlySpan<double> times, ReadOnlySpan<double> angles, double time, ref int index)
    {
        while (index < times.Length - 2 && times[index + 1] <= time) index++;
        double step = times[index + 1] - times[index];
        if (step <= 0) return angles[index + 1];
        double share = Math.Min(Math.Max((time - times[index]) / step, 0), 1);
        return angles[index] + share * (angles[index + 1] - angles[index]);
    }
}
