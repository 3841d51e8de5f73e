namespace Fastening;

/// <summary>What is wrong with a curve, or hinders its reading.</summary>
/// <example><code>bool rattled = analysis.Has(TraceRemarkKind.StickSlip);</code></example>
public enum TraceRemarkKind : byte
{
    /// <summary>There is no stretch of the curve that rises along a line: the fastener was not seated, or the record is too short for the smoothing window.</summary>
    NoElasticRegion = 1,

    /// <summary>The record has no run-down before the rise, at least half a smoothing window long, from which the running torque could be read.</summary>
    NoRunDown = 2,

    /// <summary>The torque swung up and down by more than the stated amount, three times or more within one smoothing window.</summary>
    StickSlip = 3,

    /// <summary>Before shut-off the angle fell back by more than the stated angle.</summary>
    Reversal = 4,

    /// <summary>The highest smoothed torque stands more than one smoothing window before shut-off, and the torque did not come back to it.</summary>
    EarlyPeak = 5,

    /// <summary>Before shut-off the smoothed torque fell by more than the stated amount.</summary>
    TorqueDrop = 6,
}
