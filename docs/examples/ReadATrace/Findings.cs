using Fastening;
using UnitsNet;

namespace ReadATrace;

/// <summary>The findings in words.</summary>
internal static class Findings
{
    public static IEnumerable<string> Lines(TraceAnalysis analysis, RotationRateCheck rate, Duration window)
    {
        yield return Row("read", $"{analysis.Options}");
        yield return Row("run-down", analysis.RunDown is RunDown run ? $"{run.Torque.NewtonMeters:0.0} N·m prevailing, {run.HighestTorque.NewtonMeters:0.0} N·m at most" : $"none");
        yield return Row("snug", Place(analysis.Snug));
        yield return analysis.ElasticRegion is ElasticRegion rise
            ? Row("elastic slope", $"{rise.Slope.NewtonMetersPerDegree:0.000} ± {rise.SlopeStandardError.NewtonMetersPerDegree:0.000} N·m/°, {rise.Start.Angle!.Value.Degrees:0.0}° to {rise.End.Angle!.Value.Degrees:0.0}°")
            : Row("elastic slope", $"none");
        yield return Row("yield onset", Place(analysis.YieldOnset));
        yield return Row("offset yield", Place(analysis.OffsetYield));
        yield return Row("peak torque", Place(analysis.Peak));
        yield return Row("shut-off", Place(analysis.ShutOff));
        yield return Row("end of record", Place(analysis.Final));
        yield return Row("past snug", analysis.RotationPastSnug is Angle past ? $"{past.Degrees:0.0}°" : $"not known");
        yield return Row("work", $"{analysis.Energy!.Value.Joules:0.0} J up to shut-off");
        yield return Row("rate", $"{rate.Rate.DegreesPerSecond:0.0}°/s over {1000 * window.Seconds:0} ms, limit {rate.Limit.DegreesPerSecond:0}°/s: {(rate.Conforms ? "slow enough" : "too fast")}");
        yield return Row("record", $"{analysis.Irregularities}");
        foreach (TraceRemark remark in analysis.Remarks) yield return Row("remark", $"{remark}");
        if (analysis.Remarks.Count == 0) yield return Row("remarks", $"none");
    }

    private static FormattableString Place(TracePoint? point) =>
        point is null ? $"not seen" : $"{point.Torque.NewtonMeters:0.0} N·m at {point.Angle!.Value.Degrees:0.0}°, {point.Time.Seconds:0.000} s (sample {point.Index})";

    private static string Row(string name, FormattableString value) => $"{name,-14} {Panel.Text(value)}";
}
