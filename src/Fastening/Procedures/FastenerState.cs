using UnitsNet;

namespace Fastening;

/// <summary>One fastener in one step: where it stands, the reading it stands on, and how often it was tightened and loosened.</summary>
public sealed class FastenerState
{
    private readonly TighteningStep _step;
    private readonly StepCell _cell;
    private readonly FastenerRow _row;

    internal FastenerState(TighteningStep step, string fastener, in StepCell cell, FastenerRow row)
    {
        _step = step;
        Fastener = fastener;
        _cell = cell;
        _row = row;
        Reasons = cell.Reasons.ToList();
    }

    /// <summary>The name of the step.</summary>
    public string Step => _step.Name;

    /// <summary>The name of the fastener.</summary>
    public string Fastener { get; }

    /// <summary>Where it stands.</summary>
    public FastenerStatus Status => _cell.Status;

    /// <summary>How many readings it had in this step, those before a loosening included, those undone not.</summary>
    public int Readings => _cell.Readings;

    /// <summary>The reading that was accepted, or the last one that was not; null when there is none since the last loosening.</summary>
    public JobEntry? Reading => _cell.Reading;

    /// <summary>The torque of <see cref="Reading"/>; null without one.</summary>
    public Torque? Torque => _cell.Reading?.Torque;

    /// <summary>The rotation of <see cref="Reading"/>; null without one.</summary>
    public Angle? Rotation => _cell.Reading?.Rotation;

    /// <summary>What was said of <see cref="Reading"/>.</summary>
    public IReadOnlyList<JobReason> Reasons { get; }

    /// <summary>The same in words, with figures; empty when there is nothing to say.</summary>
    public string ReasonsInWords => _cell.Reading is not JobEntry reading ? "" : string.Join(
        "; ", Reasons.Select(reason => ReasonText.OfReading(reason, _step, reading.InNewtonMeters, reading.InDegrees, reading.InSeconds)));

    /// <summary>Why it was left out the last time; null when it never was.</summary>
    public string? SkipReason => _cell.SkipReason;

    /// <summary>How often the fastener was loosened, in whatever step.</summary>
    public int Loosenings => _row.Loosenings;

    /// <summary>Why it was loosened the last time; null when it never was.</summary>
    public string? LooseningReason => _row.LooseningReason;

    /// <summary>Whether it holds too much, or an unknown rotation, and no further reading counts before it is loosened.</summary>
    public bool MustBeLoosened => _row.MustBeLoosened;

    internal bool IsToLookAt => Status == FastenerStatus.Done && Reasons.Count > 0;

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant(
        $"{Fastener}, {Step}: {Status}{(MustBeLoosened ? ", to be loosened" : "")}, readings: {Readings}, loosenings: {Loosenings}");
}
