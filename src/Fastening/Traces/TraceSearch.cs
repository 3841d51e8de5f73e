namespace Fastening;

/// <summary>Reads one trace: which finding follows from which. A fixed number of passes over the samples; all else on the smoothed curve.</summary>
internal readonly ref struct TraceSearch
{
    private const double ScattersBelowPeak = 3;

    private readonly TraceOptions _options;
    private readonly SampleClock _clock;
    private readonly ReadOnlySpan<double> _angles;
    private readonly ReadOnlySpan<double> _torques;
    private readonly int _shutOff;

    private TraceSearch(TighteningTrace trace, TraceOptions options)
    {
        _options = options;
        _clock = trace.Clock;
        _angles = trace.AnglesDegrees.Span;
        _torques = trace.TorquesNewtonMeters.Span;
        _shutOff = _angles.IsEmpty ? ShutOff.Of(_torques) : ShutOff.Of(_angles, _torques, options.Window);
    }

    public static TraceAnalysis Run(TighteningTrace trace, TraceOptions options)
    {
        var search = new TraceSearch(trace, options);
        var found = new TraceFindings
        {
            Irregularities = TraceIrregularities.Of(search._angles, search._clock, trace.Count, search._shutOff),
            Peak = search.Sample(ShutOff.FirstHighest(search._torques, trace.Count)),
            ShutOff = search.Sample(search._shutOff),
            Final = search.Sample(trace.Count - 1),
        };
        if (trace.HasAngles) search.ReadCurve(found);
        found.Snug ??= search.SnugOnSamples();
        return new TraceAnalysis(trace, options, found);
    }

    private void ReadCurve(TraceFindings found)
    {
        (found.Energy, int reversed) = Energy();
        if (reversed >= 0) found.Remark(TraceRemarkKind.Reversal, Sample(reversed));
        using SmoothedCurve? curve = SmoothedCurve.Of(_angles, _torques, _shutOff, _options.Window);
        int peak = curve is null ? -1 : Highest(curve);
        ElasticFit? elastic = peak < 0 ? null : new ElasticSearch(curve!, _angles, _torques).Find(peak);
        if (elastic is null) found.Remark(TraceRemarkKind.NoElasticRegion, Sample(_shutOff));
        else ReadElastic(curve!, elastic.Value, found);
        if (peak < 0) return;
        if (_options.SnugTorque is double threshold && SnugSearch.OnCurve(curve!, peak, threshold) is double snug) found.Snug = OnCurve(curve!, snug);
        RemarkOnCurve(curve!, peak, elastic?.Scatter ?? 0, found);
    }

    private void ReadElastic(SmoothedCurve curve, in ElasticFit elastic, TraceFindings found)
    {
        found.Elastic = new ElasticRegion(Sample(elastic.FirstSample), Sample(elastic.LastSample), elastic);
        if (RunDownSearch.Find(curve, elastic, _angles) is (int from, int to, double running))
        {
            int highest = from + ShutOff.FirstHighest(_torques.Slice(from), to - from);
            found.RunDown = new RunDown(Sample(from), Sample(to - 1), running, _torques[highest]);
        }
        else
        {
            found.Remark(TraceRemarkKind.NoRunDown, Sample(elastic.FirstSample));
        }

        if (_options.SnugTorque is null && (_options.RunningTorque ?? found.RunDown?.TorqueSi) is double torque) found.Snug = Projected(curve, elastic.Line, torque);
        if (YieldSearch.BySlope(curve, elastic, _options.SlopeShare) is double onset) found.YieldOnset = OnCurve(curve, onset);
        if (_options.YieldOffset is double offset && YieldSearch.ByOffset(curve, elastic, offset) is double past) found.OffsetYield = OnCurve(curve, past);
    }

    private TracePoint? Projected(SmoothedCurve curve, in RobustLine line, double torque)
    {
        double angle = line.PlaceOf(torque);
        if (!(angle >= _angles[0] && angle <= _angles[_shutOff])) return null;
        int index = curve.SampleAt(angle, _angles);
        return new TracePoint(index, _clock[index], angle, torque);
    }

    private TracePoint? SnugOnSamples()
    {
        if (_options.SnugTorque is not double threshold) return null;
        int index = SnugSearch.OnSamples(_torques, ShutOff.FirstHighest(_torques, _shutOff + 1), threshold);
        return index < 0 ? null : Sample(index);
    }

    private void RemarkOnCurve(SmoothedCurve curve, int peak, double scatter, TraceFindings found)
    {
        if (_options.StickSlip is double swing && StickSlipSearch.Find(curve, _angles, _torques, swing) is >= 0 and int slipped)
        {
            found.Remark(TraceRemarkKind.StickSlip, Sample(slipped));
        }

        if (curve.Last - peak > SmoothedCurve.StepsPerWindow / 2 && curve.Level(curve.Last) < curve.Level(peak) - ScattersBelowPeak * scatter)
        {
            found.Remark(TraceRemarkKind.EarlyPeak, OnCurve(curve, peak));
        }

        if (_options.TorqueDrop is double drop && FirstDrop(curve, drop) is >= 0 and int dropped) found.Remark(TraceRemarkKind.TorqueDrop, OnCurve(curve, dropped));
    }

    private static int FirstDrop(SmoothedCurve curve, double drop)
    {
        double highest = double.NegativeInfinity;
        for (int k = SmoothedCurve.First; k <= curve.Last; k++)
        {
            double level = curve.Level(k);
            if (level > highest) highest = level;
            else if (highest - level > drop) return k;
        }

        return -1;
    }

    private static int Highest(SmoothedCurve curve)
    {
        int best = -1;
        for (int k = SmoothedCurve.First; k <= curve.Last; k++)
        {
            if (!double.IsNaN(curve.Slope(k)) && (best < 0 || curve.Level(k) > curve.Level(best))) best = k;
        }

        return best;
    }

    /// <summary>∫ M dθ up to shut-off by trapezoids, in N·m·°, and the first sample that fell back too far, or −1.</summary>
    private (double Energy, int Reversed) Energy()
    {
        double energy = 0, furthest = _angles[0], limit = _options.Reversal ?? double.PositiveInfinity;
        int reversed = -1;
        for (int i = 1; i <= _shutOff; i++)
        {
            energy += 0.5 * (_torques[i] + _torques[i - 1]) * (_angles[i] - _angles[i - 1]);
            furthest = Math.Max(furthest, _angles[i]);
            if (reversed < 0 && furthest - _angles[i] > limit) reversed = i;
        }

        return (energy, reversed);
    }

    private TracePoint OnCurve(SmoothedCurve curve, double step)
    {
        double angle = curve.AngleAt(step);
        int index = curve.SampleAt(angle, _angles), below = (int)step;
        double share = step - below, level = curve.Level(below);
        double torque = share > 0 ? level + share * (curve.Level(below + 1) - level) : level;
        return new TracePoint(index, _clock[index], angle, double.IsNaN(torque) ? _torques[index] : torque);
    }

    private TracePoint Sample(int index) => new(index, _clock[index], _angles.IsEmpty ? null : _angles[index], _torques[index]);
}
