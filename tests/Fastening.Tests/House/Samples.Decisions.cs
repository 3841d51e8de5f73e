using UnitsNet;

namespace Fastening.Tests.House;

/// <content>Valid values for decisions.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> Decisions() =>
    [
        new(typeof(DecisionRule), DecisionRule.IlacG8),
        new(typeof(MeasurementUncertainty<Torque>), MeasurementUncertainty.Standard(Torque.FromNewtonMeters(0.3))),
        new(typeof(MeasurementUncertainty<Force>), MeasurementUncertainty.Standard(Force.FromKilonewtons(3))),
        new(typeof(MeasurementUncertainty<Angle>), MeasurementUncertainty.Standard(Angle.FromDegrees(2))),
        new(typeof(MeasurementUncertainty<Ratio>), MeasurementUncertainty.Expanded(Ratio.FromPercent(1), 2)),
        new(typeof(Prior<Torque>), Prior.Normal(Torque.FromNewtonMeters(50), Torque.FromNewtonMeters(0.8))),
    ];

    private static IEnumerable<KeyValuePair<(Type, string), object>> DecisionNames() =>
    [
        new((typeof(Torque), "expandedUncertainty"), Torque.FromNewtonMeters(0.6)),
        new((typeof(Torque), "standardUncertainty"), Torque.FromNewtonMeters(0.3)),
        new((typeof(Torque), "standardDeviation"), Torque.FromNewtonMeters(0.8)),
        new((typeof(double), "guardBandFactor"), 0.5),
        new((typeof(double), "probability"), 0.95),
    ];
}
