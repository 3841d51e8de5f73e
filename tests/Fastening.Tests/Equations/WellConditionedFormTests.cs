using Fastening.Equations;

namespace Fastening.Tests.Equations;

/// <summary>Where the printed form of a source cancels, the method keeps its digits: held against exact fractions at the cancelling points.</summary>
public class WellConditionedFormTests
{
    private const double FewUlp = 16 * 1.1102230246251565e-16;

    /// <summary>The walk evaluates the text against the method; here π/4 comes in as the double that the method uses.</summary>
    [Theory]
    [InlineData(0.0221, 1.0011)]
    [InlineData(0.0221, 1.0100001)]
    [InlineData(0.35, 1.00101)]
    [InlineData(0.05, 2)]
    public void Bearing_area_of_a_narrow_ring(double outer, double ratio)
    {
        double inner = outer / ratio;
        ExactFraction o = ExactFraction.Of(outer), i = ExactFraction.Of(inner);
        ExactFraction exact = ExactFraction.Of(Math.PI / 4) * (o * o - i * i);
        Assert.True(exact.RelativeErrorOf(WorkingStressEquations.BearingArea(outer, inner)) < FewUlp);
    }

    [Theory]
    [InlineData(0.02, 1.0101)]
    [InlineData(0.0333, 1.011)]
    [InlineData(0.1, 3)]
    public void Torsion_constant_of_a_thin_tube(double outer, double ratio)
    {
        double bore = outer / ratio;
        ExactFraction e = ExactFraction.Of(outer), i = ExactFraction.Of(bore);
        ExactFraction exact = ExactFraction.Of(Math.PI / 32) * (e * e * e * e - i * i * i * i);
        Assert.True(exact.RelativeErrorOf(WrenchEquations.RoundTorsionConstant(outer, bore)) < FewUlp);
    }

    [Theory]
    [InlineData(50e3, 1e-9, 1.0000001, 1e-6, 2e-6)]
    [InlineData(50e3, 4.321e-9, 1.0003, 3.3e-5, 3.3e-5)]
    [InlineData(120e3, 2e-9, 1.00000000012, 0, 0)]
    [InlineData(50e3, 1e-9, 1.3, 4e-5, 2e-5)]
    public void Thermal_loss_of_a_joint_that_hardly_softens(double preload, double resilience, double ratio, double bolt, double parts)
    {
        double hot = resilience * ratio;
        ExactFraction f = ExactFraction.Of(preload), d = ExactFraction.Of(resilience), t = ExactFraction.Of(hot);
        ExactFraction exact = (f * (t - d) + ExactFraction.Of(bolt) - ExactFraction.Of(parts)) / t;
        Assert.True(exact.RelativeErrorOf(PreloadLossEquations.ThermalLoss(preload, resilience, hot, bolt, parts)) < FewUlp);
    }

    /// <summary>E. M. Alexander (1977) as VDI 2230 prints it: 5.594 − 13.682 R_S + 14.107 R_S² − 6.057 R_S³ + 0.9353 R_S⁴, in exact decimals.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(1.0000001)]
    [InlineData(1.3)]
    [InlineData(1.9137)]
    [InlineData(2.2)]
    public void Bending_of_the_external_thread(double ratio)
    {
        ExactFraction r = ExactFraction.Of(ratio);
        ExactFraction exact = ExactFraction.Printed(5.594m) - ExactFraction.Printed(13.682m) * r + ExactFraction.Printed(14.107m) * r * r
            - ExactFraction.Printed(6.057m) * r * r * r + ExactFraction.Printed(0.9353m) * r * r * r * r;
        Assert.True(exact.RelativeErrorOf(EngagementEquations.ExternalBendingFactor(ratio)) < 2e-16 * 4);
    }
}
