using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>Bolts that are reached in the same way; the wrench carries their adapters and the lean of the pull.</summary>
internal sealed record BoltGroup(string Name, IReadOnlyList<int> Bolts, TorqueWrench Wrench)
{
    /// <summary>From the drive outwards, each with its side: on the other side it would be another torque.</summary>
    public string Adapters => Wrench.Adapters.Count == 0 ? "no adapter" : string.Join("; then ", Wrench.Adapters.Select(Describe));

    /// <summary>The pull with the sense of its lean: the other way it would be another torque.</summary>
    public string Pull
    {
        get
        {
            double lean = Wrench.PullOffSquare.Degrees;
            if (lean == 0) return "pull square to the handle";
            string pull = $"pull leaning {Show.Stated(Math.Abs(lean))}° {(lean > 0 ? "towards" : "away from")} the head of the wrench";
            return Wrench.Adapters.Count == 0 ? $"{pull} (without an adapter that changes no torque)" : pull;
        }
    }

    private static string Describe(WrenchAdapter adapter) => $"{Show.Stated(adapter.Length.Millimeters)} mm {Direction(adapter.AngleFromHandle)}";

    private static string Direction(Angle fromHandle)
    {
        double angle = Math.IEEERemainder(fromHandle.Degrees, 360);
        if (angle == 0) return "straight on from the handle";
        if (Math.Abs(angle) == 180) return "straight back over the handle";
        return $"at {Show.Stated(Math.Abs(angle))}° to {(angle > 0 ? "the side the hand moves to" : "the other side, the one the hand comes from")}";
    }
}
