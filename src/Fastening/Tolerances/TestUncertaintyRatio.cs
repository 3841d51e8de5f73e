using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The test uncertainty ratio, in both definitions that go by that name; they differ, so each has its own.</summary>
/// <remarks>The bare "4 : 1" of a procedure says neither which definition nor which coverage factor: ask.</remarks>
/// <example><code>double ratio = TestUncertaintyRatio.OfTolerance(window, expandedUncertainty: Torque.FromNewtonMeters(0.5));   // 4 for ±2 N·m</code></example>
public static class TestUncertaintyRatio
{
    /// <summary>Half the width of the tolerance window over the expanded uncertainty with k = 2: equation decision.tolerance-uncertainty-ratio.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The tolerance window.</param>
    /// <param name="expandedUncertainty">Expanded uncertainty U with coverage factor k = 2, greater than 0.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside its domain.</exception>
    /// <example><code>double ratio = TestUncertaintyRatio.OfTolerance(window, Torque.FromNewtonMeters(0.5));   // 4 for ±2 N·m</code></example>
    public static double OfTolerance<TQuantity>(ToleranceWindow<TQuantity> window, TQuantity expandedUncertainty)
        where TQuantity : struct, IQuantity => DecisionEquations.ToleranceUncertaintyRatio(
            Guard.NotNull(window).Limits.HalfWidth, Prior<TQuantity>.CheckDeviation(expandedUncertainty, nameof(expandedUncertainty)));

    /// <summary>Standard deviation of the process over the standard uncertainty of the measurement: equation decision.deviation-uncertainty-ratio.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="process">The process.</param>
    /// <param name="standardUncertainty">Standard uncertainty (k = 1) of the measurement, greater than 0.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="process"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside its domain.</exception>
    /// <example><code>double ratio = TestUncertaintyRatio.OfStandardDeviations(process, Torque.FromNewtonMeters(0.3));   // 2.67 for 0.8 N·m</code></example>
    public static double OfStandardDeviations<TQuantity>(Prior<TQuantity> process, TQuantity standardUncertainty)
        where TQuantity : struct, IQuantity => DecisionEquations.DeviationUncertaintyRatio(
            Guard.NotNull(process).DeviationSi, Prior<TQuantity>.CheckDeviation(standardUncertainty, nameof(standardUncertainty)));
}
