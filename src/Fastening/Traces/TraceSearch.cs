namespace Fastening;

/// <summary>Reads one trace: which finding follows from which. A fixed number of passes over the samples; all else on the smoothed curve.</summary>
internal readonly ref struct TraceSearch
{
    private const double ScattersBelowPeak = 3;

    private readonly TraceOptions _options;
    private readonly SampleClock _clock;
    private readonly ReadOnlySpan<double> _angles;
    private readonly ReadOnlySpan<double> _torques;

    private TraceSearch(TighteningTrace trace, TraceOptions options)
    {
        _options = options;
        _clock = trace.Clock;
        _angles = trace.AnglesDegrees.Span;
        _torques = trace.TorquesNewtonMeters.Span;
    }

    public static TraceAnalysis Run(TighteningTrace trace, TraceOptions options)
    {
        var search = new TraceSearch(trace, options);
        TraceFindings found = trace.HasAngles ? search.OverAngle() : search.OverTime();
        return new TraceAnalysis(trace, options, found);
    }

    private TraceFindings OverTime()
    {
        int highest = TorqueExtremes.FirstHighest(_torques), shutOff = TorqueExtremes.ShutOff(_torques);
        TraceFindings found = Ends(null, TorqueExtremes.IsMainlyNegative(_torques) ? TorqueExtremes.FirstLowest(_torques) : highest, shutOff);
        found.Snug = SnugOnSamples(shutOff);
        return found;
    }

    private TraceFindings OverAngle()
    {
        using TraceBlocks blocks = TraceBlocks.Of(_angles, _torques);
        var furthest = new FurthestAngle(blocks, _angles, _torques, _options.Window);
        int shutOff = furthest.ShutOff(), highest = blocks.FirstExtreme(_torques, isLowest: false), lowest = blocks.FirstExtreme(_torques, isLowest: true);
        bool isNegative = -_torques[lowest] > _torques[highest] && TorqueExtremes.IsMainlyNegative(_torques);
        TraceFindings found = Ends(blocks, isNegative ? lowest : highest, shutOff);
        found.Energy = blocks.EnergyTo(shutOff, _angles, _torques);
        if (_options.Reversal is double back && furthest.FirstReversal(back, shutOff) is >= 0 and int reversed) found.Remark(TraceRemarkKind.Reversal, Sample(reversed));
        if (found.Wraps) found.Remark(TraceRemarkKind.AngleWraps, found.ShutOff, TraceDoubts.All);
        if (furthest.TurnsBack || isNegative) found.Remark(TraceRemarkKind.WrongSense, isNegative ? found.Peak : found.Final, TraceDoubts.All);
        else ReadCurve(found, shutOff);
        return found;
    }

    private TraceFindings Ends(TraceBlocks? blocks, int peak, int shutOff) => new()
    {
        Irregularities = TraceIrregularities.Of(blocks, _clock, _torques.Length, shutOff),
        Peak = Sample(peak),
        ShutOff = Sample(shutOff),
        Final = Sample(_torques.Length - 1),
    };

    private void ReadCurve(TraceFindings found, int shutOff)
    {
        using SmoothedCurve? curve = SmoothedCurve.Of(_angles, _torques, shutOff, _options.Window);
        int peak = curve?.Highest() ?? -1;
        if (peak < 0)
        {
            found.Remark(TraceRemarkKind.NoElasticRegion, found.ShutOff, TraceDoubts.Yield);
            found.Snug = SnugOnSamples(shutOff);
            return;
        }

        ElasticFit? elastic = new ElasticSearch(curve!, _angles, _torques).Find(peak);
        var doubts = new DoubtSearch(curve!, _options);
        int away = doubts.FallsAway(elastic?.From ?? peak);
        if (elastic is ElasticFit fit) ReadElastic(curve!, fit, peak, away >= 0, found);
        else found.Remark(TraceRemarkKind.NoElasticRegion, found.ShutOff, TraceDoubts.Yield);
        if (_options.SnugTorque is double threshold && away < 0)
        {
            found.Snug = SnugSearch.OnCurve(curve!, peak, threshold, elastic) is double snug ? OnCurve(curve!, snug) : SnugOnSamples(shutOff);
        }

        if (doubts.FewSamples(elastic) is >= 0 and int few) found.Remark(TraceRemarkKind.FewSamples, OnCurve(curve!, few), TraceDoubts.All);
        if (away >= 0) found.Remark(TraceRemarkKind.FallsAway, OnCurve(curve!, away), TraceDoubts.All);
        RemarkOnCurve(curve!, peak, elastic?.Scatter ?? 0, found);
    }

    private void ReadElastic(SmoothedCurve curve, in ElasticFit elastic, int peak, bool fallsAway, TraceFindings found)
    {
        found.Elastic = new ElasticRegion(Sample(elastic.FirstSample), Sample(elastic.LastSample), elastic);
        RunDownFit? runDown = RunDownSearch.Find(curve, elastic, _angles);
        if (runDown is RunDownFit run)
        {
            double highest = TorqueExtremes.Highest(_torques.Slice(run.FirstSample, run.PastSample - run.FirstSample));
            found.RunDown = new RunDown(Sample(run.FirstSample), Sample(run.PastSample - 1), run.Torque, highest);
        }
        else
        {
            found.Remark(TraceRemarkKind.NoRunDown, found.Elastic.Start);
        }

        double? running = _options.RunningTorque ?? runDown?.Torque, snug = null;
        YieldVerdict verdict = fallsAway ? default : YieldSearch.BySlope(curve, elastic, _options.SlopeShare);
        if (!fallsAway && _options.SnugTorque is null && running is double torque)
        {
            found.Snug = Projected(curve, elastic.Line, torque);
            snug = found.Snug is null ? null : curve.StepAt(found.Snug.AngleDegrees);
        }

        if (verdict.Onset is double onset)
        {
            found.YieldOnset = OnCurve(curve, onset);
            found.Remark(TraceRemarkKind.Yield, found.YieldOnset);
        }

        if (!fallsAway && _options.YieldOffset is double offset && YieldSearch.ByOffset(curve, elastic, offset) is double past) found.OffsetYield = OnCurve(curve, past);
        var rise = new TraceRise(curve, running ?? LowestBefore(curve, elastic.From), peak);
        foreach ((TraceRemarkKind kind, int step, TraceDoubts doubted) in new DoubtSearch(curve, _options).OfRegion(elastic, rise, runDown, verdict, snug))
        {
            found.Remark(kind, OnCurve(curve, step), doubted);
        }
    }

    private static double LowestBefore(SmoothedCurve curve, int step)
    {
        double lowest = curve.Level(step);
        for (int k = SmoothedCurve.First; k < step; k++)
        {
            if (curve.Level(k) < lowest) lowest = curve.Level(k);
        }

        return lowest;
    }

    private TracePoint? Projected(SmoothedCurve curve, in RobustLine line, double torque)
    {
        double angle = line.PlaceOf(torque);
        if (!(angle >= curve.AngleAt(0) && angle <= curve.AngleAt(curve.Steps))) return null;
        int index = curve.SampleAt(angle, _angles);
        return new TracePoint(index, _clock[index], angle, torque);
    }

    private TracePoint? SnugOnSamples(int shutOff)
    {
        if (_options.SnugTorque is not double threshold) return null;
        int index = SnugSearch.OnSamples(_torques, TorqueExtremes.FirstHighest(_torques.Slice(0, shutOff + 1)), threshold);
        return index < 0 ? null : Sample(index);
    }

    private void RemarkOnCurve(SmoothedCurve curve, int peak, double scatter, TraceFindings found)
    {
        if (_options.StickSlip is double swing && StickSlipSearch.Find(curve, _angles, _torques, swing) is >= 0 and int slipped)
        {
            found.Remark(TraceRemarkKind.StickSlip, Sample(slipped));
        }

        if (curve.Last - peak > SmoothedCurve.Half && curve.Level(curve.Last) < curve.Level(peak) - ScattersBelowPeak * Math.Max(scatter, curve.Noise))
        {
            found.Remark(TraceRemarkKind.EarlyPeak, OnCurve(curve, peak));
        }

        if (_options.TorqueDrop is double drop && TraceRise.FirstFall(curve, 0, curve.Steps, drop) is >= 0 and int dropped)
        {
            found.Remark(TraceRemarkKind.TorqueDrop, OnCurve(curve, dropped));
        }
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
