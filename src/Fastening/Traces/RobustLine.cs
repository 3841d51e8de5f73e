namespace Fastening;

/// <summary>
/// A line, or a level, that a few bad points do not move: least squares with the weights of Huber, 1 up to 1.345 standard deviations and
/// falling with the distance beyond, in a fixed number of passes. The standard deviation is estimated from the mean absolute residual, each
/// residual cut at the limit of the pass before, so that a wild point does not widen it. The standard error of the slope is that of an M-estimator
/// with independent errors (Huber, Robust Statistics, 1981, §7.6, from memory). Points whose x is NaN do not count.
/// </summary>
internal readonly record struct RobustLine(double Slope, double Origin, double AtOrigin, double SlopeError)
{
    private const double Huber = 1.345;

    // Standard deviation over mean absolute residual of a normal distribution: whole, and cut at 1.345 standard deviations.
    private const double WholeToDeviation = 1.2533141373155001;
    private const double CutToDeviation = 1.3982095391844763;

    private const double LeastDistance = 1e-300;
    private const double MostMeanDistances = 4;
    private const double MostAlike = 0.95;
    private const int Passes = 5;

    public double At(double x) => AtOrigin + Slope * (x - Origin);

    /// <summary>Where the line has a value; the slope must not be 0.</summary>
    public double PlaceOf(double value) => Origin + (value - AtOrigin) / Slope;

    public static RobustLine Through(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        double origin = FirstOf(xs), slope = 0, level = 0, limit = double.PositiveInfinity;
        for (int pass = 0; pass < Passes; pass++)
        {
            (LineSums sums, double deviation) = Weighted(xs, ys, origin, slope, level, limit);
            if (pass > 0) limit = Huber * deviation;
            (slope, level) = sums.Line(0);
            if (double.IsNaN(slope)) return new RobustLine(0, origin, level, 0);
        }

        return new RobustLine(slope, origin, level, ErrorOfSlope(xs, ys, origin, slope, level, limit));
    }

    public static double Level(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        double level = 0, limit = double.PositiveInfinity;
        for (int pass = 0; pass < Passes; pass++)
        {
            (LineSums sums, double deviation) = Weighted(xs, ys, 0, 0, level, limit);
            if (pass > 0) limit = Huber * deviation;
            level = sums.Mean;
        }

        return level;
    }

    /// <summary>Standard deviation of points about the line, from their mean absolute residual.</summary>
    public double ScatterOf(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys) => Weighted(xs, ys, Origin, Slope, AtOrigin, double.PositiveInfinity).Deviation;

    /// <summary>
    /// Standard deviation about the line of the points that are at or past all before them, from their mean distance; a distance beyond four
    /// times the mean counts as that.
    /// </summary>
    public double ScatterOfTurning(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        double mean = MeanDistance(xs, ys, double.PositiveInfinity);
        return WholeToDeviation * MeanDistance(xs, ys, MostMeanDistances * mean);
    }

    /// <summary>
    /// The same line with a standard error for residuals of which adjacent ones are alike: times √((1 + r)/(1 − r)), r their correlation, 0 to 0.95
    /// (mean of an autoregressive series of first order, from memory).
    /// </summary>
    public RobustLine WithNeighboursAlike(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        double products = 0, squares = 0, before = double.NaN;
        for (int i = 0; i < xs.Length; i++)
        {
            if (double.IsNaN(xs[i])) continue;
            double residual = ys[i] - At(xs[i]);
            if (!double.IsNaN(before)) products += residual * before;
            squares += residual * residual;
            before = residual;
        }

        double alike = squares > 0 ? Math.Min(Math.Max(products / squares, 0), MostAlike) : 0;
        return this with { SlopeError = SlopeError * Math.Sqrt((1 + alike) / (1 - alike)) };
    }

    private double MeanDistance(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, double most)
    {
        double furthest = double.NegativeInfinity, sum = 0;
        int count = 0;
        for (int i = 0; i < xs.Length; i++)
        {
            if (!(xs[i] >= furthest)) continue;
            furthest = xs[i];
            sum += Math.Min(Math.Abs(ys[i] - At(xs[i])), most);
            count++;
        }

        return count == 0 ? 0 : sum / count;
    }

    /// <summary>The sums with the weights that a line and a limit give, and the standard deviation about that line.</summary>
    private static (LineSums Sums, double Deviation) Weighted(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, double origin, double slope, double level, double limit)
    {
        LineSums sums = default;
        double distances = 0, bound = Math.Max(limit, LeastDistance);
        int count = 0;
        for (int i = 0; i < xs.Length; i++)
        {
            double x = xs[i] - origin;
            if (double.IsNaN(x)) continue;
            double distance = Math.Max(Math.Abs(ys[i] - level - slope * x), LeastDistance);
            distances += Math.Min(distance, bound);
            count++;
            sums.Add(x, ys[i], Math.Min(bound / distance, 1));
        }

        return (sums, count == 0 ? 0 : (double.IsPositiveInfinity(limit) ? WholeToDeviation : CutToDeviation) * distances / count);
    }

    private static double ErrorOfSlope(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, double origin, double slope, double level, double limit)
    {
        LineSums plain = default;
        double squares = 0;
        int inside = 0;
        for (int i = 0; i < xs.Length; i++)
        {
            double x = xs[i] - origin;
            if (double.IsNaN(x)) continue;
            double distance = Math.Abs(ys[i] - level - slope * x);
            plain.Add(x, ys[i]);
            squares += Math.Min(distance, limit) * Math.Min(distance, limit);
            if (distance <= limit) inside++;
        }

        double freedom = plain.Count - 2, share = inside / plain.Count;
        return freedom > 0 && share > 0 && plain.Spread > 0 ? Math.Sqrt(squares / freedom / plain.Spread) / share : 0;
    }

    private static double FirstOf(ReadOnlySpan<double> xs)
    {
        foreach (double x in xs)
        {
            if (!double.IsNaN(x)) return x;
        }

        return 0;
    }
}
