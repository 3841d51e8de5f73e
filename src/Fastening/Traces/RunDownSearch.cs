namespace Fastening;

/// <summary>
/// The run-down and its torque. It ends with the last two windows before the elastic region, at most a turn back, whose four halves are level
/// and lie below the middle of the line; windows that climb are passed over if there are others before them. The end of that stretch is left out,
/// more of it while it still rises. The torque is that of the last turn, or of the last two windows where those differ.
/// </summary>
internal static class RunDownSearch
{
    private const double OneTurn = 360;
    private const int Halves = 4;
    private const int StepsLeftOut = 3 * SmoothedCurve.Quarter;
    private const double LevelWithin = 0.25;
    private const double DiffersBy = 0.0625;
    private const double ClimbsBy = 0.1;
    private const double NoisesOfClimb = 2;
    private const double RisesBy = 0.003;
    private const double NoisesOfRise = 2;

    /// <summary>The run-down, if possible one that does not climb; null when there is none.</summary>
    public static RunDownFit? Find(SmoothedCurve curve, in ElasticFit elastic, ReadOnlySpan<double> angles)
    {
        int least = Math.Max(Halves * SmoothedCurve.Half, elastic.From - (int)(OneTurn / curve.Step)), climbing = -1;
        for (int level = elastic.From; level >= least; level--)
        {
            if (!IsLevel(curve, elastic, level)) continue;
            int end = WithoutRise(curve, elastic, level - StepsLeftOut);
            if (!Climbs(curve, elastic, end)) return At(curve, elastic, end, climbing, angles);
            climbing = Math.Max(climbing, end);
        }

        return climbing < 0 ? null : At(curve, elastic, climbing, climbing, angles);
    }

    private static RunDownFit? At(SmoothedCurve curve, in ElasticFit elastic, int end, int climbing, ReadOnlySpan<double> angles)
    {
        int begin = curve.StepAt(curve.AngleAt(end) - OneTurn);
        double turn = Level(curve.Bins, begin, end), late = Level(curve.Bins, Math.Max(end - 2 * SmoothedCurve.StepsPerWindow, 0), end);
        double torque = Math.Abs(late - turn) > DiffersBy * elastic.Slope * curve.Window ? late : turn;
        bool climbs = climbing == end
            || (climbing > end && curve.Bins.Mean(climbing - SmoothedCurve.Quarter, climbing) - torque > LevelWithin * elastic.Slope * curve.Window);
        int from = curve.FirstSample(begin), past = curve.SampleAt(curve.AngleAt(end), angles);
        return past > from ? new RunDownFit(from, past, end, torque, Math.Abs(late - turn), climbs) : null;
    }

    private static bool IsLevel(SmoothedCurve curve, in ElasticFit elastic, int end)
    {
        double below = elastic.Line.At(curve.AngleAt(elastic.Middle)), within = LevelWithin * elastic.Slope * curve.Window;
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (int half = 1; half <= Halves; half++)
        {
            double mean = curve.Bins.Mean(end - half * SmoothedCurve.Half, end - (half - 1) * SmoothedCurve.Half);
            if (double.IsNaN(mean)) return false;
            (low, high) = (Math.Min(low, mean), Math.Max(high, mean));
        }

        return high - low <= within && high <= below;
    }

    private static int WithoutRise(SmoothedCurve curve, in ElasticFit elastic, int end)
    {
        double rise = Math.Max(NoisesOfRise * curve.Noise, RisesBy * elastic.Slope * curve.Window);
        int least = Math.Max(end - SmoothedCurve.StepsPerWindow, SmoothedCurve.Quarter + 1);
        while (end > least && curve.Bins.Mean(end - 2, end) - curve.Bins.Mean(end - SmoothedCurve.Quarter - 2, end - SmoothedCurve.Quarter) > rise) end--;
        return end - 1;
    }

    private static bool Climbs(SmoothedCurve curve, in ElasticFit elastic, int end)
    {
        int first = Math.Max(end - Halves * SmoothedCurve.Half, 0), steps = end - first - SmoothedCurve.Half;
        if (steps < SmoothedCurve.Half) return true;
        double climb = curve.Bins.Mean(end - SmoothedCurve.Half, end) - curve.Bins.Mean(first, first + SmoothedCurve.Half);
        double limit = ClimbsBy * elastic.Slope * curve.Window * steps / ((Halves - 1) * SmoothedCurve.Half);
        return !(climb <= Math.Max(limit, NoisesOfClimb * curve.Noise));
    }

    private static double Level(TraceBins bins, int from, int to) => RobustLine.Level(bins.Angles.Slice(from, to - from), bins.Torques.Slice(from, to - from));
}
