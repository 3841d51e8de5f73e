using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

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

    /// <summary>P_pl: distance of the mean above the lower limit; null without one.</summary>
    public CapabilityIndex? Ppl => _indices.AgainstLower;

    /// <summary>P_pu: distance of the mean below the upper limit; null without one.</summary>
    public CapabilityIndex? Ppu => _indices.AgainstUpper;

    /// <summary>Share of a normal population with this mean and standard deviation below the lower limit.</summary>
    public Ratio ShareBelow => Si.Ratio(_indices.ShareBelow);

    /// <summary>Share of a normal population with this mean and standard deviation above the upper limit.</summary>
    public Ratio ShareAbove => Si.Ratio(_indices.ShareAbove);

    /// <summary>Share of a normal population with this mean and standard deviation outside the limits.</summary>
    public Ratio ShareOutside => Si.Ratio(_indices.ShareBelow + _indices.ShareAbove);

    /// <summary>Against a window with both limits, or with one: P_p is then undefined and null, and P_pk is the index against that limit.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The window; its target does not count.</param>
    /// <param name="sample">Mean and standard deviation of the readings.</param>
    /// <returns>The performance.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The readings do not scatter: the indices are undefined.</exception>
    /// <example><code>ProcessPerformance performance = ProcessPerformance.Of(window, audit.Overall);</code></example>
    public static ProcessPerformance Of<TQuantity>(ToleranceWindow<TQuantity> window, SampleStatistics<TQuantity> sample)
        where TQuantity : struct, IQuantity => new(Indices(Guard.NotNull(window).Limits, Guard.NotNull(sample), nameof(sample)));

    /// <inheritdoc />
    public override string ToString() => $"{(Pp is null ? "" : $"Pp {Pp}, ")}Ppk {Ppk}";

    internal static IndexSet Indices<TQuantity>(in WindowLimits limits, SampleStatistics<TQuantity> sample, string name)
        where TQuantity : struct, IQuantity =>
        new(limits, sample.MeanSi, ReadingColumn.Scattering<TQuantity>(sample.DeviationSi, name), sample.Count, sample.Count - 1, Si.BaseUnit<TQuantity>());
}
