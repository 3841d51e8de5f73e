using System.Text;
using Fastening;

namespace ReadATrace;

/// <summary>A trace as a picture: the whole record over time, and the rise over angle with what was found on it.</summary>
internal sealed class TraceDrawing
{
    private const double Width = 900, Left = 70, PlotWidth = 560, LegendLeft = 660;
    private const double TimeTop = 74, TimeHeight = 120, AngleTop = 268, AngleHeight = 300, Bottom = 640;
    private const double WindowsBeforeRise = 3;

    private const string Style =
        "<style>text{font:13px 'Liberation Sans',Arial,Helvetica,sans-serif;fill:#222}.title{font-size:16px}.small{font-size:11px;fill:#555}" +
        ".middle{text-anchor:middle}.end{text-anchor:end}.axis{fill:none;stroke:#555}.curve{fill:none;stroke:#444;stroke-width:1.2}" +
        ".line{fill:none;stroke:#b00020;stroke-width:1.6;stroke-dasharray:7 4}.mark{fill:#fff;stroke:#b00020;stroke-width:1.8}.full{fill:#b00020;stroke:#b00020}</style>\n";

    private readonly TighteningTrace _trace;
    private readonly TraceAnalysis _analysis;
    private readonly StringBuilder _svg = new();
    private double _legendY = AngleTop + 10;

    private TraceDrawing(TighteningTrace trace, TraceAnalysis analysis) => (_trace, _analysis) = (trace, analysis);

    /// <summary>The picture as SVG text.</summary>
    /// <param name="trace">A trace with angles.</param>
    /// <param name="analysis">Its analysis.</param>
    /// <param name="title">Above the picture.</param>
    /// <param name="notes">Below it: source and licence.</param>
    public static string Of(TighteningTrace trace, TraceAnalysis analysis, string title, params string[] notes)
    {
        var drawing = new TraceDrawing(trace, analysis);
        drawing.Begin(title, notes);
        drawing.DrawOverTime();
        drawing.DrawOverAngle();
        return drawing._svg.Append("</svg>\n").ToString();
    }

    private void Begin(string title, string[] notes)
    {
        double height = Bottom + 16 * notes.Length;
        Add($"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 {Width} {height}' width='{Width}' height='{height}'>\n");
        _svg.Append(Style);
        Add($"<rect width='{Width}' height='{height}' fill='#fff'/>\n<text class='title' x='24' y='30'>{Escaped(title)}</text>\n");
        for (int i = 0; i < notes.Length; i++) Add($"<text class='small' x='24' y='{Bottom + 16 * i}'>{Escaped(notes[i])}</text>\n");
    }

    private void DrawOverTime()
    {
        double[] times = [.. Enumerable.Range(0, _trace.Count).Select(i => _trace.TimeAt(i).Seconds)];
        (double low, double high) = Span(_trace.TorquesNewtonMeters.Span);
        var panel = new Panel(Left, TimeTop, PlotWidth, TimeHeight, times[0], times[^1], low, high);
        panel.DrawCurve(_svg, times, _trace.TorquesNewtonMeters.Span);
        panel.DrawAxes(_svg, "time, s", "torque, N·m");
        foreach ((TracePoint? point, string shape) in new[] { (_analysis.ShutOff, Square), (_analysis.Final, OpenSquare) })
        {
            Mark(panel, shape, point.Time.Seconds, point.Torque.NewtonMeters);
        }
    }

    private void DrawOverAngle()
    {
        ReadOnlySpan<double> angles = _trace.AnglesDegrees.Span;
        (double first, double last) = Span(angles);
        (double low, double high) = Span(_trace.TorquesNewtonMeters.Span);
        if (_analysis.ElasticRegion is ElasticRegion rise)
        {
            double begin = Math.Min(rise.Start.Angle!.Value.Degrees, _analysis.Snug?.Angle?.Degrees ?? double.PositiveInfinity);
            first = Math.Max(first, begin - WindowsBeforeRise * _analysis.Options.SmoothingWindow.Degrees);
            double furthest = _analysis.ShutOff.Angle!.Value.Degrees;
            last = furthest + 0.04 * (furthest - first);
        }

        var panel = new Panel(Left, AngleTop, PlotWidth, AngleHeight, first, last, low, high);
        panel.DrawCurve(_svg, angles, _trace.TorquesNewtonMeters.Span);
        panel.DrawAxes(_svg, "angle, °", "torque, N·m");
        DrawLine(panel, low, high);
        DrawFinding(panel, Circle, $"snug{InDoubt(TraceDoubts.Snug)}", _analysis.Snug);
        DrawFinding(panel, Diamond, $"yield onset{InDoubt(TraceDoubts.Yield)}", _analysis.YieldOnset);
        DrawFinding(panel, Triangle, $"offset yield{InDoubt(TraceDoubts.Yield)}", _analysis.OffsetYield);
        DrawFinding(panel, Cross, "peak", _analysis.Peak);
        DrawFinding(panel, Square, "shut-off", _analysis.ShutOff);
        DrawFinding(panel, OpenSquare, "end", _analysis.Final);
        DrawRemarks();
    }

