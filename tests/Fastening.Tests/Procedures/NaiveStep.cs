using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>A step as plain numbers, judged by plain comparisons; the numbers of the tests are whole, so no slack is needed at a limit.</summary>
public sealed record NaiveStep(
    string Name, TighteningControl Control, double Threshold, (double Low, double High)? Torque, (double Low, double High)? Rotation, double? Rate, string[] Order)
{
    public bool NeedsRotation => Control is TighteningControl.TorqueAndRotation or TighteningControl.RotationAfterThreshold;

    public TighteningStep Build()
    {
        ToleranceWindow<Torque>? torque = Torque is var (tl, th)
            ? ToleranceWindow.FromLimits(UnitsNet.Torque.FromNewtonMeters(tl), UnitsNet.Torque.FromNewtonMeters(th)) : null;
        ToleranceWindow<Angle>? rotation = Rotation is var (rl, rh) ? ToleranceWindow.FromLimits(Angle.FromDegrees(rl), Angle.FromDegrees(rh)) : null;
        TighteningStep step = Control switch
        {
            TighteningControl.Torque => TighteningStep.ByTorque(Name, torque!),
            TighteningControl.TorqueRotationWatched => TighteningStep.ByTorqueWatchingRotation(Name, torque!, rotation!),
            TighteningControl.TorqueAndRotation => TighteningStep.ByTorqueAndRotation(Name, torque!, rotation!),
            _ => TighteningStep.ByRotation(Name, UnitsNet.Torque.FromNewtonMeters(Threshold), rotation!),
        };
        if (Control == TighteningControl.RotationAfterThreshold && torque is not null) step = step.WithFinalTorque(torque);
        if (Rate is double rate) step = step.WithRateLimit(RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(rate)));
        return step.WithFasteners(Order);
    }

    public HashSet<JobReason> ReasonsFor(double? torque, double? rotation, double? seconds)
    {
        HashSet<JobReason> reasons = [];
        if (Torque is not null || Threshold > 0)
        {
            if (torque is null) reasons.Add(JobReason.TorqueMissing);
            if (torque < Threshold) reasons.Add(JobReason.ThresholdNotReached);
            if (torque < Torque?.Low) reasons.Add(JobReason.TorqueBelow);
            if (torque > Torque?.High) reasons.Add(JobReason.TorqueAbove);
        }

        if (Rotation is not null)
        {
            if (rotation is null) reasons.Add(JobReason.RotationMissing);
            if (rotation < Rotation?.Low) reasons.Add(JobReason.RotationBelow);
            if (rotation > Rotation?.High) reasons.Add(JobReason.RotationAbove);
        }

        if (Rate is not null && (rotation is null || seconds is null)) reasons.Add(JobReason.RateUnknown);
        if (rotation > Rate * seconds) reasons.Add(JobReason.TooFast);
        return reasons;
    }

    /// <summary>Of the reasons, those that keep a reading from being accepted.</summary>
    public bool Refuses(IEnumerable<JobReason> reasons) => reasons.Any(reason => reason switch
    {
        JobReason.TorqueMissing or JobReason.TorqueBelow or JobReason.TorqueAbove or JobReason.ThresholdNotReached => true,
        JobReason.RotationMissing or JobReason.RotationBelow or JobReason.RotationAbove or JobReason.TooFast or JobReason.RateUnknown =>
            Control != TighteningControl.TorqueRotationWatched,
        _ => false,
    });
}
