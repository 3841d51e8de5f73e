namespace Fastening;

/// <summary>The words of a remark.</summary>
internal static class TraceRemarkText
{
    public static string NameOf(TraceRemarkKind kind) => kind switch
    {
        TraceRemarkKind.NoElasticRegion => "no elastic region",
        TraceRemarkKind.NoRunDown => "no run-down",
        TraceRemarkKind.StickSlip => "stick–slip",
        TraceRemarkKind.Reversal => "reversal",
        TraceRemarkKind.EarlyPeak => "early peak",
        TraceRemarkKind.TorqueDrop => "torque drop",
        TraceRemarkKind.Yield => "yield",
        TraceRemarkKind.ShortRegion => "short elastic region",
        TraceRemarkKind.UncertainSlope => "uncertain slope",
        TraceRemarkKind.CurvedRise => "curved rise",
        TraceRemarkKind.BrokenRise => "broken rise",
        TraceRemarkKind.OtherLine => "another line",
        TraceRemarkKind.YieldUntold => "yield cannot be told",
        TraceRemarkKind.SnugOnRise => "snug on the rise",
        TraceRemarkKind.DriftingRunDown => "drifting run-down",
        TraceRemarkKind.FewSamples => "few samples",
        TraceRemarkKind.FallsAway => "torque falls away",
        TraceRemarkKind.WrongSense => "loosening sense",
        TraceRemarkKind.HeldTorque => "held torque",
        _ => "angle begins again",
    };

    public static string NameOf(TraceDoubts doubts)
    {
        if (doubts == TraceDoubts.All) return "all findings";
        List<string> names = [];
        if ((doubts & TraceDoubts.Snug) != 0) names.Add("snug");
        if ((doubts & TraceDoubts.Slope) != 0) names.Add("slope");
        if ((doubts & TraceDoubts.Yield) != 0) names.Add("yield");
        if ((doubts & TraceDoubts.RunningTorque) != 0) names.Add("run-down torque");
        return string.Join(", ", names);
    }

    public static string? AdviceOn(TraceRemarkKind kind) => kind switch
    {
        TraceRemarkKind.NoRunDown => "record from two smoothing windows before the rise on, or state the run-down torque",
        TraceRemarkKind.ShortRegion => "record the whole rise, or take a shorter smoothing window",
        TraceRemarkKind.UncertainSlope => "record more samples per degree, or with less noise",
        TraceRemarkKind.CurvedRise => "record the angle at the fastener, without wind-up and soft layers, or judge by clamp force",
        TraceRemarkKind.BrokenRise => "tighten at one speed without letting go, and record again",
        TraceRemarkKind.OtherLine => "tighten at one speed without letting go, and record again",
        TraceRemarkKind.YieldUntold => "record at least one smoothing window past the place, at one speed",
        TraceRemarkKind.SnugOnRise => "record the run-down at the speed of the rise, or state the run-down torque",
        TraceRemarkKind.DriftingRunDown => "state the run-down torque just before snug",
        TraceRemarkKind.FewSamples => "record at least four samples with different angles per smoothing window",
        TraceRemarkKind.WrongSense => "count angle and torque positive in the tightening sense; a loosening is not read",
        TraceRemarkKind.AngleWraps => "record the angle without starting again at a full turn, or add the full turns",
        TraceRemarkKind.HeldTorque => "check the range of the sensor and the setting of the tool: a torque that is held looks like yield",
        _ => null,
    };
}
