using Fastening.Internals;
using UnitsNet;

namespace Fastening.Tests.Internals;

/// <summary>Texts are alike in every culture; a quantity prints its shop unit, in whatever unit it was given.</summary>
public class PrintTests
{
    [Fact]
    public void Quantities_print_in_shop_units_whatever_unit_they_were_given_in() => CommaCulture.Run(() =>
    {
        Assert.Equal("25.4 mm", Print.Text($"{Length.FromInches(1):0.###}"));
        Assert.Equal("84.3 mm²", Print.Text($"{Area.FromSquareCentimeters(0.843):0.#}"));
        Assert.Equal("1062.5 N·m", Print.Text($"{Torque.FromKilonewtonMeters(1.0625):0.##}"));
        Assert.Equal("70 kN", Print.Text($"{Force.FromNewtons(70_000):0.###}"));
        Assert.Equal("640 MPa", Print.Text($"{Pressure.FromPascals(640e6):0.#}"));
        Assert.Equal("90°", Print.Text($"{Angle.FromRevolutions(0.25):0.#}"));
        Assert.Equal("90 s", Print.Text($"{Duration.FromMinutes(1.5):0.#}"));
        Assert.Equal("60°/s", Print.Text($"{RotationalSpeed.FromRevolutionsPerMinute(10):0.#}"));
        Assert.Equal("4.5 %", Print.Text($"{Ratio.FromDecimalFractions(0.045):0.##}"));
        Assert.Equal("0.25 N·m/mm", Print.Text($"{TorquePerLength.FromNewtonMetersPerMeter(250):0.##}"));
        Assert.Equal("12 J", Print.Text($"{Energy.FromKilojoules(0.012):0.##}"));
        Assert.Equal("0.5 kN/mm", Print.Text($"{ForcePerLength.FromNewtonsPerMeter(5e5):0.##}"));
        Assert.Equal("2 N·m/°", Print.Text($"{RotationalStiffness.FromNewtonMetersPerDegree(2):0.##}"));
        Assert.Equal("-15.5 K", Print.Text($"{TemperatureDelta.FromKelvins(-15.5):0.##}"));
        Assert.Equal("20 °C", Print.Text($"{Temperature.FromKelvins(293.15):0.##}"));
        Assert.Equal("1.15E-05 1/K", Print.Text($"{CoefficientOfThermalExpansion.FromPpmPerKelvin(11.5)}"));
    });

    [Fact]
    public void Numbers_and_all_else_print_with_a_decimal_point() => CommaCulture.Run(() =>
    {
        double? none = null;
        Assert.Equal("1234.5, -7, 0.1, , text,  and Acme", Print.Text($"{1234.5:0.#}, {-7}, {0.1}, {none}, {"text"}, {(string?)null} and {ThreadProfile.Acme}"));
    });

    [Fact]
    public void A_number_without_a_format_has_six_decimals_at_most_and_six_digits_far_out() => CommaCulture.Run(() =>
    {
        Assert.Equal("0.333333 kN", Print.Text($"{Force.FromNewtons(1000.0 / 3)}"));
        Assert.Equal("3.33333E-05", Print.Number(1e-4 / 3));
        Assert.Equal("1.23457E+12 mm", Print.Number(1_234_567_890_123, "mm"));
        Assert.Equal("0.25°", Print.Number(0.25, "°"));
    });

    [Fact]
    public void A_range_names_its_unit_once() => CommaCulture.Run(() =>
        Assert.Equal("12.5 … 16 kN", Print.Between(Force.FromNewtons(12_500), Force.FromKilonewtons(16), "0.###")));

    [Fact]
    public void As_given_keeps_the_unit_and_leaves_out_separators_of_thousands() => CommaCulture.Run(() =>
    {
        Assert.Equal("1062.5 lbf·ft", Print.AsGiven(Torque.FromPoundForceFeet(1062.5)));
        Assert.Equal("45°", Print.AsGiven(Angle.FromDegrees(45)));
        Assert.Equal("20 °C", Print.AsGiven(Temperature.FromDegreesCelsius(20)));
        Assert.Equal("68 °F", Print.AsGiven(Temperature.FromDegreesFahrenheit(68)));
    });

    [Fact]
    public void A_quantity_without_a_shop_unit_prints_alike_in_every_culture() => CommaCulture.Run(() =>
        Assert.Equal("2.5 kg", Print.Text($"{Mass.FromKilograms(2.5):g}")));

    [Fact]
    public void Every_quantity_of_the_public_surface_has_a_shop_unit()
    {
        var quantities = typeof(ScrewThread).Assembly.GetExportedTypes().SelectMany(type => type.GetProperties()).Select(p => Nullable.GetUnderlyingType(p.PropertyType) ?? p.PropertyType)
            .Where(type => typeof(IQuantity).IsAssignableFrom(type) && type.IsValueType && !type.IsGenericParameter).Distinct().ToList();
        Assert.True(quantities.Count > 10);
        Assert.All(quantities, type => Assert.True(ShopScale.Of((IQuantity)Activator.CreateInstance(type)!) is not null, $"{type.Name} has no shop unit"));
    }
}
