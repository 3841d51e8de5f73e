using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>
/// The hand's force, which the library states as a sensitivity: an adapter straight ahead adds the hand's force times its length, so the
/// change of the fastener torque per length of adapter is that force.
/// </summary>
internal static class HandForce
{
    /// <summary>The torque at which the hand presses with a force, from the force at 1 N·m.</summary>
    public static Torque TorqueOf(Force force, Length lever)
    {
        TorqueWrench wrench = new TorqueWrench(lever).WithAdapter(lever, Angle.Zero);
        double perNewtonMeter = wrench.SensitivitiesAt(Torque.FromNewtonMeters(1)).PerAdapterLength[0].NewtonMetersPerMeter;
        return Torque.FromNewtonMeters(force.Newtons / perNewtonMeter);
    }
}
