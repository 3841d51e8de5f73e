using UnitsNet;

namespace Fastening.Tests.Answers;

/// <content>Windows, decisions and units of the trade.</content>
internal static partial class RandomObjects
{
    private static (string Name, Func<Draw, object> Make)[] ToleranceMakers() =>
    [
        Maker("ToleranceWindow<Torque>", draw => draw.Next(6) switch
        {
            0 => ToleranceWindow.AtLeast(draw.NewtonMeters(40, 48)),
            1 => ToleranceWindow.AtMost(draw.NewtonMeters(52, 60)),
            2 => ToleranceWindow.FromDeviations(draw.NewtonMeters(45, 55), draw.NewtonMeters(2, 6), draw.NewtonMeters(2, 6)),
            3 => ToleranceWindow.FromDeviations(Torque.FromPoundForceFeet(draw.Between(30, 45)), draw.Percent(3, 10), draw.Percent(3, 10)),
            _ => ToleranceWindow.FromLimits(draw.NewtonMeters(40, 48), draw.NewtonMeters(52, 60)),
        }),
        Maker("ToleranceWindow<Angle>", draw => draw.Chance(0.5)
            ? ToleranceWindow.FromLimits(draw.Degrees(25, 29), draw.Degrees(31, 40))
            : ToleranceWindow.FromDeviations(draw.Degrees(25, 60), draw.Degrees(2, 8), draw.Degrees(2, 8))),
        Maker("DecisionRule", draw => draw.Next(4) switch
        {
            0 => DecisionRule.FromFactor(draw.Between(0.2, 1)),
            1 => DecisionRule.FromProbability(draw.Between(0.9, 0.99)),
            _ => draw.Of(
                DecisionRule.IlacG8, DecisionRule.Iso14253, DecisionRule.Iso14253Exact, DecisionRule.ManagedRisk, DecisionRule.NcslRp10, DecisionRule.RootSumSquare,
                DecisionRule.SimpleAcceptance, DecisionRule.SixSigma, DecisionRule.ThreeSigma, DecisionRule.FullUncertainty, DecisionRule.Uncritical),
        }),
        Maker("MeasurementUncertainty<Torque>", draw => draw.Chance(0.5)
            ? MeasurementUncertainty.Standard(draw.NewtonMeters(0.1, 0.6)) : MeasurementUncertainty.Expanded(draw.NewtonMeters(0.2, 1.2), draw.Between(1.6, 3))),
        Maker("MeasurementUncertainty<Force>", draw => MeasurementUncertainty.Standard(draw.Kilonewtons(1, 4))),
        Maker("MeasurementUncertainty<Angle>", draw => MeasurementUncertainty.Standard(draw.Degrees(0.5, 3))),
        Maker("MeasurementUncertainty<Ratio>", draw => MeasurementUncertainty.Expanded(draw.Percent(0.2, 1.5), draw.Between(1.6, 3))),
        Maker("Prior<Torque>", draw => Prior.Normal(draw.NewtonMeters(47, 53), draw.NewtonMeters(0.5, 2))),
        Maker("Decision<Torque>", draw => draw.Any<ToleranceWindow<Torque>>("ToleranceWindow<Torque>").Decide(
            draw.NewtonMeters(44, 56), draw.Any<MeasurementUncertainty<Torque>>("MeasurementUncertainty<Torque>"), draw.Any<DecisionRule>("DecisionRule"))),
        Maker("ShopUnit<Torque>", draw => draw.Of(
            ShopUnit.NewtonMeter, ShopUnit.PoundForceFoot, ShopUnit.PoundForceInch, ShopUnit.KilogramForceMeter, ShopUnit.KilogramForceCentimeter, ShopUnit.DecinewtonMeter,
            ShopUnit.OunceForceInch, ShopUnit.NewtonMillimeter, ShopUnit.NewtonCentimeter, ShopUnit.DecanewtonMeter, ShopUnit.KilonewtonMeter)),
        Maker("Entered<Torque>", draw => new Entered<Torque>(draw.Between(10, 200), draw.Any<ShopUnit<Torque>>("ShopUnit<Torque>"))),
    ];
}
