using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Joints;

[Properties(Arbitrary = [typeof(SleeveDomain)], MaxTest = 300)]
public class PreloadLossTests
{
    [Property]
    public void Embedding_takes_the_interference_away(AnySleeveJoint any)
    {
        double flattening = 0.3 * any.Ring.Interference;
        SpringRing embedded = any.Ring with { Interference = any.Ring.Interference - flattening };
        Force loss = any.Joint.EmbeddingLossOf(Embedding.Of(Length.FromMeters(flattening)));
        Close.To(any.Preload - embedded.Under(0).Bolt, loss.Newtons, 1e-10, any.Preload);
        Assert.True(loss.Newtons > 0);
    }

    /// <summary>Bolt and every layer grow freely, each side softens, and the ring closes again.</summary>
    [Property]
    public void Thermal_loss_is_free_growth_and_then_compatibility(AnySleeveJoint any)
    {
        TemperatureDelta bolt = TemperatureDelta.FromKelvins(35);
        double[] rises = [.. any.Layers.Select((_, i) => 20.0 + 3 * i)];
        var temperatures = JointTemperatures.ByLayer(bolt, [.. rises.Select(rise => TemperatureDelta.FromKelvins(rise))]).WithModuli(bolt: 0.93, parts: 0.97);
        double grown = any.Layers.Select((l, i) => l.Mm * l.Expansion * rises[i]).Sum() * 1e-9 - any.GripMeters * any.BoltExpansion * 35e-6;
        var warm = new SpringRing(any.BoltResilience / 0.93, any.PartsResilience / 0.97, any.Introduction, any.Ring.Interference + grown);
        if (warm.Interference <= 0) return; // nothing is left: the loss exceeds the preload
        Close.To(any.Preload - warm.Under(0).Bolt, any.Joint.ThermalLossAt(any.PreloadForce, temperatures).Newtons, 1e-10, any.Preload);
    }

    [Property]
    public void Warmer_bolt_loses_warmer_parts_gain_and_cold_reverses_both(AnySleeveJoint any)
    {
        TemperatureDelta none = TemperatureDelta.FromKelvins(0), warm = TemperatureDelta.FromKelvins(40);
        Assert.True(any.Joint.ThermalLossAt(any.PreloadForce, new JointTemperatures(bolt: warm, parts: none)).Newtons > 0);
        Assert.True(any.Joint.ThermalLossAt(any.PreloadForce, new JointTemperatures(bolt: none, parts: warm)).Newtons < 0);
        Force loss = any.Joint.ThermalLossAt(any.PreloadForce, new JointTemperatures(warm, none));
        Close.To(-loss.Newtons, any.Joint.ThermalLossAt(any.PreloadForce, new JointTemperatures(-warm, none)).Newtons, 1e-11);
        Assert.Equal(0, any.Joint.ThermalLossAt(any.PreloadForce, new JointTemperatures(none, none)).Newtons);
    }

    [Property]
    public void Softer_joint_at_the_same_growth_loses(AnySleeveJoint any)
    {
        TemperatureDelta none = TemperatureDelta.FromKelvins(0);
        Force loss = any.Joint.ThermalLossAt(any.PreloadForce, new JointTemperatures(none, none).WithModuli(0.9, 0.9));
        Close.To(0.1 * any.Preload, loss.Newtons, 1e-11);
    }

    /// <summary>Tightened to the least assembly preload, embedded, warmed and loaded, the ring keeps what is required, no more and no less.</summary>
    [Property]
    public void Least_assembly_preload_leaves_exactly_what_is_required(AnySleeveJoint any)
    {
        double load = 0.5 * any.Preload, clamp = 0.3 * any.Preload, flattening = 0.1 * any.Ring.Interference;
        double boltGrowth = any.GripMeters * any.BoltExpansion * 30e-6, partsGrowth = any.Layers.Sum(l => l.Mm * l.Expansion * 10) * 1e-9;
        var duty = new JointDuty(Force.FromNewtons(-load), Force.FromNewtons(load), any.Known, Embedding.Of(Length.FromMeters(flattening)))
            .WithRequiredClamp(Force.FromNewtons(clamp))
            .WithTemperatures(new JointTemperatures(TemperatureDelta.FromKelvins(30), TemperatureDelta.FromKelvins(10)).WithModuli(0.95, 0.98));
        double assembled = any.Joint.LeastAssemblyPreloadFor(duty).Newtons;
        double interference = assembled * (any.BoltResilience + any.PartsResilience) - flattening;
        var cold = new SpringRing(any.BoltResilience, any.PartsResilience, any.Introduction, interference);
        double hotPreload = (interference + partsGrowth - boltGrowth) / (any.BoltResilience / 0.95 + any.PartsResilience / 0.98);
        SpringRing hot = SpringRing.Tightened(any.BoltResilience, any.PartsResilience, any.Introduction, hotPreload);
        Close.To(clamp, Math.Min(cold.Under(load).Clamp, hot.Under(load).Clamp), 1e-9, assembled);
        Assert.Equal(assembled, Derivation.Of(() => any.Joint.LeastAssemblyPreloadFor(duty)).Result);
    }

    [Property]
    public void Greatest_assembly_preload_is_the_least_times_the_tightening_factor(AnySleeveJoint any)
    {
        var duty = new JointDuty(Force.Zero, any.PreloadForce * 0.4, LoadIntroduction.WorstCase, Embedding.Of(Length.FromMicrometers(7)));
        var scatter = PreloadScatter.FromTighteningFactor(1.7);
        Force greatest = any.Joint.GreatestAssemblyPreloadFor(duty, scatter);
        Close.To(1.7, greatest / any.Joint.LeastAssemblyPreloadFor(duty));
        Assert.Equal(greatest.Newtons, Derivation.Of(() => any.Joint.GreatestAssemblyPreloadFor(duty, scatter)).Result);
    }

