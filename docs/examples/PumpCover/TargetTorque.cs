using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>The highest target whose window, read on this wrench, cannot overstress the bolt.</summary>
internal sealed record TargetTorque(Torque Permitted, Torque Exact, Torque Rounded)
{
    public static TargetTorque Choose(Job job)
    {
        // The fastener may get this much at the lowest friction…
        Torque permitted = job.Joint.AtLowestFriction.TorqueFor(job.Joint.PermittedPreload);

        // …but a wrench that shows M delivers up to M/(1 − a − W), and the window permits M up to target × (1 + plus).
        GuaranteedSetting guaranteed = job.Wrench.GuaranteedSettingFor(ToleranceWindow.AtMost(permitted), MeasurementUncertainty.Expanded(job.Deviation.Calibration, coverageFactor: 2));
        Torque exact = guaranteed.BeforeRounding!.Upper!.Value * 100 / (100 + job.TorqueWindow.Plus);

        // Whole display steps from zero to there; the last one is the target.
        Torque rounded = ToleranceWindow.AtMost(exact).RoundInward(job.Wrench.Resolution!.Value)!.Upper!.Value;
        return new TargetTorque(permitted, exact, rounded);
    }
}
