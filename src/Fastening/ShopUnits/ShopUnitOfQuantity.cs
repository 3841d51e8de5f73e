using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>One unit of torque, rotation, force or length as the trade writes it, exact to its definition.</summary>
/// <typeparam name="TQuantity"><see cref="Torque"/>, <see cref="Angle"/>, <see cref="Force"/> or <see cref="Length"/>.</typeparam>
/// <remarks>
/// The factor is a fraction of two whole numbers, so that a decinewton-metre is a newton-metre <i>divided</i> by 10. Only the radian
/// is not a fraction: 180° divided by π. The units are listed in <see cref="ShopUnit"/>.
/// </remarks>
/// <example><code>ShopUnit.DecinewtonMeter.From(123).NewtonMeters                      // 12.3, to the last bit
/// ShopUnit.PoundForceFoot.Format(Torque.FromNewtonMeters(100), 1)     // "73.8 lbf·ft"</code></example>
public sealed class ShopUnit<TQuantity>
    where TQuantity : struct, IQuantity
{
    private static readonly Interval Readable = new(-1e100, 1e100);
    private static readonly Interval Decimals = new(0, 15);

    internal ShopUnit(string symbol, double multiplier, double divisor)
    {
        Symbol = symbol;
        Multiplier = multiplier;
        Divisor = divisor;
    }

    /// <summary>The spelling in print: <c>lbf·ft</c>.</summary>
    public string Symbol { get; }

    /// <summary>One unit is multiplier / divisor newton-metres, degrees, newtons or metres; both are exact in a double.</summary>
    internal double Multiplier { get; }

    internal double Divisor { get; }

    /// <summary>The quantity of so many of this unit, in N·m, °, N or m.</summary>
    /// <param name="value">How many, at most 1e100 either way; negative for the loosening sense.</param>
    /// <returns>The quantity; one rounding for the product and one for the quotient.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite or beyond 1e100.</exception>
    /// <example><code>Torque target = ShopUnit.PoundForceFoot.From(85);     // 115.24 N·m</code></example>
    public TQuantity From(double value) => Si.Make<TQuantity>(Readable.Check(value, Symbol) * Multiplier / Divisor);

    /// <summary>How many of this unit a quantity is.</summary>
    /// <param name="quantity">The quantity, at most 1e100 of this unit either way.</param>
    /// <returns>The value in this unit. Through the base unit and back may cost the last bit: a record keeps an <see cref="Entered{TQuantity}"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The quantity is beyond 1e100 of this unit.</exception>
    /// <example><code>double pounds = ShopUnit.PoundForce.ValueOf(Force.FromKilonewtons(55));     // 12 364.5</code></example>
    public double ValueOf(TQuantity quantity) => Readable.Check(Si.Of(quantity) * Divisor / Multiplier, Symbol, nameof(quantity));

    /// <summary>Writes a quantity in this unit, rounded to the decimals of a display.</summary>
    /// <param name="quantity">The quantity, at most 1e100 of this unit either way.</param>
    /// <param name="decimals">Digits after the decimal point, 0 to 15.</param>
    /// <returns>Invariant text such as <c>73.8 lbf·ft</c>. Halves round away from zero, judged at 15 significant digits: 0.15 is a half.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The quantity is beyond 1e100 of this unit, or <paramref name="decimals"/> is outside 0 to 15.</exception>
    /// <example><code>string text = ShopUnit.PoundForceInch.Format(Torque.FromNewtonMeters(12.5), 1);     // "110.6 lbf·in"</code></example>
    public string Format(TQuantity quantity, int decimals) => Format(ValueOf(quantity), decimals);

    /// <summary>The symbol.</summary>
    /// <returns><see cref="Symbol"/>.</returns>
    public override string ToString() => Symbol;

    internal static bool Accepts(double value) => Readable.Contains(value);

    internal double Check(double value) => Readable.Check(value, Symbol);

    internal string Format(double value, int decimals)
    {
        Decimals.Check(decimals);
        return WithSymbol(NumberText.Rounded(value, decimals));
    }

    internal string WithSymbol(string number) => Symbol == "°" ? number + Symbol : number + " " + Symbol;
}
