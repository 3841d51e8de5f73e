using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using UnitsNet;

namespace Fastening.Internals;

/// <summary>
/// The one printer: numbers alike in every culture, quantities in their shop unit. <c>Print.Text($"tension {Tension:0.#}")</c>
/// gives <c>tension 812.3 MPa</c>. A format is that of the number; the unit follows it.
/// </summary>
[InterpolatedStringHandler]
internal readonly ref struct Print
{
    private const string Plain = "0.######", Scientific = "G6";

    private readonly StringBuilder _text;

    public Print(int literalLength, int formattedCount) => _text = new StringBuilder(literalLength + 8 * formattedCount);

    public static string Text(Print text) => text._text.ToString();

    /// <summary>A number and its unit: up to six decimals; six significant digits where it is very small or very large; or in a stated format.</summary>
    public static string Number(double value, string unit = "", string? format = null)
    {
        format ??= Math.Abs(value) is >= 1e-4 and < 1e12 ? Plain : Scientific;
        return value.ToString(format, CultureInfo.InvariantCulture) + Suffix(unit);
    }

    /// <summary>A quantity in the unit in which it was given. Without the commas that UnitsNet prints between thousands: in many countries 1,062 means a little more than one.</summary>
    public static string AsGiven(IQuantity value) =>
        Number((double)value.Value, UnitOf(value), Scientific);

    /// <summary>The unit in which a quantity was given, for example <c>lbf·ft</c>.</summary>
    public static string UnitOf(IQuantity value) => value.ToString("a", CultureInfo.InvariantCulture);

    /// <summary>A value in the unit of <see cref="Si"/>, in the shop unit of its quantity.</summary>
    public static string Quantity<T>(double si, string? format = null)
        where T : struct, IQuantity
    {
        var scale = ShopScale.Of<T>();
        return Number(si * scale.PerSi, scale.Unit, format);
    }

    /// <summary>Two quantities and their unit once: <c>12 … 16 kN</c>.</summary>
    public static string Between<T>(T low, T high, string format, string mark = " … ")
        where T : struct, IQuantity
    {
        var scale = ShopScale.Of<T>();
        return Number(scale.Number(low), "", format) + mark + Number(scale.Number(high), scale.Unit, format);
    }

    /// <summary>A unit as it follows a number: the degree stands close, other units stand off.</summary>
    public static string Suffix(string unit) => unit is "" or "°" or "°/s" or "°/min" ? unit : " " + unit;

    public void AppendLiteral(string literal) => _text.Append(literal);

    public void AppendFormatted(string? value) => _text.Append(value);

    public void AppendFormatted<T>(T value, string? format = null)
    {
        if (value is IQuantity quantity && ShopScale.Of(quantity) is ShopScale scale)
        {
            _text.Append(Number(scale.Number(quantity), scale.Unit, format));
        }
        else if (value is IFormattable formattable)
        {
            _text.Append(formattable.ToString(format, CultureInfo.InvariantCulture));
        }
        else
        {
            _text.Append(value);
        }
    }
}
