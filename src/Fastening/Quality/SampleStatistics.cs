using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>Creates the mean and standard deviation of a sample of any quantity of tightening.</summary>
/// <example><code>SampleStatistics&lt;Force&gt; preloads = SampleStatistics.Of(readings);
/// Console.WriteLine(preloads);     // 34180 N, standard deviation 2227.55 N, 5 readings</code></example>
public static class SampleStatistics
{
    /// <summary>Of readings; by two shifted passes, so that readings far from zero lose no digits.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="readings">At least two readings.</param>
    /// <returns>Count, mean and standard deviation (n − 1).</returns>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two readings.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is beyond its domain; the message names its index.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>SampleStatistics&lt;Force&gt; sample = SampleStatistics.Of(preloads);</code></example>
    public static SampleStatistics<TQuantity> Of<TQuantity>(IReadOnlyList<TQuantity> readings)
        where TQuantity : struct, IQuantity => Of<TQuantity>(ReadingColumn.Of(readings, nameof(readings)), nameof(readings));

    /// <summary>Of a column of numbers.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="readingsInSiOrDegrees">Readings in newton-metres, degrees, newtons, degrees per second or metres, after the quantity; at least two.</param>
    /// <returns>Count, mean and standard deviation (n − 1).</returns>
    /// <exception cref="ArgumentException">There are fewer than two readings.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is not finite or beyond its domain; the message names its index.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>SampleStatistics&lt;Torque&gt; sample = SampleStatistics.Of&lt;Torque&gt;([50.2, 49.7, 51.1, 50.6]);     // 50.4 N·m, standard deviation 0.594418 N·m, 4 readings</code></example>
    public static SampleStatistics<TQuantity> Of<TQuantity>(ReadOnlySpan<double> readingsInSiOrDegrees)
        where TQuantity : struct, IQuantity =>
        Of<TQuantity>(ReadingColumn.Of<TQuantity>(readingsInSiOrDegrees, nameof(readingsInSiOrDegrees)), nameof(readingsInSiOrDegrees));

    /// <summary>As reported by others.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="count">Number of readings, 2 to 100 000.</param>
    /// <param name="mean">Their mean.</param>
    /// <param name="standardDeviation">Their standard deviation (n − 1), 0 or more.</param>
    /// <returns>The statistics.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="NotSupportedException">The quantity is not one of tightening.</exception>
    /// <example><code>SampleStatistics&lt;Force&gt; sample = SampleStatistics.FromSummary(43, Force.FromKilonewtons(34.18), Force.FromKilonewtons(2.88));</code></example>
    public static SampleStatistics<TQuantity> FromSummary<TQuantity>(int count, TQuantity mean, TQuantity standardDeviation)
        where TQuantity : struct, IQuantity
    {
        Domains.SampleCount.Check(count);
        double centre = ToleranceWindow<TQuantity>.Check(mean, fromZero: false, nameof(mean));
        return new(count, centre, ToleranceWindow<TQuantity>.Check(standardDeviation, fromZero: true, nameof(standardDeviation)));
    }

    private static SampleStatistics<TQuantity> Of<TQuantity>(double[] readings, string name)
        where TQuantity : struct, IQuantity
    {
        ReadingColumn.RefuseFewerThanTwo(readings.Length, name);
        return new(readings.Length, SampleMoments.Mean(readings), SampleMoments.StandardDeviation(readings));
    }
}
