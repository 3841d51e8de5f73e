using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>What to set on the wrench for one group of bolts, in whole steps of its display, or why nothing fits.</summary>
internal sealed record GroupSetting(BoltGroup Group, Torque Exact, ToleranceWindow<Torque>? AtWrench, string? WhyNone)
{
    /// <summary>The settings at which the fastener gets no torque that the target could not give it without an adapter.</summary>
    public static GroupSetting For(BoltGroup group, ToleranceWindow<Torque> mayReachFastener, Ratio calibrationUncertainty)
    {
        GuaranteedSetting found = group.Wrench.GuaranteedSettingFor(mayReachFastener, MeasurementUncertainty.Expanded(calibrationUncertainty, coverageFactor: 2));
        return new GroupSetting(group, group.Wrench.SettingFor(mayReachFastener.Target!.Value), found.Window, found.Window is null ? found.Reason : null);
    }

    /// <summary>What 10 mm of hand position, 1° of each adapter and 1° of lean of the pull cost at the fastener.</summary>
    public (Torque Hand, IReadOnlyList<Torque> Adapters, Torque Pull) Care()
    {
        WrenchSensitivities s = Group.Wrench.SensitivitiesAt(AtWrench?.Target ?? Exact);
        return (
            Torque.FromNewtonMeters(Math.Abs(s.PerLeverLength.NewtonMetersPerMeter) * 0.010),
            [.. s.PerAdapterAngle.Select(PerDegree)],
            PerDegree(s.PerPullAngle));

        static Torque PerDegree(RotationalStiffness change) => Torque.FromNewtonMeters(Math.Abs(change.NewtonMetersPerDegree));
    }
}
