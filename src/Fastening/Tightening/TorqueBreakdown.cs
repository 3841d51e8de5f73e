using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Where a tightening torque goes: only the pitch torque stretches the bolt.</summary>
/// <example><code>TorqueBreakdown parts = model.BreakdownAt(Torque.FromNewtonMeters(150));
/// Console.WriteLine(parts.PitchShare.Percent);      // 13.6… for M16 with µ_th 0.12 and µ_b 0.10</code></example>
public sealed class TorqueBreakdown
{
    private readonly double _pitch;
    private readonly double _total;

    internal TorqueBreakdown(double pitch, double threadFriction, double bearingFriction, double prevailing, double total)
    {
        _pitch = pitch;
        _total = total;
        PitchTorque = Si.Torque(pitch);
        ThreadFrictionTorque = Si.Torque(threadFriction);
        BearingFrictionTorque = Si.Torque(bearingFriction);
        PrevailingTorque = Si.Torque(prevailing);
    }

    /// <summary>The part that stretches the bolt.</summary>
    public Torque PitchTorque { get; }

    /// <summary>The part lost to friction in the thread.</summary>
    public Torque ThreadFrictionTorque { get; }

    /// <summary>The part lost to friction under the head or nut.</summary>
    public Torque BearingFrictionTorque { get; }

    /// <summary>The part that overcomes the prevailing torque.</summary>
    public Torque PrevailingTorque { get; }

    /// <summary>The sum of the four parts, in the order above.</summary>
    public Torque Total => Si.Torque(_total);

    /// <summary>Pitch torque over total torque: the efficiency of the tightening. Zero when there is no torque.</summary>
    public Ratio PitchShare => Si.Ratio(_total > 0 ? _pitch / _total : 0);

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"pitch {PitchTorque.NewtonMeters:0.##} + thread {ThreadFrictionTorque.NewtonMeters:0.##} + bearing {BearingFrictionTorque.NewtonMeters:0.##} + prevailing {PrevailingTorque.NewtonMeters:0.##} = {_total:0.##} N·m");
}