    [Property]
    public void Derivations_end_on_their_answers(AnySleeveJoint any)
    {
        Embedding embedding = Embedding.ForRoughness(SurfaceRoughness.Rz40To160, EmbeddingLoad.Shear, 1, 2, 3);
        Assert.Equal(any.Joint.EmbeddingLossOf(embedding).Newtons, Derivation.Of(() => any.Joint.EmbeddingLossOf(embedding)).Result);
        var temperatures = new JointTemperatures(TemperatureDelta.FromKelvins(-20), TemperatureDelta.FromKelvins(15)).WithModuli(1.01, 0.99);
        Assert.Equal(
            any.Joint.ThermalLossAt(any.PreloadForce, temperatures).Newtons, Derivation.Of(() => any.Joint.ThermalLossAt(any.PreloadForce, temperatures)).Result);
    }

    [Theory]
    // VDI 2230-1:2015 Table 5, from memory, added up by hand in micrometres.
    [InlineData(SurfaceRoughness.RzBelow10, EmbeddingLoad.Axial, 1, 2, 1, 9.5)]
    [InlineData(SurfaceRoughness.RzBelow10, EmbeddingLoad.Shear, 1, 2, 3, 15)]
    [InlineData(SurfaceRoughness.Rz10To40, EmbeddingLoad.Axial, 1, 1, 2, 10)]
    [InlineData(SurfaceRoughness.Rz10To40, EmbeddingLoad.Shear, 2, 2, 1, 17.5)]
    [InlineData(SurfaceRoughness.Rz40To160, EmbeddingLoad.Axial, 1, 2, 4, 23)]
    [InlineData(SurfaceRoughness.Rz40To160, EmbeddingLoad.Shear, 1, 2, 2, 23)]
    public void Embedding_adds_up_threads_faces_and_interfaces(
        SurfaceRoughness roughness, EmbeddingLoad load, int threads, int faces, int interfaces, double micrometers)
    {
        Embedding embedding = Embedding.ForRoughness(roughness, load, threads, faces, interfaces);
        Assert.Equal(micrometers, embedding.Total.Micrometers, 9);
        Assert.Contains("from memory", embedding.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_expansion_is_refused_by_its_material()
    {
        ScrewThread thread = ScrewThread.Parse("M12");
        var unknown = new ElasticMaterial("plastic", Pressure.FromGigapascals(3), 0.35, null);
        var joint = new Joint(
            BoltCompliance.OfSections(thread, [BoltSection.OfRootArea(Length.FromMillimeters(30), thread)], ElasticMaterial.Steel),
            ClampedStack.Vdi2230Cone(
                [new ClampedLayer(Length.FromMillimeters(30), unknown)],
                Length.FromMillimeters(18), Length.FromMillimeters(13.5), Length.FromMillimeters(40), JointForm.ThroughBolt));
        var temperatures = new JointTemperatures(TemperatureDelta.FromKelvins(20), TemperatureDelta.FromKelvins(20));
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => joint.ThermalLossAt(Force.FromKilonewtons(10), temperatures));
        Assert.Contains("plastic", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Temperatures_must_match_the_layers()
    {
        var any = new AnySleeveJoint([(40, 10)], [(15, 210, 12), (25, 110, 10)], 205, 11, 13.5, 30, 20_000, 0.5);
        TemperatureDelta rise = TemperatureDelta.FromKelvins(20);
        Assert.Throws<ArgumentException>(() => any.Joint.ThermalLossAt(any.PreloadForce, JointTemperatures.ByLayer(rise, rise, rise, rise)));
        Assert.Throws<ArgumentException>(() => JointTemperatures.ByLayer(rise));
        foreach (double kelvins in new[] { -1e200, -301, 3001, 1e200 })
        {
            var hostile = TemperatureDelta.FromKelvins(kelvins);
            Assert.Equal("layers", Assert.Throws<ArgumentOutOfRangeException>(() => JointTemperatures.ByLayer(rise, rise, hostile)).ParamName);
            Assert.Equal("parts", Assert.Throws<ArgumentOutOfRangeException>(() => new JointTemperatures(rise, hostile)).ParamName);
        }
    }

    [Fact]
    public void Sections_of_other_materials_grow_with_their_own_expansion()
    {
        // Half of the bolt is an aluminium sleeve: 20 mm · 11e-6 + 20 mm · 23e-6 against 40 mm · 12e-6, all 50 K warmer; growth of the bolt 34 µm, of the parts 24 µm.
        ElasticMaterial Of(double gpa, double expansion) =>
            new("any", Pressure.FromGigapascals(gpa), 0.3, CoefficientOfThermalExpansion.FromPpmPerKelvin(expansion));
        Length half = Length.FromMillimeters(20), d = Length.FromMillimeters(10);
        var joint = new Joint(
            BoltCompliance.OfSections(
                ScrewThread.Parse("M12"), [BoltSection.OfDiameter(half, d), BoltSection.OfDiameter(half, d).WithMaterial(Of(70, 23))], Of(205, 11)),
            ClampedStack.Vdi2230Cone([new ClampedLayer(half * 2, Of(210, 12))], d * 3, d * 1.3, d * 3, JointForm.ThroughBolt));
        TemperatureDelta rise = TemperatureDelta.FromKelvins(50);
        Close.To(10e-6 / joint.MetersPerNewton, joint.ThermalLossAt(Force.FromKilonewtons(10), new JointTemperatures(rise, rise)).Newtons, 1e-10);
    }
}
