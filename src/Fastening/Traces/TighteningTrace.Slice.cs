using Fastening.Internals;

namespace Fastening;

/// <content>A part of a trace.</content>
public sealed partial class TighteningTrace
{
    /// <summary>A part of the trace by samples, over the same memory; <c>trace[from..to]</c> says the same.</summary>
    /// <param name="start">Index of its first sample.</param>
    /// <param name="length">Number of its samples, at least 2.</param>
    /// <returns>The part, on the clock of the trace; its indices begin at 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The part does not lie within the trace, or has fewer than two samples.</exception>
    /// <example><code>TighteningTrace lastStep = trace[1200..];
    /// TighteningTrace same = trace.Slice(start: 1200, length: trace.Count - 1200);</code></example>
    public TighteningTrace Slice(int start, int length)
    {
        if (start < 0 || start > Count - LeastCount) Guard.RefuseAgainst(nameof(start), start, $"from 0 to {Count - LeastCount}");
        if (length < LeastCount || length > Count - start) Guard.RefuseAgainst(nameof(length), length, $"from {LeastCount} to {Count - start}");
        return new TighteningTrace(
            Part(TimesSeconds), _start + start * _interval, _interval, Part(AnglesDegrees), Part(TorquesNewtonMeters), Part(ForcesNewtons));

        ReadOnlyMemory<double> Part(ReadOnlyMemory<double> column) => column.IsEmpty ? column : column.Slice(start, length);
    }

    /// <summary>A part of the trace between two points that an analysis of it found, both samples included.</summary>
    /// <param name="from">The first point, snug say.</param>
    /// <param name="to">The last point, shut-off say.</param>
    /// <returns>The part, on the clock of the trace, over the same memory; its indices begin at 0.</returns>
    /// <exception cref="ArgumentNullException">A point is null.</exception>
    /// <exception cref="ArgumentException">A point is not of this trace, or the points are not in order.</exception>
    /// <example><code>TraceAnalysis analysis = trace.Analyze(options);
    /// if (analysis.Snug is TracePoint snug) Console.WriteLine(trace.Slice(snug, analysis.ShutOff));</code></example>
    public TighteningTrace Slice(TracePoint from, TracePoint to)
    {
        RefuseStranger(Guard.NotNull(from), nameof(from));
        RefuseStranger(Guard.NotNull(to), nameof(to));
        int length = to.Index - from.Index + 1;
        if (length < LeastCount) throw new ArgumentException($"The point is at sample {to.Index}; it must lie behind the first, at sample {from.Index}.", nameof(to));
        return Slice(from.Index, length);
    }

    private void RefuseStranger(TracePoint point, string name)
    {
        if (point.Index < Count && Clock[point.Index] == Si.Of(point.Time)) return;
        throw new ArgumentException($"The point ({point}) is not of this trace ({this}).", name);
    }
}
