namespace Fastening;

/// <summary>
/// Where the curve leaves its elastic line for good: the slope falls below a share of that of the line, or the torque below an offset line, and
/// the curve does not recover. By slope it recovers when, from half a window on, it comes above the ray of the share's slope from there, or
/// rises more steeply than the share for one and a half windows. One window must be recorded after yield. Between two steps the place is
/// interpolated.
/// </summary>
internal static class YieldSearch
{
    private const int StepsOfRecovery = 3 * SmoothedCurve.Half;

    /// <summary>The step, with its fraction, at which the slope fell below the share for good; whether it can be decided, and from where not.</summary>
    public static YieldVerdict BySlope(SmoothedCurve curve, in ElasticFit elastic, double share)
    {
        double least = share * elastic.Slope, before = 0;
        bool isBelow = false;
        for (int k = Math.Max(elastic.From, SmoothedCurve.First); k <= curve.Last; k++)
        {
            if (double.IsNaN(curve.Slope(k))) continue;
            double margin = curve.Slope(k) - least;
            if (margin < 0 && !isBelow && k > elastic.Middle && !Recovers(curve, k, least))
            {
                double onset = k - Fraction(before, margin);
                bool isTold = curve.Steps - onset >= SmoothedCurve.StepsPerWindow && !(LastSlope(curve) > least);
                return new YieldVerdict(isTold ? onset : null, isTold ? null : onset);
            }

            isBelow = margin < 0 && k > elastic.Middle;
            before = margin;
        }

        return default;
    }

    /// <summary>The step, with its fraction, at which the torque fell below the elastic line moved along by an angle, for good; null when it did not.</summary>
    public static double? ByOffset(SmoothedCurve curve, in ElasticFit elastic, double offset)
    {
        double before = 0;
        double? onset = null;
        for (int k = Math.Max(elastic.Middle, SmoothedCurve.First); k <= curve.Last; k++)
        {
            if (double.IsNaN(curve.Level(k))) continue;
            double margin = curve.Level(k) - elastic.Line.At(curve.AngleAt(k) - offset);
            if (margin >= 0) onset = null;
            else onset ??= k - Fraction(before, margin);
            before = margin;
        }

        return onset is double step && curve.Steps - step >= SmoothedCurve.StepsPerWindow ? onset : null;
    }

    private static bool Recovers(SmoothedCurve curve, int onset, double slope)
    {
        double level = curve.Level(onset), perStep = slope * curve.Step;
        int steep = 0;
        for (int k = onset; k <= curve.Last; k++)
        {
            if (double.IsNaN(curve.Slope(k))) continue;
            steep = curve.Slope(k) > slope ? steep + 1 : 0;
            if (steep >= StepsOfRecovery || (k - onset >= SmoothedCurve.Half && curve.Level(k) > level + perStep * (k - onset))) return true;
        }

        return false;
    }

    private static double LastSlope(SmoothedCurve curve)
    {
        for (int k = curve.Last; k >= SmoothedCurve.First; k--)
        {
            if (!double.IsNaN(curve.Slope(k))) return curve.Slope(k);
        }

        return double.NaN;
    }

    /// <summary>How far back from a negative margin to zero, when the one before was positive.</summary>
    private static double Fraction(double before, double now) => before > 0 ? now / (now - before) : 0;
}
