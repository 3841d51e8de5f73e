using Fastening;
using ScottPlot;
using ScottPlot.TickGenerators;
using UnitsNet;

namespace PumpCover;

/// <summary>Readings at the fastener against the window. Shape and fill tell the verdicts apart, so it reads without colour.</summary>
internal sealed class ReadingsChart
{
    private const int Width = 980, Height = 600;
    private const double LeftEdge = 0.4, LeastHeight = 0.02;
    private const string Font = "Liberation Sans", FontAndFallbacks = "Liberation Sans, Arial, Helvetica, sans-serif";

    private static readonly Color Ink = Color.FromHex("#222222");
    private static readonly Color Faint = Color.FromHex("#6B6B6B");
    private static readonly Color Band = Color.FromHex("#ECECEC");

    private readonly Plot _plot;
    private readonly JudgedLog _judged;
    private readonly ToleranceWindow<Torque> _window;
    private readonly int[] _bolts;
    private readonly double _bottom;
    private readonly double _top;

    private ReadingsChart(Plot plot, JudgedLog judged, TighteningPlan plan)
    {
        _plot = plot;
        _judged = judged;
        _window = plan.Window;
        _bolts = [.. plan.Job.Bolts];
        double[] torques = [_window.Lower!.Value.NewtonMeters, _window.Upper!.Value.NewtonMeters, .. judged.Judgements.Select(j => j.AtFastener.NewtonMeters)];
        double height = Math.Max(torques.Max() - torques.Min(), LeastHeight * _window.Target!.Value.NewtonMeters);
        bool labelled = judged.BoltsWithout.Count + judged.BoltsRefused.Count > 0;
        (_bottom, _top) = (torques.Min() - (labelled ? 0.3 : 0.12) * height, torques.Max() + 0.12 * height);
    }

    public static string Of(JudgedLog judged, TighteningPlan plan)
    {
        using var plot = new Plot();
        new ReadingsChart(plot, judged, plan).Draw(plan.Job.Title);
        return plot.GetSvgXml(Width, Height).Replace($"\"{Font}\"", $"\"{FontAndFallbacks}\"");
    }

    private double RightEdge => _bolts.Length + 0.6;

    private void Draw(string title)
    {
        DrawWindow();
        DrawReadings();
        DrawAxes(title);
        _plot.Font.Set(Font);
    }

    private void DrawWindow()
    {
        var band = _plot.Add.Rectangle(LeftEdge, RightEdge, _window.Lower!.Value.NewtonMeters, _window.Upper!.Value.NewtonMeters);
        (band.FillColor, band.LineWidth) = (Band, 0);
        DrawLimit(_window.Upper!.Value, $"upper limit\n{Show.Upper(_window)}", LinePattern.Dashed);
        DrawLimit(_window.Target!.Value, $"target\n{Show.Torque(_window.Target!.Value, _window)}", LinePattern.Solid);
        DrawLimit(_window.Lower!.Value, $"lower limit\n{Show.Lower(_window)}", LinePattern.Dashed);
    }

    private void DrawLimit(Torque torque, string text, LinePattern pattern)
    {
        double y = torque.NewtonMeters;
        var line = _plot.Add.Line(LeftEdge, y, RightEdge, y);
        (line.Color, line.LineWidth, line.LinePattern) = (Faint, 1.2f, pattern);
        Label(text, RightEdge + 0.1, y, Alignment.MiddleLeft);
    }

    private void DrawReadings()
    {
        foreach (IGrouping<Mark, Judgement> group in _judged.Judgements.GroupBy(MarkOf).OrderBy(group => group.Key))
        {
            double[] x = [.. group.Select(j => Place(j.Reading.Bolt))];
            double[] y = [.. group.Select(j => j.AtFastener.NewtonMeters)];
            var points = _plot.Add.Markers(x, y, ShapeOf(group.Key), 11, Ink);
            points.MarkerStyle.LineColor = Ink;
            points.MarkerStyle.LineWidth = 1.6f;
            points.LegendText = NameOf(group.Key);
            if (group.Key is Mark.Conforms or Mark.BoltDoesNot) continue;
            for (int i = 0; i < x.Length; i++) Label(NameOf(group.Key), x[i], y[i], Alignment.LowerCenter, above: true);
        }

        foreach (int bolt in _judged.BoltsWithout) LabelUpright("no reading", bolt);
        foreach (int bolt in _judged.BoltsRefused) LabelUpright("line not judged", bolt);
    }

