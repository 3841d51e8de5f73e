using Fastening.Internals;

namespace Fastening;

/// <summary>What makes the findings of a curve doubtful, and where: each doubt as a remark that names the findings.</summary>
internal readonly ref struct DoubtSearch
{
    private const TraceDoubts OfLine = TraceDoubts.Snug | TraceDoubts.Slope | TraceDoubts.Yield;
    private const double LeastShareOfRise = 1.0 / 3;
    private const double MostErrors = 1.0 / 40;
    private const double FallBefore = 0.03;
    private const double MostBefore = 0.7;
    private const double Steeper = 1.5;
    private const double SlopeLost = 0.25;
    private const double WindowsAbove = 0.2;
    private const double ErrorsOfEnd = 4;
    private const double BesideLine = 0.06;
    private const double SnugShare = 0.25;
    private const double Drift = 0.15;
    private const int LeastSamplesPerWindow = 4;
    private const int WindowsWithoutRegion = 10;
    private const int WindowsAway = 3;
    private const double ShareAway = 0.5;

    private readonly SmoothedCurve _curve;
    private readonly TraceOptions _options;

    public DoubtSearch(SmoothedCurve curve, TraceOptions options) => (_curve, _options) = (curve, options);

    /// <summary>The step at which the torque falls below half of what it had reached, from a step on, to the end or for three windows; −1 when it does not.</summary>
    public int FallsAway(int from)
    {
        double reached = 0;
        int begun = -1;
        for (int k = Math.Max(from, SmoothedCurve.First); k <= _curve.Last; k++)
        {
            double level = _curve.Level(k);
            if (double.IsNaN(level)) continue;
            reached = Math.Max(reached, level);
            if (level >= ShareAway * reached) begun = -1;
            else if (begun < 0) begun = k;
            if (begun >= 0 && k - begun >= WindowsAway * SmoothedCurve.StepsPerWindow) return begun;
        }

        return begun;
    }

    /// <summary>The step from which there are too few samples; −1 when there are enough.</summary>
    public int FewSamples(in ElasticFit? elastic)
    {
        int from = elastic?.From ?? Math.Max(_curve.Steps - WindowsWithoutRegion * SmoothedCurve.StepsPerWindow, 0), to = elastic?.To ?? _curve.Steps;
        return _curve.Bins.Filled(from, to) * SmoothedCurve.StepsPerWindow < LeastSamplesPerWindow * (to - from) ? from : -1;
    }

    /// <summary>The doubts about the line, and those that follow from it.</summary>
    public IEnumerable<(TraceRemarkKind Kind, int Step, TraceDoubts Doubts)> OfRegion(ElasticFit elastic, TraceRise rise, RunDownFit? runDown, YieldVerdict verdict, double? snug)
    {
        List<(TraceRemarkKind, int, TraceDoubts)> found = [];
        TraceDoubts ofLine = _options.SnugTorque is null ? OfLine : OfLine & ~TraceDoubts.Snug;
        if (elastic.Length < SmoothedCurve.StepsPerWindow || elastic.Slope * elastic.Length * _curve.Step < LeastShareOfRise * rise.Height)
        {
            found.Add((TraceRemarkKind.ShortRegion, elastic.From, ofLine));
        }

        if (elastic.Line.SlopeError > MostErrors * elastic.Slope) found.Add((TraceRemarkKind.UncertainSlope, elastic.From, ofLine));
        if (elastic.IsBent) found.Add((TraceRemarkKind.CurvedRise, elastic.From, ofLine));
        if (Broken(elastic, rise, runDown?.EndStep ?? 0) is >= 0 and int broken) found.Add((TraceRemarkKind.BrokenRise, broken, OfLine));
        if (OtherLine(elastic, rise, verdict) is >= 0 and int other) found.Add((TraceRemarkKind.OtherLine, other, TraceDoubts.Yield));
        if (Untold(elastic, rise, verdict) is >= 0 and int untold) found.Add((TraceRemarkKind.YieldUntold, untold, TraceDoubts.Yield));
        if (verdict.Onset is double onset && Held((int)onset) is >= 0 and int held) found.Add((TraceRemarkKind.HeldTorque, held, TraceDoubts.Yield));
        if (_options.SnugTorque is null && snug is double step && rise.ShareAt(_curve.Level((int)step)) > SnugShare) found.Add((TraceRemarkKind.SnugOnRise, (int)step, TraceDoubts.Snug));
        if (runDown is RunDownFit run && (run.Drift > Drift * rise.Height || run.IsRising))
        {
            found.Add((TraceRemarkKind.DriftingRunDown, run.EndStep, (ofLine & TraceDoubts.Snug) | TraceDoubts.RunningTorque));
        }

        return found;
    }

    private int Broken(in ElasticFit elastic, in TraceRise rise, int from)
    {
        int fall = TraceRise.FirstFall(_curve, from, elastic.From, rise.Significant(FallBefore));
        if (fall >= 0) return fall;
        if (rise.ShareAt(_curve.Bins.Mean(elastic.From - SmoothedCurve.Quarter, elastic.From)) > MostBefore) return elastic.From;
        int steep = 0, steepest = -1;
        for (int k = from; k < elastic.From; k++)
        {
            double slope = _curve.Slope(k);
            steep = slope > Steeper * elastic.Slope ? steep + 1 : 0;
            if (steep >= SmoothedCurve.Quarter) return k;
            if (slope > (steepest < 0 ? 0 : _curve.Slope(steepest))) steepest = k;
            if (steepest >= 0 && _curve.Slope(steepest) - slope > SlopeLost * elastic.Slope && IsAbove(steepest, elastic)) return k;
        }

        return -1;
    }

    /// <summary>Whether the curve lies above the line by more than a toe or noise can make it.</summary>
    private bool IsAbove(int step, in ElasticFit elastic) => _curve.Level(step) - elastic.Line.At(_curve.AngleAt(step))
        > Math.Max(WindowsAbove * elastic.Slope * _curve.Window, TraceRise.NoisesOfFall * _curve.Noise);

    private int OtherLine(in ElasticFit elastic, in TraceRise rise, YieldVerdict verdict)
    {
        double beside = rise.Significant(BesideLine), least = _options.SlopeShare * elastic.Slope;
        int until = verdict.Onset is double onset ? (int)onset + SmoothedCurve.StepsPerWindow : _curve.Steps;
        int fall = TraceRise.FirstFall(_curve, elastic.From, until, beside);
        if (fall >= 0) return fall;
        int steep = 0;
        for (int k = elastic.To; k <= _curve.Last; k++)
        {
            if (double.IsNaN(_curve.Slope(k))) continue;
            bool isBeside = _curve.Slope(k) > least && Math.Abs(_curve.Level(k) - elastic.Line.At(_curve.AngleAt(k))) > beside;
            steep = isBeside ? steep + 1 : 0;
            if (steep >= SmoothedCurve.StepsPerWindow) return k;
        }

        return -1;
    }

    /// <summary>The step from which, past a yield, the torque is the very same over a quarter of a window: no fastener and no sensor within its range does that. −1: none.</summary>
    private int Held(int onset)
    {
        ReadOnlySpan<double> torques = _curve.Bins.Torques;
        int same = 0;
        for (int k = onset + 1; k < Math.Min(_curve.Steps, torques.Length); k++)
        {
            same = Math.Abs(torques[k] - torques[k - 1]) <= Tolerance.Widening * torques[k] ? same + 1 : 0;
            if (same >= SmoothedCurve.Quarter) return k - same;
        }

        return -1;
    }

    private int Untold(in ElasticFit elastic, in TraceRise rise, YieldVerdict verdict)
    {
        if (verdict.Onset is not null) return -1;
        if (verdict.Untold is double from) return (int)from;
        int end = _curve.Steps - SmoothedCurve.Quarter;
        double below = elastic.Line.At(_curve.AngleAt(end + SmoothedCurve.Quarter / 2)) - _curve.Bins.Mean(end, _curve.Steps);
        return below > rise.Significant(BesideLine) || EndsFlat(elastic) ? end : -1;
    }

    /// <summary>Whether the last half window, which the smoothed slope does not reach, rises less than the share of yield.</summary>
    private bool EndsFlat(in ElasticFit elastic)
    {
        int from = Math.Max(_curve.Steps - SmoothedCurve.Half, 0), count = _curve.Steps - from;
        RobustLine line = RobustLine.Through(_curve.Bins.Angles.Slice(from, count), _curve.Bins.Torques.Slice(from, count));
        return line.Slope < _options.SlopeShare * elastic.Slope && elastic.Slope - line.Slope > ErrorsOfEnd * line.SlopeError;
    }
}
