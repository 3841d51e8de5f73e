using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Wrenches;

public class TorqueMultiplierTests
{
    [Fact]
    public void Five_to_one_at_92_percent()
    {
        var multiplier = new TorqueMultiplier(gearRatio: 5, efficiency: 0.92);

        Assert.Equal(460, multiplier.OutputAt(Torque.FromNewtonMeters(100)).NewtonMeters, 9);
        Assert.Equal(100, multiplier.InputFor(Torque.FromNewtonMeters(460)).NewtonMeters, 9);
        Assert.Equal(360, multiplier.ReactionAt(Torque.FromNewtonMeters(100)).NewtonMeters, 9);
        Assert.Equal(4.6, multiplier.TorqueRatio, 12);
        CommaCulture.Run(() => Assert.Equal("torque multiplier 5 : 1, efficiency 0.92", multiplier.ToString()));
    }

    /// <summary>Energy: in one turn of the output the input turns i times; the work that comes out is η of the work that goes in. And equilibrium of the housing.</summary>
    [Property]
    public void Work_and_equilibrium(byte ratioPart, byte efficiencyPart, ushort torquePart)
    {
        double ratio = 1 + ratioPart / 10.0, efficiency = 0.3 + 0.7 * efficiencyPart / 255, input = torquePart / 10.0;
        var multiplier = new TorqueMultiplier(ratio, efficiency);
        double output = multiplier.OutputAt(Torque.FromNewtonMeters(input)).NewtonMeters;

        Close.To(efficiency * (input * 2 * Math.PI * ratio), output * 2 * Math.PI);
        Close.To(output, input + multiplier.ReactionAt(Torque.FromNewtonMeters(input)).NewtonMeters, scale: output + input + 1e-300);
        Close.To(input, multiplier.InputFor(Torque.FromNewtonMeters(output)).NewtonMeters);
        Assert.Equal(output, Derivation.Of(() => multiplier.OutputAt(Torque.FromNewtonMeters(input))).Result);
        Assert.Equal(multiplier.InputFor(Torque.FromNewtonMeters(output)).NewtonMeters, Derivation.Of(() => multiplier.InputFor(Torque.FromNewtonMeters(output))).Result);
    }

    [Fact]
    public void A_window_at_the_fastener_becomes_a_window_at_the_wrench()
    {
        var multiplier = new TorqueMultiplier(gearRatio: 4, efficiency: 0.9);
        ToleranceWindow<Torque> window = multiplier.InputWindowFor(ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(1800), Ratio.FromPercent(5), Ratio.FromPercent(5)));

        Assert.Equal(475, window.Lower!.Value.NewtonMeters, 9);
        Assert.Equal(525, window.Upper!.Value.NewtonMeters, 9);
    }

    [Fact]
    public void Goes_before_the_wrench_and_its_adapters()
    {
        var multiplier = new TorqueMultiplier(gearRatio: 5, efficiency: 0.8);
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400)).WithAdapter(Length.FromMillimeters(100), Angle.Zero);

        // 1000 N·m over 5·0.8 is 250 at the input; the adapter lengthens the lever by a quarter.
        Assert.Equal(200, wrench.SettingFor(multiplier.InputFor(Torque.FromNewtonMeters(1000))).NewtonMeters, 9);
    }

    [Theory]
    [InlineData(0.99, 0.9, "gearRatio")]
    [InlineData(1001, 0.9, "gearRatio")]
    [InlineData(double.NaN, 0.9, "gearRatio")]
    [InlineData(5, 0, "efficiency")]
    [InlineData(5, 1.01, "efficiency")]
    [InlineData(5, double.NaN, "efficiency")]
    public void What_no_gearbox_has_is_refused(double gearRatio, double efficiency, string parameter) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(() => new TorqueMultiplier(gearRatio, efficiency)).ParamName);
}
