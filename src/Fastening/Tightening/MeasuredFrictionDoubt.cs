namespace Fastening;

/// <summary>What the readings of a friction test say that no friction can say.</summary>
public enum MeasuredFrictionDoubt
{
    /// <summary>The thread took less than the pitch torque: µ_th comes out negative.</summary>
    ThreadTorqueBelowPitchTorque = 0,

    /// <summary>The thread took more than the whole torque: µ_b comes out negative.</summary>
    ThreadTorqueAboveTotal = 1,

    /// <summary>µ_th comes out above 2.</summary>
    ThreadFrictionAboveTwo = 2,

    /// <summary>µ_b comes out above 2.</summary>
    BearingFrictionAboveTwo = 3,
}
