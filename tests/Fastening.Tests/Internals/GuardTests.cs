using Fastening.Internals;
using UnitsNet;

namespace Fastening.Tests.Internals;

public class GuardTests
{
    /// <summary>A comma between thousands reads as a decimal comma in half the world; the text of a quantity is refused for that reason (ShopUnits).</summary>
    [Fact]
    public void A_refusal_shows_a_value_in_its_own_unit_without_commas()
    {
        Assert.Equal("1062 N·m", Guard.Show(Torque.FromNewtonMeters(1062)));
        Assert.Equal("12345.7 lbf·ft", Guard.Show(Torque.FromPoundForceFeet(12345.67)));
        Assert.Equal("1234°", Guard.Show(Angle.FromDegrees(1234)));
        Assert.Equal("-4000 %", Guard.Show(Ratio.FromPercent(-4000)));
        Assert.Equal("1E+07 N", Guard.Show(Force.FromNewtons(1e7)));
        CommaCulture.Run(() => Assert.Equal("1062.5 N·m", Guard.Show(Torque.FromNewtonMeters(1062.5))));
    }
}
