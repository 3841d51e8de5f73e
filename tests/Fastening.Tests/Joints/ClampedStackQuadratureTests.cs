using Fastening.Equations;
using FsCheck.Xunit;

namespace Fastening.Tests.Joints;

/// <summary>Closed forms against numerical integration of the cone, to 1e-9.</summary>
[Properties(Arbitrary = [typeof(JointDomain)], MaxTest = 300)]
public class ClampedStackQuadratureTests
{
    [Property]
    public void Deformation_cone_is_the_integral_of_its_cross_sections(AnyPlates stack)
    {
        double expected = ConeQuadrature.MetersPerNewton(stack, ConeQuadrature.VdiTangent(stack), stack.OuterMm);
        Close.To(expected, stack.Vdi.MetersPerNewton, 1e-9);
    }

    [Property]
    public void Deformation_cone_in_one_plate_is_the_integral_of_its_cross_sections(AnyPlates stack)
    {
        AnyPlates plate = stack.OfOnePlate;
        double expected = ConeQuadrature.MetersPerNewton(plate, ConeQuadrature.VdiTangent(plate), plate.OuterMm);
        Close.To(expected, plate.Vdi.MetersPerNewton, 1e-9);
    }

    [Property]
    public void Frusta_are_the_integral_of_their_cross_sections(AnyPlates stack)
    {
        double tangent = Math.Tan(stack.HalfAngleDegrees * Math.PI / 180);
        Close.To(ConeQuadrature.MetersPerNewton(stack, tangent, stack.OuterMm), stack.Frusta.MetersPerNewton, 1e-9);
        Close.To(ConeQuadrature.MetersPerNewton(stack, tangent, double.PositiveInfinity), stack.WideFrusta.MetersPerNewton, 1e-9);
    }

    [Theory]
    [InlineData(20, "whole cones")]
    [InlineData(3, "cones and sleeve")]
    [InlineData(1, "sleeve")]
    [InlineData(0.8, "sleeve")]
    public void Each_regime_of_the_deformation_cone_is_met(double outsidePerBearing, string regime)
    {
        foreach (JointForm form in new[] { JointForm.ThroughBolt, JointForm.TappedThread })
        {
            var stack = new AnyPlates([90], [205], 17.5, 22.5, 22.5 * outsidePerBearing, 30, form);
            string[] steps = [.. Derivation.Of(() => stack.Vdi.MetersPerNewton).Steps.Select(s => s.Equation.Id)];
            Assert.Equal(regime == "whole cones", steps.Contains("parts.whole-cones"));
            Assert.Equal(regime == "cones and sleeve", steps.Contains("parts.limited-cones"));
            Assert.Equal(regime != "whole cones", steps.Contains("parts.sleeve-resilience"));
            Close.To(ConeQuadrature.MetersPerNewton(stack, ConeQuadrature.VdiTangent(stack), stack.OuterMm), stack.Vdi.MetersPerNewton, 1e-9);
        }
    }

    [Fact]
    public void A_very_thin_layer_keeps_its_digits()
    {
        // A micrometre of a material so soft that the whole answer rests on it: there the plain logarithm loses five digits.
        var stack = new AnyPlates([1e-3, 30, 17], [2e-6, 205, 110], 17.5, 22.5, 400, 30, JointForm.TappedThread);
        double expected = ConeQuadrature.MetersPerNewton(stack, Math.Tan(Math.PI / 6), double.PositiveInfinity);
        Close.To(expected, stack.WideFrusta.MetersPerNewton, 1e-13);
    }
}
