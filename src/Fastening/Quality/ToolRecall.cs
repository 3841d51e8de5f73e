using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>The work done with a tool since it was last known to be good, judged again with what it really delivered.</summary>
/// <example><code>ToolRecall recall = found.Rejudge(lastGood, readings, DecisionRule.IlacG8);
/// Console.WriteLine(recall);     // 31 of 48 readings need a second look</code></example>
public sealed class ToolRecall
{
    internal ToolRecall(ToolCalibration calibration, DateTimeOffset lastGood, IEnumerable<ToolReading> readings, DecisionRule rule)
    {
        Calibration = calibration;
        LastGood = lastGood;
        Rule = rule;
        Lacking = Array.AsReadOnly(calibration.Lacking().ToArray());
        var rejudged = new List<RejudgedReading>();
        int leftOut = 0, index = 0;
        foreach (ToolReading reading in readings)
        {
            Guard.NotNull(reading, $"readings[{index++}]");
            if (reading.At > lastGood && reading.At <= calibration.Performed) rejudged.Add(new RejudgedReading(reading, calibration, rule, clears: Lacking.Count == 0));
            else leftOut++;
        }

        Readings = Array.AsReadOnly(rejudged.OrderBy(reading => reading.Reading.At).ToArray());
        ToRevisit = Array.AsReadOnly(Readings.Where(reading => reading.NeedsRevisit).ToArray());
        LeftOut = leftOut;
    }

    /// <summary>The calibration that found the deviation.</summary>
    public ToolCalibration Calibration { get; }

    /// <summary>When the tool was last known to be good.</summary>
    public DateTimeOffset LastGood { get; }

    /// <summary>The rule that what was delivered is judged by.</summary>
    public DecisionRule Rule { get; }

    /// <summary>What keeps the calibration from clearing work: points, readings, the resolution, a better reference device; empty when it is complete.</summary>
    public IReadOnlyList<CalibrationReason> Lacking { get; }

    /// <summary>The readings after that and up to the calibration, oldest first.</summary>
    public IReadOnlyList<RejudgedReading> Readings { get; }

    /// <summary>Those that do not conform for certain, oldest first.</summary>
    public IReadOnlyList<RejudgedReading> ToRevisit { get; }

    /// <summary>How many readings were given that lie outside that time.</summary>
    public int LeftOut { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{ToRevisit.Count} of {Readings.Count} readings need a second look");
}
