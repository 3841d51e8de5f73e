using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>An adapter that moves the fastener away from the drive of the wrench.</summary>
/// <remarks>
/// Length from centre to centre. The angle is taken from the line of the handle produced beyond the drive, always absolute, not from the
/// adapter before: 0° straight ahead, 180° back over the handle, positive to the side to which the hand moves.
/// </remarks>
/// <example><code>wrench.WithAdapter(Length.FromMillimeters(75), Angle.FromDegrees(45)).Adapters[0].Length</code></example>
public sealed class WrenchAdapter
{
    private readonly Stated<Length> _length;
    private readonly Stated<Angle> _angle;

    internal WrenchAdapter(Stated<Length> length, Stated<Angle> angleFromHandle)
    {
        _length = length;
        _angle = angleFromHandle;
    }

    /// <summary>Length, centre of one square or socket to the centre of the next.</summary>
    public Length Length => Si.Length(_length.Term);

    /// <summary>Angle from the line of the handle.</summary>
    public Angle AngleFromHandle => Si.Angle(_angle.Value);

    internal double LengthSi => _length.Value;

    internal double AngleSi => Si.ToRadians(_angle.Value);

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Si.Length(LengthSi):0.###} at {AngleFromHandle:0.###}");

    /// <summary>The ratio of the wrench with everything before this adapter, and with this adapter.</summary>
    internal Term AddRatio(Term before, string owner, Term lever, Term pull) =>
        WrenchEquations.TorqueRatioEquation.Of(before, _length.TermOf(owner), _angle.TermOf(owner), lever, pull);
}
