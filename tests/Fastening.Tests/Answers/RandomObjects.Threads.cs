using UnitsNet;

namespace Fastening.Tests.Answers;

/// <content>Threads, materials and friction.</content>
internal static partial class RandomObjects
{
    private static readonly string[] Catalogue = ["M6", "M8", "M10", "M12", "M16", "M20", "M24", "M30", "M12x1.25", "M20x1.5", "1/2-13 UNC", "3/4-10 UNC"];

    private static (string Name, Func<Draw, object> Make)[] ThreadMakers() =>
    [
        Maker("ScrewThread", draw => draw.Chance(0.75) ? ScrewThread.Parse(draw.Of(Catalogue)) : UnusualThread(draw)),
        Maker("ThreadLimits", draw => draw.Chance(0.7) ? ThreadLimits.ForMediumFit(draw.Any<ScrewThread>("ScrewThread")) : ThreadLimits.AtBasicSize(draw.Any<ScrewThread>("ScrewThread"))),
        Maker("ThreadEngagement", draw => ThreadEngagement.For(draw.Any<ThreadLimits>("ThreadLimits"), draw.Millimeters(8, 30))),
        Maker("EngagementStrength", Strength),
        Maker("PropertyClass", draw => draw.Of(PropertyClass.All)),
        Maker("BoltGrade", draw => draw.Of(BoltGrade.All)),
        Maker("BoltStrength", draw => draw.Chance(0.6)
            ? draw.Any<PropertyClass>("PropertyClass").StrengthFor(draw.Any<ScrewThread>("ScrewThread"))
            : new BoltStrength(draw.Megapascals(800, 1000), draw.Megapascals(600, 780), draw.Megapascals(500, 600))),
        Maker("HotStrength", draw => new HotStrength(Temperature.FromDegreesCelsius(draw.Between(80, 300)), draw.Megapascals(400, 640))),
        Maker("ElasticMaterial", draw => draw.Chance(0.6)
            ? draw.Of(ElasticMaterial.All)
            : OwnMaterial(Pressure.FromGigapascals(draw.Between(100, 210)), draw.Between(0.25, 0.34), CoefficientOfThermalExpansion.FromPpmPerKelvin(draw.Between(1, 20)))
                .WithPermittedBearingPressure(draw.Megapascals(300, 900))),
        Maker("FrictionCoefficients", draw => new FrictionCoefficients(draw.Between(0.06, 0.2), draw.Between(0.06, 0.2))),
        Maker("FrictionRange", draw => new FrictionRange(
            new FrictionCoefficients(draw.Between(0.07, 0.1), draw.Between(0.06, 0.1)), new FrictionCoefficients(draw.Between(0.13, 0.2), draw.Between(0.12, 0.2)))),
        Maker("PublishedFriction", draw => draw.Of(FrictionGuidance.Coefficients)),
        Maker("PublishedNutFactor", draw => draw.Of(FrictionGuidance.NutFactors)),
        Maker("BearingSurface", Surface),
        Maker("TorqueConvention", draw => draw.Of(TorqueConvention.Named)),
        Maker("MeasuredFriction", draw => FrictionTest.Of(
            ScrewThread.Parse("M12"), BearingSurface.ForHexagonHead(ScrewThread.Parse("M12")), draw.Kilonewtons(30, 40), draw.NewtonMeters(60, 90), draw.NewtonMeters(30, 45))),
    ];

    /// <summary>Each under a name of its own, as two materials of one joint have them.</summary>
    private static ElasticMaterial OwnMaterial(Pressure modulus, double poissonRatio, CoefficientOfThermalExpansion expansion) =>
        new(FormattableString.Invariant($"nickel steel {modulus.Gigapascals:R}"), modulus, poissonRatio, expansion);

    private static ScrewThread UnusualThread(Draw draw) => draw.Next(4) switch
    {
        0 => ScrewThread.IsoMetric(draw.Millimeters(8, 40), draw.Millimeters(0.8, 3)),
        1 => ScrewThread.Unified(draw.Millimeters(10, 40), draw.Of<double>(8, 10, 12, 16)),
        2 => ScrewThread.IsoTrapezoidal(Length.FromMillimeters(draw.Of(16, 20, 28, 36, 44)), Length.FromMillimeters(draw.Of(2, 3, 4, 5)), 1 + draw.Next(2)),
        _ => ScrewThread.Acme(draw.Millimeters(20, 50), draw.Of<double>(4, 5, 6), 1 + draw.Next(2)),
    };

    private static EngagementStrength Strength(Draw draw)
    {
        EngagementStrength strength = draw.Any<ThreadEngagement>("ThreadEngagement").StrengthFor(
            draw.Megapascals(700, 900), draw.Megapascals(900, 1100), draw.Megapascals(400, 600), draw.Megapascals(150, 500));
        return draw.Next(3) switch
        {
            0 => strength,
            1 => strength.InNut(draw.Millimeters(40, 50), draw.Millimeters(20, 40)),
            _ => strength.InTappedHole(draw.Millimeters(32, 60)),
        };
    }

    private static BearingSurface Surface(Draw draw) => draw.Next(6) switch
    {
        0 => BearingSurface.Annulus(draw.Millimeters(24, 40), draw.Millimeters(17, 22)),
        1 => BearingSurface.Cone(draw.Millimeters(24, 40), draw.Millimeters(17, 22), draw.Degrees(60, 170)),
        2 => BearingSurface.OfDiameter(draw.Millimeters(14, 40)),
        3 => BearingSurface.Annulus(draw.Millimeters(24, 40), draw.Millimeters(17, 22)).WithUniformPressure(),
        4 => BearingSurface.Sphere(draw.Millimeters(18, 30), draw.Millimeters(20, 40)),
        _ => BearingSurface.ForHexagonHead(draw.Any<ScrewThread>("ScrewThread")),
    };
}
