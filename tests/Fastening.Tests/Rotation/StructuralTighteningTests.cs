using Fastening.Equations;
using Fastening.Tests.Equations;
using UnitsNet;

namespace Fastening.Tests.Rotation;

public class StructuralTighteningTests
{
    private static readonly PropertyClass Class109 = PropertyClass.Parse("10.9");
    private static readonly ScrewThread M24 = ScrewThread.Parse("M24");

    [Fact]
    public void Torque_method_takes_two_steps_of_the_declared_k()
    {
        // 0.7 × 1000 MPa × 353 mm² = 247.1 kN; M_r = 0.123 × 24 mm × 247.1 kN.
        StructuralTightening steps = StructuralTightening.TorqueMethod(Class109, M24, 0.123);
        const double Reference = 0.123 * 0.024 * 247_100;
        Close.To(247_100, steps.Preload.Newtons);
        Close.To(Reference, steps.ReferenceTorque.NewtonMeters);
        Close.To(0.75 * Reference, steps.FirstTorque.NewtonMeters);
        Close.To(1.10 * Reference, steps.FinalTorque!.Value.NewtonMeters);
        Assert.Null(steps.FurtherRotation);
        DerivationCheck.EndsOn(steps.FirstTorque.NewtonMeters, Derivation.Of(() => steps.FirstTorque));
        DerivationCheck.EndsOn(steps.FinalTorque.Value.NewtonMeters, Derivation.Of(() => steps.FinalTorque));
    }

    [Fact]
    public void Combined_method_goes_on_with_a_rotation()
    {
        StructuralTightening steps = StructuralTightening.CombinedMethodK2(Class109, M24, 0.123, Length.FromMillimeters(150));
        Assert.Equal(StructuralTightening.TorqueMethod(Class109, M24, 0.123).FirstTorque, steps.FirstTorque);
        Assert.Equal(120, steps.FurtherRotation!.Rotation.Degrees);
        Assert.Null(steps.FinalTorque);
        Assert.Null(steps.FinalTorque);
        Assert.Equal("first 547.1 N·m, then 120° further", steps.ToString());
    }

    [Fact]
    public void Class_K1_has_its_own_reference_torque()
    {
        StructuralTightening steps = StructuralTightening.CombinedMethodK1(PropertyClass.Parse("8.8"), M24, Length.FromMillimeters(30));
        Close.To(0.13 * 0.024 * 0.7 * 800e6 * 353e-6, steps.ReferenceTorque.NewtonMeters);
        Assert.Equal(60, steps.FurtherRotation!.Rotation.Degrees);
        Assert.Contains("2018 was not read", Derivation.Of(() => steps.FirstTorque).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.099)]
    [InlineData(0.231)]
    public void A_k_outside_class_K2_is_refused(double k) =>
        Assert.Equal("meanNutFactor", Assert.Throws<ArgumentOutOfRangeException>(() => StructuralTightening.TorqueMethod(Class109, M24, k)).ParamName);

    [Theory]
    [InlineData("M8")]
    [InlineData("M10")]
    [InlineData("M18")]
    [InlineData("M33")]
    [InlineData("M20x1.5")]
    public void Sizes_that_the_standard_does_not_have_are_refused(string designation)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        Length thickness = thread.NominalDiameter * 3;
        foreach (Func<StructuralTightening> method in new Func<StructuralTightening>[]
        {
            () => StructuralTightening.TorqueMethod(Class109, thread, 0.123),
            () => StructuralTightening.CombinedMethodK1(Class109, thread, thickness),
            () => StructuralTightening.CombinedMethodK2(Class109, thread, 0.123, thickness),
        })
        {
            ArgumentException refusal = Assert.Throws<ArgumentException>(method);
            Assert.Equal("thread", refusal.ParamName);
            Assert.Contains("M12, M16, M20, M22, M24, M27, M30, M36", refusal.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Other_classes_are_refused() =>
        Assert.Throws<ArgumentException>(() => StructuralTightening.CombinedMethodK1(PropertyClass.Parse("12.9"), M24, Length.FromMillimeters(60)));
}
