using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A low and a high end: preloads of one tightening, an interval that holds a result with a probability or a confidence.</summary>
/// <remarks>What is required has the <see cref="ToleranceWindow{TQuantity}.Lower"/> and <see cref="ToleranceWindow{TQuantity}.Upper"/> limit of a window; what results has the ends of a range.</remarks>
/// <typeparam name="T">A quantity of UnitsNet, or a number.</typeparam>
/// <example><code>Range&lt;Force&gt; preload = model.PreloadRangeAt(Torque.FromNewtonMeters(150), friction);   // M16, µ_th 0.10…0.16, µ_b 0.09…0.14
/// Console.WriteLine(preload);      // 48.765 … 72.574 kN</code></example>
public sealed class Range<T>
    where T : struct, IComparable<T>
{
    /// <summary>States a range: measured, or from another method.</summary>
    /// <param name="low">Low end.</param>
    /// <param name="high">High end, at least the low one.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end is no number or beyond 1e50, or the high end is below the low one.</exception>
    /// <example><code>new Range&lt;Force&gt;(Force.FromKilonewtons(48), Force.FromKilonewtons(72))</code></example>
    public Range(T low, T high)
        : this((low, high))
    {
        Check(low, nameof(low));
        Check(high, nameof(high));
        if (high.CompareTo(low) < 0) throw new ArgumentOutOfRangeException(nameof(high), $"high is {Show(high)}; it must be at least low, {Show(low)}.");
    }

    /// <summary>Of ends that were calculated.</summary>
    internal Range((T Low, T High) ends) => (Low, High) = ends;

    /// <summary>Low end: of preloads over a range of friction, that at the highest friction.</summary>
    public T Low { get; }

    /// <summary>High end.</summary>
    public T High { get; }

    /// <summary>High end over low end, null when the low end is not above zero; of preloads the tightening factor α_A = F_max/F_min (VDI 2230-1:2015 §5.4.3, from memory).</summary>
    public double? HighOverLow => Si.NumberOf(Low) is > 0 and double low ? Si.NumberOf(High) / low : null;

    /// <inheritdoc />
    public override string ToString() => $"{Print.Number(Shown(Low), "", Format)} … {Show(High)}";

    private static string Format => typeof(IQuantity).IsAssignableFrom(typeof(T)) ? "0.###" : "G6";

    private static double Shown(T value) => value is IQuantity quantity && ShopScale.Of(quantity) is ShopScale scale ? scale.Number(quantity) : Si.NumberOf(value);

    private static string Show(T value) =>
        Print.Number(Shown(value), value is IQuantity quantity && ShopScale.Of(quantity) is ShopScale scale ? scale.Unit : "", Format);

    private static void Check(T value, string name)
    {
        if (!Domains.Number.Contains(Si.NumberOf(value))) throw new ArgumentOutOfRangeException(name, $"{name} is {Show(value)}; it must be {Domains.Number.Describe(1, "")}.");
    }
}
