namespace Fastening;

/// <summary>
/// Where the curve leaves its elastic line for good: the slope stays below a share of the greatest so far, or the torque below an offset line,
/// while half a window of rotation goes by: a dip at a change of speed or at the very end is no yield. Between two steps the place is
/// interpolated. The greatest slope is that of a mean over half a window: the greatest of single slopes would be too high by their noise, and
/// yield would come early.
/// </summary>
internal static class YieldSearch
{
    private const int StepsBelow = SmoothedCurve.StepsPerWindow / 2;

    /// <summary>The step, with its fraction, at which the slope fell below the share; null when it did not.</summary>
    public static double? BySlope(SmoothedCurve curve, in ElasticFit elastic, double share)
    {
        double greatest = 0, before = 0;
        double? onset = null;
        int begun = 0;
        for (int k = Math.Max(elastic.From, SmoothedCurve.First); k <= curve.Last; k++)
        {
            double slope = curve.Slope(k);
            if (double.IsNaN(slope)) continue;
            greatest = Math.Max(greatest, MeanSlope(curve, Math.Max(elastic.From, SmoothedCurve.First), k));
            double margin = slope - share * greatest;
            if (margin >= 0 || k <= elastic.Middle) onset = null;
            else if (onset is null) (onset, begun) = (k - Fraction(before, margin), k);
            else if (k - begun >= StepsBelow) return onset;
            before = margin;
        }

        return null;
    }

    /// <summary>The step, with its fraction, at which the torque fell below the elastic line moved along by an angle; null when it did not.</summary>
    public static double? ByOffset(SmoothedCurve curve, in ElasticFit elastic, double offset)
    {
        double before = 0;
        double? onset = null;
        int begun = 0;
        for (int k = Math.Max(elastic.Middle, SmoothedCurve.First); k <= curve.Last; k++)
        {
            double level = curve.Level(k);
            if (double.IsNaN(level)) continue;
            double margin = level - elastic.Line.At(curve.AngleAt(k) - offset);
            if (margin >= 0) onset = null;
            else if (onset is null) (onset, begun) = (k - Fraction(before, margin), k);
            else if (k - begun >= StepsBelow) return onset;
            before = margin;
        }

        return null;
    }

    private static double MeanSlope(SmoothedCurve curve, int from, int to)
    {
        double sum = 0;
        int count = 0;
        for (int k = Math.Max(from, to - StepsBelow); k <= to; k++)
        {
            if (double.IsNaN(curve.Slope(k))) continue;
            sum += curve.Slope(k);
            count++;
        }

        return sum / count;
    }

    /// <summary>How far back from a negative margin to zero, when the one before was positive.</summary>
    private static double Fraction(double before, double now) => before > 0 ? now / (now - before) : 0;
}
