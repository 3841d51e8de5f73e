namespace Fastening;

/// <summary>
/// A line, or a level, that a few bad samples do not move: least squares with the weights of Huber, 1 up to 1.345 standard deviations and
/// falling with the distance beyond, in a fixed number of passes. The standard deviation is estimated from the mean absolute residual. The
/// standard error of the slope is that of an M-estimator with independent errors (Huber, Robust Statistics, 1981, §7.6, from memory).
/// </summary>
internal readonly record struct RobustLine(double Slope, double Origin, double AtOrigin, double Scatter, double SlopeError, int Count)
{
    private const double Huber = 1.345;
    private const double MeanAbsoluteToDeviation = 1.2533141373155001;
    private const int Passes = 4;

    public double At(double angle) => AtOrigin + Slope * (angle - Origin);

    /// <summary>The angle at which the line has a torque; the slope must not be 0.</summary>
    public double AngleAt(double torque) => Origin + (torque - AtOrigin) / Slope;

    /// <summary>The line through the samples from one index to before another.</summary>
    public static RobustLine Through(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, int from, int to) =>
        Fit(angles.Slice(from, to - from), torques.Slice(from, to - from), isLevel: false);

    /// <summary>The level of the samples from one index to before another.</summary>
    public static RobustLine Level(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, int from, int to) =>
        Fit(angles.Slice(from, to - from), torques.Slice(from, to - from), isLevel: true);

    private static RobustLine Fit(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, bool isLevel)
    {
        double origin = angles[angles.Length / 2], scatter = double.PositiveInfinity;
        double slope = 0, level = 0;
        for (int pass = 0; pass < Passes; pass++)
        {
            double limit = Huber * scatter, distances = 0;
            LineSums sums = default;
            for (int i = 0; i < angles.Length; i++)
            {
                double x = angles[i] - origin;
                double distance = Math.Abs(torques[i] - level - slope * x);
                sums.Add(x, torques[i], distance <= limit ? 1 : limit / distance);
            }

            (slope, level) = isLevel ? (0, sums.Mean) : sums.Line(0);
            if (double.IsNaN(slope)) return new RobustLine(0, origin, level, 0, 0, angles.Length);
            for (int i = 0; i < angles.Length; i++) distances += Math.Abs(torques[i] - level - slope * (angles[i] - origin));
            scatter = MeanAbsoluteToDeviation * distances / angles.Length;
        }

        return new RobustLine(slope, origin, level, scatter, ErrorOfSlope(angles, torques, origin, slope, level, Huber * scatter), angles.Length);
    }

    private static double ErrorOfSlope(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double origin, double slope, double level, double limit)
    {
        LineSums plain = default;
        double squares = 0;
        int inside = 0;
        for (int i = 0; i < angles.Length; i++)
        {
            double x = angles[i] - origin;
            double distance = Math.Abs(torques[i] - level - slope * x);
            plain.Add(x, torques[i]);
            squares += Math.Min(distance, limit) * Math.Min(distance, limit);
            if (distance <= limit) inside++;
        }

        double share = inside / (double)angles.Length;
        int freedom = angles.Length - 2;
        if (freedom < 1 || share <= 0 || plain.Spread <= 0) return 0;
        return Math.Sqrt(squares / freedom / plain.Spread) / share;
    }
}
