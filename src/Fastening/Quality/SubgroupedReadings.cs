using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>Creates readings in their subgroups: what was tightened together, under the same conditions.</summary>
/// <example><code>SubgroupedReadings&lt;Torque&gt; audit = SubgroupedReadings.Consecutive(readings, subgroupSize: 5);
/// ProcessCapability capability = ProcessCapability.Of(window, audit, WithinDeviation.Pooled);</code></example>
public static class SubgroupedReadings
{
    /// <summary>Subgroups as they were taken, of any sizes.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="subgroups">At least one subgroup; each of 2 to 1000 readings.</param>
    /// <returns>The readings.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="subgroups"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">There is no subgroup, or one is too small or too large.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is beyond its domain; the message names its index.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>SubgroupedReadings&lt;Torque&gt; audit = SubgroupedReadings.Of(subgroups);</code></example>
    public static SubgroupedReadings<TQuantity> Of<TQuantity>(IReadOnlyList<IReadOnlyList<TQuantity>> subgroups)
        where TQuantity : struct, IQuantity
    {
        if (Guard.NotNull(subgroups).Count == 0) throw new ArgumentException("subgroups has no elements; there must be at least 1.", nameof(subgroups));
        var columns = new double[subgroups.Count][];
        for (int i = 0; i < columns.Length; i++)
        {
            string name = $"{nameof(subgroups)}[{i}]";
            columns[i] = ReadingColumn.Of(subgroups[i], name);
            if (!Domains.SubgroupSize.Contains(columns[i].Length))
            {
                throw new ArgumentException($"{name} has {columns[i].Length} readings; it must have {Domains.SubgroupSize.Describe(1, "")}.", nameof(subgroups));
            }
        }

        return new(columns, areIndividual: false);
    }

    /// <summary>Readings in their order, cut into subgroups of one size.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="readings">As many readings as full subgroups hold.</param>
    /// <param name="subgroupSize">Readings in a subgroup, 2 to 1000.</param>
    /// <returns>The readings.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException">There are no readings, or they do not fill the last subgroup.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>SubgroupedReadings&lt;Torque&gt; audit = SubgroupedReadings.Consecutive(readings, subgroupSize: 5);</code></example>
    public static SubgroupedReadings<TQuantity> Consecutive<TQuantity>(IReadOnlyList<TQuantity> readings, int subgroupSize)
        where TQuantity : struct, IQuantity => Cut<TQuantity>(ReadingColumn.Of(readings, nameof(readings)), subgroupSize, nameof(readings));

    /// <summary>A column of numbers in its order, cut into subgroups of one size.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="readingsInSiOrDegrees">Readings in newton-metres, degrees, newtons, degrees per second or metres, after the quantity.</param>
    /// <param name="subgroupSize">Readings in a subgroup, 2 to 1000.</param>
    /// <returns>The readings.</returns>
    /// <exception cref="ArgumentException">There are no readings, or they do not fill the last subgroup.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>SubgroupedReadings&lt;Torque&gt; audit = SubgroupedReadings.Consecutive&lt;Torque&gt;([50.2, 49.7, 51.1, 50.6], subgroupSize: 2);     // N·m</code></example>
    public static SubgroupedReadings<TQuantity> Consecutive<TQuantity>(ReadOnlySpan<double> readingsInSiOrDegrees, int subgroupSize)
        where TQuantity : struct, IQuantity => Cut<TQuantity>(
        ReadingColumn.Of<TQuantity>(readingsInSiOrDegrees, nameof(readingsInSiOrDegrees)), subgroupSize, nameof(readingsInSiOrDegrees));

    /// <summary>Single readings in their order, without subgroups: their scatter from one to the next is that of the process.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="readings">At least two readings.</param>
    /// <returns>The readings.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two readings.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is beyond its domain; the message names its index.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>Torque moment = SubgroupedReadings.Individual(readings).StandardDeviationWithin(WithinDeviation.MovingRange);</code></example>
    public static SubgroupedReadings<TQuantity> Individual<TQuantity>(IReadOnlyList<TQuantity> readings)
        where TQuantity : struct, IQuantity
    {
        double[] column = ReadingColumn.Of(readings, nameof(readings));
        ReadingColumn.RefuseFewerThanTwo(column.Length, nameof(readings));
        return new([column], areIndividual: true);
    }

    private static SubgroupedReadings<TQuantity> Cut<TQuantity>(double[] readings, int subgroupSize, string name)
        where TQuantity : struct, IQuantity
    {
        Domains.SubgroupSize.Check(subgroupSize);
        if (readings.Length == 0 || readings.Length % subgroupSize != 0)
        {
            throw new ArgumentException($"{name} has {readings.Length} elements; it must have a whole number of subgroups of {subgroupSize}.", name);
        }

        var columns = new double[readings.Length / subgroupSize][];
        for (int i = 0; i < columns.Length; i++) columns[i] = readings.AsSpan(i * subgroupSize, subgroupSize).ToArray();
        return new(columns, areIndividual: false);
    }
}
