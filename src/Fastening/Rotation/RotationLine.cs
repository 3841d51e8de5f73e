using Fastening.Equations;

namespace Fastening;

/// <summary>The elastic line of a tightening by rotation: what it computes of its joint, its model of torque and its tool.</summary>
internal sealed class RotationLine
{
    /// <summary>Tightening torque per unit preload.</summary>
    public required Term Arm { get; init; }

    /// <summary>Preload at the snug torque.</summary>
    public required Term Snug { get; init; }

    /// <summary>Rotation per unit preload, of the stretch of bolt and parts alone.</summary>
    public required Term Stretch { get; init; }

    /// <summary>The same with the twist of the bolt, where that was stated.</summary>
    public required Term AtFastener { get; init; }

    /// <summary>The same with the wind-up of the tool, where that was stated.</summary>
    public required Term AtTool { get; init; }
}
