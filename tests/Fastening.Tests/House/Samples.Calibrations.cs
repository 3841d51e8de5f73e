using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.House;

/// <content>Valid values for the calibration of tools.</content>
internal static partial class Samples
{
    private static DateTimeOffset Calibrated => new(2026, 3, 2, 9, 0, 0, TimeSpan.FromHours(1));

    private static IEnumerable<KeyValuePair<Type, object>> Calibrations()
    {
        TorqueToolClass graduated = TorqueToolClass.Parse("II A");
        TorqueTool tool = TorqueTool.WithRange("W-17", graduated, Torque.FromNewtonMeters(40), Torque.FromNewtonMeters(200));
        CalibrationPoint point = CalibrationPoint.At(
            Torque.FromNewtonMeters(120), [Torque.FromNewtonMeters(118), Torque.FromNewtonMeters(119)]);
        var uncertainty = new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.5), 2));
        var calibration = new ToolCalibration(tool, CalibrationState.AsFound, Calibrated, [point], uncertainty);
        yield return new(typeof(TorqueToolClass), graduated);
        yield return new(typeof(TorqueTool), tool);
        yield return new(typeof(CalibrationPoint), point);
        yield return new(typeof(CalibrationUncertainty), uncertainty);
        yield return new(typeof(ToolCalibration), calibration);
        yield return new(typeof(IReadOnlyList<CalibrationPoint>), new[] { point });
        yield return new(typeof(IEnumerable<ToolReading>), Array.Empty<ToolReading>());
        yield return new(typeof(CalibrationInterval), CalibrationInterval.Iso6789);
        yield return new(typeof(DateTimeOffset), Calibrated);
    }

    private static IEnumerable<KeyValuePair<(Type, string), object>> CalibrationNames()
    {
        yield return new((typeof(Torque), "low"), Torque.FromNewtonMeters(40));
        yield return new((typeof(Torque), "range"), Torque.FromNewtonMeters(0.4));
        yield return new((typeof(DateTimeOffset), "lastGood"), Calibrated.AddMonths(-6));
        yield return new((typeof(int), "cycles"), 4000);
        yield return new((typeof(string), "description"), "hydraulic wrench");
        yield return new((typeof(IReadOnlyList<Ratio>), "points"), new[] { Ratio.FromPercent(20), Ratio.FromPercent(100) });
        yield return new((typeof(TorqueToolClass), "setClass"), TorqueToolClass.Parse("II B"));
    }
}
