using System.Buffers;

namespace Fastening;

/// <summary>
/// Torque and slope of a trace against the furthest angle reached, at steps of a sixteenth of the smoothing window: at each step the line of
/// least squares over one window, centred there, in which every bin that holds samples weighs alike, so that a pause of the tool does not count
/// for more than the rotation it took. What follows works on bins, whose number depends on the rotation and the window, not on the number of
/// samples. Of a rotation longer than <see cref="MostWindows"/> windows the last part is kept. The buffers are rented.
/// </summary>
internal sealed class SmoothedCurve : IDisposable
{
    public const int StepsPerWindow = 16;
    public const int Half = StepsPerWindow / 2;
    public const int Quarter = StepsPerWindow / 4;
    public const int MostWindows = 1024;

    private const int LeastBins = 3;
    private const double LeastRelativeVariance = 0.01;
    private const int StepsBetweenFreshSums = 64;

    private readonly double[] _slopes;
    private readonly double[] _levels;

    private SmoothedCurve(TraceBins bins)
    {
        Bins = bins;
        Noise = BinNoise.SetAside(bins);
        _slopes = ArrayPool<double>.Shared.Rent(Steps + 1);
        _levels = ArrayPool<double>.Shared.Rent(Steps + 1);
    }

    /// <summary>The means of the samples; those far from the adjacent ones are left out.</summary>
    public TraceBins Bins { get; }

    /// <summary>Standard deviation of the mean of a bin about the adjacent bins.</summary>
    public double Noise { get; }

    /// <summary>Number of steps, as many as bins.</summary>
    public int Steps => Bins.Count;

    /// <summary>Degrees from one step to the next.</summary>
    public double Step => Bins.Step;

    /// <summary>The smoothing window in degrees.</summary>
    public double Window => StepsPerWindow * Step;

    /// <summary>First step with a whole window about it.</summary>
    public static int First => Half;

    /// <summary>Last step with a whole window about it; less than <see cref="First"/> when the rotation is shorter than the window.</summary>
    public int Last => Steps - Half;

    /// <summary>The curve of the samples up to shut-off; null when the angle does not advance.</summary>
    public static SmoothedCurve? Of(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, int shutOff, double window)
    {
        double end = angles[shutOff], first = LoneAngle.IsAt(angles, 0, window / 2) ? angles[1] : angles[0];
        double origin = Math.Max(first, end - MostWindows * window);
        if (!(end > origin)) return null;
        var curve = new SmoothedCurve(TraceBins.Of(angles.Slice(0, shutOff + 1), torques, origin, end, window / StepsPerWindow, window / 2));
        curve.Smooth();
        return curve;
    }

    public double AngleAt(double step) => Bins.AngleAt(step);

    /// <summary>The last step at or before an angle.</summary>
    public int StepAt(double angle) => Bins.At(angle);

    /// <summary>Local slope in N·m/°; NaN where the samples are too few.</summary>
    public double Slope(int step) => _slopes[step];

    /// <summary>Smoothed torque; NaN where the samples are too few.</summary>
    public double Level(int step) => _levels[step];

    /// <summary>Index of the first sample at or past a step.</summary>
    public int FirstSample(int step) => Bins.FirstSample(step);

    /// <summary>The step of the highest smoothed torque; −1 when there is none.</summary>
    public int Highest()
    {
        int best = -1;
        for (int k = First; k <= Last; k++)
        {
            if (!double.IsNaN(_slopes[k]) && (best < 0 || _levels[k] > _levels[best])) best = k;
        }

        return best;
    }

    /// <summary>The first sample whose furthest angle is at or past an angle.</summary>
    public int SampleAt(double angle, ReadOnlySpan<double> angles)
    {
        int index = FirstSample(StepAt(angle));
        while (index < angles.Length - 1 && angles[index] < angle) index++;
        return index;
    }

    public void Dispose()
    {
        ArrayPool<double>.Shared.Return(_slopes);
        ArrayPool<double>.Shared.Return(_levels);
        Bins.Dispose();
    }

    /// <summary>The window moves by whole bins: the newest comes in, the oldest goes out; it is summed afresh periodically to limit rounding error.</summary>
    private void Smooth()
    {
        double leastVariance = LeastRelativeVariance * Window * Window;
        for (int k = 0; k <= Steps; k++) _slopes[k] = _levels[k] = double.NaN;
        LineSums window = default;
        for (int k = First; k <= Last; k++)
        {
            if ((k - First) % StepsBetweenFreshSums == 0) window = Fresh(k);
            else window = Moved(window, k);
            if (window.Count < LeastBins - 0.5) continue;
            (_slopes[k], _levels[k]) = window.Line(leastVariance);
        }
    }

    private LineSums Fresh(int k)
    {
        LineSums window = default;
        for (int j = k - Half; j < k + Half; j++) Add(ref window, j, k, 1);
        return window;
    }

    private LineSums Moved(in LineSums before, int k)
    {
        LineSums window = before.FromOrigin(Step);
        Add(ref window, k - Half - 1, k, -1);
        Add(ref window, k + Half - 1, k, 1);
        return window;
    }

    private void Add(ref LineSums window, int bin, int step, double weight)
    {
        if (!double.IsNaN(Bins.Torques[bin])) window.Add(Bins.Angles[bin] - AngleAt(step), Bins.Torques[bin], weight);
    }
}
