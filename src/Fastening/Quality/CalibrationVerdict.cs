using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>Whether a tool complies, by a rule, with every reason.</summary>
/// <remarks>
/// One reading rejected fails the tool. Otherwise it is undecidable when a reading lies in a guard band, when points, readings or the resolution are missing,
/// or when the reference device is not accurate enough: its uncertainty at most a quarter of the permitted deviation (ISO 6789-2:2017 §4.3).
/// </remarks>
/// <example><code>CalibrationVerdict verdict = calibration.Judge(DecisionRule.IlacG8);
/// foreach (CalibrationReason reason in verdict.Reasons) Console.WriteLine(reason);</code></example>
public sealed class CalibrationVerdict
{
    internal CalibrationVerdict(ToolCalibration calibration, CalibrationPoint[] points, DecisionRule rule)
    {
        Rule = rule;
        var reasons = new List<CalibrationReason>();
        bool rejected = false;
        foreach (CalibrationPoint point in points) rejected |= JudgePoint(calibration, point, rule, reasons);
        reasons.AddRange(calibration.Lacking());
        Conforms = rejected ? false : reasons.Count > 0 ? null : true;
        Worst = points.SelectMany(point => new[] { point.LeastDeviation, point.GreatestDeviation }).OrderByDescending(Math.Abs).First();
        Permitted = calibration.Tool.Permitted;
        Reasons = reasons.AsReadOnly();
    }

    /// <summary>True: the tool complies. False: it does not. Null: undecidable by this calibration; the reasons say why.</summary>
    public bool? Conforms { get; }

    /// <summary>Why not, or why it is undecidable; empty when the tool complies.</summary>
    public IReadOnlyList<CalibrationReason> Reasons { get; }

    /// <summary>The rule it was judged by.</summary>
    public DecisionRule Rule { get; }

    /// <summary>The deviation of all readings that is furthest from 0; positive = delivers less than it says.</summary>
    public Ratio WorstDeviation => Si.Ratio(Worst);

    /// <summary>The permitted deviation, either way.</summary>
    public Ratio PermittedDeviation => Si.Ratio(Permitted);

    private double Worst { get; }

    private double Permitted { get; }

    /// <inheritdoc />
    public override string ToString() => Conforms switch
    {
        true => $"complies: {Figures}",
        false => $"does not comply: {Figures}",
        _ => $"undecidable: {Figures}: {string.Join("; ", Reasons)}",
    };

    private string Figures => Print.Text($"worst deviation {Si.Ratio(Worst):+0.00;−0.00;0.00}, permitted ±{Si.Ratio(Permitted):0.##}, {Rule.Name}");

    /// <summary>A deviation of ±L is a reference torque between X_a/(1 + L) and X_a/(1 − L).</summary>
    private static bool JudgePoint(ToolCalibration calibration, CalibrationPoint point, DecisionRule rule, List<CalibrationReason> reasons)
    {
        double limit = calibration.Tool.Permitted;
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Si.Torque(point.SiTorque / (1 + limit)), point.Torque, Si.Torque(point.SiTorque / (1 - limit)));
        double expanded = calibration.Uncertainty.DecidingAt(point);
        int outside = 0, unsure = 0;
        foreach (double reference in point.SiReferences)
        {
            DecisionZone zone = window.ZoneOf(Si.Torque(reference), MeasurementUncertainty.Expanded(Si.Torque(expanded * reference), 2), rule);
            if (zone == DecisionZone.Reject) outside++;
            else if (zone != DecisionZone.Accept) unsure++;
        }

        int count = point.SiReferences.Length;
        if (outside > 0)
        {
            reasons.Add(new(CalibrationReasonKind.ReadingOutside, $"{outside} of {count} readings at {point.SiTorque:0.###} N·m deviate by more than {Si.Ratio(limit):0.##} ({rule.Name})", point.SiTorque));
        }

        if (unsure > 0)
        {
            reasons.Add(new(
                CalibrationReasonKind.ReadingNearLimit,
                $"{unsure} of {count} readings at {point.SiTorque:0.###} N·m are too near the limit of {Si.Ratio(limit):0.##} to decide (uncertainty {Si.Ratio(expanded):0.##}, {rule.Name})",
                point.SiTorque));
        }

        return outside > 0;
    }
}
