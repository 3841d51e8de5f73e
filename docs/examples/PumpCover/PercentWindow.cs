using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>Percent below and above a target that is still to be chosen.</summary>
internal sealed record PercentWindow(double Minus, double Plus)
{
    public ToleranceWindow<Torque> Around(Torque target) => ToleranceWindow.FromDeviations(target, Ratio.FromPercent(Minus), Ratio.FromPercent(Plus));
}
