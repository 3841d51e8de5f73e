namespace Fastening.Tests.Traces;

/// <summary>
/// Which findings on a measured run no reader of the picture would sign. (a) At snug, or where the run-down ends, over a third of the rise is made.
/// (b) Between 8° and 24° past a yield the torque rises for 10° by at least 0.7 of the elastic slope to above the torque at yield. (c) The line
/// holds under a quarter of the rise, or half the samples of its region lie off by more than a tenth of its gain.
/// </summary>
internal static class Misreading
{
    private const double MostRise = 1 / 3.0;
    private const double LeastRise = 0.25;
    private const double Off = 0.1;
    private const double SlopeAgain = 0.7;
    private const double Stretch = 10;
    private const double From = 8;
    private const double To = 24;

    public static TraceDoubts Of(TighteningTrace trace, TraceAnalysis analysis)
    {
        var plain = new PlainCurve(trace);
        return Beginning(plain, analysis) | Yield(plain, analysis) | Line(plain, trace, analysis);
    }

    /// <summary>(a).</summary>
    public static TraceDoubts Beginning(PlainCurve plain, TraceAnalysis analysis)
    {
        TraceDoubts wrong = TraceDoubts.None;
        if (analysis.Snug is TracePoint snug && plain.ShareAt(snug.Angle!.Value.Degrees) > MostRise) wrong |= TraceDoubts.Snug;
        if (analysis.RunDown is RunDown run && plain.ShareAt(run.End.Angle!.Value.Degrees) > MostRise) wrong |= TraceDoubts.RunningTorque;
        return wrong;
    }

    /// <summary>(b).</summary>
    public static TraceDoubts Yield(PlainCurve plain, TraceAnalysis analysis)
    {
        if (analysis.YieldOnset is not TracePoint onset) return TraceDoubts.None;
        double at = onset.Angle!.Value.Degrees, there = plain.TorqueAt(at), slope = analysis.ElasticRegion!.Slope.NewtonMetersPerDegree;
        for (double x = at + From; x + Stretch <= Math.Min(at + To, plain.Last); x += 0.5)
        {
            double end = plain.TorqueAt(x + Stretch);
            if (end > there && end - plain.TorqueAt(x) >= SlopeAgain * slope * Stretch) return TraceDoubts.Yield;
        }

        return TraceDoubts.None;
    }

    /// <summary>(c).</summary>
    public static TraceDoubts Line(PlainCurve plain, TighteningTrace trace, TraceAnalysis analysis)
    {
        if (analysis.ElasticRegion is not ElasticRegion region) return TraceDoubts.None;
        double gain = region.Slope.NewtonMetersPerDegree * (region.End.Angle!.Value.Degrees - region.Start.Angle!.Value.Degrees);
        int off = 0;
        for (int i = region.Start.Index; i <= region.End.Index; i++)
        {
            double line = region.TorqueAt(UnitsNet.Angle.FromDegrees(trace.AnglesDegrees.Span[i])).NewtonMeters;
            if (Math.Abs(trace.TorquesNewtonMeters.Span[i] - line) > Off * gain) off++;
        }

        return gain < LeastRise * plain.Rise || off > region.Count / 2 ? TraceDoubts.Slope : TraceDoubts.None;
    }
}
