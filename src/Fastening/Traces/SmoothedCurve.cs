using System.Buffers;

namespace Fastening;

/// <summary>
/// Torque and slope of a trace against the furthest angle reached, at steps of a sixteenth of the smoothing window: at each step the line of
/// least squares over one window, centred there, in which every bin that holds samples weighs alike, so that a pause of the tool does not count
/// for more than the rotation it took. One pass sorts the samples into bins of one step; whatever follows works on
/// bins, whose number depends on the rotation and the window, not on the number of samples. Samples that fell back by more than half a window
/// are no part of the curve. Of a rotation longer than
/// <see cref="MostWindows"/> windows the last part is kept. The buffers are rented.
/// </summary>
internal sealed class SmoothedCurve : IDisposable
{
    public const int StepsPerWindow = 16;
    public const int MostWindows = 1024;

    private const int Half = StepsPerWindow / 2;
    private const int LeastBins = 3;
    private const double LeastRelativeVariance = 0.01;
    private const int StepsBetweenFreshSums = 64;

    private readonly double[] _slopes;
    private readonly double[] _levels;
    private readonly double[] _binAngles;
    private readonly double[] _binTorques;
    private readonly int[] _firstSamples;
    private readonly double _origin;

    private SmoothedCurve(double origin, double step, int bins)
    {
        (_origin, Step, Bins) = (origin, step, bins);
        _slopes = ArrayPool<double>.Shared.Rent(bins + 1);
        _levels = ArrayPool<double>.Shared.Rent(bins + 1);
        _binAngles = ArrayPool<double>.Shared.Rent(bins);
        _binTorques = ArrayPool<double>.Shared.Rent(bins);
        _firstSamples = ArrayPool<int>.Shared.Rent(bins + 1);
    }

    /// <summary>Degrees from one step to the next.</summary>
    public double Step { get; }

    /// <summary>Number of bins.</summary>
    public int Bins { get; }

    /// <summary>The first step with a whole window about it.</summary>
    public const int First = Half;

    /// <summary>The last step with a whole window about it; less than <see cref="First"/> when the rotation is shorter than the window.</summary>
    public int Last => Bins - Half;

    /// <summary>The curve of the samples up to shut-off; null when the angle does not advance.</summary>
    public static SmoothedCurve? Of(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, int shutOff, double window)
    {
        double step = window / StepsPerWindow;
        double end = angles[shutOff];
        double origin = Math.Max(angles[0], end - MostWindows * window);
        if (!(end > origin)) return null;
        var curve = new SmoothedCurve(origin, step, (int)Math.Ceiling((end - origin) / step));
        LineSums[] sums = ArrayPool<LineSums>.Shared.Rent(curve.Bins);
        curve.Sort(angles.Slice(0, shutOff + 1), torques, sums);
        curve.Average(sums);
        curve.Smooth(sums);
        ArrayPool<LineSums>.Shared.Return(sums);
        return curve;
    }

    public double AngleAt(double step) => _origin + step * Step;

    /// <summary>The last step at or before an angle.</summary>
    public int StepAt(double angle) => (int)Math.Min(Math.Max(Math.Floor((angle - _origin) / Step), 0), Bins);

    /// <summary>Local slope in N·m/°; NaN where the samples are too few to tell.</summary>
    public double Slope(int step) => _slopes[step];

    /// <summary>Smoothed torque; NaN where the samples are too few to tell.</summary>
    public double Level(int step) => _levels[step];

    /// <summary>Index of the first sample at or past a step.</summary>
    public int FirstSample(int step) => _firstSamples[step];

    /// <summary>The mean angle of each bin from one step to another; NaN for a bin without samples.</summary>
    public ReadOnlySpan<double> BinAngles(int from, int to) => _binAngles.AsSpan(from, to - from);

    /// <summary>The mean torque of each bin from one step to another; NaN for a bin without samples.</summary>
    public ReadOnlySpan<double> BinTorques(int from, int to) => _binTorques.AsSpan(from, to - from);

    /// <summary>The first sample whose furthest angle is at or past an angle.</summary>
    public int SampleAt(double angle, ReadOnlySpan<double> angles)
    {
        int index = _firstSamples[StepAt(angle)];
        while (index < angles.Length - 1 && angles[index] < angle) index++;
        return index;
    }

    public void Dispose()
    {
        ArrayPool<double>.Shared.Return(_slopes);
        ArrayPool<double>.Shared.Return(_levels);
        ArrayPool<double>.Shared.Return(_binAngles);
        ArrayPool<double>.Shared.Return(_binTorques);
        ArrayPool<int>.Shared.Return(_firstSamples);
    }

    private void Sort(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, LineSums[] sums)
    {
        Array.Clear(sums, 0, Bins);
        double perStep = 1 / Step, furthest = double.NegativeInfinity;
        int reached = -1;
        double centre = 0;
        for (int i = 0; i < angles.Length; i++)
        {
            if (angles[i] > furthest)
            {
                furthest = angles[i];
                if (furthest < _origin) continue;
                int bin = Math.Min((int)((furthest - _origin) * perStep), Bins - 1);
                while (reached < bin) _firstSamples[++reached] = i;
                centre = AngleAt(bin + 0.5);
            }

            if (reached >= 0 && furthest - angles[i] <= Half * Step) sums[reached].Add(angles[i] - centre, torques[i]);
        }

        while (reached < Bins) _firstSamples[++reached] = angles.Length - 1;
    }

    /// <summary>The mean of each bin; from here on a bin weighs as one.</summary>
    private void Average(LineSums[] sums)
    {
        for (int k = 0; k < Bins; k++)
        {
            sums[k] = sums[k].OfOne();
            (_binAngles[k], _binTorques[k]) = sums[k].Count > 0 ? (AngleAt(k + 0.5) + sums[k].MeanX, sums[k].Mean) : (double.NaN, double.NaN);
        }
    }

    /// <summary>The window moves by whole bins: the newest comes in, the oldest goes out; now and then it is summed anew, so that rounding does not gather.</summary>
    private void Smooth(LineSums[] sums)
    {
        double leastVariance = LeastRelativeVariance * Step * Step * StepsPerWindow * StepsPerWindow;
        for (int k = 0; k <= Bins; k++) _slopes[k] = _levels[k] = double.NaN;
        LineSums window = default;
        for (int k = First; k <= Last; k++)
        {
            if ((k - First) % StepsBetweenFreshSums == 0) window = Fresh(sums, k);
            else window = Moved(window, sums, k);
            if (window.Count < LeastBins - 0.5) continue;
            (_slopes[k], _levels[k]) = window.Line(leastVariance);
        }
    }

    private LineSums Fresh(LineSums[] sums, int k)
    {
        LineSums window = default;
        for (int j = -Half; j < Half; j++) window.Add(sums[k + j], (j + 0.5) * Step);
        return window;
    }

    private LineSums Moved(in LineSums before, LineSums[] sums, int k)
    {
        LineSums window = before.FromOrigin(Step);
        window.Remove(sums[k - Half - 1], (-Half - 0.5) * Step);
        window.Add(sums[k + Half - 1], (Half - 0.5) * Step);
        return window;
    }
}
