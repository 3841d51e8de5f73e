using System.Diagnostics.CodeAnalysis;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Reads values with their units in the spellings of the trade, the same under every culture.</summary>
/// <remarks>
/// <para>Numbers: an optional sign, digits with an optional decimal point, an optional exponent; never a comma, a fraction, NaN or Infinity.
/// The number may touch the unit: <c>85Nm</c>.</para>
/// <para>Torque: N·m, dN·m, N·cm (cN·m), N·mm (mN·m), daN·m, kN·m, kgf·m, kgf·cm, lbf·ft, lbf·in, ozf·in; pounds and ounces in either
/// order (ft-lb, lb-ft, in-oz). Rotation: °, deg, degree, turn, rev, revolution, rad, radian. Force: N, kN, lbf, kip, kgf. Length: mm, cm,
/// m, in, inch, ″, ft, foot, ′. The parts of a torque are joined by a middle dot, point, asterisk, hyphen or space, or (with abbreviations) nothing.</para>
/// <para>Case: SI units as SI writes them, or in the capitals of a display (NM, N·CM, KN, MM) where that has one reading. "nm", "M" and
/// "MN·m" have two and are refused; "mN·m" is N·mm. Inch-pound units, kgf and words are read in any case. A lone lb, oz or kg is a mass and refused.</para>
/// </remarks>
/// <example><code>Entered&lt;Torque&gt; target = Entered.Parse&lt;Torque&gt;("85 ft-lb");
/// Entered&lt;Torque&gt; reading = Entered.Parse&lt;Torque&gt;("125", "N·cm");   // two columns of a log</code></example>
public static class Entered
{
    /// <summary>Reads a value with its unit.</summary>
    /// <typeparam name="TQuantity"><see cref="Torque"/>, <see cref="Angle"/>, <see cref="Force"/> or <see cref="Length"/>.</typeparam>
    /// <param name="text">The text: <c>85 ft-lb</c>, <c>12.5 N·m</c>, <c>90°</c>.</param>
    /// <returns>Value and unit as entered.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text is not a value with a unit of the quantity; the message says what to write.</exception>
    /// <exception cref="NotSupportedException"><typeparamref name="TQuantity"/> is another quantity.</exception>
    /// <example><code>Torque target = Entered.Parse&lt;Torque&gt;("85 ft-lb").Quantity;     // 115.24 N·m</code></example>
    public static Entered<TQuantity> Parse<TQuantity>(string text)
        where TQuantity : struct, IQuantity =>
        TryParse(Guard.NotNull(text), out Entered<TQuantity>? entered) ? entered : throw Refusal<TQuantity>.OfText(text);

    /// <summary>Reads a value with its unit without an exception.</summary>
    /// <typeparam name="TQuantity"><see cref="Torque"/>, <see cref="Angle"/>, <see cref="Force"/> or <see cref="Length"/>.</typeparam>
    /// <param name="text">The text; null is not a value.</param>
    /// <param name="entered">Value and unit, or null.</param>
    /// <returns>Whether the text is a value with a unit of the quantity.</returns>
    /// <exception cref="NotSupportedException"><typeparamref name="TQuantity"/> is another quantity.</exception>
    /// <example><code>if (Entered.TryParse("0.25 turn", out Entered&lt;Angle&gt;? found)) Console.WriteLine(found.Quantity.Degrees);     // 90</code></example>
    public static bool TryParse<TQuantity>(string? text, [NotNullWhen(true)] out Entered<TQuantity>? entered)
        where TQuantity : struct, IQuantity
    {
        QuantityWords.RequireSupported<TQuantity>();
        entered = null;
        if (text is null) return false;
        int start = NumberText.SkipSpace(text, 0);
        int end = NumberText.End(text, start);
        return NumberText.TryRead(text, start, end, out double value) && TryJoin(value, text, end, out entered);
    }

    /// <summary>Reads a value and its unit from two columns.</summary>
    /// <typeparam name="TQuantity"><see cref="Torque"/>, <see cref="Angle"/>, <see cref="Force"/> or <see cref="Length"/>.</typeparam>
    /// <param name="number">The number alone: <c>12.5</c>.</param>
    /// <param name="unit">The unit alone: <c>N·cm</c>.</param>
    /// <returns>Value and unit as entered.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="FormatException">The number is not a number, or the unit not a unit of the quantity; the message says what to write.</exception>
    /// <exception cref="NotSupportedException"><typeparamref name="TQuantity"/> is another quantity.</exception>
    /// <example><code>Torque reading = Entered.Parse&lt;Torque&gt;("125", "N·cm").Quantity;     // 1.25 N·m</code></example>
    public static Entered<TQuantity> Parse<TQuantity>(string number, string unit)
        where TQuantity : struct, IQuantity =>
        TryParse(Guard.NotNull(number), Guard.NotNull(unit), out Entered<TQuantity>? entered)
            ? entered
            : throw Refusal<TQuantity>.OfColumns(number, unit);

    /// <summary>Reads a value and its unit from two columns without an exception.</summary>
    /// <typeparam name="TQuantity"><see cref="Torque"/>, <see cref="Angle"/>, <see cref="Force"/> or <see cref="Length"/>.</typeparam>
    /// <param name="number">The number alone; null is not a number.</param>
    /// <param name="unit">The unit alone; null is not a unit.</param>
    /// <param name="entered">Value and unit, or null.</param>
    /// <returns>Whether the two are a value with a unit of the quantity.</returns>
    /// <exception cref="NotSupportedException"><typeparamref name="TQuantity"/> is another quantity.</exception>
    /// <example><code>if (!Entered.TryParse("12,5", "N·m", out Entered&lt;Torque&gt;? found)) Console.WriteLine("not read: a comma is no decimal point");</code></example>
    public static bool TryParse<TQuantity>(string? number, string? unit, [NotNullWhen(true)] out Entered<TQuantity>? entered)
        where TQuantity : struct, IQuantity
    {
        QuantityWords.RequireSupported<TQuantity>();
        entered = null;
        if (number is null || unit is null) return false;
        int start = NumberText.SkipSpace(number, 0);
        int end = NumberText.End(number, start);
        return NumberText.SkipSpace(number, end) == number.Length
            && NumberText.TryRead(number, start, end, out double value)
            && TryJoin(value, unit, 0, out entered);
    }

    private static bool TryJoin<TQuantity>(double value, string text, int unitStart, out Entered<TQuantity>? entered)
        where TQuantity : struct, IQuantity
    {
        entered = UnitSpellings.Find(text, unitStart, text.Length) is ShopUnit<TQuantity> unit && ShopUnit<TQuantity>.Accepts(value)
            ? new Entered<TQuantity>(value, unit)
            : null;
        return entered is not null;
    }
}
