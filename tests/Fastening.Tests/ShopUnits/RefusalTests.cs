using UnitsNet;

namespace Fastening.Tests.ShopUnits;

public class RefusalTests
{
    [Theory]
    [InlineData("1,5 N·m", "a comma", "decimal point", "thousands")]
    [InlineData("1,500 N·m", "a comma", "decimal point", "thousands")]
    [InlineData("85", "the unit is missing", "85 N·m")]
    [InlineData("N·m", "the number is missing", "85 N·m")]
    [InlineData("", "the number is missing")]
    [InlineData("   ", "the number is missing")]
    [InlineData("+ N·m", "the number is missing")]
    [InlineData(". N·m", "the number is missing")]
    [InlineData("NaN N·m", "finite")]
    [InlineData("Infinity N·m", "finite")]
    [InlineData("-∞ N·m", "finite")]
    [InlineData("0x1F N·m", "hexadecimal")]
    [InlineData("1.5. N·m", "decimal point", "once")]
    [InlineData("5. N·m", "decimal point", "between digits")]
    [InlineData("1.5.2 N·m", "decimal point", "once")]
    [InlineData("1e999 N·m", "1e100")]
    [InlineData("1e101 N·m", "1e100")]
    [InlineData("1e-400 N·m", "zero")]
    [InlineData("1/2 N·m", "fraction", "0.5 N·m")]
    [InlineData("1 500 N·m", "more than one number")]
    [InlineData("1'500 N·m", "more than one number")]
    [InlineData("5-10 N·m", "more than one number")]
    [InlineData("85 N·m 3", "more than one number")]
    [InlineData("85±3 N·m", "more than one number")]
    [InlineData("1_500 N·m", "more than one number")]
    [InlineData("85 lb", "lb is a mass or a force", "lbf·ft or lbf·in")]
    [InlineData("85 LBS", "lb is a mass or a force", "lbf·ft or lbf·in")]
    [InlineData("85 oz", "oz is a mass or a force", "ozf·in")]
    [InlineData("85 kg", "kg is a mass", "kgf·m")]
    [InlineData("85 Kgm", "kg is a mass", "write kgf·m")]
    [InlineData("85 kg·m", "kg is a mass", "write kgf·m")]
    [InlineData("85 mkg", "kg is a mass", "write kgf·m")]
    [InlineData("85 m·kg", "kg is a mass", "write kgf·m")]
    [InlineData("85 kg-cm", "kg is a mass", "write kgf·cm")]
    [InlineData("85 m·N", "millinewton", "N·m")]
    [InlineData("85 mN", "millinewton", "N·m")]
    [InlineData("85 MN·m", "mega", "10⁹", "N·mm")]
    [InlineData("85 nm", "nano", "N·m")]
    [InlineData("85 n-m", "nano", "N·m")]
    [InlineData("12 kN", "kN is a force", "N·m")]
    [InlineData("12 mm", "mm is a length", "N·m")]
    [InlineData("12°", "° is an angle", "N·m")]
    [InlineData("12 ft/lb", "'/' divides", "lbf·ft")]
    [InlineData("12 N/m", "'/' divides", "N·m")]
    [InlineData("12 foo", "'foo' is not a unit", "N·m, dN·m, N·cm", "lbf·ft, lbf·in, ozf·in")]
    [InlineData("5e N·m", "'e N·m' is not a unit")]
    [InlineData("٣ N·m", "the number is missing")]
    public void Torque_is_refused_with_what_to_write(string text, params string[] parts) => AssertRefused<Torque>(text, "is not a torque: ", parts);

    [Theory]
    [InlineData("85 lb", "lb is a mass or a force", "write lbf")]
    [InlineData("85 kg", "kg is a mass", "write kgf")]
    [InlineData("85 t", "several tons", "kN")]
    [InlineData("85 MN", "mega", "kN")]
    [InlineData("85 mN", "millinewton", "kN")]
    [InlineData("85 ft-lb", "ft-lb is a torque", "kN")]
    [InlineData("85 n", "'n' is not a unit", "N, kN")]
    [InlineData("85", "the unit is missing", "85 kN")]
    public void Force_is_refused_with_what_to_write(string text, params string[] parts) => AssertRefused<Force>(text, "is not a force: ", parts);

    [Theory]
    [InlineData("1/2 turn", "fraction", "0.5°")]
    [InlineData("90", "the unit is missing", "90°")]
    [InlineData("90 N", "N is a force", "°, turn or rad")]
    [InlineData("90'", "' is a length", "°, turn or rad")]
    [InlineData("90 grad", "'grad' is not a unit", "°, turn, rad")]
    public void Angle_is_refused_with_what_to_write(string text, params string[] parts) => AssertRefused<Angle>(text, "is not an angle: ", parts);

    [Theory]
    [InlineData("3/4\"", "fraction", "0.5 mm")]
    [InlineData("5' 6\"", "more than one number")]
    [InlineData("12 M", "mega", "mm, m or in")]
    [InlineData("12 nm", "nano", "mm, m or in")]
    [InlineData("12 lb", "'lb' is not a unit", "mm, cm, m, in, ft")]
    public void Length_is_refused_with_what_to_write(string text, params string[] parts) => AssertRefused<Length>(text, "is not a length: ", parts);

    [Theory]
    [InlineData("12.5 N", "m", "alone in its column")]
    [InlineData("12.5 ", " ", "unit is missing")]
    [InlineData("", "N·m", "number is missing")]
    [InlineData("1,5", "N·m", "a comma")]
    [InlineData("0x1F", "N·m", "hexadecimal")]
    [InlineData("1", "kg", "kg is a mass")]
    [InlineData("NaN", "N·m", "finite")]
    [InlineData("1", "2 N·m", "more than one number")]
    public void Columns_are_refused_with_what_to_write(string number, string unit, string part)
    {
        string message = Assert.Throws<FormatException>(() => Entered.Parse<Torque>(number, unit)).Message;

        Assert.Contains(part, message, StringComparison.Ordinal);
        Assert.StartsWith($"'{number} {unit}' is not a torque: ", message, StringComparison.Ordinal);
        Assert.False(Entered.TryParse(number, unit, out Entered<Torque>? _));
    }

    [Fact]
    public void Unit_alone_is_refused_with_what_to_write()
    {
        Assert.Equal(
            "'lb' is not a unit for a torque: lb is a mass or a force; write lbf·ft or lbf·in.",
            Assert.Throws<FormatException>(() => ShopUnit.Parse<Torque>("lb")).Message);
        Assert.Contains("kN is a force", Assert.Throws<FormatException>(() => ShopUnit.Parse<Length>("kN")).Message, StringComparison.Ordinal);
        Assert.Contains("'' is not a unit", Assert.Throws<FormatException>(() => ShopUnit.Parse<Length>("")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Long_text_is_quoted_in_part()
    {
        string message = Assert.Throws<FormatException>(() => Entered.Parse<Torque>(new string('x', 100_000))).Message;

        Assert.True(message.Length < 300);
        Assert.Contains("xxx…'", message, StringComparison.Ordinal);
    }

    private static void AssertRefused<TQuantity>(string text, string verdict, string[] parts)
        where TQuantity : struct, IQuantity
    {
        string message = Assert.Throws<FormatException>(() => Entered.Parse<TQuantity>(text)).Message;

        Assert.StartsWith($"'{text}' {verdict}", message, StringComparison.Ordinal);
        Assert.All(parts, part => Assert.Contains(part, message, StringComparison.Ordinal));
        Assert.False(Entered.TryParse(text, out Entered<TQuantity>? none));
        Assert.Null(none);
    }
}
