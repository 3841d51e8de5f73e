using UnitsNet;

namespace Fastening.Tests.Answers;

/// <summary>Arguments that only go together: drawn each by itself, they would mostly be refused.</summary>
internal static class Together
{
    private static readonly string[] Metric = ["M12", "M16", "M20", "M22", "M24", "M27", "M30"];

    /// <summary>By the signature in the record; one value per parameter.</summary>
    private static readonly Dictionary<string, Func<Draw, object?[]>> Draws = new(StringComparer.Ordinal)
    {
        ["Joint.new(BoltCompliance, ClampedStack)"] = draw =>
        {
            var joint = (Joint)draw.Of(RandomObjects.Pool("Joint"));
            return [joint.Bolt, joint.Parts];
        },
        ["RotationTightening.new(Joint, TorquePreloadModel, Torque, Force)"] = draw =>
        {
            var like = (RotationTightening)draw.Of(RandomObjects.Pool("RotationTightening"));
            return [like.Joint, like.Model, draw.NewtonMeters(10, 40), draw.Kilonewtons(60, 200)];
        },
        ["PublishedRotation.En1090Part2(Length, Length)"] = draw => LengthAndDiameter(draw),
        ["PublishedRotation.Rcsc2014(Length, Length, SlopedFaces)"] = draw => [.. LengthAndDiameter(draw), draw.Of(Enum.GetValues<SlopedFaces>())],
        ["PublishedRotation.RcscBefore2014(Length, Length, SlopedFaces)"] = draw => [.. LengthAndDiameter(draw), draw.Of(Enum.GetValues<SlopedFaces>())],
        ["ScrewThread.IsoTrapezoidal(Length, Length, Int32)"] = draw => [Length.FromMillimeters(draw.Of(16, 20, 28, 36, 44)), Length.FromMillimeters(draw.Of(2, 3, 4, 5)), 1 + draw.Next(2)],
        ["StructuralTightening.TorqueMethod(PropertyClass, ScrewThread, Double)"] = draw => [StructuralClass(draw), MetricThread(draw), draw.Between(0.1, 0.16)],
        ["StructuralTightening.CombinedMethodK1(PropertyClass, ScrewThread, Length)"] = draw => [StructuralClass(draw), MetricThread(draw), draw.Millimeters(20, 120)],
        ["StructuralTightening.CombinedMethodK2(PropertyClass, ScrewThread, Double, Length)"] = draw =>
            [StructuralClass(draw), MetricThread(draw), draw.Between(0.1, 0.16), draw.Millimeters(20, 120)],
        ["PublishedPreload.StructuralEurope(PropertyClass, ScrewThread, StressAreaBasis)"] = draw => [StructuralClass(draw), MetricThread(draw), draw.Of(Enum.GetValues<StressAreaBasis>())],
        ["PublishedPreload.StructuralGermany(PropertyClass, ScrewThread, StressAreaBasis)"] = draw => [StructuralClass(draw), MetricThread(draw), draw.Of(Enum.GetValues<StressAreaBasis>())],
        ["PublishedPreload.StructuralAmerica(BoltGrade, ScrewThread, StressAreaBasis)"] = draw => [BoltGrade.Parse("ASTM A325M"), MetricThread(draw), draw.Of(Enum.GetValues<StressAreaBasis>())],
        ["PublishedPreload.PreInstallationVerification(BoltGrade, ScrewThread, StressAreaBasis)"] = draw => [BoltGrade.Parse("ASTM A325M"), MetricThread(draw), draw.Of(Enum.GetValues<StressAreaBasis>())],
        ["BoltGrade.StrengthFor(ScrewThread)"] = draw => [ScrewThread.Parse(draw.Of("1/2-13 UNC", "3/4-10 UNC", "M20", "M24"))],
        ["BearingSurface.WithHole(HoleSeries)"] = draw => [draw.Of(Enum.GetValues<HoleSeries>())],
        ["ThreadLimits.FromDiameters(ScrewThread, Length, Length, Length, Length)"] = draw =>
            [ScrewThread.Parse("M16"), draw.Millimeters(15.6, 15.8), draw.Millimeters(14.4, 14.6), draw.Millimeters(14.1, 14.3), draw.Millimeters(14.8, 15)],
        ["TorqueToolClass.Stated(String, String, Ratio, Int32, Boolean, IReadOnlyList<Ratio>)"] = draw =>
            ["W 1", "hydraulic wrench", draw.Percent(2, 8), 3 + draw.Next(8), draw.Chance(0.5), draw.Of(RandomObjects.Pool("IReadOnlyList<Ratio>"))],
        ["FrictionRange.new(FrictionCoefficients, FrictionCoefficients)"] = draw =>
            [new FrictionCoefficients(draw.Between(0.07, 0.1), draw.Between(0.06, 0.1)), new FrictionCoefficients(draw.Between(0.13, 0.2), draw.Between(0.12, 0.2))],
        ["BoltStrength.AtTemperature(Temperature)"] = draw => [Temperature.FromDegreesCelsius(draw.Between(25, 290))],
    };

    public static object?[]? For(string signature, Draw draw) => Draws.TryGetValue(signature, out Func<Draw, object?[]>? make) ? make(draw) : null;

    private static PropertyClass StructuralClass(Draw draw) => PropertyClass.Parse(draw.Of("8.8", "10.9"));

    private static ScrewThread MetricThread(Draw draw) => ScrewThread.Parse(draw.Of(Metric));

    private static object?[] LengthAndDiameter(Draw draw)
    {
        double diameter = draw.Of<double>(12, 16, 20, 24);
        return [Length.FromMillimeters(diameter * draw.Between(1, 9)), Length.FromMillimeters(diameter)];
    }
}
