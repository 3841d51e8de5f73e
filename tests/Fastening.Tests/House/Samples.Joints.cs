using UnitsNet;

namespace Fastening.Tests.House;

/// <content>Valid values for joints.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> Joints()
    {
        ScrewThread thread = ScrewThread.Parse("M16");
        IReadOnlyList<BoltSection> sections = [BoltSection.OfDiameter(Length.FromMillimeters(50), Length.FromMillimeters(12.5))];
        IReadOnlyList<ClampedLayer> layers =
            [new(Length.FromMillimeters(20), ElasticMaterial.Steel), new(Length.FromMillimeters(30), ElasticMaterial.Steel)];
        BoltCompliance bolt = BoltCompliance.Vdi2230(thread, sections, BoltHead.Hexagon, ElasticMaterial.Steel);
        ClampedStack parts = ClampedStack.Vdi2230Cone(
            layers, Length.FromMillimeters(22), Length.FromMillimeters(18), Length.FromMillimeters(40), JointForm.ThroughBolt);
        return
        [
            new(typeof(BoltSection), sections[0]),
            new(typeof(IReadOnlyList<BoltSection>), sections),
            new(typeof(ClampedLayer), layers[0]),
            new(typeof(IReadOnlyList<ClampedLayer>), layers),
            new(typeof(BoltCompliance), bolt),
            new(typeof(ClampedStack), parts),
            new(typeof(WilemanFit), WilemanFit.Steel),
            new(typeof(Joint), new Joint(bolt, parts)),
            .. JointDuties(new Joint(bolt, parts)),
        ];
    }

    private static IEnumerable<KeyValuePair<(Type, string), object>> JointNames() =>
    [
        new((typeof(Length), "length"), Length.FromMillimeters(30)),
        new((typeof(Length), "bearingDiameter"), Length.FromMillimeters(22)),
        new((typeof(Length), "smallDiameter"), Length.FromMillimeters(22)),
        new((typeof(Length), "interfaceDiameter"), Length.FromMillimeters(40)),
        new((typeof(Area), "area"), Area.FromSquareMillimeters(120)),
        .. JointDutyNames(),
    ];
}
