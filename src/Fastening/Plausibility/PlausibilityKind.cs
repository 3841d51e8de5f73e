namespace Fastening;

/// <summary>What a <see cref="PlausibilityRemark"/> is about.</summary>
public enum PlausibilityKind
{
    /// <summary>Coefficient of friction in the thread.</summary>
    ThreadFriction,

    /// <summary>Coefficient of friction at the bearing surface.</summary>
    BearingFriction,

    /// <summary>Nut factor K.</summary>
    NutFactor,

    /// <summary>Lever length of a wrench, in millimetres.</summary>
    LeverLength,

    /// <summary>Torque at the fastener over torque at the drive of a wrench with adapters.</summary>
    TorqueRatio,

    /// <summary>Gear ratio of a torque multiplier.</summary>
    GearRatio,

    /// <summary>Efficiency of a torque multiplier.</summary>
    Efficiency,
}