    private void DrawAxes(string title)
    {
        _plot.Axes.SetLimits(LeftEdge, RightEdge + 1.6 * _bolts.Length / 12, _bottom, _top);
        _plot.Axes.Bottom.TickGenerator = new NumericManual(
            [.. _bolts.Select(Place)], [.. _bolts.Select(bolt => $"{bolt}")]);
        _plot.Axes.Bottom.Label.Text = "bolt";
        _plot.Axes.Left.Label.Text = "torque at the fastener, N·m";
        _plot.Axes.Title.Label.Text = $"Readings: {title} (invented example)";
        _plot.Axes.Title.Label.FontSize = 16;
        foreach (var label in new[] { _plot.Axes.Bottom.Label, _plot.Axes.Left.Label })
        {
            label.Bold = false;
            label.FontSize = 14;
        }

        _plot.Axes.Title.Label.Bold = false;
        _plot.Axes.Left.TickGenerator = new NumericAutomatic { TickDensity = 0.5, MinorTickGenerator = new EvenlySpacedMinorTickGenerator(1) };
        _plot.Axes.Color(Ink);
        _plot.Axes.Right.FrameLineStyle.Width = 0;
        _plot.Axes.Top.FrameLineStyle.Width = 0;
        _plot.Axes.Left.MinimumSize = 72;
        _plot.Axes.Right.MinimumSize = 18;
        _plot.HideGrid();
        if (_judged.Judgements.Count > 0) DrawLegend();
    }

    /// <summary>A legend without an entry would leave the whole drawing blank.</summary>
    private void DrawLegend()
    {
        _plot.ShowLegend(Edge.Bottom);
        _plot.Legend.Orientation = Orientation.Horizontal;
        _plot.Legend.OutlineWidth = 0;
        _plot.Legend.ShadowColor = Colors.Transparent;
        _plot.Legend.FontSize = 12;
        _plot.Legend.InterItemPadding = new PixelPadding(4, 4, 2, 2);
    }

    private void Label(string text, double x, double y, Alignment alignment, bool above = false)
    {
        var label = _plot.Add.Text(text, x, y);
        label.Alignment = alignment;
        label.LabelFontName = Font;
        label.LabelFontColor = Ink;
        label.LabelFontSize = 12;
        if (above) label.OffsetY = -9;
    }

    private void LabelUpright(string text, int bolt)
    {
        var label = _plot.Add.Text(text, Place(bolt), _bottom + 0.03 * (_top - _bottom));
        label.LabelRotation = -90;
        label.Alignment = Alignment.MiddleLeft;
        label.LabelFontName = Font;
        label.LabelFontColor = Faint;
        label.LabelFontSize = 12;
    }

    /// <summary>Bolts stand side by side whatever their numbers.</summary>
    private double Place(int bolt) => Array.IndexOf(_bolts, bolt) + 1;

    private Mark MarkOf(Judgement judgement)
    {
        if (judgement.Has(FindingKind.High)) return Mark.High;
        if (judgement.Has(FindingKind.OverRotated)) return Mark.RotationOutside;
        if (_judged.Replacement(judgement) is not null) return Mark.Replaced;
        if (judgement.Has(FindingKind.Low)) return Mark.Low;
        if (judgement.Has(FindingKind.UnderRotated)) return Mark.RotationOutside;
        if (judgement.Has(FindingKind.TooFast)) return Mark.TooFast;
        if (judgement.Has(FindingKind.NotJudged)) return Mark.NotJudged;
        return _judged.BoltsConforming.Contains(judgement.Reading.Bolt) ? Mark.Conforms : Mark.BoltDoesNot;
    }

    private static MarkerShape ShapeOf(Mark mark) => mark switch
    {
        Mark.Conforms => MarkerShape.FilledCircle,
        Mark.BoltDoesNot => MarkerShape.OpenCircle,
        Mark.Low => MarkerShape.OpenTriangleDown,
        Mark.High => MarkerShape.FilledTriangleUp,
        Mark.TooFast => MarkerShape.FilledSquare,
        Mark.RotationOutside => MarkerShape.OpenSquare,
        Mark.NotJudged => MarkerShape.OpenDiamond,
        _ => MarkerShape.Eks,
    };

    private static string NameOf(Mark mark) => mark switch
    {
        Mark.Conforms => "conforms",
        Mark.BoltDoesNot => "bolt does not conform",
        Mark.Low => "low",
        Mark.High => "high",
        Mark.TooFast => "too fast",
        Mark.RotationOutside => "rotation outside",
        Mark.NotJudged => "not judged in full",
        _ => "replaced",
    };

    private enum Mark
    {
        Conforms,
        BoltDoesNot,
        Low,
        High,
        TooFast,
        RotationOutside,
        NotJudged,
        Replaced,
    }
}
