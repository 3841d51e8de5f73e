using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>What to set on the wrench for one group of bolts, in whole steps of its display, or why nothing fits.</summary>
internal sealed record GroupSetting(BoltGroup Group, Torque Exact, ToleranceWindow<Torque>? AtWrench, string? WhyNone)
{
    public static GroupSetting For(BoltGroup group, ToleranceWindow<Torque> atFastener)
    {
        TorqueWrench wrench = group.Wrench;
        Torque exact = wrench.SettingFor(atFastener.Target);
        ToleranceWindow<Torque> wanted = wrench.SettingWindowFor(atFastener);
        ToleranceWindow<Torque>? inRange = wanted.Intersect(ToleranceWindow.FromLimits(wrench.Minimum!.Value, wrench.Maximum!.Value));
        ToleranceWindow<Torque>? shown = inRange?.RoundInward(wrench.Resolution!.Value);
        string? whyNone = shown is not null ? null : inRange is null
            ? $"the window at the wrench, {Show.Limits(wanted)}, lies outside its range, {Show.Range(wrench)}"
            : $"no step of the display ({Show.Torque(wrench.Resolution!.Value, wrench)}) lies in the window at the wrench, {Show.Limits(inRange)}";
        return new GroupSetting(group, exact, shown, whyNone);
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
