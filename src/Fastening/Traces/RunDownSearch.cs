namespace Fastening;

/// <summary>
/// The run-down and its torque. It ends where, going back from the elastic region, the local slope is first below a tenth of the elastic slope,
/// a quarter of a window earlier, for the window looks ahead; its last turn is averaged. A stretch shorter than half a window tells nothing.
/// </summary>
internal static class RunDownSearch
{
    private const double ShareOfSlope = 0.1;
    private const double OneTurn = 360;
    private const double LeastWindows = 0.5;
    private const double WindowsAhead = 0.25;

    /// <summary>First sample, sample after the last, and the level; null when there is no run-down.</summary>
    public static (int From, int To, double Torque)? Find(SmoothedCurve curve, in ElasticFit elastic, ReadOnlySpan<double> angles)
    {
        int end = Math.Min(elastic.From, curve.Last);
        while (end >= SmoothedCurve.First && !(curve.Slope(end) <= ShareOfSlope * elastic.Line.Slope)) end--;
        if (end < SmoothedCurve.First) return null;
        double window = SmoothedCurve.StepsPerWindow * curve.Step;
        double until = curve.AngleAt(end) - WindowsAhead * window;
        if (until - curve.AngleAt(0) < LeastWindows * window) return null;
        double since = Math.Max(until - OneTurn, curve.AngleAt(0));
        int from = curve.SampleAt(since, angles), to = curve.SampleAt(until, angles);
        int firstBin = curve.StepAt(since), pastBin = curve.StepAt(until);
        if (to <= from || pastBin <= firstBin) return null;
        return (from, to, RobustLine.Level(curve.BinAngles(firstBin, pastBin), curve.BinTorques(firstBin, pastBin)));
    }
}
