using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>Capability of a process: what the scatter within subgroups leaves between the limits, beside its performance over all readings.</summary>
/// <remarks>ISO 22514-2 (from memory); equations capability.*. Normal readings of a steady process.</remarks>
/// <example><code>ProcessCapability capability = ProcessCapability.Of(window, SubgroupedReadings.Of(subgroups), WithinDeviation.MeanRange);
/// Console.WriteLine(capability);                       // Cp 1.52, Cpk 1.31, Pp 1.4, Ppk 1.21
/// double least = capability.Cpk.LowerBound(0.95);</code></example>
public sealed class ProcessCapability
{
    private readonly IndexSet _within;

    private ProcessCapability(IndexSet within, IndexSet overall, WithinDeviation method)
    {
        _within = within;
        Method = method;
        Performance = new ProcessPerformance(overall);
    }

    /// <summary>C_p: width of the window over six standard deviations within subgroups; null when there is one limit.</summary>
    public CapabilityIndex? Cp => _within.Potential;

    /// <summary>C_pk: the smaller of the indices against the limits, or the one that there is.</summary>
    public CapabilityIndex Cpk => _within.Least;

    /// <summary>C_pl: distance of the mean above the lower limit; null without one.</summary>
    public CapabilityIndex? Cpl => _within.AgainstLower;

    /// <summary>C_pu: distance of the mean below the upper limit; null without one.</summary>
    public CapabilityIndex? Cpu => _within.AgainstUpper;

    /// <summary>How the standard deviation within subgroups was estimated.</summary>
    public WithinDeviation Method { get; }

    /// <summary>P_p, P_pk and their kin, by the standard deviation of all readings.</summary>
    public ProcessPerformance Performance { get; }

    /// <summary>Against a window with both limits, or with one: C_p is then undefined and null, and C_pk is the index against that limit.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The window; its target does not count.</param>
    /// <param name="readings">The readings in their subgroups.</param>
    /// <param name="method">How the standard deviation within subgroups is estimated; never assumed.</param>
    /// <returns>The capability.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> or <paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The method does not fit the subgroups, or the readings do not scatter within them: the indices are undefined.
    /// </exception>
    /// <example><code>ProcessCapability capability = ProcessCapability.Of(window, audit, WithinDeviation.MeanRange);</code></example>
    public static ProcessCapability Of<TQuantity>(ToleranceWindow<TQuantity> window, SubgroupedReadings<TQuantity> readings, WithinDeviation method)
        where TQuantity : struct, IQuantity
    {
        WindowLimits limits = Guard.NotNull(window).Limits;
        WithinScatter scatter = Guard.NotNull(readings).Within(method);
        double deviation = ReadingColumn.Scattering<TQuantity>(scatter.Deviation, nameof(readings));
        var within = new IndexSet(limits, readings.Overall.MeanSi, deviation, readings.Count, scatter.DegreesOfFreedom, Si.BaseUnit<TQuantity>());
        return new(within, ProcessPerformance.Indices(limits, readings.Overall, nameof(readings)), method);
    }

    /// <inheritdoc />
    public override string ToString() => $"{(Cp is null ? "" : $"Cp {Cp}, ")}Cpk {Cpk}, {Performance}";
}