    private void DrawLine(Panel panel, double low, double high)
    {
        if (_analysis.ElasticRegion is not ElasticRegion region) return;
        double slope = region.Slope.NewtonMetersPerDegree, start = region.Start.Angle!.Value.Degrees;
        double at = region.TorqueAt(region.Start.Angle.Value).NewtonMeters;
        double foot = Math.Max(_analysis.Snug?.Torque.NewtonMeters ?? at, low), top = Math.Min(region.TorqueAt(_analysis.ShutOff.Angle!.Value).NewtonMeters, high);
        Add($"<path class='line' d='M{panel.X(start + (foot - at) / slope):0.#},{panel.Y(foot):0.#}L{panel.X(start + (top - at) / slope):0.#},{panel.Y(top):0.#}'/>\n");
        Legend("<path class='line' d='M-8,0h16'/>", $"elastic line{InDoubt(TraceDoubts.Slope)}", $"{slope:0.####} ± {region.SlopeStandardError.NewtonMetersPerDegree:0.####} N·m/°");
    }

    private void DrawFinding(Panel panel, string shape, string name, TracePoint? point)
    {
        if (point is null) return;
        Mark(panel, shape, point.Angle!.Value.Degrees, point.Torque.NewtonMeters);
        Legend(shape, name, $"{point.Angle.Value.Degrees:0.0}°, {point.Torque.NewtonMeters:0.###} N·m");
    }

    /// <summary>Every remark with its place, one a line; what it doubts is said beside the findings.</summary>
    private void DrawRemarks()
    {
        if (_analysis.YieldOnset is null) Note($"yield: {(InDoubt(TraceDoubts.Yield).Length > 0 ? "cannot be told" : "none")}");
        foreach (TraceRemark remark in _analysis.Remarks) Note($"{Escaped(remark.ToString().Split(':')[0])} at {remark.At.Angle!.Value.Degrees:0.0}°");
    }

    private string InDoubt(TraceDoubts finding) => (_analysis.Doubts & finding) == 0 ? "" : ", in doubt";

    private void Note(FormattableString text)
    {
        Add($"<text class='small' x='{LegendLeft + 28}' y='{_legendY}'>{Panel.Text(text)}</text>\n");
        _legendY += 18;
    }

    private void Mark(Panel panel, string shape, double x, double y) => Add($"<g transform='translate({panel.X(x):0.#},{panel.Y(y):0.#})'>{shape}</g>\n");

    private void Legend(string shape, string name, FormattableString value)
    {
        Add($"<g transform='translate({LegendLeft + 10},{_legendY - 4})'>{shape}</g><text x='{LegendLeft + 28}' y='{_legendY}'>{name}</text>");
        Add($"<text x='{LegendLeft + 28}' y='{_legendY + 16}'>{Panel.Text(value)}</text>\n");
        _legendY += 42;
    }

    private void Add(FormattableString text) => _svg.Append(Panel.Text(text));

    private static (double Low, double High) Span(ReadOnlySpan<double> values)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (double value in values) (low, high) = (Math.Min(low, value), Math.Max(high, value));
        double margin = high > low ? 0.04 * (high - low) : 1;
        return (low - margin, high + margin);
    }

    private static string Escaped(string text) => text.Replace("&", "&amp;").Replace("<", "&lt;");

    private const string Circle = "<circle class='mark' r='5'/>";
    private const string Diamond = "<path class='mark full' d='M0,-7L7,0L0,7L-7,0Z'/>";
    private const string Triangle = "<path class='mark' d='M0,-7L7,5L-7,5Z'/>";
    private const string Cross = "<path class='mark' d='M-6,0H6M0,-6V6'/>";
    private const string Square = "<rect class='mark full' x='-4.5' y='-4.5' width='9' height='9'/>";
    private const string OpenSquare = "<rect class='mark' x='-4.5' y='-4.5' width='9' height='9'/>";
}
