using System.Diagnostics.CodeAnalysis;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The units of the trade.</summary>
/// <remarks>
/// Definitions: 1 in = 0.0254 m and 1 lb = 0.45359237 kg (international yard and pound agreement, 1959); standard gravity
/// 9.80665 m/s² (3rd CGPM, 1901; ISO 80000-3). Hence 1 lbf = 4.4482216152605 N and 1 lbf·ft = 1.3558179483314004 N·m, exactly; the
/// fractions below are these in lowest terms, because 17 digits do not fit a double and the reduced numerators do.
/// </remarks>
/// <example><code>Torque target = ShopUnit.PoundForceFoot.From(85);
/// ShopUnit&lt;Torque&gt; ofColumn = ShopUnit.Parse&lt;Torque&gt;("ft-lb");   // lbf·ft</code></example>
public static class ShopUnit
{
    private const double PoundForceNumerator = 8_896_443_230_521;

    /// <summary>Newton-metre, N·m.</summary>
    public static ShopUnit<Torque> NewtonMeter { get; } = new("N·m", 1, 1);

    /// <summary>Decinewton-metre, a tenth of a newton-metre: dN·m.</summary>
    public static ShopUnit<Torque> DecinewtonMeter { get; } = new("dN·m", 1, 10);

    /// <summary>Newton-centimetre, the same as a centinewton-metre: N·cm.</summary>
    public static ShopUnit<Torque> NewtonCentimeter { get; } = new("N·cm", 1, 100);

    /// <summary>Newton-millimetre, the same as a millinewton-metre: N·mm.</summary>
    public static ShopUnit<Torque> NewtonMillimeter { get; } = new("N·mm", 1, 1000);

    /// <summary>Decanewton-metre, ten newton-metres: daN·m.</summary>
    public static ShopUnit<Torque> DecanewtonMeter { get; } = new("daN·m", 10, 1);

    /// <summary>Kilonewton-metre, kN·m.</summary>
    public static ShopUnit<Torque> KilonewtonMeter { get; } = new("kN·m", 1000, 1);

    /// <summary>Kilogram-force metre, kgf·m: 9.80665 N·m.</summary>
    public static ShopUnit<Torque> KilogramForceMeter { get; } = new("kgf·m", 980_665, 1e5);

    /// <summary>Kilogram-force centimetre, kgf·cm: 0.0980665 N·m.</summary>
    public static ShopUnit<Torque> KilogramForceCentimeter { get; } = new("kgf·cm", 980_665, 1e7);

    /// <summary>Pound-force foot ("foot-pound"), lbf·ft: 1.3558179483314004 N·m.</summary>
    public static ShopUnit<Torque> PoundForceFoot { get; } = new("lbf·ft", 3_389_544_870_828_501, 2.5e15);

    /// <summary>Pound-force inch ("inch-pound"), lbf·in: 0.1129848290276167 N·m.</summary>
    public static ShopUnit<Torque> PoundForceInch { get; } = new("lbf·in", 1_129_848_290_276_167, 1e16);

    /// <summary>Ounce-force inch ("inch-ounce"), ozf·in: a sixteenth of a pound-force inch.</summary>
    public static ShopUnit<Torque> OunceForceInch { get; } = new("ozf·in", 1_129_848_290_276_167, 1.6e17);

    /// <summary>Degree of rotation, °.</summary>
    public static ShopUnit<Angle> Degree { get; } = new("°", 1, 1);

    /// <summary>Full turn, 360°.</summary>
    public static ShopUnit<Angle> Turn { get; } = new("turn", 360, 1);

    /// <summary>Radian, rad: 180°/π.</summary>
    public static ShopUnit<Angle> Radian { get; } = new("rad", 180, Math.PI);

    /// <summary>Newton, N.</summary>
    public static ShopUnit<Force> Newton { get; } = new("N", 1, 1);

    /// <summary>Kilonewton, kN.</summary>
    public static ShopUnit<Force> Kilonewton { get; } = new("kN", 1000, 1);

    /// <summary>Pound-force, lbf: 4.4482216152605 N.</summary>
    public static ShopUnit<Force> PoundForce { get; } = new("lbf", PoundForceNumerator, 2e12);

    /// <summary>Kip, a thousand pounds-force.</summary>
    public static ShopUnit<Force> Kip { get; } = new("kip", PoundForceNumerator, 2e9);

    /// <summary>Kilogram-force, kgf: 9.80665 N.</summary>
    public static ShopUnit<Force> KilogramForce { get; } = new("kgf", 980_665, 1e5);

    /// <summary>Millimetre, mm.</summary>
    public static ShopUnit<Length> Millimeter { get; } = new("mm", 1, 1000);

    /// <summary>Centimetre, cm.</summary>
    public static ShopUnit<Length> Centimeter { get; } = new("cm", 1, 100);

    /// <summary>Metre, m.</summary>
    public static ShopUnit<Length> Meter { get; } = new("m", 1, 1);

    /// <summary>Inch, in: 0.0254 m.</summary>
    public static ShopUnit<Length> Inch { get; } = new("in", 254, 1e4);

    /// <summary>Foot, ft: 0.3048 m.</summary>
    public static ShopUnit<Length> Foot { get; } = new("ft", 3048, 1e4);

    /// <summary>Reads a unit on its own, such as the unit of a column; spellings as in <see cref="Entered.Parse{TQuantity}(string)"/>.</summary>
    /// <typeparam name="TQuantity"><see cref="Torque"/>, <see cref="Angle"/>, <see cref="Force"/> or <see cref="Length"/>.</typeparam>
    /// <param name="text">The unit: <c>ft-lb</c>.</param>
    /// <returns>The unit.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text is not a unit of the quantity; the message says what to write.</exception>
    /// <exception cref="NotSupportedException"><typeparamref name="TQuantity"/> is another quantity.</exception>
    /// <example><code>ShopUnit&lt;Length&gt; unit = ShopUnit.Parse&lt;Length&gt;("inch");     // in</code></example>
    public static ShopUnit<TQuantity> Parse<TQuantity>(string text)
        where TQuantity : struct, IQuantity =>
        TryParse(Guard.NotNull(text), out ShopUnit<TQuantity>? unit) ? unit : throw Refusal<TQuantity>.OfUnit(text);

    /// <summary>Reads a unit on its own without an exception.</summary>
    /// <typeparam name="TQuantity"><see cref="Torque"/>, <see cref="Angle"/>, <see cref="Force"/> or <see cref="Length"/>.</typeparam>
    /// <param name="text">The text; null is not a unit.</param>
    /// <param name="unit">The unit, or null.</param>
    /// <returns>Whether the text is a unit of the quantity.</returns>
    /// <exception cref="NotSupportedException"><typeparamref name="TQuantity"/> is another quantity.</exception>
    /// <example><code>if (ShopUnit.TryParse("ft-lb", out ShopUnit&lt;Torque&gt;? found)) Console.WriteLine(found);     // lbf·ft</code></example>
    public static bool TryParse<TQuantity>(string? text, [NotNullWhen(true)] out ShopUnit<TQuantity>? unit)
        where TQuantity : struct, IQuantity
    {
        QuantityWords.RequireSupported<TQuantity>();
        unit = text is null ? null : UnitSpellings.Find(text, 0, text.Length) as ShopUnit<TQuantity>;
        return unit is not null;
    }
}
