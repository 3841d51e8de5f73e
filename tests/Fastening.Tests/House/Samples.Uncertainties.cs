using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.House;

/// <content>Valid values for uncertainty.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> Uncertainties()
    {
        double[] readings = [1.0, 1.2, 1.1];
        UncertaintyContribution[] inputs = [UncertaintyContribution.Normal("x", 1, 0.1), UncertaintyContribution.Rectangular("y", 2, 0.1)];
        UncertaintyBudget budget = UncertaintyBudget.Of("z", "mm", x => x["x"] * x["y"], inputs);
        var inputsOfBand = new PreloadBandInputs(
            TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(0.12, 0.10)),
            new TorqueWrench(Length.FromMillimeters(400)).WithAccuracy(Ratio.FromPercent(4)).WithAdapter(Length.FromMillimeters(75), Angle.FromDegrees(45)),
            Torque.FromNewtonMeters(150),
            new FrictionRange(new FrictionCoefficients(0.10, 0.09), new FrictionCoefficients(0.16, 0.14)), FrictionCorrelation.Independent);
        MonteCarlo monteCarlo = new MonteCarlo().WithDraws(1000);
        (string, string, double)[] correlations = [("x", "y", 0.5)];
        (string, IReadOnlyList<double>)[] joint = [("a", readings), ("b", readings)];
        return
        [
            new(typeof(UncertaintyContribution), inputs[0]),
            new(typeof(UncertaintyBudget), budget),
            new(typeof(UncertaintyBudgetRow), budget.Rows[0]),
            new(typeof(MonteCarlo), monteCarlo),
            new(typeof(MonteCarloResult), monteCarlo.Run(budget)),
            new(typeof(PreloadBandInputs), inputsOfBand),
            new(typeof(PreloadBand), PreloadBand.Evaluate(inputsOfBand, monteCarlo)),
            new(typeof(ScatterShape), ScatterShape.Normal(2)),
            new(typeof(FrictionCorrelation), FrictionCorrelation.Of(0.5)),
            new(typeof(PlausibilityRemark), new FrictionCoefficients(1.2, 0.10).Remarks[0]),
            new(typeof(Func<InputValues, double>), (Func<InputValues, double>)(x => x[0])),
            new(typeof(IReadOnlyList<double>), readings),
            new(typeof(IReadOnlyList<UncertaintyContribution>), inputs.Select(input => input.WithSensitivity(1)).ToArray()),
            new(typeof(IReadOnlyList<(string, string, double)>), correlations),
            new(typeof(IReadOnlyList<(string, IReadOnlyList<double>)>), joint),
        ];
    }

    private static IEnumerable<KeyValuePair<(Type, string), object>> UncertaintyNames() =>
    [
        new((typeof(string), "result"), "length"),
        new((typeof(string), "unit"), "mm"),
        new((typeof(double), "degreesOfFreedom"), 12.0),
        new((typeof(Length), "error"), Length.FromMillimeters(2)),
        new((typeof(Length), "lengthError"), Length.FromMillimeters(2)),
        new((typeof(int), "draws"), 2000),
    ];
}
