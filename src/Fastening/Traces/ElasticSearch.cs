namespace Fastening;

/// <summary>
/// The elastic region of a smoothed curve. The greatest slope is looked for on the last rise to the peak, from half the peak torque on, so that
/// a start-up or a bump in the run-down is not taken for it. From there the region spreads both ways while the slope stays near: first within a
/// quarter of the greatest slope, whose noise is in it, then within 15 % of the line fitted to that. A dip shorter than half a window does not
/// end it.
/// </summary>
internal readonly ref struct ElasticSearch
{
    private const double ShareOfPeak = 0.5;
    private const double CoarseShare = 0.75;
    private const double FineShare = 0.15;
    private const double LeastRiseInScatters = 4;
    private const double LeastSlopeInErrors = 8;
    private const int LeastSamples = 5;
    private const int Half = SmoothedCurve.StepsPerWindow / 2;

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
        if (!(_curve.Level(peak) > 0)) return null;
        int steepest = Steepest(peak);
        if (steepest < 0) return null;
        double greatest = _curve.Slope(steepest);
        ElasticFit coarse = Fit(Spread(steepest, CoarseShare * greatest, double.PositiveInfinity));
        if (!(coarse.Line.Slope > 0)) return null;
        double slope = coarse.Line.Slope;
        ElasticFit fine = Fit(Spread(coarse.Middle, (1 - FineShare) * slope, (1 + FineShare) * slope));
        if (fine.LastSample - fine.FirstSample + 1 < LeastSamples) return null;
        fine = fine with { Scatter = fine.Line.ScatterOf(Samples(_angles, fine), Samples(_torques, fine)) };
        double rise = fine.Line.Slope * (fine.To - fine.From) * _curve.Step;
        bool isSignificant = fine.Line.Slope > 0
            && rise >= LeastRiseInScatters * fine.Scatter && fine.Line.Slope >= LeastSlopeInErrors * fine.Line.SlopeError;
        return isSignificant ? fine : null;
    }

    private int Steepest(int peak)
    {
        int begin = peak;
        while (begin > SmoothedCurve.First && !(_curve.Level(begin) <= ShareOfPeak * _curve.Level(peak))) begin--;
        int steepest = -1;
        for (int k = begin; k <= peak; k++)
        {
            if (_curve.Slope(k) > (steepest < 0 ? 0 : _curve.Slope(steepest))) steepest = k;
        }

        return steepest;
    }

    private (int From, int To) Spread(int seed, double least, double most)
    {
        int from = seed, to = seed;
        for (int k = seed; k >= SmoothedCurve.First && from - k <= Half; k--)
        {
            if (_curve.Slope(k) >= least && _curve.Slope(k) <= most) from = k;
        }

        for (int k = seed; k <= _curve.Last && k - to <= Half; k++)
        {
            if (_curve.Slope(k) >= least && _curve.Slope(k) <= most) to = k;
        }

        return (Math.Min(from, seed - Half / 2), Math.Max(to, seed + Half / 2));
    }

    /// <summary>The line through the means of the bins: a stretch where the tool dwelt weighs no more than another, and the cost does not grow with the samples.</summary>
    private ElasticFit Fit((int From, int To) steps)
    {
        int first = _curve.FirstSample(steps.From), last = Math.Max(_curve.FirstSample(steps.To) - 1, first);
        RobustLine line = RobustLine.Through(_curve.BinAngles(steps.From, steps.To), _curve.BinTorques(steps.From, steps.To));
        return new ElasticFit(steps.From, steps.To, first, last, line, 0);
    }

    private static ReadOnlySpan<double> Samples(ReadOnlySpan<double> column, in ElasticFit fit) =>
        column.Slice(fit.FirstSample, fit.LastSample - fit.FirstSample + 1);
}
