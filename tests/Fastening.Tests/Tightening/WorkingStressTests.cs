using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tightening;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 200)]
public class WorkingStressTests
{
    [Property]
    public void With_all_torsion_and_no_load_it_is_the_stress_while_tightening(AnyJoint joint, AnyPreload preload)
    {
        FrictionTorqueModel model = joint.Model.WithPrevailing(Torque.FromNewtonMeters(Math.Pow(joint.DiameterMm, 3) * 0.002));
        BoltStress tightening = BoltStress.WhileTightening(model, preload.Force, TorsionDistribution.Elastic, joint.Thread.StressDiameter * 0.9);
        BoltStress working = BoltStress.InService(model, preload.Force, preload.Force, Ratio.FromPercent(100), TorsionDistribution.Elastic, joint.Thread.StressDiameter * 0.9);
        Assert.Equal(tightening.VonMises.Pascals, working.VonMises.Pascals);
        Assert.Equal(tightening.Torsion.Pascals, working.Torsion.Pascals);
    }

    [Property]
    public void Half_of_the_torsion_stays_and_the_tension_is_that_of_the_force(AnyJoint joint, AnyPreload preload)
    {
        Force force = preload.Force * 1.2;
        BoltStress stress = BoltStress.InService(joint.Model, preload.Force, force, Ratio.FromPercent(50));
        double tau = BoltStress.WhileTightening(joint.Model, preload.Force).Torsion.Pascals / 2, sigma = force.Newtons / joint.Thread.StressArea.SquareMeters;
        Close.To(sigma, stress.Tension.Pascals);
        Close.To(Math.Sqrt(sigma * sigma + 3 * tau * tau), stress.VonMises.Pascals);
        Close.To(sigma, BoltStress.InService(joint.Model, preload.Force, force, Ratio.Zero).VonMises.Pascals);
    }

    [Property]
    public void Derivation_ends_on_the_answer(AnyJoint joint, AnyPreload preload) => Assert.Equal(
        BoltStress.InService(joint.Model, preload.Force, preload.Force * 1.1, Ratio.FromPercent(40)).VonMises.Pascals,
        Derivation.Of(() => BoltStress.InService(joint.Model, preload.Force, preload.Force * 1.1, Ratio.FromPercent(40))).Result);
}
