using UnitsNet;

namespace Fastening.Tests.ShopUnits;

/// <summary>Expected texts are rounded by hand from the decimal on paper.</summary>
public class DisplayTests
{
    [Theory]
    [InlineData(100, 1, "73.8 lbf·ft")] // 100 / 1.3558179483314004 = 73.7562149…
    [InlineData(100, 4, "73.7562 lbf·ft")]
    [InlineData(0, 2, "0.00 lbf·ft")]
    [InlineData(-100, 0, "-74 lbf·ft")]
    public void Quantity_is_written_in_a_chosen_unit(double newtonMeters, int decimals, string expected) =>
        Assert.Equal(expected, ShopUnit.PoundForceFoot.Format(Torque.FromNewtonMeters(newtonMeters), decimals));

    [Theory]
    [InlineData(0.15, 1, "0.2 N·m")]
    [InlineData(0.25, 1, "0.3 N·m")]
    [InlineData(0.35, 1, "0.4 N·m")]
    [InlineData(2.675, 2, "2.68 N·m")]
    [InlineData(-2.675, 2, "-2.68 N·m")]
    [InlineData(-0.04, 1, "0.0 N·m")]
    [InlineData(1e-30, 3, "0.000 N·m")]
    [InlineData(12, 3, "12.000 N·m")]
    [InlineData(1e15, 1, "1000000000000000.0 N·m")]
    [InlineData(123456789.5, 0, "123456790 N·m")]
    public void Halves_of_the_decimal_on_paper_round_away_from_zero(double newtonMeters, int decimals, string expected) =>
        Assert.Equal(expected, ShopUnit.NewtonMeter.Format(Torque.FromNewtonMeters(newtonMeters), decimals));

    [Fact]
    public void Every_tenth_of_a_pound_foot_shows_as_set_after_a_trip_through_newton_metres()
    {
        for (int tenths = 0; tenths <= 5000; tenths++)
        {
            Torque quantity = ShopUnit.PoundForceFoot.From(tenths / 10.0);

            Assert.Equal($"{tenths / 10}.{tenths % 10}0 lbf·ft", ShopUnit.PoundForceFoot.Format(quantity, 2));
        }
    }

    [Fact]
    public void Unit_as_entered_is_not_converted()
    {
        var entered = new Entered<Torque>(85.25, ShopUnit.PoundForceFoot);

        Assert.Equal("85.3 lbf·ft", entered.ToString(ShopUnit.PoundForceFoot, 1));
        Assert.Equal("115.6 N·m", entered.ToString(ShopUnit.NewtonMeter, 1)); // 85.25 × 1.35581795 = 115.58348
        Assert.Equal("90.0°", new Entered<Angle>(0.25, ShopUnit.Turn).ToString(ShopUnit.Degree, 1));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(16)]
    public void Decimals_are_0_to_15(int decimals) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(decimals), () => ShopUnit.NewtonMeter.Format(Torque.FromNewtonMeters(1), decimals));

    [Fact]
    public void Fifteen_decimals_show_what_a_decimal_keeps() =>
        Assert.Equal("0.100000000000000 N·m", ShopUnit.NewtonMeter.Format(Torque.FromNewtonMeters(0.1), 15));
}
