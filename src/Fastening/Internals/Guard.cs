using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace Fastening.Internals;

/// <summary>Refusals in the words of the trade. What a quantity may be stands in its <see cref="Domain{T}"/>.</summary>
[StackTraceHidden]
internal static class Guard
{
    public static T NotNull<T>([NotNull] T? value, [CallerArgumentExpression(nameof(value))] string name = "")
        where T : class
    {
        if (value is null) throw new ArgumentNullException(name);
        return value;
    }

    /// <summary>Refuses one value because of another: <c>inner is 25 mm; it must be less than outer, 22 mm.</c></summary>
    [DoesNotReturn]
    public static void RefuseAgainst(string name, IQuantity value, string requirement) =>
        throw new ArgumentOutOfRangeException(name, $"{name} is {ShowToCompare(Si.InStatedUnit(value))}; it must be {requirement}.");

    [DoesNotReturn]
    public static void RefuseAgainst(string name, double value, string requirement) =>
        throw new ArgumentOutOfRangeException(name, $"{name} is {Show(value)}; it must be {requirement}.");

    /// <summary>As given, and in the unit in which bounds are stated when that is another one: <c>-0.4 m (-400 mm)</c>.</summary>
    public static string ShowToCompare(IQuantity value)
    {
        string given = Show(value);
        if (!Si.IsConvertible((double)value.Value)) return given;
        (double number, string unit) = InUnitOfBounds(value);
        bool same = unit.Length == 0 || double.IsInfinity(number) || Math.Abs(number - (double)value.Value) <= 1e-9 * Math.Abs(number);
        return same ? given : $"{given} ({Interval.Format(number, unit)})";
    }

    // Without the commas that a quantity puts between thousands: half the world reads 1,062 as a little more than one.
    public static string Show(IQuantity value) =>
        $"{((double)value.Value).ToString("G6", CultureInfo.InvariantCulture)} {value.ToString("a", CultureInfo.InvariantCulture)}".Replace(" °", "°").Replace("°C", " °C");

    private static (double Number, string Unit) InUnitOfBounds(IQuantity value) => value switch
    {
        Length length => (Si.Millimeters(length), "mm"),
        Torque torque => (Si.Of(torque), "N·m"),
        Force force => (Si.Of(force) * 1e-3, "kN"),
        Pressure pressure => (Si.Of(pressure) * 1e-6, "MPa"),
        Angle angle => (Si.Of(angle), "°"),
        Duration duration => (Si.Of(duration), "s"),
        Area area => (Si.Of(area) * 1e6, "mm²"),
        RotationalSpeed rate => (Si.Of(rate), "°/s"),
        CoefficientOfThermalExpansion expansion => (Si.Of(expansion), "1/K"),
        TemperatureDelta change => (Si.Of(change), "K"),
        ForcePerLength stiffness => (Si.Of(stiffness) * 1e-6, "kN/mm"),
        _ => (0, ""),
    };

    public static string Show(double value) => Interval.Format(value, "");
}
