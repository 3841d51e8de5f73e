using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The test uncertainty ratio, in both definitions that go by that name; they differ, so each has its own.</summary>
/// <remarks>The bare "4 : 1" of a procedure states neither the definition nor the coverage factor: find out both.</remarks>
/// <example><code>double ratio = TestUncertaintyRatio.OfTolerance(window, readingUncertainty);   // 4 for ±2 N·m</code></example>
public static class TestUncertaintyRatio
{
    /// <summary>Half the width of the tolerance window over the expanded uncertainty with k = 2: equation decision.tolerance-uncertainty-ratio.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The tolerance window.</param>
    /// <param name="uncertainty">Uncertainty of the measurement, greater than 0; however it was stated, it counts with k = 2.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> is null.</exception>
    /// <exception cref="ArgumentException">The window has one limit and no width, or no uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside its domain.</exception>
    /// <example><code>double ratio = TestUncertaintyRatio.OfTolerance(window, MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(0.5), coverageFactor: 2));   // 4 for ±2 N·m</code></example>
    public static double OfTolerance<TQuantity>(ToleranceWindow<TQuantity> window, MeasurementUncertainty<TQuantity> uncertainty)
        where TQuantity : struct, IQuantity => DecisionEquations.ToleranceUncertaintyRatio(
            Guard.NotNull(window).BothLimits(nameof(window)).HalfWidth, 2 * uncertainty.Positive(nameof(uncertainty)));

    /// <summary>Standard deviation of the process over the standard uncertainty of the measurement: equation decision.deviation-uncertainty-ratio.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="process">The process.</param>
    /// <param name="uncertainty">Uncertainty of the measurement, greater than 0; however it was stated, it counts as standard uncertainty.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="process"/> is null.</exception>
    /// <exception cref="ArgumentException">No uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside its domain.</exception>
    /// <example><code>double ratio = TestUncertaintyRatio.OfStandardDeviations(process, MeasurementUncertainty.Standard(Torque.FromNewtonMeters(0.3)));   // 2.67 for 0.8 N·m</code></example>
    public static double OfStandardDeviations<TQuantity>(Prior<TQuantity> process, MeasurementUncertainty<TQuantity> uncertainty)
        where TQuantity : struct, IQuantity => DecisionEquations.DeviationUncertaintyRatio(
            Guard.NotNull(process).DeviationSi, uncertainty.Positive(nameof(uncertainty)));
}
