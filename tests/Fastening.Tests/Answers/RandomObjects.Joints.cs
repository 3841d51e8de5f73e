using UnitsNet;

namespace Fastening.Tests.Answers;

/// <content>Joints and their duties.</content>
internal static partial class RandomObjects
{
    private static (string Name, Func<Draw, object> Make)[] JointMakers() =>
    [
        Maker("BoltSection", Section),
        Maker("IReadOnlyList<BoltSection>", draw => Enumerable.Range(0, 1 + draw.Next(3)).Select(_ => Section(draw)).ToArray()),
        Maker("ClampedLayer", Layer),
        Maker("IReadOnlyList<ClampedLayer>", draw => Enumerable.Range(0, 1 + draw.Next(3)).Select(_ => Layer(draw)).ToArray()),
        Maker("BoltCompliance", Bolt),
        Maker("ClampedStack", Parts),
        Maker("WilemanFit", draw => draw.Of(WilemanFit.All)),
        Maker("Joint", draw => draw.Chance(0.85) ? JointOfOneGrip(draw) : Joint.FromStiffness(
            draw.Any<ScrewThread>("ScrewThread"), ForcePerLength.FromKilonewtonsPerMillimeter(draw.Between(200, 600)), ForcePerLength.FromKilonewtonsPerMillimeter(draw.Between(800, 3000)))),
        Maker("LoadIntroduction", draw => draw.Next(3) switch
        {
            0 => LoadIntroduction.WorstCase,
            1 => LoadIntroduction.Between(draw.Between(0.1, 0.4), draw.Between(0.5, 0.9)),
            _ => LoadIntroduction.Of(draw.Between(0.2, 0.9)),
        }),
        Maker("Embedding", draw => draw.Next(3) switch
        {
            0 => Embedding.None,
            1 => Embedding.Of(Length.FromMicrometers(draw.Between(3, 12))),
            _ => Embedding.ForRoughness(draw.Of(Enum.GetValues<SurfaceRoughness>()), draw.Of(Enum.GetValues<EmbeddingLoad>()), 1, 1 + draw.Next(2), 1 + draw.Next(3)),
        }),
        Maker("JointTemperatures", draw =>
        {
            var rises = new JointTemperatures(TemperatureDelta.FromKelvins(draw.Between(10, 80)), TemperatureDelta.FromKelvins(draw.Between(10, 80)));
            if (draw.Chance(0.4)) rises = rises.WithModuli(draw.Between(0.9, 1), draw.Between(0.9, 1));
            return draw.Chance(0.5) ? rises.AssembledAt(Temperature.FromDegreesCelsius(draw.Between(10, 30))) : rises;
        }),
        Maker("JointDuty", Duty),
        Maker("JointCapacity", Capacity),
        Maker("JointAssessment", draw => draw.Any<Joint>("Joint").Assess(
            draw.Any<JointDuty>("JointDuty"), draw.Any<Range<Force>>("PreloadRange"), draw.Any<JointCapacity>("JointCapacity"))),
        Maker("JointCheck", draw => draw.Of(draw.Any<JointAssessment>("JointAssessment").Checks)),
    ];

    private static BoltSection Section(Draw draw)
    {
        Length length = draw.Millimeters(10, 40);
        BoltSection section = draw.Next(4) switch
        {
            0 => BoltSection.OfArea(length, Area.FromSquareMillimeters(draw.Between(80, 250))),
            1 => BoltSection.OfRootArea(length, draw.Any<ScrewThread>("ScrewThread")),
            2 => BoltSection.OfStressArea(length, draw.Any<ScrewThread>("ScrewThread")),
            _ => BoltSection.OfDiameter(length, draw.Millimeters(8, 20)),
        };
        return draw.Chance(0.3) ? section.WithMaterial(draw.Any<ElasticMaterial>("ElasticMaterial")) : section;
    }

    private static ClampedLayer Layer(Draw draw)
    {
        var layer = new ClampedLayer(draw.Millimeters(8, 30), draw.Any<ElasticMaterial>("ElasticMaterial"));
        return draw.Chance(0.25) ? layer.WithOuterDiameter(draw.Millimeters(40, 60)) : layer;
    }

    private static BoltCompliance Bolt(Draw draw) => BoltOver(draw, draw.Millimeters(30, 60));

    private static BoltCompliance BoltOver(Draw draw, Length grip)
    {
        ScrewThread thread = ScrewThread.Parse(draw.Of("M12", "M14", "M16"));
        var head = draw.Of(Enum.GetValues<BoltHead>());
        BoltCompliance bolt = draw.Next(4) switch
        {
            0 => BoltCompliance.Vdi2230(thread, [BoltSection.OfDiameter(grip, draw.Millimeters(9, 13))], head, draw.Any<ElasticMaterial>("ElasticMaterial")),
            1 => BoltCompliance.Textbook(thread, grip + draw.Millimeters(16, 30), draw.Millimeters(28, 44), grip, draw.Any<ElasticMaterial>("ElasticMaterial")),
            2 => BoltCompliance.OfSections(thread, [BoltSection.OfDiameter(grip, draw.Millimeters(9, 13))], draw.Any<ElasticMaterial>("ElasticMaterial")),
            _ => BoltCompliance.Vdi2230(thread, grip + draw.Millimeters(16, 30), draw.Millimeters(28, 44), grip, head, draw.Any<ElasticMaterial>("ElasticMaterial")),
        };
        return draw.Chance(0.2) ? bolt.TappedInto(draw.Any<ElasticMaterial>("ElasticMaterial")) : bolt;
    }

