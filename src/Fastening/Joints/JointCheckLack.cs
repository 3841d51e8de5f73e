namespace Fastening;

/// <summary>Why a check of a joint was not made.</summary>
public enum JointCheckLack
{
    /// <summary>No permitted preload is stated.</summary>
    PermittedPreload,

    /// <summary>No required clamp force is stated.</summary>
    RequiredClamp,

    /// <summary>Neither a transverse load nor a torque is stated.</summary>
    SlipLoad,

    /// <summary>Neither tightening nor strength of the bolt is stated.</summary>
    BoltStrength,

    /// <summary>No permitted amplitude is stated.</summary>
    PermittedAmplitude,

    /// <summary>A pressing load takes all tension from the bolt.</summary>
    TensionInBolt,

    /// <summary>No bearing surface and permitted pressure are stated.</summary>
    BearingSurface,

    /// <summary>Of the bearing surface only the effective diameter or a circle is known, not a ring.</summary>
    BearingRing,

    /// <summary>No engaged thread is stated.</summary>
    EngagedThread,

    /// <summary>The bolt gets warmer than its strength is stated for: <see cref="JointCapacity.WithHotBolt"/>.</summary>
    HotStrengthOfBolt,

    /// <summary>The joint gets warmer than the permitted pressure, amplitude or engaged thread is stated for: <see cref="JointCapacity.WithStrengthsUpTo"/>.</summary>
    StrengthAtTemperature,
}
