namespace Fastening.Tests.Traces;

/// <summary>What a record holds, and within what it must be read.</summary>
internal sealed record ReadingTruth
{
    /// <summary>False for a record that is no tightening in the positive sense: every finding on it is wrong.</summary>
    public bool IsTightening { get; init; } = true;

    public required double Slope { get; init; }

    public required double Snug { get; init; }

    /// <summary>Null when the curve does not yield.</summary>
    public double? Yield { get; init; }

    /// <summary>Whether a yield may be given or left out: a thread that strips, or a yield less than half a window before the end.</summary>
    public bool IsYieldOpen { get; init; }

    public required double RunningTorque { get; init; }

    public required double ShutOff { get; init; }

    public required double Peak { get; init; }

    public bool HasRunDown { get; init; } = true;

    public double SnugWithin { get; init; } = 2.5;

    public double SlopeWithin { get; init; } = 0.05;

    public double YieldWithin { get; init; } = 6;

    private const double RunningWithin = 0.02;
    private const double ShutOffWithin = 2;

    public ReadingOutcome Judge(TraceAnalysis analysis)
    {
        bool isRead = analysis.ElasticRegion is not null && (analysis.Snug is not null || !HasRunDown || (analysis.Doubts & TraceDoubts.Snug) != 0);
        TraceDoubts wrong = IsTightening ? Wrong(analysis) : Findings(analysis);
        bool isShutOff = !IsTightening || Math.Abs(analysis.ShutOff.Angle!.Value.Degrees - ShutOff) <= ShutOffWithin;
        if (IsTightening && !isRead) return ReadingOutcome.NotRead;
        if (wrong == TraceDoubts.None && isShutOff) return analysis.Doubts == TraceDoubts.None ? ReadingOutcome.Right : ReadingOutcome.RightDoubted;
        return (wrong & ~analysis.Doubts) == 0 && (isShutOff || analysis.Doubts == TraceDoubts.All) ? ReadingOutcome.WrongDoubted : ReadingOutcome.SilentlyWrong;
    }

    /// <summary>The findings that are there but off, and a yield that is missing.</summary>
    public TraceDoubts Wrong(TraceAnalysis analysis)
    {
        TraceDoubts wrong = TraceDoubts.None;
        if (analysis.ElasticRegion is ElasticRegion region && !(Math.Abs(region.Slope.NewtonMetersPerDegree / Slope - 1) <= SlopeWithin)) wrong |= TraceDoubts.Slope;
        if (analysis.Snug is TracePoint snug && !(Math.Abs(snug.Angle!.Value.Degrees - Snug) <= SnugWithin)) wrong |= TraceDoubts.Snug;
        if (analysis.RunDown is RunDown run && !(Math.Abs(run.Torque.NewtonMeters - RunningTorque) <= RunningWithin * Peak)) wrong |= TraceDoubts.RunningTorque;
        bool isYieldRight = Yield is double yield
            ? analysis.YieldOnset is TracePoint onset && Math.Abs(onset.Angle!.Value.Degrees - yield) <= YieldWithin
            : analysis.YieldOnset is null;
        return isYieldRight || IsYieldOpen ? wrong : wrong | TraceDoubts.Yield;
    }

    private static TraceDoubts Findings(TraceAnalysis analysis)
    {
        TraceDoubts given = TraceDoubts.None;
        if (analysis.ElasticRegion is not null) given |= TraceDoubts.Slope;
        if (analysis.Snug is not null) given |= TraceDoubts.Snug;
        if (analysis.RunDown is not null) given |= TraceDoubts.RunningTorque;
        return analysis.YieldOnset is not null ? given | TraceDoubts.Yield : given;
    }
}
