using System.Globalization;
using System.Numerics;
using UnitsNet;
using UnitsNet.Units;

namespace Fastening.Tests.ShopUnits;

/// <summary>
/// Expected factors are built here in whole numbers from the definitions: 1 lb = 0.45359237 kg and 1 in = 0.0254 m (international yard
/// and pound agreement, 1959), 1 ft = 12 in, 1 lb = 16 oz, standard gravity 9.80665 m/s² (3rd CGPM, 1901), the SI prefixes.
/// </summary>
public class ShopUnitDefinitionTests
{
    private static readonly (BigInteger Over, BigInteger Under) Gravity = (980_665, 100_000);
    private static readonly (BigInteger Over, BigInteger Under) Pound = (45_359_237, 100_000_000);
    private static readonly (BigInteger Over, BigInteger Under) InchInMeters = (254, 10_000);

    private static readonly Dictionary<string, (BigInteger Over, BigInteger Under)> Definitions = new()
    {
        ["N·m"] = Product((1, 1)),
        ["dN·m"] = Product((1, 10)),
        ["N·cm"] = Product((1, 100)),
        ["N·mm"] = Product((1, 1000)),
        ["daN·m"] = Product((10, 1)),
        ["kN·m"] = Product((1000, 1)),
        ["kgf·m"] = Product(Gravity),
        ["kgf·cm"] = Product(Gravity, (1, 100)),
        ["lbf·ft"] = Product(Pound, Gravity, InchInMeters, (12, 1)),
        ["lbf·in"] = Product(Pound, Gravity, InchInMeters),
        ["ozf·in"] = Product(Pound, Gravity, InchInMeters, (1, 16)),
        ["°"] = Product((1, 1)),
        ["turn"] = Product((360, 1)),
        ["N"] = Product((1, 1)),
        ["kN"] = Product((1000, 1)),
        ["lbf"] = Product(Pound, Gravity),
        ["kip"] = Product(Pound, Gravity, (1000, 1)),
        ["kgf"] = Product(Gravity),
        ["mm"] = Product((1, 1000)),
        ["cm"] = Product((1, 100)),
        ["m"] = Product((1, 1)),
        ["in"] = Product(InchInMeters),
        ["ft"] = Product(InchInMeters, (12, 1)),
    };

    public static TheoryData<string> Symbols => [.. Definitions.Keys];

    [Theory]
    [MemberData(nameof(Symbols))]
    public void Multiplier_over_divisor_is_the_definition_exactly(string symbol)
    {
        NamedUnit unit = NamedUnit.Of(symbol);
        (BigInteger over, BigInteger under) = Definitions[symbol];

        Assert.Equal(over * Whole(unit.Divisor), under * Whole(unit.Multiplier));
    }

    [Theory]
    [MemberData(nameof(Symbols))]
    public void Conversion_is_within_two_roundings_of_the_exact_fraction(string symbol)
    {
        NamedUnit unit = NamedUnit.Of(symbol);
        (BigInteger over, BigInteger under) = Definitions[symbol];
        var random = new Random(1959);
        for (int i = 0; i < 2_000; i++)
        {
            double value = random.NextInt64(1, 10_000_000_000) / 1000.0;

            AssertWithinTwoRoundings(Scaled(value) * over, under, unit.From(value));
            AssertWithinTwoRoundings(Scaled(value) * under, over, unit.ValueOfBase(value));
        }
    }

