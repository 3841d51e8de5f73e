using Fastening;
using UnitsNet;

namespace ReadATrace;

/// <summary>The findings in words.</summary>
internal static class Findings
{
    public static IEnumerable<string> Lines(TraceAnalysis analysis, RotationRateCheck rate, Duration window)
    {
        yield return Row("read", $"{analysis.Options}");
        yield return RunDown(analysis.RunDown);
        yield return Place("snug", analysis.Snug);
        yield return Rise(analysis.ElasticRegion);
        yield return Yield(analysis);
        yield return Place("offset yield", analysis.OffsetYield);
        yield return Place("peak torque", analysis.Peak);
        yield return Place("shut-off", analysis.ShutOff);
        yield return Place("end of record", analysis.Final);
        if (analysis.RotationPastSnug is Angle past) yield return Row("past snug", $"{past.Degrees:0.0}°");
        yield return Row("work", $"{analysis.Energy!.Value.Joules:0.0} J up to shut-off");
        yield return Row("rate", $"up to {rate.HighestRate.DegreesPerSecond:0.0}°/s over {1000 * window.Seconds:0} ms {(analysis.Snug is null ? "of all of it" : "from snug on")}, limit {rate.Limit.DegreesPerSecond:0}°/s: {(rate.Conforms ? "slow enough" : "too fast")}");
        yield return Row("record", $"{analysis.Irregularities}");
        foreach (TraceRemark remark in analysis.Remarks) yield return Row("remark", $"{remark}");
        if (analysis.Remarks.Count == 0) yield return Row("remarks", $"none");
        yield return Row("in doubt", $"{(analysis.Doubts == TraceDoubts.None ? "nothing" : analysis.Doubts)}");
    }

    /// <summary>No yield, and a yield that cannot be told, are two answers.</summary>
    private static string Yield(TraceAnalysis analysis) => analysis.YieldOnset is null
        ? Row("yield onset", $"{((analysis.Doubts & TraceDoubts.Yield) == 0 ? "none" : "cannot be told")}")
        : Place("yield onset", analysis.YieldOnset);

    private static string RunDown(RunDown? run) => run is null
        ? Row("run-down", $"none")
        : Row("run-down", $"{run.Torque.NewtonMeters:0.0} N·m prevailing, {run.HighestTorque.NewtonMeters:0.0} N·m at most");

    private static string Rise(ElasticRegion? rise) => rise is null
        ? Row("elastic slope", $"none")
        : Row("elastic slope", $"{rise.Slope.NewtonMetersPerDegree:0.000} ± {rise.SlopeStandardError.NewtonMetersPerDegree:0.000} N·m/°, {rise.Start.Angle!.Value.Degrees:0.0}° to {rise.End.Angle!.Value.Degrees:0.0}°");

    private static string Place(string name, TracePoint? point) => point is null
        ? Row(name, $"not seen")
        : Row(name, $"{point.Torque.NewtonMeters:0.0} N·m at {point.Angle!.Value.Degrees:0.0}°, {point.Time.Seconds:0.000} s (sample {point.Index})");

    private static string Row(string name, FormattableString value) => $"{name,-14} {Panel.Text(value)}";
}
