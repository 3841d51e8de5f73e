using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.Answers;

/// <content>Uncertainty.</content>
internal static partial class RandomObjects
{
    private static (string Name, Func<Draw, object> Make)[] UncertaintyMakers() =>
    [
        Maker("UncertaintyContribution", draw => Contribution(draw, "x")),
        Maker("IReadOnlyList<UncertaintyContribution>", draw => new[] { Contribution(draw, "x").WithSensitivity(draw.Between(0.5, 2)), Contribution(draw, "y").WithSensitivity(draw.Between(0.5, 2)) }),
        Maker("UncertaintyBudget", Budget),
        Maker("UncertaintyBudgetRow", draw => draw.Of(draw.Any<UncertaintyBudget>("UncertaintyBudget").Rows)),
        Maker("MonteCarlo", draw => new MonteCarlo().WithDraws(1000 + draw.Next(1000)).WithSeed((ulong)draw.Next(1000)).WithThreads(1 + draw.Next(2))),
        Maker("MonteCarloResult", draw => draw.Any<MonteCarlo>("MonteCarlo").Run(draw.Any<UncertaintyBudget>("UncertaintyBudget"))),
        Maker("PreloadBandInputs", Inputs),
        Maker("PreloadBand", draw => PreloadBand.Evaluate(draw.Any<PreloadBandInputs>("PreloadBandInputs"), draw.Any<MonteCarlo>("MonteCarlo"))),
        Maker("ScatterShape", draw => draw.Next(3) switch { 0 => ScatterShape.Rectangular, 1 => ScatterShape.Triangular, _ => ScatterShape.Normal(draw.Between(1.6, 3)) }),
        Maker("FrictionCorrelation", draw => draw.Next(3) switch { 0 => FrictionCorrelation.Full, 1 => FrictionCorrelation.Independent, _ => FrictionCorrelation.Of(draw.Between(-0.2, 0.9)) }),
        Maker("PlausibilityRemark", draw => new FrictionCoefficients(draw.Between(0.5, 1.2), draw.Between(0.5, 1)).Remarks[0]),
        Maker("Func<InputValues, Double>", draw =>
        {
            double factor = draw.Between(0.5, 2);
            return (Func<InputValues, double>)(x => factor * x[0] * x[1]);
        }),
        Maker("IReadOnlyList<Double>", draw => Enumerable.Range(0, 5).Select(_ => draw.Between(1, 1.3)).ToArray()),
        Maker("IReadOnlyList<(String, String, Double)>", draw => new[] { ("x", "y", draw.Between(-0.8, 0.8)) }),
        Maker("IReadOnlyList<(String, IReadOnlyList<Double>)>", draw => new (string, IReadOnlyList<double>)[]
        {
            ("a", [.. Enumerable.Range(0, 4).Select(_ => draw.Between(1, 1.3))]), ("b", [.. Enumerable.Range(0, 4).Select(_ => draw.Between(2, 2.3))]),
        }),
    ];

    private static UncertaintyContribution Contribution(Draw draw, string name)
    {
        double value = draw.Between(1, 3);
        double width = draw.Between(0.02, 0.2);
        return draw.Next(6) switch
        {
            0 => UncertaintyContribution.Normal(name, value, width),
            1 => UncertaintyContribution.Rectangular(name, value, width),
            2 => UncertaintyContribution.Triangular(name, value, width),
            3 => UncertaintyContribution.FromCertificate(name, value, width, draw.Between(1.8, 2.2)),
            4 => UncertaintyContribution.FromReadings(name, [.. Enumerable.Range(0, 5).Select(_ => value + width * draw.Next())]),
            _ => UncertaintyContribution.Normal(name, value, width).WithDegreesOfFreedom(draw.Between(5, 40)),
        };
    }

    private static UncertaintyBudget Budget(Draw draw)
    {
        UncertaintyContribution x = Contribution(draw, "x");
        UncertaintyContribution y = Contribution(draw, "y");
        if (draw.Chance(0.5)) return UncertaintyBudget.Of("z", "mm", values => values["x"] * values["y"], x, y);
        return UncertaintyBudget.Linear("z", "mm", draw.Between(1, 2), x.WithSensitivity(draw.Between(0.5, 2)), y.WithSensitivity(draw.Between(0.5, 2)));
    }

    private static PreloadBandInputs Inputs(Draw draw)
    {
        var friction = draw.Any<FrictionRange>("FrictionRange");
        var correlation = draw.Any<FrictionCorrelation>("FrictionCorrelation");
        ToleranceWindow<Torque> torque = ToleranceWindow.FromDeviations(draw.NewtonMeters(80, 160), draw.Percent(3, 8), draw.Percent(3, 8));
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse(draw.Of("M12", "M16")), draw.Any<FrictionCoefficients>("FrictionCoefficients"));
        TorqueWrench wrench = new TorqueWrench(draw.Millimeters(300, 600)).WithAccuracy(draw.Percent(2, 6)).WithAdapter(draw.Millimeters(40, 90), draw.Degrees(-60, 60));
        PreloadBandInputs inputs = draw.Next(4) switch
        {
            0 => new PreloadBandInputs(model, torque, friction, correlation),
            1 => new PreloadBandInputs(draw.Any<NutFactorModel>("NutFactorModel"), torque, draw.Between(0.1, 0.14), draw.Between(0.2, 0.25)),
            2 => new PreloadBandInputs(draw.Any<NutFactorModel>("NutFactorModel"), wrench, draw.NewtonMeters(80, 160), draw.Between(0.1, 0.14), draw.Between(0.2, 0.25)),
            _ => new PreloadBandInputs(model, wrench, draw.NewtonMeters(80, 160), friction, correlation),
        };
        if (draw.Chance(0.3)) inputs = inputs.WithTorqueShape(draw.Any<ScatterShape>("ScatterShape"));
        return draw.Chance(0.3) ? inputs.WithFrictionShape(draw.Any<ScatterShape>("ScatterShape")) : inputs;
    }
}
