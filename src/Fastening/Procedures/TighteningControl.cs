namespace Fastening;

/// <summary>What decides when a step has tightened a fastener.</summary>
public enum TighteningControl
{
    /// <summary>The torque alone.</summary>
    Torque = 0,

    /// <summary>The rotation past a threshold torque.</summary>
    RotationAfterThreshold = 1,

    /// <summary>The torque; the rotation is watched, and a rotation outside its window is a remark.</summary>
    TorqueRotationWatched = 2,

    /// <summary>The torque and the rotation, both required.</summary>
    TorqueAndRotation = 3,
}
