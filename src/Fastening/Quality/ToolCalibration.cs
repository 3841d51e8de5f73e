using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>One calibration of a torque tool: the readings at its points, how uncertain they are, and what follows from them.</summary>
/// <remarks>
/// After ISO 6789-1:2017 and ISO 6789-2:2017; limits, points, numbers of readings and the budget were recalled and are provisional, unless the class
/// of the tool is a stated one (<see cref="TorqueToolClass.Stated"/>). Every reading must comply, not the mean. The sign of a deviation: positive = the tool delivers less than it says.
/// </remarks>
/// <example><code>var calibration = new ToolCalibration(tool, CalibrationState.AsFound, performed, points, uncertainty);
/// CalibrationVerdict verdict = calibration.Judge(DecisionRule.IlacG8);</code></example>
public sealed class ToolCalibration
{
    private const double ShareOfReference = 0.25;

    private readonly CalibrationPoint[] _points;

    /// <summary>A calibration from its points.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="state">Before or after adjustment.</param>
    /// <param name="performed">When.</param>
    /// <param name="points">The points, each torque once; sorted here.</param>
    /// <param name="uncertainty">What makes the readings uncertain.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">There is no point, or a torque comes twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="state"/> is no state, or a point lies above the tool's maximum by more than 1 %.</exception>
    /// <example><code>var calibration = new ToolCalibration(tool, CalibrationState.AsLeft, performed, points, uncertainty);</code></example>
    public ToolCalibration(
        TorqueTool tool, CalibrationState state, DateTimeOffset performed, IReadOnlyList<CalibrationPoint> points, CalibrationUncertainty uncertainty)
    {
        Tool = Guard.NotNull(tool);
        State = state is CalibrationState.AsFound or CalibrationState.AsLeft
            ? state
            : throw new ArgumentOutOfRangeException(nameof(state), $"state is {state:D}; it must be AsFound or AsLeft.");
        Performed = performed;
        Uncertainty = Guard.NotNull(uncertainty);
        _points = [.. Guard.NotNull(points).Select((point, i) => Guard.NotNull(point, $"points[{i}]")).OrderBy(point => point.SiTorque)];
        if (_points.Length == 0) throw new ArgumentException("points is empty; a calibration has at least one point.", nameof(points));
        for (int i = 1; i < _points.Length; i++)
        {
            if (CalibrationPlan.IsSameTorque(tool, _points[i].SiTorque, _points[i - 1].SiTorque))
            {
                throw new ArgumentException(
                    $"points has {Guard.Show(_points[i].Torque)} and {Guard.Show(_points[i - 1].Torque)}, one point twice; put their readings together.", nameof(points));
            }
        }

        CalibrationPoint last = _points[_points.Length - 1];
        if (last.SiTorque > tool.SiHigh && !CalibrationPlan.IsSameTorque(tool, last.SiTorque, tool.SiHigh))
        {
            Guard.RefuseAgainst(nameof(points), last.Torque, $"at most the tool's maximum, {Guard.ShowToCompare(tool.HighTorque)}");
        }
    }

    /// <summary>The tool.</summary>
    public TorqueTool Tool { get; }

    /// <summary>Before or after adjustment.</summary>
    public CalibrationState State { get; }

    /// <summary>When it was performed.</summary>
    public DateTimeOffset Performed { get; }

    /// <summary>The points, lowest torque first.</summary>
    public IReadOnlyList<CalibrationPoint> Points => Array.AsReadOnly(_points);

    /// <summary>What makes the readings uncertain.</summary>
    public CalibrationUncertainty Uncertainty { get; }

    /// <summary>Whether the tool complies: every reading at every point, by a rule agreed beforehand, and whether the calibration is complete.</summary>
    /// <param name="rule">Decision rule; <see cref="DecisionRule.SimpleAcceptance"/> is a rule too and must be chosen by name.</param>
    /// <returns>The verdict with every reason.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rule"/> is null.</exception>
    /// <example><code>calibration.Judge(DecisionRule.SimpleAcceptance).Conforms</code></example>
    public CalibrationVerdict Judge(DecisionRule rule) => new(this, _points, Guard.NotNull(rule));