    [Fact]
    public void Every_named_unit_is_in_the_table_of_definitions()
    {
        IEnumerable<string> defined = Definitions.Keys.Append("rad");

        Assert.Equal(NamedUnit.All.Select(unit => unit.Symbol).Order(StringComparer.Ordinal), defined.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Printed_constants_are_those_of_the_handbooks()
    {
        // NIST SP 811:2008, appendix B.8: pound-force 4.448 222 N, kilogram-force 9.806 65 N, pound-force foot 1.355 818 N·m,
        // pound-force inch 0.112 984 8 N·m, ounce-force inch 7.061 552 mN·m (from memory), to half a unit of the last digit.
        Assert.Equal(4.448222, ShopUnit.PoundForce.From(1).Newtons, 5e-7);
        Assert.Equal(9.80665, ShopUnit.KilogramForce.From(1).Newtons);
        Assert.Equal(1.355818, ShopUnit.PoundForceFoot.From(1).NewtonMeters, 5e-7);
        Assert.Equal(0.1129848, ShopUnit.PoundForceInch.From(1).NewtonMeters, 5e-8);
        Assert.Equal(7.061552e-3, ShopUnit.OunceForceInch.From(1).NewtonMeters, 5e-10);
        Assert.Equal(1.3558179483314004, ShopUnit.PoundForceFoot.From(1).NewtonMeters);
    }

    [Fact]
    public void Tenths_of_a_newton_metre_are_the_decimal_itself()
    {
        for (int n = 0; n <= 1000; n++)
        {
            double printed = double.Parse($"{n / 10}.{n % 10}", CultureInfo.InvariantCulture);

            Assert.Equal(printed, ShopUnit.DecinewtonMeter.From(n).NewtonMeters);
            Assert.Equal(n / 10.0, ShopUnit.DecinewtonMeter.From(n).NewtonMeters);
            Assert.Equal(n, ShopUnit.DecinewtonMeter.ValueOf(Torque.FromNewtonMeters(printed)));
        }
    }

    [Theory]
    [InlineData("N·m", TorqueUnit.NewtonMeter)]
    [InlineData("N·cm", TorqueUnit.NewtonCentimeter)]
    [InlineData("N·mm", TorqueUnit.NewtonMillimeter)]
    [InlineData("kN·m", TorqueUnit.KilonewtonMeter)]
    [InlineData("kgf·m", TorqueUnit.KilogramForceMeter)]
    [InlineData("kgf·cm", TorqueUnit.KilogramForceCentimeter)]
    [InlineData("lbf·ft", TorqueUnit.PoundForceFoot)]
    [InlineData("lbf·in", TorqueUnit.PoundForceInch)]
    public void Torques_agree_with_UnitsNet(string symbol, TorqueUnit unit) =>
        AssertRelative(Torque.From(123.4, unit).NewtonMeters, NamedUnit.Of(symbol).From(123.4));

    [Theory]
    [InlineData("N", ForceUnit.Newton)]
    [InlineData("kN", ForceUnit.Kilonewton)]
    [InlineData("lbf", ForceUnit.PoundForce)]
    [InlineData("kip", ForceUnit.KilopoundForce)]
    [InlineData("kgf", ForceUnit.KilogramForce)]
    public void Forces_agree_with_UnitsNet(string symbol, ForceUnit unit) =>
        AssertRelative(Force.From(123.4, unit).Newtons, NamedUnit.Of(symbol).From(123.4));

    [Theory]
    [InlineData("mm", LengthUnit.Millimeter)]
    [InlineData("cm", LengthUnit.Centimeter)]
    [InlineData("m", LengthUnit.Meter)]
    [InlineData("in", LengthUnit.Inch)]
    [InlineData("ft", LengthUnit.Foot)]
    public void Lengths_agree_with_UnitsNet(string symbol, LengthUnit unit) =>
        AssertRelative(Length.From(123.4, unit).Meters, NamedUnit.Of(symbol).From(123.4));

    [Theory]
    [InlineData("°", AngleUnit.Degree)]
    [InlineData("turn", AngleUnit.Revolution)]
    [InlineData("rad", AngleUnit.Radian)]
    public void Angles_agree_with_UnitsNet(string symbol, AngleUnit unit) =>
        AssertRelative(Angle.From(123.4, unit).Degrees, NamedUnit.Of(symbol).From(123.4));

    [Fact]
    public void Radian_is_180_degrees_over_pi()
    {
        // π to 30 digits; one radian 57.295779513082320876798154814105° (closed form).
        Assert.Equal(57.295779513082320876798154814105, ShopUnit.Radian.From(1).Degrees, 57.3 * Math.Pow(2, -52));
        Assert.Equal(180, ShopUnit.Radian.From(Math.PI).Degrees);
    }

    private static void AssertRelative(double expected, double actual) => Assert.Equal(expected, actual, Math.Abs(expected) * 1e-12);

    private static (BigInteger Over, BigInteger Under) Product(params (BigInteger Over, BigInteger Under)[] factors) =>
        factors.Aggregate((product, factor) => (product.Over * factor.Over, product.Under * factor.Under));

    private static BigInteger Whole(double value)
    {
        Assert.Equal(Math.Floor(value), value);
        return new BigInteger(value);
    }

    /// <summary>A double times 2^200: a whole number for every value of these tests, so nothing is lost.</summary>
    private static BigInteger Scaled(double value) => Whole(value * Math.Pow(2, 200));

    /// <summary>Two roundings of half an ulp each: (1 + 2^-53)² − 1 is 2^-52 (1 + 2^-54).</summary>
    private static void AssertWithinTwoRoundings(BigInteger over, BigInteger under, double actual)
    {
        BigInteger error = BigInteger.Abs((Scaled(actual) * under) - over);

        Assert.True(error << 106 <= over * ((BigInteger.One << 54) + 1), $"{actual:R} is off the exact fraction by more than two roundings.");
    }
}
