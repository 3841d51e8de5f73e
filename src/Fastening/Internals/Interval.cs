using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using Fastening.Equations;

namespace Fastening.Internals;

/// <summary>The values that a pure number may take. NaN is never inside; every domain has finite bounds, so no accepted input gives a non-finite answer.</summary>
[StackTraceHidden]
internal readonly struct Interval(double low, double high, bool lowOpen = false, bool highOpen = false)
{
    // An open end is the next double inside, so that the check on the hot path is two comparisons.
    private readonly double _least = lowOpen ? NextUp(low) : low;
    private readonly double _greatest = highOpen ? -NextUp(-high) : high;

    public double Low { get; } = low;
    public double High { get; } = high;

    public bool Contains(double value) => value >= _least && value <= _greatest;

    /// <summary>The value, when it lies inside; otherwise a refusal.</summary>
    public double Check(double value, string unit = "", [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!Contains(value)) Refuse(value, unit, name);
        return value;
    }

    /// <summary>The value as an object keeps it.</summary>
    public StatedNumber Stated(double value, [CallerArgumentExpression(nameof(value))] string name = "") => new(Check(value, name: name), name);

    /// <summary>The value as it goes into a call: while a derivation listens, given or an earlier answer.</summary>
    public Term Argument(double value, [CallerArgumentExpression(nameof(value))] string name = "") => new StatedNumber(Check(value, name: name), name).Term;

    /// <summary>The interval in words, each bound multiplied by <paramref name="scale"/> and followed by <paramref name="unit"/>.</summary>
    public string Describe(double scale, string unit) =>
        $"{(_least > Low ? "greater than" : "at least")} {Print.Number(Low * scale, unit)} and {(_greatest < High ? "less than" : "at most")} {Print.Number(High * scale, unit)}";

    public static string Format(double value, string unit) => Print.Number(value, unit);

    [DoesNotReturn]
    private void Refuse(double value, string unit, string name) =>
        throw new ArgumentOutOfRangeException(name, $"{name} is {Print.Number(value, unit)}; it must be {Describe(1, unit)}.");

    private static double NextUp(double value)
    {
        if (value == 0) return double.Epsilon;
        long bits = BitConverter.DoubleToInt64Bits(value);
        return BitConverter.Int64BitsToDouble(value > 0 ? bits + 1 : bits - 1);
    }
}
