using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Limits of a quantity, both or one of them, mostly with a target; a reading equal to a limit, in any unit, conforms.</summary>
/// <typeparam name="TQuantity">Torque, Angle, Force, RotationalSpeed or Length.</typeparam>
/// <remarks>A side without a limit (<see cref="ToleranceWindow.AtLeast"/>, <see cref="ToleranceWindow.AtMost"/>) is null: do not state a far limit in its
/// place, a rule that depends on the width of the window would take it for a real one. Arithmetic that can leave nothing answers null. Limits are widened by 1e-12 of the largest for <see cref="Classify(TQuantity)"/> only.</remarks>
/// <example><code>ToleranceWindow&lt;Torque&gt; window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(48), Torque.FromNewtonMeters(52));
/// Conformity verdict = window.Classify(Torque.FromNewtonMeters(52.4));   // Above</code></example>
public sealed partial class ToleranceWindow<TQuantity>
    where TQuantity : struct, IQuantity
{
    private const double Bound = 1e16;

    private readonly WindowLimits _limits;

    internal ToleranceWindow(in WindowLimits limits) => _limits = limits;

    /// <summary>Lower limit; null when there is none.</summary>
    public TQuantity? Lower => Maybe(_limits.Lower);

    /// <summary>Target; null when none was stated, as with one limit.</summary>
    public TQuantity? Target => Maybe(_limits.Target);

    /// <summary>Upper limit; null when there is none.</summary>
    public TQuantity? Upper => Maybe(_limits.Upper);

    /// <summary>Lower limit, target and upper limit of an ordinary window, none of them null.</summary>
    /// <exception cref="InvalidOperationException">The window has one limit, or no target.</exception>
    /// <example><code>(Torque lower, Torque target, Torque upper) = window.TwoSided;
    /// Torque aim = window.TwoSided.Target;</code></example>
    public (TQuantity Lower, TQuantity Target, TQuantity Upper) TwoSided => Lower is { } lower && Target is { } target && Upper is { } upper
        ? (lower, target, upper)
        : throw new InvalidOperationException($"The window is {this}; it has no two limits with a target.");

    /// <summary>The verdict on a reading.</summary>
    /// <param name="reading">The reading, in any unit.</param>
    /// <returns>Below, Within or Above; never Below without a lower limit, never Above without an upper one.</returns>
    public Conformity Classify(TQuantity reading) => _limits.Classify(Si.Of(reading));

    /// <summary>The verdicts on many readings; a reading that is not finite is Undefined.</summary>
    /// <param name="readingsInSiOrDegrees">Readings in newton-metres, degrees, newtons, degrees per second or metres, after the quantity of the window.</param>
    /// <param name="verdicts">As many verdicts.</param>
    /// <exception cref="ArgumentException">The lengths differ; nothing was written.</exception>
    public void Classify(ReadOnlySpan<double> readingsInSiOrDegrees, Span<Conformity> verdicts)
    {
        Batch.RefuseUnequal(readingsInSiOrDegrees.Length, verdicts.Length, nameof(verdicts));
        WindowLimits limits = _limits;
        for (int i = 0; i < readingsInSiOrDegrees.Length; i++) verdicts[i] = limits.Classify(readingsInSiOrDegrees[i]);
    }

    /// <summary>What both windows permit, with this window's target, else the other's, moved to the nearer limit if it falls outside.</summary>
    /// <param name="other">The other window.</param>
    /// <returns>The common window, or null when there is none.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    /// <example><code>ToleranceWindow&lt;Torque&gt;? both = window.Intersect(ToleranceWindow.FromLimits(Torque.FromNewtonMeters(49.5), Torque.FromNewtonMeters(55)));
    /// // of 48 … 52 N·m there is left: 50 (49.5 … 52) N·m</code></example>
    public ToleranceWindow<TQuantity>? Intersect(ToleranceWindow<TQuantity> other) => Wrap(_limits.Intersect(Guard.NotNull(other)._limits));

    /// <summary>Target and limits times a factor, as a lever or a ratio requires.</summary>
    /// <param name="factor">The factor, 1e-9 to 1e9.</param>
    /// <returns>A new window.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="factor"/> is outside its domain, or carries the window out of its own.</exception>
    /// <example><code>ToleranceWindow&lt;Torque&gt; atTheDrive = window.Scale(0.8);   // 48 … 52 N·m becomes 40 (38.4 … 41.6) N·m</code></example>
    public ToleranceWindow<TQuantity> Scale(double factor)
    {
        WindowLimits scaled = _limits.Scale(Domains.Factor.Check(factor));
        if (scaled.Lower < -Bound && scaled.HasLower || scaled.Upper > Bound && scaled.HasUpper || scaled.Lower > Bound || scaled.Upper < -Bound)
        {
            Guard.RefuseAgainst(nameof(factor), factor, $"so small that the limits stay within {ShopScale.Of<TQuantity>().Describe(new Interval(-Bound, Bound))}");
        }

        return new(scaled);
    }

    /// <summary>The whole display steps inside the window: limits rounded inward, target to the nearest step inside.</summary>
    /// <param name="resolution">Step of the display, greater than 0.</param>
    /// <returns>The rounded window, or null when no step falls inside.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="resolution"/> is outside its domain.</exception>
    /// <example><code>wrench.SettingWindowFor(window).RoundInward(Torque.FromNewtonMeters(0.5))</code></example>
    public ToleranceWindow<TQuantity>? RoundInward(TQuantity resolution)
    {
        double step = Check(resolution, fromZero: true, nameof(resolution));
        if (step < 1e-9) Guard.RefuseAgainst(nameof(resolution), resolution, $"at least {Print.Quantity<TQuantity>(1e-9)}");
        return Wrap(_limits.RoundInward(step));
    }

    /// <summary>The window in which readings are accepted: a guard band inside each limit, or outside when negative.</summary>
    /// <param name="guardBand">Width of the band; agreed beforehand, never assumed.</param>
    /// <returns>The acceptance window, or null when the bands leave nothing.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="guardBand"/> is outside its domain.</exception>
    /// <example><code>ToleranceWindow&lt;Torque&gt;? accepted = window.AcceptanceWindow(Torque.FromNewtonMeters(0.6));   // 48 … 52 N·m becomes 50 (48.6 … 51.4) N·m</code></example>
    public ToleranceWindow<TQuantity>? AcceptanceWindow(TQuantity guardBand) =>
        Wrap(_limits.Shrink(Check(guardBand, fromZero: false, nameof(guardBand))));

    /// <inheritdoc />
    public override string ToString()
    {
        var shop = ShopScale.Of<TQuantity>();
        return Text(value => Print.Number(value * shop.PerSi), Print.Suffix(shop.Unit));
    }

    /// <summary>Target and limits in a unit of the trade, rounded to the decimals of a display; the limits are not rounded inward.</summary>
    /// <param name="unit">The unit to write.</param>
    /// <param name="decimals">Digits after the decimal point, 0 to 15.</param>
    /// <returns>Invariant text such as <c>110.6 (106.2 … 115.1) lbf·ft</c> or <c>at least 106.2 lbf·ft</c>.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="decimals"/> is outside 0 to 15.</exception>
    public string ToString(ShopUnit<TQuantity> unit, int decimals)
    {
        string Number(double value) => Guard.NotNull(unit).Format(Si.Make<TQuantity>(value), decimals).Replace(unit.Symbol, "").TrimEnd();
        double some = _limits.HasUpper ? _limits.Upper : _limits.Lower;
        string withUnit = Guard.NotNull(unit).Format(Si.Make<TQuantity>(some), decimals);
        return Text(Number, withUnit.Substring(Number(some).Length));
    }

    internal WindowLimits Limits => _limits;

    /// <summary>The limits where a calculation needs both.</summary>
    internal WindowLimits BothLimits(string name) => _limits.IsOneSided
        ? throw new ArgumentException($"{name} is {this}; both limits are needed here.", name)
        : _limits;

    internal static double Check(TQuantity value, bool fromZero, string name)
    {
        double si = Si.Of(value);
        if (!(si <= Bound && si >= (fromZero ? 0 : -Bound)))
        {
            Guard.RefuseAgainst(name, value, ShopScale.Of<TQuantity>().Describe(new Interval(fromZero ? 0 : -Bound, Bound)));
        }

        return si;
    }

    private string Text(Func<double, string> number, string unit)
    {
        if (!_limits.HasUpper) return $"at least {number(_limits.Lower)}{unit}";
        if (!_limits.HasLower) return $"at most {number(_limits.Upper)}{unit}";
        string between = $"{number(_limits.Lower)} … {number(_limits.Upper)}";
        return double.IsNaN(_limits.Target) ? between + unit : $"{number(_limits.Target)} ({between}){unit}";
    }

    /// <summary>What is not there is not finite.</summary>
    private static TQuantity? Maybe(double value) => Math.Abs(value) <= double.MaxValue ? Si.Make<TQuantity>(value) : null;

    private static ToleranceWindow<TQuantity>? Wrap(WindowLimits? limits) => limits is WindowLimits some ? new(some) : null;
}
