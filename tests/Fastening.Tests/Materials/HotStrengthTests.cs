using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Materials;

/// <summary>
/// Yield strength at temperature: ISO 898-1 (1988 and 1999), informative annex, read in a table that reproduces it. The printed points stand in the
/// tests of published values; here are the line between them and what is refused.
/// </summary>
public class HotStrengthTests
{
    /// <summary>By hand: half way, a quarter, four fifths of the way between printed neighbours.</summary>
    [Theory]
    [InlineData("8.8", 60, 615)]
    [InlineData("8.8", 275, 495)]
    [InlineData("10.9", 125, 853.75)]
    [InlineData("12.9", 290, 835)]
    public void Between_the_printed_points_runs_a_straight_line(string designation, double celsius, double megapascals)
    {
        HotStrength hot = Strength(designation).AtTemperature(Temperature.FromDegreesCelsius(celsius));
        Close.To(megapascals, hot.YieldStrength.Megapascals);
        Assert.Equal(celsius, hot.Temperature.DegreesCelsius);
        Assert.Contains("annex", hot.Provenance!.Source, StringComparison.Ordinal);
        Equations.DerivationCheck.EndsOn(hot.YieldStrength.Pascals, Derivation.Of(() => hot.YieldStrength)!);
    }

    [Fact]
    public void Hotter_is_never_stronger_nor_stronger_than_in_the_room()
    {
        foreach (string designation in new[] { "8.8", "10.9", "12.9" })
        {
            double before = double.PositiveInfinity;
            for (double celsius = 20; celsius <= 300; celsius += 2.5)
            {
                double yield = Strength(designation).AtTemperature(Temperature.FromDegreesCelsius(celsius)).YieldStrength.Megapascals;
                Assert.True(yield < before);
                Assert.True(yield <= Strength(designation).YieldStrength.Megapascals);
                before = yield;
            }
        }
    }

    /// <summary>The annex prints one line for 8.8: it serves above 16 mm too, where the room has 660 MPa. 300 °C in kelvins is still inside.</summary>
    [Fact]
    public void Large_8_8_takes_the_one_line_that_is_printed()
    {
        BoltStrength m24 = PropertyClass.Parse("8.8").StrengthFor(ScrewThread.Parse("M24"));
        Assert.Equal(660, m24.YieldStrength.Megapascals);
        Assert.Equal(480, m24.AtTemperature(Temperature.FromDegreesCelsius(300)).YieldStrength.Megapascals, 9);
        Assert.Equal(480, m24.AtTemperature(Temperature.FromDegreesFahrenheit(572)).YieldStrength.Megapascals, 6);
    }

    [Theory]
    [InlineData(19.9)]
    [InlineData(300.1)]
    [InlineData(-40)]
    public void Beyond_the_table_nothing_is_extrapolated(double celsius)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => Strength("8.8").AtTemperature(Temperature.FromDegreesCelsius(celsius)));
        Assert.Equal("temperature", refusal.ParamName);
        CommaCulture.Run(() => Assert.Contains("at least 20 °C and at most 300 °C", refusal.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("5.6")]
    [InlineData("9.8")]
    [InlineData("A2-70")]
    public void Classes_without_a_table_are_refused(string designation) => Assert.Contains(
        designation,
        Assert.Throws<InvalidOperationException>(() => Strength(designation).AtTemperature(Temperature.FromDegreesCelsius(150))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void A_strength_of_the_users_own_states_its_hot_strength()
    {
        var own = new BoltStrength(Pressure.FromMegapascals(700), Pressure.FromMegapascals(450));
        Assert.Throws<InvalidOperationException>(() => own.AtTemperature(Temperature.FromDegreesCelsius(150)));

        var hot = new HotStrength(Temperature.FromDegreesCelsius(400), Pressure.FromMegapascals(315));
        Assert.Null(hot.Provenance);
        Assert.Empty(Derivation.Of(() => hot.YieldStrength).Steps);
        CommaCulture.Run(() => Assert.Equal("R_p 315 MPa at 400 °C, short time, relaxation not included", hot.ToString()));
    }

    private static BoltStrength Strength(string designation) => PropertyClass.Parse(designation).StrengthFor(ScrewThread.Parse("M10"));
}
