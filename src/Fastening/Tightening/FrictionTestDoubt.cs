namespace Fastening;

/// <summary>Why a coefficient from a friction test is no possible coefficient.</summary>
public enum FrictionTestDoubt
{
    /// <summary>The thread took less than the pitch torque: µ_th is negative.</summary>
    ThreadTorqueBelowPitchTorque = 0,

    /// <summary>The thread took more than the whole torque: µ_b is negative.</summary>
    ThreadTorqueAboveTotal = 1,

    /// <summary>µ_th is above 2.</summary>
    ThreadFrictionAboveTwo = 2,

    /// <summary>µ_b is above 2.</summary>
    BearingFrictionAboveTwo = 3,
}
