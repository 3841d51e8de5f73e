using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A torque, rotation, force or length as a person or a log wrote it: the value and the unit, both kept.</summary>
/// <typeparam name="TQuantity"><see cref="Torque"/>, <see cref="Angle"/>, <see cref="Force"/> or <see cref="Length"/>.</typeparam>
/// <remarks>Records keep this and not the quantity, because one value in five in lbf·ft changes in its last bit when converted to N·m and back.</remarks>
/// <example><code>Entered&lt;Torque&gt; target = Entered.Parse&lt;Torque&gt;("85 ft-lb");
/// target.Quantity.NewtonMeters                      // 115.24…
/// target.ToString()                                 // "85 lbf·ft"
/// target.ToString(ShopUnit.NewtonMeter, 1)          // "115.2 N·m"</code></example>
public sealed class Entered<TQuantity>
    where TQuantity : struct, IQuantity
{
    /// <summary>States a value and its unit.</summary>
    /// <param name="value">How many of the unit, at most 1e100 either way; negative for the loosening sense.</param>
    /// <param name="unit">The unit, from <see cref="ShopUnit"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite or beyond 1e100.</exception>
    /// <example><code>var target = new Entered&lt;Torque&gt;(85, ShopUnit.PoundForceFoot);     // 85 lbf·ft</code></example>
    public Entered(double value, ShopUnit<TQuantity> unit)
    {
        Unit = Guard.NotNull(unit);
        Value = unit.Check(value);
    }

    /// <summary>The value as entered, in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>The unit as entered; its spelling is that of print.</summary>
    public ShopUnit<TQuantity> Unit { get; }

    /// <summary>The quantity, in N·m, °, N or m.</summary>
    public TQuantity Quantity => Unit.From(Value);

    /// <summary>
    /// Value and unit, invariant: <c>85 lbf·ft</c>, <c>90°</c>. <see cref="Entered.Parse{TQuantity}(string)"/> reads back the same
    /// value, bit for bit, and the same unit.
    /// </summary>
    /// <returns>The text.</returns>
    public override string ToString() => Unit.WithSymbol(NumberText.Exact(Value));

    /// <summary>Writes the quantity in a unit, rounded to the decimals of a display.</summary>
    /// <param name="unit">The unit to write; the unit as entered is not converted.</param>
    /// <param name="decimals">Digits after the decimal point, 0 to 15.</param>
    /// <returns>Invariant text such as <c>115.2 N·m</c>, rounded as by <see cref="ShopUnit{TQuantity}.Format(TQuantity, int)"/>.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="decimals"/> is outside 0 to 15, or the quantity beyond 1e100 of the unit.</exception>
    public string ToString(ShopUnit<TQuantity> unit, int decimals) =>
        Guard.NotNull(unit) == Unit ? unit.Format(Value, decimals) : unit.Format(Quantity, decimals);
}
