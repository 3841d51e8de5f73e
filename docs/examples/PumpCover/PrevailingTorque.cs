using UnitsNet;

namespace PumpCover;

/// <summary>The least and the most that a locking thread takes before it clamps; none where the job states none.</summary>
internal sealed record PrevailingTorque(Torque Low, Torque High, bool IsStated)
{
    public static PrevailingTorque NotStated { get; } = new(Torque.Zero, Torque.Zero, IsStated: false);

    public bool IsZero => High.NewtonMeters == 0;
}