    private static ClampedStack Parts(Draw draw)
    {
        ClampedLayer[] layers = [Layer(draw), Layer(draw)];
        return PartsOf(draw, layers, tapped: draw.Chance(0.2));
    }

    private static ClampedStack PartsOf(Draw draw, ClampedLayer[] layers, bool tapped)
    {
        JointForm form = tapped ? JointForm.TappedThread : JointForm.ThroughBolt;
        Length bearing = draw.Millimeters(21, 26);
        Length hole = draw.Millimeters(17, 18.5);
        ClampedStack parts = draw.Next(5) switch
        {
            0 => ClampedStack.Frusta(layers, bearing, hole, draw.Degrees(25, 35), draw.Chance(0.5) ? draw.Millimeters(60, 90) : null, form),
            1 => ClampedStack.Sleeve(layers, draw.Millimeters(24, 40), hole),
            _ => ClampedStack.Vdi2230Cone(layers, bearing, hole, draw.Millimeters(30, 80), form),
        };
        return draw.Chance(0.2) ? parts.WithInterfaceDiameter(draw.Millimeters(40, 60)) : parts;
    }

    private static Joint JointOfOneGrip(Draw draw)
    {
        double grip = Math.Round(draw.Between(30, 60));
        double first = Math.Round(draw.Between(10, 20));
        ClampedLayer[] layers =
        [
            new(Length.FromMillimeters(first), draw.Any<ElasticMaterial>("ElasticMaterial")),
            new(Length.FromMillimeters(grip - first), draw.Any<ElasticMaterial>("ElasticMaterial")),
        ];
        BoltCompliance bolt = BoltOver(draw, Length.FromMillimeters(grip));
        return new Joint(bolt, PartsOf(draw, layers, bolt.IsTapped));
    }

    private static JointDuty Duty(Draw draw)
    {
        var duty = new JointDuty(
            draw.Kilonewtons(-6, 3), draw.Kilonewtons(4, 24), draw.Any<LoadIntroduction>("LoadIntroduction"), draw.Any<Embedding>("Embedding"));
        if (draw.Chance(0.5)) duty = duty.WithRequiredClamp(draw.Kilonewtons(1, 10));
        if (draw.Chance(0.4)) duty = duty.WithTransverseLoad(draw.Kilonewtons(1, 6), 1 + draw.Next(2), draw.Between(0.1, 0.2));
        if (draw.Chance(0.3)) duty = duty.WithInterfaceTorque(draw.NewtonMeters(10, 100), draw.Millimeters(20, 60), 1 + draw.Next(2), draw.Between(0.1, 0.2));
        return draw.Chance(0.4) ? duty.WithTemperatures(draw.Any<JointTemperatures>("JointTemperatures")) : duty;
    }

    private static JointCapacity Capacity(Draw draw)
    {
        JointCapacity capacity = JointCapacity.NothingStated;
        if (draw.Chance(0.6))
        {
            FrictionTorqueModel tightening = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse(draw.Of("M12", "M14", "M16")), draw.Any<FrictionCoefficients>("FrictionCoefficients"));
            var strength = new BoltStrength(draw.Megapascals(1000, 1200), draw.Megapascals(800, 950));
            capacity = capacity.WithBolt(tightening, strength, draw.Percent(30, 100), draw.Of(Enum.GetValues<TorsionDistribution>()), draw.Chance(0.2) ? draw.Millimeters(9, 11) : null);
        }

        if (draw.Chance(0.4)) capacity = capacity.WithEngagement(draw.Any<EngagementStrength>("EngagementStrength"));
        if (draw.Chance(0.6)) capacity = capacity.WithHeadBearing(BearingSurface.Annulus(draw.Millimeters(22, 26), draw.Millimeters(17, 18)), draw.Megapascals(300, 800));
        if (draw.Chance(0.3)) capacity = capacity.WithNutBearing(BearingSurface.Annulus(draw.Millimeters(22, 26), draw.Millimeters(17, 18)), draw.Megapascals(300, 800));
        else if (draw.Chance(0.4)) capacity = capacity.WithoutNut();
        if (draw.Chance(0.4)) capacity = capacity.WithPermittedAmplitude(draw.Megapascals(20, 60));
        if (draw.Chance(0.4)) capacity = capacity.WithPermittedPreload(draw.Kilonewtons(60, 140));
        if (draw.Chance(0.3)) capacity = capacity.WithHotBolt(draw.Any<HotStrength>("HotStrength"));
        return draw.Chance(0.5) ? capacity.WithStrengthsUpTo(Temperature.FromDegreesCelsius(draw.Between(60, 200))) : capacity;
    }
}
