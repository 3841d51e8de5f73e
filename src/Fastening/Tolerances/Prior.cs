using UnitsNet;

namespace Fastening;

/// <summary>Creates what is known of a quantity before it is measured; the quantity is inferred.</summary>
/// <example><code>Prior&lt;Torque&gt; process = Prior.Normal(Torque.FromNewtonMeters(50.2), standardDeviation: Torque.FromNewtonMeters(0.8));</code></example>
public static class Prior
{
    /// <summary>A normal process: the mean and the spread of many items, from records.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="mean">Mean y0.</param>
    /// <param name="standardDeviation">Standard deviation u0, greater than 0.</param>
    /// <returns>The prior.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>Prior&lt;Angle&gt; process = Prior.Normal(Angle.FromDegrees(88.5), standardDeviation: Angle.FromDegrees(1.9));</code></example>
    public static Prior<TQuantity> Normal<TQuantity>(TQuantity mean, TQuantity standardDeviation)
        where TQuantity : struct, IQuantity => new(
            ToleranceWindow<TQuantity>.Check(mean, fromZero: false, nameof(mean)),
            Prior<TQuantity>.CheckDeviation(standardDeviation, nameof(standardDeviation)));
}
