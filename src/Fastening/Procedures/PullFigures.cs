namespace Fastening;

/// <summary>What a pull tells, as numbers: N·m, degrees, seconds, contact as 1 or 0; NaN where it was not measured.</summary>
/// <param name="Torque">The torque.</param>
/// <param name="Move">The rotation of this pull.</param>
/// <param name="Time">The time it took.</param>
/// <param name="Contact">Firm contact.</param>
internal readonly record struct PullFigures(double Torque, double Move, double Time, double Contact)
{
    /// <summary>The rotation of the step, all pulls added up.</summary>
    public double Turn { get; init; } = double.NaN;

    /// <summary>A pull that moved nothing has no rate to limit.</summary>
    public double Rate => Move == 0 ? 0 : Move / Time;

    public double Of(CriterionMeasure measure) => measure switch
    {
        CriterionMeasure.Torque => Torque,
        CriterionMeasure.Turn => Turn,
        CriterionMeasure.Move => Move,
        CriterionMeasure.Rate => Rate,
        _ => Contact,
    };
}
