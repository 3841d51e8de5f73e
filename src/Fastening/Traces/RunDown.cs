using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The run-down before the rise: the fastener turns, nothing is clamped yet.</summary>
/// <remarks>Its torque is the prevailing torque of a locking element, the forming torque of a thread, or next to nothing.</remarks>
/// <example><code>Torque? prevailing = analysis.RunDown?.Torque;</code></example>
public sealed class RunDown
{
    private readonly double _torque;

    internal RunDown(TracePoint start, TracePoint end, double torque, double highest)
    {
        (Start, End) = (start, end);
        _torque = torque;
        Torque = Si.Torque(torque);
        HighestTorque = Si.Torque(highest);
    }

    /// <summary>Where the stretch that was averaged begins: one turn before its end, or the beginning of the record.</summary>
    public TracePoint Start { get; }

    /// <summary>Where the run-down ends and the rise begins.</summary>
    public TracePoint End { get; }

    /// <summary>Prevailing (running) torque: the mean over the last turn of the run-down, or over its last two smoothing windows where that differs; single spikes hardly move it.</summary>
    public Torque Torque { get; }

    /// <summary>The highest single torque of that turn.</summary>
    public Torque HighestTorque { get; }

    internal double TorqueSi => _torque;

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{_torque:0.###} N·m from sample {Start.Index} to sample {End.Index}");
}
