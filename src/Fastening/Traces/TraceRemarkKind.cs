namespace Fastening;

/// <summary>What was noticed on a curve: what is wrong with it, what hinders its reading, and yield.</summary>
/// <example><code>bool rattled = analysis.Has(TraceRemarkKind.StickSlip);</code></example>
public enum TraceRemarkKind : byte
{
    /// <summary>No stretch of the curve rises along a line: the fastener was not seated, or the record is too short for the smoothing window. Doubts: yield.</summary>
    NoElasticRegion = 1,

    /// <summary>The record has no level run-down before the rise, at least two smoothing windows long, from which the run-down torque could be read.</summary>
    NoRunDown = 2,

    /// <summary>The torque swung up and down by more than the stated amount, three times or more within one smoothing window.</summary>
    StickSlip = 3,

    /// <summary>Before shut-off the angle fell back by more than the stated angle.</summary>
    Reversal = 4,

    /// <summary>The highest smoothed torque stands more than one smoothing window before shut-off, and the torque did not come back to it.</summary>
    EarlyPeak = 5,

    /// <summary>Before shut-off the torque, as a mean over a quarter of the smoothing window, fell by more than the stated amount.</summary>
    TorqueDrop = 6,

    /// <summary>The fastener yielded: the slope fell below the stated share of the elastic slope, for good.</summary>
    Yield = 7,

    /// <summary>The elastic region is shorter than one smoothing window, or gains less than a third of the rise. Doubts: snug, slope, yield.</summary>
    ShortRegion = 8,

    /// <summary>The standard error of the elastic slope exceeds a fortieth of it. Doubts: snug, slope, yield.</summary>
    UncertainSlope = 9,

    /// <summary>The rise bends: no line holds over half of the stretch of like slope. Doubts: snug, slope, yield.</summary>
    CurvedRise = 10,

    /// <summary>Before the elastic region the torque fell, was steeper, or had most of its rise behind it. Doubts: snug, slope, yield.</summary>
    BrokenRise = 11,

    /// <summary>Within or behind the elastic region the torque fell, or went on along another line. Doubts: yield.</summary>
    OtherLine = 12,

    /// <summary>Whether the fastener yielded cannot be told: the slope fell too close to the end, or came back there, or the end lies below the line. Doubts: yield.</summary>
    YieldUntold = 13,

    /// <summary>At snug, more than a quarter of the rise is already made. Doubts: snug.</summary>
    SnugOnRise = 14,

    /// <summary>The run-down climbs into the rise, or its last two smoothing windows differ from its last turn by more than 15 % of the rise. Doubts: snug, run-down torque.</summary>
    DriftingRunDown = 15,

    /// <summary>Fewer than four samples with different angles for one smoothing window. Doubts: all.</summary>
    FewSamples = 16,

    /// <summary>The torque fell below half of what it had reached and stayed there. Snug and yield are not given. Doubts: all.</summary>
    FallsAway = 17,

    /// <summary>The record turns in the loosening sense, or its torque is mainly negative: it is not read as a tightening. Doubts: all.</summary>
    WrongSense = 18,

    /// <summary>The angle steps back by more than half a turn between two samples, and the record ends more than half a turn behind its shut-off: the angle counts to 360° and begins again. The furthest angle is no shut-off. A record that turns on to within half a turn of it is not told. Doubts: all.</summary>
    AngleWraps = 19,

    /// <summary>Past the yield onset the torque stays the very same over a quarter of a smoothing window, as a sensor at the end of its range or a held torque shows. Doubts: yield.</summary>
    HeldTorque = 20,
}
