using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Creates tolerance windows; the quantity is inferred.</summary>
/// <remarks>Quantities: Torque, Angle, Force, RotationalSpeed, Length. There is no usual tolerance here: it comes from the drawing or the procedure.</remarks>
/// <example><code>ToleranceWindow&lt;Torque&gt; window = ToleranceWindow.FromDeviations(
///     Torque.FromNewtonMeters(50), minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(4));</code></example>
public static class ToleranceWindow
{
    /// <summary>Limits as shares of a target below and above it.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="target">The target, 0 or more.</param>
    /// <param name="minus">Share of the target below it, 0 to 100 %.</param>
    /// <param name="plus">Share of the target above it, 0 to 100 %; a wider window is stated by its limits.</param>
    /// <returns>The window.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(120), minus: Ratio.Zero, plus: Ratio.FromPercent(6))</code></example>
    public static ToleranceWindow<TQuantity> FromDeviations<TQuantity>(TQuantity target, Ratio minus, Ratio plus)
        where TQuantity : struct, IQuantity
    {
        double value = ToleranceWindow<TQuantity>.Check(target, fromZero: true, nameof(target));
        Domains.Share.Check(minus);
        Domains.Share.Check(plus);
        double minusPercent = minus.Percent, plusPercent = plus.Percent;

        // Multiply before dividing: a decimal percentage of a decimal target then mostly meets the decimal limit.
        return new(new WindowLimits(
            minusPercent == 0 ? value : Math.Min(value, value * (100 - minusPercent) / 100),
            value,
            plusPercent == 0 ? value : Math.Max(value, value * (100 + plusPercent) / 100)));
    }

    /// <summary>Limits as deviations below and above a target.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="target">The target.</param>
    /// <param name="minus">Deviation below, 0 or more.</param>
    /// <param name="plus">Deviation above, 0 or more.</param>
    /// <returns>The window.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>ToleranceWindow.FromDeviations(Angle.FromDegrees(50), minus: Angle.FromDegrees(5), plus: Angle.FromDegrees(5))</code></example>
    public static ToleranceWindow<TQuantity> FromDeviations<TQuantity>(TQuantity target, TQuantity minus, TQuantity plus)
        where TQuantity : struct, IQuantity
    {
        double value = ToleranceWindow<TQuantity>.Check(target, fromZero: false, nameof(target));
        double below = ToleranceWindow<TQuantity>.Check(minus, fromZero: true, nameof(minus));
        double above = ToleranceWindow<TQuantity>.Check(plus, fromZero: true, nameof(plus));
        return new(new WindowLimits(value - below, value, value + above));
    }

    /// <summary>Limits as they stand; the target is midway.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="lower">Lower limit.</param>
    /// <param name="upper">Upper limit, at least <paramref name="lower"/>.</param>
    /// <returns>The window.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the limits are the wrong way round.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>ToleranceWindow.FromLimits(Torque.FromNewtonMeters(48), Torque.FromNewtonMeters(52))</code></example>
    public static ToleranceWindow<TQuantity> FromLimits<TQuantity>(TQuantity lower, TQuantity upper)
        where TQuantity : struct, IQuantity
    {
        double low = ToleranceWindow<TQuantity>.Check(lower, fromZero: false, nameof(lower));
        double high = ToleranceWindow<TQuantity>.Check(upper, fromZero: false, nameof(upper));
        if (high < low) Guard.RefuseAgainst(nameof(upper), upper, $"at least the lower limit, {Guard.ShowToCompare(lower)}");
        return new(new WindowLimits(low, low + (high - low) / 2, high));
    }

    /// <summary>Limits and target as they stand.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="lower">Lower limit.</param>
    /// <param name="target">Target, between the limits.</param>
    /// <param name="upper">Upper limit.</param>
    /// <returns>The window.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or not lower ≤ target ≤ upper.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>ToleranceWindow.FromLimits(Torque.FromNewtonMeters(48), Torque.FromNewtonMeters(50), Torque.FromNewtonMeters(53))</code></example>
    public static ToleranceWindow<TQuantity> FromLimits<TQuantity>(TQuantity lower, TQuantity target, TQuantity upper)
        where TQuantity : struct, IQuantity
    {
        double low = ToleranceWindow<TQuantity>.Check(lower, fromZero: false, nameof(lower));
        double value = ToleranceWindow<TQuantity>.Check(target, fromZero: false, nameof(target));
        double high = ToleranceWindow<TQuantity>.Check(upper, fromZero: false, nameof(upper));
        if (value < low) Guard.RefuseAgainst(nameof(target), target, $"at least the lower limit, {Guard.ShowToCompare(lower)}");
        if (high < value) Guard.RefuseAgainst(nameof(upper), upper, $"at least the target, {Guard.ShowToCompare(target)}");
        return new(new WindowLimits(low, value, high));
    }

    /// <summary>A lower limit alone: there is no upper limit and no target.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="lower">Lower limit.</param>
    /// <returns>The window; its <see cref="ToleranceWindow{TQuantity}.Upper"/> and <see cref="ToleranceWindow{TQuantity}.Target"/> are null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its domain.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>ToleranceWindow&lt;Force&gt; preload = ToleranceWindow.AtLeast(Force.FromKilonewtons(72));</code></example>
    public static ToleranceWindow<TQuantity> AtLeast<TQuantity>(TQuantity lower)
        where TQuantity : struct, IQuantity =>
        new(new WindowLimits(ToleranceWindow<TQuantity>.Check(lower, fromZero: false, nameof(lower)), double.NaN, double.PositiveInfinity));

    /// <summary>An upper limit alone: there is no lower limit and no target.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="upper">Upper limit.</param>
    /// <returns>The window; its <see cref="ToleranceWindow{TQuantity}.Lower"/> and <see cref="ToleranceWindow{TQuantity}.Target"/> are null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its domain.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>ToleranceWindow&lt;Torque&gt; runDown = ToleranceWindow.AtMost(Torque.FromNewtonMeters(8));</code></example>
    public static ToleranceWindow<TQuantity> AtMost<TQuantity>(TQuantity upper)
        where TQuantity : struct, IQuantity =>
        new(new WindowLimits(double.NegativeInfinity, double.NaN, ToleranceWindow<TQuantity>.Check(upper, fromZero: false, nameof(upper))));
}
