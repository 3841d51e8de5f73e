using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Performance of a process: what the overall scatter, from time to time included, leaves between the limits.</summary>
/// <remarks>ISO 22514-2 (from memory); equations capability.*, with the standard deviation of all readings. Normal readings.</remarks>
/// <example><code>ProcessPerformance performance = ProcessPerformance.Of(window, SampleStatistics.Of(readings));
/// double ppk = performance.Ppk.Value, outside = performance.ShareOutside.DecimalFractions;</code></example>
public sealed class ProcessPerformance
{
    private readonly IndexSet _indices;

    internal ProcessPerformance(IndexSet indices) => _indices = indices;

    /// <summary>P_p: width of the window over six standard deviations; null when there is one limit.</summary>
    public CapabilityIndex? Pp => _indices.Potential;

    /// <summary>P_pk: the smaller of the indices against the limits, or the one that there is.</summary>
    public CapabilityIndex Ppk => _indices.Least;

    /// <summary>P_pl: room above the lower limit; null without one.</summary>
    public CapabilityIndex? Ppl => _indices.AgainstLower;

    /// <summary>P_pu: room below the upper limit; null without one.</summary>
    public CapabilityIndex? Ppu => _indices.AgainstUpper;

    /// <summary>Share of a normal population with this mean and standard deviation below the lower limit.</summary>
    public Ratio ShareBelow => Si.Ratio(_indices.ShareBelow);

    /// <summary>Share of a normal population with this mean and standard deviation above the upper limit.</summary>
    public Ratio ShareAbove => Si.Ratio(_indices.ShareAbove);

    /// <summary>Share of a normal population with this mean and standard deviation outside the limits.</summary>
    public Ratio ShareOutside => Si.Ratio(_indices.ShareBelow + _indices.ShareAbove);

    /// <summary>Against a window.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The window; its target does not count.</param>
    /// <param name="sample">Mean and standard deviation of the readings.</param>
    /// <returns>The performance.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The readings do not scatter: the indices are undefined.</exception>
    /// <example><code>ProcessPerformance performance = ProcessPerformance.Of(window, audit.Overall);</code></example>
    public static ProcessPerformance Of<TQuantity>(ToleranceWindow<TQuantity> window, SampleStatistics<TQuantity> sample)
        where TQuantity : struct, IQuantity
    {
        WindowLimits limits = Guard.NotNull(window).Limits;
        return new(Indices(limits.Lower, limits.Upper, Guard.NotNull(sample), nameof(sample)));
    }

    /// <summary>Against a lower limit alone.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="lowerLimit">The limit.</param>
    /// <param name="sample">Mean and standard deviation of the readings.</param>
    /// <returns>The performance.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sample"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its domain, or the readings do not scatter.</exception>
    /// <example><code>double ppk = ProcessPerformance.AtLeast(Torque.FromNewtonMeters(48), audit.Overall).Ppk.Value;</code></example>
    public static ProcessPerformance AtLeast<TQuantity>(TQuantity lowerLimit, SampleStatistics<TQuantity> sample)
        where TQuantity : struct, IQuantity =>
        new(Indices(ToleranceWindow<TQuantity>.Check(lowerLimit, fromZero: false, nameof(lowerLimit)), null, Guard.NotNull(sample), nameof(sample)));

    /// <summary>Against an upper limit alone.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="upperLimit">The limit.</param>
    /// <param name="sample">Mean and standard deviation of the readings.</param>
    /// <returns>The performance.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sample"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its domain, or the readings do not scatter.</exception>
    /// <example><code>double ppk = ProcessPerformance.AtMost(Torque.FromNewtonMeters(52.5), audit.Overall).Ppk.Value;</code></example>
    public static ProcessPerformance AtMost<TQuantity>(TQuantity upperLimit, SampleStatistics<TQuantity> sample)
        where TQuantity : struct, IQuantity =>
        new(Indices(null, ToleranceWindow<TQuantity>.Check(upperLimit, fromZero: false, nameof(upperLimit)), Guard.NotNull(sample), nameof(sample)));

    /// <summary>The work behind <see cref="Ppk"/>; its last step is that index, bit for bit.</summary>
    /// <returns>The steps.</returns>
    /// <example><code>Console.WriteLine(performance.DerivePpk());</code></example>
    public Derivation DerivePpk() => _indices.Derive("Performance of the process");

    /// <inheritdoc />
    public override string ToString() => $"{(Pp is null ? "" : $"Pp {Pp}, ")}Ppk {Ppk}";

    internal static IndexSet Indices<TQuantity>(double? lower, double? upper, SampleStatistics<TQuantity> sample, string name)
        where TQuantity : struct, IQuantity =>
        new(lower, upper, sample.MeanSi, ReadingColumn.Scattering<TQuantity>(sample.DeviationSi, name), sample.Count, sample.Count - 1);
}
