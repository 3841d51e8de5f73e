using System.Buffers;

namespace Fastening;

/// <summary>
/// The elastic region of a smoothed curve: where most new torque is gained at a steady slope. From every step before the peak a stretch spreads
/// while the slope stays near; that which rises most above the highest torque shortly before it is the seed. From there the region spreads along
/// its fitted line. A gap, such as a dip or a change of speed, is crossed only when the curve comes back to the same line behind it.
/// </summary>
internal readonly ref struct ElasticSearch
{
    private const double CoarseShare = 0.25;
    private const double FineShare = 0.15;
    private const double LeastShareOfCoarse = 0.5;
    private const double LeastRiseInScatters = 4;
    private const double LeastSlopeInErrors = 8;
    private const double MostScatters = 5;
    private const double LikeSlope = 0.02;
    private const int LeastSamples = 5;
    private const int Rounds = 2;
    private const int WindowsBefore = 3;
    private const int WindowsOfGap = 3;

    private readonly SmoothedCurve _curve;
    private readonly ReadOnlySpan<double> _angles;
    private readonly ReadOnlySpan<double> _torques;

    public ElasticSearch(SmoothedCurve curve, ReadOnlySpan<double> angles, ReadOnlySpan<double> torques)
    {
        _curve = curve;
        _angles = angles;
        _torques = torques;
    }

    /// <summary>The region, or null when no stretch rises significantly along a line.</summary>
    public ElasticFit? Find(int peak)
    {
        if (!(_curve.Level(peak) > 0) || Seed(peak) is not (int from, int to)) return null;
        ElasticFit coarse = Fit(from, to);
        ElasticFit fit = coarse;
        for (int round = 0; round < Rounds && fit.Slope > 0; round++)
        {
            (from, to) = Along(fit);
            fit = Fit(from, to);
        }

        if (!(fit.Slope > 0) || fit.Length < LeastShareOfCoarse * coarse.Length) fit = coarse with { IsBent = true };
        if (fit.LastSample - fit.FirstSample + 1 < LeastSamples) return null;
        fit = fit with { Scatter = ScatterOf(fit) };
        double rise = fit.Slope * fit.Length * _curve.Step;
        bool isSignificant = fit.Slope > 0 && rise >= LeastRiseInScatters * fit.Scatter && fit.Slope >= LeastSlopeInErrors * fit.Line.SlopeError;
        return isSignificant ? fit : null;
    }

    private (int From, int To)? Seed(int peak)
    {
        (int From, int To)? best = null;
        double most = 0, slopeBefore = double.NaN;
        int until = -1;
        for (int k = SmoothedCurve.First; k <= peak; k++)
        {
            double slope = _curve.Slope(k);
            if (!(slope > 0) || (k <= until && Math.Abs(slope - slopeBefore) <= LikeSlope * slopeBefore)) continue;
            (int from, int to) = Steady(k, slope);
            (until, slopeBefore) = (to, slope);
            double gained = _curve.Level(to) - HighestBefore(from);
            if (gained > most) (best, most) = ((from, to), gained);
        }

        return best is (int first, int last) ? (Math.Min(first, (first + last - SmoothedCurve.Half) / 2), Math.Max(last, (first + last + SmoothedCurve.Half) / 2)) : null;
    }

    /// <summary>The stretch about a step in which the slope stays within a quarter of that of the step, gaps of half a window allowed.</summary>
    private (int From, int To) Steady(int seed, double slope)
    {
        int from = seed, to = seed;
        for (int k = seed; k >= SmoothedCurve.First && from - k <= SmoothedCurve.Half; k--)
        {
            if (Math.Abs(_curve.Slope(k) - slope) <= CoarseShare * slope) from = k;
        }

        for (int k = seed; k <= _curve.Last && k - to <= SmoothedCurve.Half; k++)
        {
            if (Math.Abs(_curve.Slope(k) - slope) <= CoarseShare * slope) to = k;
        }

        return (from, to);
    }

    private double HighestBefore(int step)
    {
        double highest = _curve.Level(step);
        for (int k = Math.Max(step - WindowsBefore * SmoothedCurve.StepsPerWindow, SmoothedCurve.First); k < step; k++)
        {
            if (_curve.Level(k) > highest) highest = _curve.Level(k);
        }

        return highest;
    }

    /// <summary>The stretch along a line: from its middle both ways while the slope fits; past a gap only where slope and level both fit.</summary>
    private (int From, int To) Along(in ElasticFit fit)
    {
        int seed = fit.Middle;
        for (int k = 0; k <= fit.Length / 2 && !FitsSlope(seed, fit); k++) seed = FitsSlope(fit.Middle - k, fit) ? fit.Middle - k : fit.Middle + k;
        if (!FitsSlope(seed, fit)) return (fit.Middle, fit.Middle);
        const int MostGap = WindowsOfGap * SmoothedCurve.StepsPerWindow;
        int from = seed, to = seed;
        for (int k = seed - 1; k >= SmoothedCurve.First && from - k <= MostGap; k--)
        {
            if (FitsSlope(k, fit) && (from - k <= SmoothedCurve.Half || FitsLevel(k, fit))) from = k;
        }

        for (int k = seed + 1; k <= _curve.Last && k - to <= MostGap; k++)
        {
            if (FitsSlope(k, fit) && (k - to <= SmoothedCurve.Half || FitsLevel(k, fit))) to = k;
        }

        return (Math.Min(from, seed - SmoothedCurve.Quarter), Math.Max(to, seed + SmoothedCurve.Quarter));
    }

    private bool FitsSlope(int step, in ElasticFit fit) => Math.Abs(_curve.Slope(step) - fit.Slope) <= FineShare * fit.Slope;

    private bool FitsLevel(int step, in ElasticFit fit) =>
        Math.Abs(_curve.Level(step) - fit.Line.At(_curve.AngleAt(step))) <= FineShare * fit.Slope * _curve.Window / 2;

    /// <summary>The line through the means of the bins, without those far off: a stretch where the tool dwelt weighs no more than another, and the cost does not grow with the samples.</summary>
    private ElasticFit Fit(int from, int to)
    {
        int first = _curve.FirstSample(from), last = Math.Max(_curve.FirstSample(to) - 1, first), count = to - from;
        ReadOnlySpan<double> torques = _curve.Bins.Torques.Slice(from, count), all = _curve.Bins.Angles.Slice(from, count);
        RobustLine line = RobustLine.Through(all, torques);
        double far = MostScatters * line.ScatterOf(all, torques);
        double[] rented = ArrayPool<double>.Shared.Rent(count);
        Span<double> near = rented.AsSpan(0, count);
        for (int k = 0; k < count; k++) near[k] = Math.Abs(torques[k] - line.At(all[k])) > far ? double.NaN : all[k];
        line = RobustLine.Through(near, torques).WithNeighboursAlike(near, torques);
        ArrayPool<double>.Shared.Return(rented);
        return new ElasticFit(from, to, first, last, line, 0, false);
    }

    /// <summary>Scatter of the samples that turned the fastener on.</summary>
    private double ScatterOf(in ElasticFit fit) => fit.Line.ScatterOfTurning(
        _angles.Slice(fit.FirstSample, fit.LastSample - fit.FirstSample + 1), _torques.Slice(fit.FirstSample, fit.LastSample - fit.FirstSample + 1));
}
