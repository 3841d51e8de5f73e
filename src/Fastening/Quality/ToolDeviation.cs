namespace Fastening.Quality;

/// <summary>How far a tool is off at one torque: the mean of the readings, their extremes, and the uncertainty that a decision counts.</summary>
internal readonly struct ToolDeviation(double least, double mean, double greatest, double expanded)
{
    public double Least { get; } = least;

    public double Mean { get; } = mean;

    public double Greatest { get; } = greatest;

    public double Expanded { get; } = expanded;

    public static ToolDeviation At(CalibrationPoint point, CalibrationUncertainty uncertainty) =>
        new(point.LeastDeviation, point.Mean, point.GreatestDeviation, uncertainty.DecidingAt(point));

    /// <summary>Interpolated; of the two uncertainties the larger.</summary>
    public static ToolDeviation Between(ToolDeviation low, ToolDeviation high, double share) => new(
        low.Least + (high.Least - low.Least) * share, low.Mean + (high.Mean - low.Mean) * share,
        low.Greatest + (high.Greatest - low.Greatest) * share, Math.Max(low.Expanded, high.Expanded));
}
