using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A place on a trace: the sample, and what was found there.</summary>
/// <remarks>
/// A finding of the smoothed curve (snug, yield onset) may lie between two samples: then <see cref="Angle"/> and <see cref="Torque"/> are those
/// of the finding, and <see cref="Index"/> and <see cref="Time"/> those of the first sample at or past it.
/// </remarks>
/// <example><code>TracePoint? onset = trace.Analyze(options).YieldOnset;
/// Console.WriteLine(onset is null ? "no yield" : $"yield from sample {onset.Index} on");</code></example>
public sealed class TracePoint
{
    private readonly double _torque;
    private readonly double? _angle;
    private readonly double _time;

    internal TracePoint(int index, double time, double? angle, double torque)
    {
        Index = index;
        (_time, _angle, _torque) = (time, angle, torque);
        Time = Si.Duration(time);
        Angle = angle is double degrees ? Si.Angle(degrees) : null;
        Torque = Si.Torque(torque);
    }

    /// <summary>Index of the sample in the trace.</summary>
    public int Index { get; }

    /// <summary>Time of that sample on the clock of the trace.</summary>
    public Duration Time { get; }

    /// <summary>The angle, as the trace counts it; null when the angle was not measured.</summary>
    public Angle? Angle { get; }

    /// <summary>The torque.</summary>
    public Torque Torque { get; }

    internal double AngleDegrees => _angle ?? throw new InvalidOperationException("The angle was not measured.");

    internal double TorqueSi => _torque;

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"sample {Index}, {_time:0.####} s, {(_angle is double angle ? Print.Text($"{angle:0.##}°, ") : "")}{_torque:0.###} N·m");
}