    /// <summary>What this calibration says about work done with the tool since its last good calibration.</summary>
    /// <remarks>
    /// The deviation found is applied to all of it, because the time of the change is unknown. Between two points the deviation is
    /// interpolated, and so are its extremes; of the uncertainties at two points the larger one counts. Outside the points nothing is known, and
    /// such a reading is undecidable. A calibration that leaves it undecidable whether the tool complies (<see cref="Judge"/>) does not clear work either: then no
    /// reading is within, and <see cref="ToolRecall.Lacking"/> says why.
    /// </remarks>
    /// <param name="lastGood">When the tool was last known to be good.</param>
    /// <param name="readings">The readings of this tool, in any order; those at or before <paramref name="lastGood"/> and after this calibration are left out.</param>
    /// <param name="rule">Decision rule for what was delivered, with the uncertainty of this calibration; there is no default.</param>
    /// <returns>The readings judged again with the torque that the tool really delivered.</returns>
    /// <exception cref="ArgumentNullException">A reference, or a reading, is null.</exception>
    /// <exception cref="InvalidOperationException">The calibration was made after adjustment: it says nothing about work done before.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lastGood"/> is not before this calibration.</exception>
    /// <example><code>ToolRecall recall = found.Rejudge(lastGood, readings, DecisionRule.IlacG8);
    /// foreach (RejudgedReading reading in recall.ToRevisit) Console.WriteLine(reading);</code></example>
    public ToolRecall Rejudge(DateTimeOffset lastGood, IEnumerable<ToolReading> readings, DecisionRule rule)
    {
        Guard.NotNull(rule);
        if (State != CalibrationState.AsFound)
        {
            throw new InvalidOperationException("the calibration was made after adjustment; only one as found says what the tool did before.");
        }

        if (lastGood >= Performed)
        {
            throw new ArgumentOutOfRangeException(nameof(lastGood), Print.Text(
                $"lastGood is {lastGood:yyyy-MM-dd HH:mm zzz}; it must be before this calibration, {Performed:yyyy-MM-dd HH:mm zzz}."));
        }

        return new ToolRecall(this, lastGood, Guard.NotNull(readings), rule);
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"{Tool.Name}, {(State == CalibrationState.AsFound ? "as found" : "as left")} on {Performed:yyyy-MM-dd}: {string.Join("; ", Points)}");

    /// <summary>What keeps the calibration from being complete.</summary>
    internal IEnumerable<CalibrationReason> Lacking()
    {
        foreach (CalibrationReason missing in CalibrationPlan.Missing(Tool, _points)) yield return missing;
        if (Tool.Class.HasScale && !Uncertainty.IsResolutionStated)
        {
            yield return new(CalibrationReasonKind.ResolutionMissing, $"no resolution is stated, and a tool with a scale or display has one");
        }

        double permitted = Tool.Permitted * ShareOfReference;
        if (Tolerance.Exceeds(Uncertainty.DecidingReference, permitted))
        {
            yield return new(
                CalibrationReasonKind.ReferenceTooUncertain,
                $"the reference device has an uncertainty of {Si.Ratio(Uncertainty.DecidingReference):0.##}; for this tool at most {Si.Ratio(permitted):0.##} (ISO 6789-2:2017 §4.3)");
        }
    }

    /// <summary>Deviation, its extremes and the uncertainty that a decision counts at a torque; null outside the points.</summary>
    internal ToolDeviation? DeviationAt(double torque)
    {
        int above = Array.FindIndex(_points, point => torque <= point.SiTorque || CalibrationPlan.IsSameTorque(Tool, torque, point.SiTorque));
        if (above < 0) return null;
        ToolDeviation high = ToolDeviation.At(_points[above], Uncertainty);
        if (CalibrationPlan.IsSameTorque(Tool, torque, _points[above].SiTorque)) return high;
        if (above == 0) return null;
        double from = _points[above - 1].SiTorque;
        return ToolDeviation.Between(
            ToolDeviation.At(_points[above - 1], Uncertainty), high, (torque - from) / (_points[above].SiTorque - from));
    }
}
