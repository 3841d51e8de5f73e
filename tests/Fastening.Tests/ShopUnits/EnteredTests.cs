using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.ShopUnits;

public class EnteredTests
{
    public static TheoryData<string> Cultures => ["", "de-DE", "tr-TR", "sv-SE", "ar-SA"];

    [Fact]
    public void Value_and_unit_stay_as_entered()
    {
        Entered<Torque> target = Entered.Parse<Torque>("85 ft-lb");

        Assert.Equal(85, target.Value);
        Assert.Same(ShopUnit.PoundForceFoot, target.Unit);
        Assert.Equal("85 lbf·ft", target.ToString());
        // 85 × 1.3558179483314004, by hand.
        Assert.Equal(115.244525608169034, target.Quantity.NewtonMeters, 3e-14);
    }

    [Fact]
    public void Columns_are_read_apart()
    {
        Entered<Torque> reading = Entered.Parse<Torque>("12.5", "dN·m");

        Assert.Equal(1.25, reading.Quantity.NewtonMeters);
        Assert.Equal("12.5 dN·m", reading.ToString());
        Assert.False(Entered.TryParse("12.5 N", "m", out Entered<Torque>? _));
        Assert.False(Entered.TryParse("12.5", null, out Entered<Torque>? _));
        Assert.False(Entered.TryParse(null, "N·m", out Entered<Torque>? _));
        Assert.False(Entered.TryParse(null, out Entered<Torque>? _));
        Assert.False(ShopUnit.TryParse(null, out ShopUnit<Torque>? _));
    }

    [Fact]
    public void Degrees_touch_their_number() => Assert.Equal("-22.5°", new Entered<Angle>(-22.5, ShopUnit.Degree).ToString());

    [Fact]
    public void Random_doubles_come_back_bit_for_bit_with_their_unit()
    {
        var random = new Random(1959);
        int tried = 0;
        while (tried < 50_000)
        {
            double value = BitConverter.Int64BitsToDouble(random.NextInt64(long.MinValue, long.MaxValue));
            if (!(Math.Abs(value) <= 1e100)) continue;
            AssertReadsBack(NamedUnit.All[tried++ % NamedUnit.All.Count], value);
        }
    }

    [Fact]
    public void Hard_doubles_come_back_bit_for_bit()
    {
        double[] hard = [0, -0.0, double.Epsilon, 2.2250738585072014e-308, 0.84551240822557006, 0.1 + 0.2, 5e-324, 9007199254740993, 1e100, -1e100, 1e22, 1e23];
        foreach (NamedUnit unit in NamedUnit.All)
        {
            Array.ForEach(hard, value => AssertReadsBack(unit, value));
        }
    }

    [Property(MaxTest = 2000)]
    public Property Readings_of_the_trade_come_back(int digits, PositiveInt place, PositiveInt index)
    {
        double value = digits / Math.Pow(10, place.Get % 7);
        NamedUnit unit = NamedUnit.All[index.Get % NamedUnit.All.Count];

        return (unit.Read(unit.Write(value)) == (value, unit.Symbol)).ToProperty();
    }

    [Property(MaxTest = 2000)]
    public Property Conversion_and_its_inverse_agree(NormalFloat value, PositiveInt index)
    {
        double entered = Math.Abs(value.Get) > 1e90 || Math.Abs(value.Get) < 1e-290 ? 1 : value.Get;
        NamedUnit unit = NamedUnit.All[index.Get % NamedUnit.All.Count];

        return (Math.Abs(unit.ValueOfBase(unit.From(entered)) - entered) <= 4.5e-16 * Math.Abs(entered)).ToProperty();
    }

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Culture_changes_nothing(string name)
    {
        CultureInfo before = CultureInfo.CurrentCulture, beforeUi = CultureInfo.CurrentUICulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(name);
            Assert.Equal(1.5, Entered.Parse<Torque>("1.5 N·m").Value);
            Assert.Equal("-1234.5 lbf·in", Entered.Parse<Torque>("-1234.5 IN-LB").ToString());
            Assert.Equal("0.5 in", Entered.Parse<Length>("0.5 INCH").ToString());
            Assert.Equal("3 kip", Entered.Parse<Force>("3 KIPS").ToString());
            Assert.Equal("-1234.50 N·m", ShopUnit.NewtonMeter.Format(Torque.FromNewtonMeters(-1234.5), 2));
            Assert.False(Entered.TryParse("1,5 N·m", out Entered<Torque>? _));
            string refusal = Assert.Throws<ArgumentOutOfRangeException>(() => new Entered<Torque>(-1.5e150, ShopUnit.NewtonMeter)).Message;
            Assert.Contains("-1.5E+150 N·m", refusal, StringComparison.Ordinal);
            Assert.All(NamedUnit.All, unit => AssertReadsBack(unit, -1234.5678));
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, beforeUi);
        }
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1.0000001e100)]
    [InlineData(double.MaxValue)]
    public void Values_beyond_reading_are_refused(double value)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => new Entered<Torque>(value, ShopUnit.PoundForceFoot));

        Assert.Equal("value", refused.ParamName);
        Assert.Contains("lbf·ft; it must be at least -1E+100 lbf·ft and at most 1E+100 lbf·ft", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(nameof(value), () => ShopUnit.Kip.From(value));
    }

    [Fact]
    public void Quantities_beyond_reading_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("quantity", () => ShopUnit.OunceForceInch.ValueOf(Torque.FromNewtonMeters(1e300)));
        Assert.Throws<ArgumentOutOfRangeException>("quantity", () => ShopUnit.OunceForceInch.Format(Torque.FromNewtonMeters(1e300), 1));
    }

    [Fact]
    public void Missing_arguments_are_named()
    {
        Assert.Throws<ArgumentNullException>("unit", () => new Entered<Torque>(1, null!));
        Assert.Throws<ArgumentNullException>("unit", () => new Entered<Torque>(1, ShopUnit.NewtonMeter).ToString(null!, 1));
        Assert.Throws<ArgumentNullException>("text", () => Entered.Parse<Torque>(null!));
        Assert.Throws<ArgumentNullException>("number", () => Entered.Parse<Torque>(null!, "N·m"));
        Assert.Throws<ArgumentNullException>("unit", () => Entered.Parse<Torque>("1", null!));
        Assert.Throws<ArgumentNullException>("text", () => ShopUnit.Parse<Torque>(null!));
    }

    [Fact]
    public void Other_quantities_are_not_supported()
    {
        string message = Assert.Throws<NotSupportedException>(() => Entered.Parse<Mass>("1 kg")).Message;

        Assert.Equal("Mass has no shop units: use Torque, Angle, Force or Length.", message);
        Assert.Throws<NotSupportedException>(() => Entered.TryParse(null, out Entered<RotationalSpeed>? _));
        Assert.Throws<NotSupportedException>(() => Entered.TryParse(null, null, out Entered<RotationalSpeed>? _));
        Assert.Throws<NotSupportedException>(() => ShopUnit.TryParse(null, out ShopUnit<Pressure>? _));
    }

    private static void AssertReadsBack(NamedUnit unit, double value)
    {
        string text = unit.Write(value);
        (double read, string symbol) = unit.Read(text);

        Assert.Equal(BitConverter.DoubleToInt64Bits(value), BitConverter.DoubleToInt64Bits(read));
        Assert.Equal(unit.Symbol, symbol);
    }
}
