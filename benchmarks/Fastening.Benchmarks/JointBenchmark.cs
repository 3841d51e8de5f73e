using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace Fastening.Benchmarks;

/// <summary>A full assessment of a joint of four bolt sections and three layers, warm; the baseline is the same arithmetic written out by hand.</summary>
public class JointBenchmark
{
    private static readonly ScrewThread Thread = ScrewThread.Parse("M16");

    private static readonly BoltStrength Strength = PropertyClass.Parse("10.9").StrengthFor(Thread);

    private static readonly Joint Joint = new(
        BoltCompliance.Vdi2230(
            Thread, [Section(20, 16), Section(15, 13), Section(10, 14), BoltSection.OfRootArea(Length.FromMillimeters(15), Thread)], BoltHead.Hexagon, ElasticMaterial.Steel),
        ClampedStack.Vdi2230Cone(
            [Layer(4, ElasticMaterial.Steel), Layer(26, ElasticMaterial.WroughtAluminium), Layer(30, ElasticMaterial.GreyCastIron)],
            Length.FromMillimeters(22), Length.FromMillimeters(17.5), Length.FromMillimeters(70), JointForm.ThroughBolt));

    private readonly JointDuty _duty = new JointDuty(
            Force.FromKilonewtons(-3), Force.FromKilonewtons(18), LoadIntroduction.Between(0.3, 0.7),
            Embedding.ForRoughness(SurfaceRoughness.Rz10To40, EmbeddingLoad.Shear, threads: 1, bearingFaces: 2, interfaces: 2))
        .WithTransverseLoad(Force.FromKilonewtons(3), slipFaces: 1, lowestFriction: 0.14)
        .WithInterfaceTorque(Torque.FromNewtonMeters(10), Length.FromMillimeters(16), slipFaces: 1, lowestFriction: 0.14)
        .WithRequiredClamp(Force.FromKilonewtons(6))
        .WithTemperatures(JointTemperatures.ByLayer(
            TemperatureDelta.FromKelvins(40), TemperatureDelta.FromKelvins(45), TemperatureDelta.FromKelvins(60), TemperatureDelta.FromKelvins(50)));

    private readonly Range<Force> _assembly = PreloadScatter.FromTighteningFactor(1.6).RangeBelow(Force.FromKilonewtons(95));

    private readonly JointCapacity _capacity = JointCapacity.NothingStated
        .WithPermittedPreload(Force.FromKilonewtons(98))
        .WithBolt(Job.Model, Strength, residualTorsion: Ratio.FromPercent(50))
        .WithPermittedAmplitude(Pressure.FromMegapascals(45))
        .WithHeadBearing(BearingSurface.ForHexagonHead(Thread), Pressure.FromMegapascals(760))
        .WithNutBearing(BearingSurface.ForHexagonNut(Thread), Pressure.FromMegapascals(760))
        .WithEngagement(ThreadEngagement.For(Thread, Length.FromMillimeters(14)).StrengthFor(
            Pressure.FromMegapascals(1040), Pressure.FromMegapascals(1250), Pressure.FromMegapascals(640), Pressure.FromMegapascals(480)));

    private readonly HandWrittenJoint _hand = HandWrittenJoint.Like(Joint, Strength);

    [Benchmark(Baseline = true)]
    public double ByHand() => _hand.LeastSafety();

    [Benchmark]
    public JointAssessment Assess() => Joint.Assess(_duty, _assembly, _capacity);

    [Benchmark]
    public JointState ForcesAtOneLoad() => Joint.At(_assembly.High, _duty.HighAxialLoad, _duty.Introduction);

    private static BoltSection Section(double mm, double diameter) => BoltSection.OfDiameter(Length.FromMillimeters(mm), Length.FromMillimeters(diameter));

    private static ClampedLayer Layer(double mm, ElasticMaterial material) => new(Length.FromMillimeters(mm), material);
}
