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
    internal WrenchAdapter(double length, double angleFromHandleDegrees)
    {
        LengthSi = length;
        AngleSi = Si.ToRadians(angleFromHandleDegrees);
        AngleFromHandle = Si.Angle(angleFromHandleDegrees);
    }

    /// <summary>Length, centre of one square or socket to the centre of the next.</summary>
    public Length Length => Si.Length(LengthSi);

    /// <summary>Angle from the line of the handle.</summary>
    public Angle AngleFromHandle { get; }

    internal double LengthSi { get; }

    internal double AngleSi { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Si.Length(LengthSi):0.###} at {AngleFromHandle:0.###}");
}
