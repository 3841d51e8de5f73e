using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
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
        if (ShopScale.Of(value) is not ShopScale scale) return given;
        double number = scale.Number(value);
        bool same = double.IsInfinity(number) || Math.Abs(number - (double)value.Value) <= 1e-9 * Math.Abs(number);
        return same ? given : $"{given} ({Print.Number(number, scale.Unit)})";
    }

    public static string Show(IQuantity value) => Print.AsGiven(value);

    public static string Show(double value) => Print.Number(value);
}
