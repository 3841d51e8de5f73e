using UnitsNet;

namespace Fastening.Tests.House;

/// <content>Valid values for tightening by rotation.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> RotationTightenings()
    {
        ScrewThread thread = ScrewThread.Parse("M16");
        BoltCompliance bolt = BoltCompliance.Vdi2230(
            thread, length: Length.FromMillimeters(70), threadedLength: Length.FromMillimeters(44), grip: Length.FromMillimeters(50), BoltHead.Hexagon, ElasticMaterial.Steel);
        ClampedStack parts = ClampedStack.Vdi2230Cone(
            [new ClampedLayer(Length.FromMillimeters(50), ElasticMaterial.GreyCastIron)], bearingDiameter: Length.FromMillimeters(22.5),
            hole: Length.FromMillimeters(17.5), outerDiameter: Length.FromMillimeters(60), JointForm.ThroughBolt);
        var tightening = new RotationTightening(
            new Joint(bolt, parts), TorquePreloadModel.ForHexagonBolt(thread, new FrictionCoefficients(thread: 0.12, bearing: 0.10)),
            Torque.FromNewtonMeters(30), Force.FromKilonewtons(90));
        PublishedRotation published = PublishedRotation.En1090Part2(Length.FromMillimeters(50), Length.FromMillimeters(16));
        yield return new(typeof(RotationTightening), tightening);
        yield return new(typeof(PublishedRotation), published);
        yield return new(typeof(ToleranceWindow<Angle>), ToleranceWindow.FromLimits(Angle.FromDegrees(28), Angle.FromDegrees(33)));
        yield return new(typeof(StructuralTightening), StructuralTightening.TorqueMethod(PropertyClass.Parse("8.8"), thread, 0.13));
    }

    private static IEnumerable<KeyValuePair<(Type, string), object>> RotationTighteningNames()
    {
        yield return new((typeof(Torque), "snugTorque"), Torque.FromNewtonMeters(30));
        yield return new((typeof(Force), "elasticLimit"), Force.FromKilonewtons(90));
        yield return new((typeof(Angle), "windUp"), Angle.FromDegrees(3));
    }
}
