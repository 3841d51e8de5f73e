using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace Fastening.Tests.Rotation;

/// <summary>A bolt of two sections through a sleeve of another material: springs that a test can compute by E A/L on its own.</summary>
public sealed record AnyTurnedJoint(
    double DiameterMm, double PitchShare, double ShankMm, double WaistMm, double WaistShare, double SleeveShare, double SleeveGpa,
    double ThreadFriction, double BearingFriction)
{
    private const double BoltGpa = 207, BoltPoisson = 0.29;

    public ScrewThread Thread => ScrewThread.IsoMetric(Length.FromMillimeters(DiameterMm), Length.FromMillimeters(DiameterMm * PitchShare));

    public double Lead => DiameterMm * PitchShare * 1e-3;

    public const double ShearModulus = BoltGpa * 1e9 / (2 * (1 + BoltPoisson));

    private double WaistDiameterMm => DiameterMm * WaistShare;

    private double HoleMm => DiameterMm * 1.1;

    /// <summary>Σ L/(E A), m/N.</summary>
    public double BoltCompliancePerEal => (ShankMm / Disc(DiameterMm) + WaistMm / Disc(WaistDiameterMm)) / (BoltGpa * 1e9) * 1e3;

    public double SleeveCompliancePerEal => (ShankMm + WaistMm) / (Disc(DiameterMm * SleeveShare) - Disc(HoleMm)) / (SleeveGpa * 1e9) * 1e3;

    /// <summary>Σ l/(G J), rad/(N·m).</summary>
    public double TwistPerGj => 32 / (Math.PI * ShearModulus) * (ShankMm / Math.Pow(DiameterMm, 4) + WaistMm / Math.Pow(WaistDiameterMm, 4)) * 1e9;

    public Joint Joint
    {
        get
        {
            var steel = new ElasticMaterial("bolt", Pressure.FromGigapascals(BoltGpa), BoltPoisson, null);
            BoltCompliance bolt = BoltCompliance.OfSections(
                Thread,
                [
                    BoltSection.OfDiameter(Length.FromMillimeters(ShankMm), Length.FromMillimeters(DiameterMm)),
                    BoltSection.OfDiameter(Length.FromMillimeters(WaistMm), Length.FromMillimeters(WaistDiameterMm)),
                ],
                steel);
            Length outer = Length.FromMillimeters(DiameterMm * SleeveShare);
            var layer = new ClampedLayer(Length.FromMillimeters(ShankMm + WaistMm), new ElasticMaterial("sleeve", Pressure.FromGigapascals(SleeveGpa), 0.3, null));
            return new Joint(bolt, ClampedStack.Vdi2230Cone([layer], outer, Length.FromMillimeters(HoleMm), outer, JointForm.ThroughBolt));
        }
    }

    public FrictionTorqueModel Model => TorquePreloadModel.FromFriction(
        Thread, BearingSurface.Annulus(Length.FromMillimeters(1.6 * DiameterMm), Length.FromMillimeters(HoleMm)),
        new FrictionCoefficients(ThreadFriction, BearingFriction));

    /// <summary>300 MPa on the nominal section.</summary>
    public Force Limit => Force.FromNewtons(300 * Disc(DiameterMm));

    public RotationTightening Tightening => new(Joint, Model, Model.TorqueFor(Limit * 0.15), Limit);

    public static Arbitrary<AnyTurnedJoint> Any() => Arb.From(
        from d in Domain.LogUniform(4, 60)
        from pitch in Domain.Uniform(0.08, 0.17)
        from shank in Domain.Uniform(1, 6)
        from waist in Domain.Uniform(0.5, 4)
        from waistShare in Domain.Uniform(0.72, 0.95)
        from sleeve in Domain.Uniform(1.5, 2.5)
        from modulus in Domain.Uniform(60, 190)
        from thread in Domain.Uniform(0.06, 0.25)
        from bearing in Domain.Uniform(0.05, 0.3)
        select new AnyTurnedJoint(d, pitch, d * shank, d * waist, waistShare, sleeve, modulus, thread, bearing));

    private static double Disc(double diameter) => Math.PI / 4 * diameter * diameter;
}
