using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>A tightening judged again with the torque that the tool really delivered.</summary>
/// <remarks>Equation <c>calibration.delivered</c>: delivered = indicated/(1 + deviation).</remarks>
/// <example><code>RejudgedReading first = recall.ToRevisit[0];
/// Console.WriteLine(first);      // A-12, 2026-03-02 09:14 +01:00: indicated 148 N·m, delivered 139.6 N·m (139.2 to 140.1), Within, now Below</code></example>
public sealed class RejudgedReading
{
    private readonly double? _mean, _lowest, _highest;

    internal RejudgedReading(ToolReading reading, ToolCalibration calibration, DecisionRule rule, bool clears)
    {
        Reading = reading;
        Before = reading.Window.Classify(reading.Indicated);
        if (calibration.DeviationAt(reading.SiIndicated) is not ToolDeviation deviation)
        {
            (After, Doubt) = (Conformity.Undecidable, RecallDoubt.OutsidePoints);
            return;
        }

        _mean = Delivered(reading, deviation.Mean);
        _lowest = Delivered(reading, deviation.Greatest);
        _highest = Delivered(reading, deviation.Least);
        Conformity atLowest = Judge(_lowest.Value, deviation.Expanded, rule);
        Doubt = DoubtOf(atLowest, Judge(_highest.Value, deviation.Expanded, rule), clears);
        After = Doubt is null ? atLowest : Conformity.Undecidable;
    }

    /// <summary>The tightening.</summary>
    public ToolReading Reading { get; }

    /// <summary>Delivered torque by the mean deviation; null when the reading lies outside the calibrated points.</summary>
    public Torque? DeliveredTorque => Torque(_mean);

    /// <summary>Delivered torque by the greatest deviation of the readings of the calibration.</summary>
    public Torque? LowDelivered => Torque(_lowest);

    /// <summary>Delivered torque by the least deviation of the readings of the calibration.</summary>
    public Torque? HighDelivered => Torque(_highest);

    /// <summary>The verdict on what the tool said, by the limits alone.</summary>
    public Conformity Before { get; }

    /// <summary>
    /// The verdict on what it delivered, by the rule and with the uncertainty of the calibration: undecidable when the lowest and the highest
    /// delivered torque disagree, when one is too near a limit, when nothing is known there, or when the calibration is not complete enough to clear it.
    /// </summary>
    public Conformity After { get; }

    /// <summary>Why <see cref="After"/> is undecidable; null when it is not.</summary>
    public RecallDoubt? Doubt { get; }

    /// <summary>Whether the fastener must be looked at again: it does not conform for certain.</summary>
    public bool NeedsRevisit => After != Conformity.Within;

    /// <inheritdoc />
    public override string ToString() => _mean is double mean
        ? Print.Text($"{Reading.Fastener}, {Reading.At:yyyy-MM-dd HH:mm zzz}: indicated {Reading.SiIndicated:0.##} N·m, delivered {mean:0.##} N·m ({_lowest:0.##} to {_highest:0.##}), {Before}, now {After}{Because}")
        : $"{Reading}, {Before}, now {After}{Because}";

    private string Because => Doubt switch
    {
        RecallDoubt.OutsidePoints => ": outside the points of the calibration",
        RecallDoubt.NearLimit => ": too near a limit for the uncertainty of the calibration",
        RecallDoubt.ExtremesDisagree => ": the lowest and the highest disagree",
        RecallDoubt.CalibrationIncomplete => ": the calibration is not complete",
        _ => "",
    };

    private static RecallDoubt? DoubtOf(Conformity atLowest, Conformity atHighest, bool clears)
    {
        if (atLowest == Conformity.Undecidable || atHighest == Conformity.Undecidable) return RecallDoubt.NearLimit;
        if (atLowest != atHighest) return RecallDoubt.ExtremesDisagree;
        return atLowest == Conformity.Within && !clears ? RecallDoubt.CalibrationIncomplete : null;
    }

    /// <summary>An uncertainty wider than any window is as good as the widest one: nothing can be decided.</summary>
    private Conformity Judge(double delivered, double expanded, DecisionRule rule) =>
        Reading.Window.Classify(Si.Torque(delivered), MeasurementUncertainty.Expanded(Si.Torque(Math.Min(expanded * delivered, Domains.Sample.High)), 2), rule);

    private static double Delivered(ToolReading reading, double deviation) =>
        CalibrationEquations.Delivered(reading.SiIndicated, deviation);

    private static Torque? Torque(double? newtonMeters) => newtonMeters is double si ? Si.Torque(si) : null;
}
