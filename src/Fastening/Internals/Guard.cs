using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace Fastening.Internals;

/// <summary>Checks every quantity once and returns it as an SI double, or refuses it in the words of the trade.</summary>
[StackTraceHidden]
internal static class Guard
{
    public static double Check(Length value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double si = Si.Of(value);
        if (!domain.Contains(si)) Refuse(name, value, domain, 1e3, "mm");
        return si;
    }

    public static double Check(Area value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double si = Si.Of(value);
        if (!domain.Contains(si)) Refuse(name, value, domain, 1e6, "mm²");
        return si;
    }

    public static double Check(Torque value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double si = Si.Of(value);
        if (!domain.Contains(si)) Refuse(name, value, domain, 1, "N·m");
        return si;
    }

    public static double Check(Force value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double si = Si.Of(value);
        if (!domain.Contains(si)) Refuse(name, value, domain, 1e-3, "kN");
        return si;
    }

    public static double Check(Pressure value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double si = Si.Of(value);
        if (!domain.Contains(si)) Refuse(name, value, domain, 1e-6, "MPa");
        return si;
    }

    /// <summary>Angles are checked and returned in degrees, the unit of every log; equations take radians through <see cref="Si"/>.</summary>
    public static double Check(Angle value, in Interval degrees, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double inDegrees = Si.Of(value);
        if (!degrees.Contains(inDegrees)) Refuse(name, value, degrees, 1, "°");
        return inDegrees;
    }

    public static double Check(Duration value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double si = Si.Of(value);
        if (!domain.Contains(si)) Refuse(name, value, domain, 1, "s");
        return si;
    }

    public static double Check(RotationalSpeed value, in Interval degreesPerSecond, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double rate = Si.Of(value);
        if (!degreesPerSecond.Contains(rate)) Refuse(name, value, degreesPerSecond, 1, "°/s");
        return rate;
    }

    public static double Check(RotationalStiffness value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double si = Si.Of(value);
        if (!domain.Contains(si)) Refuse(name, Si.InNewtonMetersPerDegree(value), domain, Si.RadiansPerDegree, "N·m/°");
        return si;
    }

    public static double Check(ForcePerLength value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double si = Si.Of(value);
        if (!domain.Contains(si)) Refuse(name, value, domain, 1e-6, "kN/mm");
        return si;
    }

    public static double Check(Ratio value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double fraction = Si.Of(value);
        if (!domain.Contains(fraction)) Refuse(name, Si.InPercent(value), domain, 100, "%");
        return fraction;
    }

    /// <summary>A share that is nothing or at least a stated percentage: less is a fraction typed for a percentage.</summary>
    public static double CheckNoneOrAtLeast(Ratio value, in Interval domain, double leastPercent, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double fraction = Check(value, domain, name);
        if (fraction > 0 && fraction < leastPercent / 100)
        {
            RefuseAgainst(name, Si.InPercent(value), Print.Text($"0 %, or at least {leastPercent:0.###} %: less looks like a fraction typed for a percentage"));
        }

        return fraction;
    }

    public static double Check(CoefficientOfThermalExpansion value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double perKelvin = Si.Of(value);
        if (!domain.Contains(perKelvin)) Refuse(name, value, domain, 1, "1/K");
        return perKelvin;
    }

    public static double Check(TemperatureDelta value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double kelvins = Si.Of(value);
        if (!domain.Contains(kelvins)) Refuse(name, value, domain, 1, "K");
        return kelvins;
    }

    /// <summary>Temperatures are checked and returned in degrees Celsius.</summary>
    public static double Check(Temperature value, in Interval domain, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double celsius = Si.Of(value);
        if (!domain.Contains(celsius)) Refuse(name, Si.InDegreesCelsius(value), domain, 1, "°C");
        return celsius;
    }

    public static double Check(double value, in Interval domain, string unit = "", [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!domain.Contains(value)) RefuseNumber(name, value, domain, unit);
        return value;
    }

    public static T NotNull<T>([NotNull] T? value, [CallerArgumentExpression(nameof(value))] string name = "")
        where T : class
    {
        if (value is null) throw new ArgumentNullException(name);
        return value;
    }

    /// <summary>Refuses one value because of another: <c>inner is 25 mm; it must be less than outer, 22 mm.</c></summary>
    [DoesNotReturn]
    public static void RefuseAgainst(string name, IQuantity value, string requirement) =>
        throw new ArgumentOutOfRangeException(name, $"{name} is {ShowToCompare(value)}; it must be {requirement}.");

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

    [DoesNotReturn]
    private static void Refuse(string name, IQuantity value, in Interval domain, double scale, string unit) =>
        throw new ArgumentOutOfRangeException(name, $"{name} is {ShowToCompare(value)}; it must be {domain.Describe(scale, unit)}.");

    [DoesNotReturn]
    private static void RefuseNumber(string name, double value, in Interval domain, string unit) =>
        throw new ArgumentOutOfRangeException(
            name, $"{name} is {Print.Number(value, unit)}; it must be {domain.Describe(1, unit)}.");
}
