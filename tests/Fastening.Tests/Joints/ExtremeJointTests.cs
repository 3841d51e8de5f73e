using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>Over the whole domain, corners included: what is accepted gives a finite positive answer.</summary>
public class ExtremeJointTests
{
    [Fact]
    public void Bolts_of_every_size_have_a_finite_resilience()
    {
        double[] lengths = [1e-6, 1e-3, 1, 1e3], diameters = [1e-6, 1e-2, 1e3], moduli = [1e3, 2e11, 1e13];
        ScrewThread[] threads =
        [
            ScrewThread.IsoMetric(Length.FromMillimeters(0.1), Length.FromMillimeters(0.02)),
            ScrewThread.IsoMetric(Length.FromMeters(2), Length.FromMillimeters(10)),
        ];
        foreach ((double length, double diameter, double modulus, ScrewThread thread) in
            from l in lengths from d in diameters from e in moduli from t in threads select (l, d, e, t))
        {
            var material = new ElasticMaterial("m", Pressure.FromPascals(modulus), 0, null);
            BoltSection section = BoltSection.OfDiameter(Length.FromMeters(length), Length.FromMeters(diameter));
            BoltCompliance bolt = BoltCompliance.Vdi2230(thread, [section], BoltHead.Hexagon, material);
            AssertPositive(bolt.MetersPerNewton);
            AssertPositive(bolt.TwistRadiansPerNewtonMeter!.Value);
            AssertPositive(bolt.TappedInto(ElasticMaterial.Steel).MetersPerNewton);
            Length grip = Length.FromMeters(length);
            AssertPositive(BoltCompliance.Textbook(thread, grip, grip / 2, grip, material).MetersPerNewton);
        }
    }

    [Fact]
    public void Parts_of_every_proportion_have_a_finite_resilience()
    {
        var random = new Random(20260214);
        int accepted = 0;
        for (int i = 0; i < 20_000; i++)
        {
            double Draw(double low, double high) => low * Math.Pow(high / low, random.NextDouble());
            double hole = Draw(1e-3, 1e6), bearing = Math.Min(1e6, hole * Draw(1.001, 1e3)), outer = Math.Min(1e6, hole * Draw(1.001, 1e4));
            if (bearing < 1.0011 * hole || outer < 1.0011 * hole) continue;
            double[] layers = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => Draw(Math.Max(1e-3, 1e-3 * bearing), 1e6))];
            var stack = new AnyPlates(
                layers, [.. layers.Select(_ => Draw(1e-6, 1e4))], hole, bearing, outer, 1 + 79 * random.NextDouble(),
                random.Next(2) == 0 ? JointForm.ThroughBolt : JointForm.TappedThread);
            foreach (ClampedStack parts in new[] { stack.Vdi, stack.Frusta, stack.WideFrusta })
            {
                AssertPositive(parts.MetersPerNewton);
                accepted++;
            }
        }

        Assert.True(accepted > 50_000);
    }

    [Fact]
    public void The_fit_by_wileman_stays_finite_from_the_thinnest_plates_to_the_thickest()
    {
        ScrewThread thread = ScrewThread.Parse("M16");
        foreach (double grip in new[] { 0.8, 1, 1e3, 1e6 })
        {
            ClampedStack parts = ClampedStack.Wileman(thread, [AnyPlates.LayerOf(grip, 205)], WilemanFit.Steel);
            AssertPositive(parts.MetersPerNewton);
            Assert.False(parts.IsInRange);
        }
    }

    private static void AssertPositive(double value) => Assert.True(value > 0 && double.IsFinite(value) && double.IsFinite(1 / value), $"{value:R}");
}
