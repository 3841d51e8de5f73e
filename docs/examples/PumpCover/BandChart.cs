using System.Globalization;
using System.Text;
using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>The preload band as a picture: bars against the required and the permitted preload, and what makes the scatter. Reads without colour.</summary>
internal sealed class BandChart
{
    private const double Width = 900, Left = 220, PlotWidth = 620, Top = 130, BarHeight = 26, Row = 50, ShareWidth = 380, AxisY = Top + 3 * Row, SharesTop = AxisY + 84;

    private const string Style =
        "<style>text{font:13px 'Liberation Sans',Arial,Helvetica,sans-serif;fill:#222}.title{font-size:16px}.small{font-size:12px;fill:#555}" +
        ".middle{text-anchor:middle}.end{text-anchor:end}.axis{stroke:#6b6b6b;fill:none}.worst{fill:#fff;stroke:#222;stroke-width:1.6}" +
        ".most{fill:#9a9a9a;stroke:#222}.share{fill:#d0d0d0;stroke:#222}.limit{stroke:#222;stroke-width:1.6;stroke-dasharray:7 4}" +
        ".median{stroke:#222;stroke-width:2.4}</style>\n";

    private static readonly double[] TickFactors = [1, 2, 5, 10];

    private readonly PreloadOutlook _outlook;
    private readonly TighteningPlan _plan;
    private readonly StringBuilder _svg = new();
    private readonly double _low;
    private readonly double _high;

    private BandChart(PreloadOutlook outlook, TighteningPlan plan)
    {
        (_outlook, _plan) = (outlook, plan);
        Range<Force> worst = outlook.Band.WorstCase;
        BoltedJoint joint = plan.Job.Joint;
        double[] shown = [worst.Low.Kilonewtons, worst.High.Kilonewtons, joint.RequiredPreload.Kilonewtons, joint.PermittedPreload.Kilonewtons];
        double margin = Math.Max(0.08 * (shown.Max() - shown.Min()), 0.02 * shown.Max());
        (_low, _high) = (Math.Max(0, shown.Min() - margin), shown.Max() + margin);
    }

    private double Height => SharesTop + 28 * Math.Max(1, _outlook.Influences.Count) + 44;

    public static string Of(PreloadOutlook outlook, TighteningPlan plan)
    {
        var chart = new BandChart(outlook, plan);
        chart.DrawFrame();
        chart.DrawAxis();
        chart.DrawBars();
        chart.DrawLimits();
        chart.DrawInfluences();
        return chart._svg.Append("</svg>\n").ToString();
    }

    private void DrawFrame()
    {
        Add($"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 {Width} {Height}' width='{Width}' height='{Height}'>\n");
        _svg.Append(Style);
        Add($"<rect width='{Width}' height='{Height}' fill='#fff'/>\n");
        string title = Escaped($"Preload band: {_plan.Job.Title}");
        string unsuitable = _plan.IsSuitable ? "" : " The sheet is NOT SUITABLE: no bolt is to be tightened by it as it stands.";
        Add($"<text class='title' x='24' y='30'>{title}</text>\n");
        Add($"<text class='small' x='24' y='52'>Invented example; no real joint may be tightened by it.{unsuitable}</text>\n");
    }

    private void DrawAxis()
    {
        Add($"<path class='axis' d='M{Left},{AxisY}h{PlotWidth}'/>\n");
        double step = TickStep(_high - _low);
        for (double tick = Math.Ceiling(_low / step) * step; tick <= _high; tick += step)
        {
            Add($"<path class='axis' d='M{X(tick):0.#},{AxisY}v6'/><text class='middle' x='{X(tick):0.#}' y='{AxisY + 22}'>{tick:0.######}</text>\n");
        }

        Add($"<text class='middle' x='{Left + PlotWidth / 2}' y='{AxisY + 42}'>preload, kN</text>\n");
    }

    private void DrawBars()
    {
        DrawBar(0, "all limits", "every stated input at its limit", "worst", _outlook.Band.WorstCase, null);
        DrawBar(1, "95 % of bolts", "frictions independent", "most", _outlook.Band.Statistical, _outlook.Band.Median);
        DrawBar(2, "95 % of bolts", "frictions go together", "most", _outlook.OneLubricant.Statistical, _outlook.OneLubricant.Median);
    }

    private void DrawBar(int row, string name, string what, string style, Range<Force> range, Force? median)
    {
        double y = Top + row * Row, left = X(range.Low.Kilonewtons), right = X(range.High.Kilonewtons);
        Add($"<text class='end' x='{Left - 14}' y='{y + 11}'>{name}</text><text class='small end' x='{Left - 14}' y='{y + 27}'>{what}</text>\n");
        Add($"<rect class='{style}' x='{left:0.#}' y='{y}' width='{right - left:0.#}' height='{BarHeight}'/>\n");
        if (median is Force middle) Add($"<path class='median' d='M{X(middle.Kilonewtons):0.#},{y}v{BarHeight}'/>\n");
        string ends = $"{Show.Force(range.Low, MidpointRounding.ToNegativeInfinity)} to {Show.Force(range.High, MidpointRounding.ToPositiveInfinity)}";
        Add($"<text class='small middle' x='{(left + right) / 2:0.#}' y='{y + BarHeight + 14}'>{ends}, α_A {PreloadOutlook.Factor(range)}</text>\n");
    }

    private void DrawLimits()
    {
        BoltedJoint joint = _plan.Job.Joint;
        DrawLimit(joint.RequiredPreload, $"required {Show.Stated(joint.RequiredPreload.Kilonewtons)} kN", 82);
        DrawLimit(joint.PermittedPreload, $"permitted {Show.Force(joint.PermittedPreload, MidpointRounding.ToNegativeInfinity)}", 102);
    }

    private void DrawLimit(Force preload, string text, double y)
    {
        double x = X(preload.Kilonewtons);
        Add($"<path class='limit' d='M{x:0.#},{y + 6}V{AxisY}'/><text class='middle' x='{x:0.#}' y='{y}'>{text}</text>\n");
    }

    private void DrawInfluences()
    {
        Add($"<text x='24' y='{SharesTop - 14}'>What makes the scatter: share of the variance, the dominating input first</text>\n");
        double y = SharesTop;
        foreach ((string name, double weight) in _outlook.Influences)
        {
            Add($"<text class='end' x='{Left - 14}' y='{y + 14}'>{name}</text><rect class='share' x='{Left}' y='{y}' width='{ShareWidth * weight:0.#}' height='18'/>");
            Add($"<text x='{Left + ShareWidth * weight + 8:0.#}' y='{y + 14}'>{weight * 100:0} %</text>\n");
            y += 28;
        }

        Add($"<text class='small' x='24' y='{Height - 16}'>Thick mark: median. Torque: {_plan.Job.Deviation.PartsOfTorque}. Every value within the stated limits equally likely.</text>\n");
    }

    private static double TickStep(double span)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(span / 5)));
        return TickFactors.Select(factor => factor * power).First(step => span / step <= 10);
    }

    private double X(double kilonewtons) => Left + PlotWidth * (kilonewtons - _low) / (_high - _low);

    private void Add(FormattableString text) => _svg.Append(text.ToString(CultureInfo.InvariantCulture));

    private static string Escaped(string text) => text.Replace("&", "&amp;").Replace("<", "&lt;");
}
