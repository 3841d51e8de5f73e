using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>
/// How the seventy-three measured runs are read at one smoothing window: runs with a snug; those of them with neither snug nor slope in doubt; runs
/// with a finding that the rule of misreading, (a) and (b) or with (c), refuses; and those where no remark doubts it.
/// </summary>
internal sealed record MeasuredCount(double Window, int Read, int Undoubted, int Misread, int WithLine, int Silent)
{
    public static MeasuredCount At(double window)
    {
        int read = 0, undoubted = 0, misread = 0, withLine = 0, silent = 0;
        foreach (MeasuredRun run in MeasuredRun.All)
        {
            TighteningTrace trace = run.Trace;
            TraceAnalysis analysis = trace.Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(window)));
            var plain = new PlainCurve(trace);
            TraceDoubts places = Misreading.Beginning(plain, analysis) | Misreading.Yield(plain, analysis), all = Misreading.Of(trace, analysis);
            if (analysis.Snug is not null) read++;
            if (analysis.Snug is not null && (analysis.Doubts & (TraceDoubts.Snug | TraceDoubts.Slope)) == 0) undoubted++;
            if (places != TraceDoubts.None) misread++;
            if (all != TraceDoubts.None) withLine++;
            if ((all & ~analysis.Doubts) != TraceDoubts.None) silent++;
        }

        return new MeasuredCount(window, read, undoubted, misread, withLine, silent);
    }
}
