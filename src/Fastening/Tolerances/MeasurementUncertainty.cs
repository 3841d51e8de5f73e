using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Creates uncertainties of measurement; the quantity is inferred.</summary>
/// <remarks>
/// An uncertainty without its coverage factor is read in two ways that differ by 2 or more, so each way has its name (JCGM 100:2008 §2.3.1, §2.3.5).
/// Quantities: Torque, Angle, Force, RotationalSpeed, Length, and Ratio for a relative uncertainty.
/// </remarks>
/// <example><code>var fromCertificate = MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(0.6), coverageFactor: 2);
/// var fromBudget = MeasurementUncertainty.Standard(Torque.FromNewtonMeters(0.3));     // the same</code></example>
public static class MeasurementUncertainty
{
    /// <summary>A standard uncertainty u, as a budget gives it: one standard deviation, k = 1.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="standardUncertainty">Standard uncertainty u, 0 or more; 0 says that the reading is exact.</param>
    /// <returns>The uncertainty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside its domain.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>var uncertainty = MeasurementUncertainty.Standard(Angle.FromDegrees(0.8));</code></example>
    public static MeasurementUncertainty<TQuantity> Standard<TQuantity>(TQuantity standardUncertainty)
        where TQuantity : struct, IQuantity =>
        new(MeasurementUncertainty<TQuantity>.Check(standardUncertainty, nameof(standardUncertainty)), 1);

    /// <summary>An expanded uncertainty U = k u with its coverage factor, as a certificate prints it.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="expandedUncertainty">Expanded uncertainty U, 0 or more; 0 says that the reading is exact.</param>
    /// <param name="coverageFactor">Its coverage factor k, above 0 to 100: certificates mostly print 2.</param>
    /// <returns>The uncertainty, u = U/k.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>var uncertainty = MeasurementUncertainty.Expanded(Ratio.FromPercent(1), coverageFactor: 2);</code></example>
    public static MeasurementUncertainty<TQuantity> Expanded<TQuantity>(TQuantity expandedUncertainty, double coverageFactor)
        where TQuantity : struct, IQuantity
    {
        double expanded = MeasurementUncertainty<TQuantity>.Check(expandedUncertainty, nameof(expandedUncertainty));
        return new(expanded / Domains.CoverageFactor.Check(coverageFactor), coverageFactor);
    }
}
