using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Where a tightening torque goes: only the pitch torque stretches the bolt.</summary>
/// <example><code>TorqueBreakdown parts = model.BreakdownAt(Torque.FromNewtonMeters(150));
/// Console.WriteLine(parts.PitchShare.Percent);      // 13.6… for M16 with µ_th 0.12 and µ_b 0.10</code></example>
public sealed class TorqueBreakdown : IDerived
{
    private readonly Term _pitch, _threadFriction, _bearingFriction, _prevailing, _total;

    internal TorqueBreakdown(Term pitch, Term threadFriction, Term bearingFriction, Term prevailing)
    {
        _pitch = pitch;
        _threadFriction = threadFriction;
        _bearingFriction = bearingFriction;
        _prevailing = prevailing;
        _total = TorqueEquations.TotalTorqueEquation.Of(pitch, threadFriction, bearingFriction, prevailing);
    }

    /// <summary>The part that stretches the bolt.</summary>
    public Torque PitchTorque => Si.Torque(_pitch);

    /// <summary>The part lost to friction in the thread.</summary>
    public Torque ThreadFrictionTorque => Si.Torque(_threadFriction);

    /// <summary>The part lost to friction under the head or nut.</summary>
    public Torque BearingFrictionTorque => Si.Torque(_bearingFriction);

    /// <summary>The part that overcomes the prevailing torque.</summary>
    public Torque PrevailingTorque => Si.Torque(_prevailing);

    /// <summary>The sum of the four parts, in the order above.</summary>
    public Torque Total => Si.Torque(_total);

    /// <summary>Pitch torque over total torque: the efficiency of the tightening. Zero when there is no torque.</summary>
    public Ratio PitchShare => _total.Value > 0 ? Si.Ratio(TorqueEquations.PitchShareEquation.Of(_pitch, _total)) : Ratio.Zero;

    Term IDerived.Answer => _total;

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"pitch {_pitch.Value:0.##} + thread {_threadFriction.Value:0.##} + bearing {_bearingFriction.Value:0.##} + prevailing {_prevailing.Value:0.##} = {_total.Value:0.##} N·m");
}
