using System.Globalization;
using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tightening;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 100)]
public class DerivationTests
{
    private static readonly TorqueConvention[] Conventions =
        [TorqueConvention.Iso16047, TorqueConvention.MachinerysHandbook, TorqueConvention.Vdi2230, TorqueConvention.Shigley];

    [Property]
    public void Every_derivation_ends_on_the_answer_of_its_call_bit_for_bit(AnyJoint joint, AnyPreload preload, AnyTorque torque)
    {
        foreach (TorqueConvention convention in Conventions)
        {
            FrictionTorqueModel model = joint.Model.WithConvention(convention).WithPrevailing(torque.Torque * 1e-3);
            Assert.Equal(model.TorqueFor(preload.Force).NewtonMeters, Derivation.Of(() => model.TorqueFor(preload.Force)).Result);
            Assert.Equal(model.PreloadAt(torque.Torque).Newtons, Derivation.Of(() => model.PreloadAt(torque.Torque)).Result);
            Assert.Equal(model.LooseningTorqueAt(preload.Force).NewtonMeters, Derivation.Of(() => model.LooseningTorqueAt(preload.Force)).Result);
            Assert.Equal(model.BreakdownAt(torque.Torque).Total.NewtonMeters, Derivation.Of(() => model.BreakdownAt(torque.Torque)).Result);
            Assert.Equal(model.NutFactor, Derivation.Of(() => model.NutFactor).Result);
            Assert.Equal(BoltStress.WhileTightening(model, preload.Force).VonMises.Pascals, Derivation.Of(() => BoltStress.WhileTightening(model, preload.Force)).Result);
        }

        NutFactorModel nut = TorquePreloadModel.FromNutFactor(0.2, joint.Thread.NominalDiameter);
        Assert.Equal(nut.TorqueFor(preload.Force).NewtonMeters, Derivation.Of(() => nut.TorqueFor(preload.Force)).Result);
        Assert.Equal(joint.Thread.StressArea.SquareMeters, Derivation.Of(() => joint.Thread.StressArea).Result);
    }

    [Property]
    public void Permitted_preload_is_derived_bit_for_bit(AnyJoint joint)
    {
        var strength = new BoltStrength(Pressure.FromMegapascals(800), Pressure.FromMegapascals(640), Pressure.FromMegapascals(580));
        foreach (TorsionDistribution torsion in new[] { TorsionDistribution.Plastic, TorsionDistribution.Elastic })
        {
            Assert.Equal(
                joint.Model.PermittedPreload(strength, Ratio.FromPercent(90), torsion).Newtons,
                Derivation.Of(() => joint.Model.PermittedPreload(strength, Ratio.FromPercent(90), torsion)).Result);
        }
    }

    [Property]
    public void Wrench_work_ends_on_the_setting_bit_for_bit(AnyWrench any, AnyTorque torque)
    {
        TorqueWrench wrench = any.Wrench.WithCoaxialExtension(
            CoaxialExtension.Round(Length.FromMillimeters(250), Length.FromMillimeters(14), Pressure.FromGigapascals(79)));
        Assert.Equal(wrench.SettingFor(torque.Torque).NewtonMeters, Derivation.Of(() => wrench.SettingFor(torque.Torque)).Result);
        Assert.Equal(wrench.FastenerTorqueAt(torque.Torque).NewtonMeters, Derivation.Of(() => wrench.FastenerTorqueAt(torque.Torque)).Result);
        Close.To(wrench.WindUpAt(torque.Torque).Radians, Derivation.Of(() => wrench.WindUpAt(torque.Torque)).Result, 1e-15);
    }

    [Property]
    public void Every_step_rests_on_what_stands_before_it_or_on_a_given_value(AnyJoint joint, AnyPreload preload)
    {
        Derivation work = Derivation.Of(() => joint.Model.WithConvention(TorqueConvention.Shigley).TorqueFor(preload.Force));
        for (int i = 0; i < work.Steps.Count - 1; i++)
        {
            double result = work.Steps[i].Result;
            Assert.Contains(work.Steps.Skip(i + 1), later => later.Inputs.Contains(result));
        }

        foreach (DerivationStep step in work.Steps) Assert.Equal(step.Equation.Invoke([.. step.Inputs]), step.Result);
    }

    [Fact]
    public void Prints_in_shop_units_whatever_the_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Derivation work = Derivation.Of(() => TorquePreloadModel.FromNutFactor(0.18, Length.FromMillimeters(12.5)).TorqueFor(Force.FromKilonewtons(20)));
            Assert.Equal(
                "Tightening torque\n"
                + "Given\n"
                + "     F = 20 kN   (preload)\n"
                + "     K = 0.18   (nut factor)\n"
                + "     d = 12.5 mm   (diameter)\n"
                + "     M_p = 0 N·m   (prevailing torque)\n"
                + "Steps\n"
                + "  1. κ = K·d   (tightening torque per unit preload)\n"
                + "     = 0.18·12.5 mm = 2.25 N·m/kN   [Shigley 9th ed. (2011) eq. (8-27)]\n"
                + "  2. M = κ·F + M_p   (tightening torque)\n"
                + "     = 2.25 N·m/kN·20 kN + 0 N·m = 45 N·m   [ISO 16047:2005 (from memory); VDI 2230-1:2015 §5.4.3 (from memory)]\n",
                work.ToString());
            Assert.Contains("| 2 | tightening torque | `M = κ·F + M_p` | 2.25 N·m/kN·20 kN + 0 N·m | 45 N·m |", work.ToMarkdown(), StringComparison.Ordinal);
            Assert.Contains(@"M &= \kappa \cdot F + M_p \\", work.ToLatex(), StringComparison.Ordinal);
            Assert.Contains(@"= 45\,\mathrm{N{\cdot}m}", work.ToLatex(), StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
