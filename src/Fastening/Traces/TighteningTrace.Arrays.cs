using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <content>The same methods for arrays, so that a column may be written out: <c>[0, 0.1, 0.2]</c>.</content>
public sealed partial class TighteningTrace
{
    /// <inheritdoc cref="FromSamples(ReadOnlyMemory{double}, ReadOnlyMemory{double}, ReadOnlyMemory{double})"/>
    /// <exception cref="ArgumentNullException">A column is null.</exception>
    /// <example><code>TighteningTrace.FromSamples([0, 0.1, 0.2], [0, 2, 4], [1, 3, 6])     // seconds, degrees, newton-metres</code></example>
    public static TighteningTrace FromSamples(double[] timesSeconds, double[] anglesDegrees, double[] torquesNewtonMeters) =>
        FromSamples(Guard.NotNull(timesSeconds).AsMemory(), Guard.NotNull(anglesDegrees).AsMemory(), Guard.NotNull(torquesNewtonMeters).AsMemory());

    /// <inheritdoc cref="FromSamples(Duration, Duration, ReadOnlyMemory{double}, ReadOnlyMemory{double})"/>
    /// <exception cref="ArgumentNullException">A column is null.</exception>
    /// <example><code>TighteningTrace.FromSamples(start: Duration.Zero, samplingInterval: Duration.FromMilliseconds(1), [0, 2, 4], [1, 3, 6])</code></example>
    public static TighteningTrace FromSamples(Duration start, Duration samplingInterval, double[] anglesDegrees, double[] torquesNewtonMeters) =>
        FromSamples(start, samplingInterval, Guard.NotNull(anglesDegrees).AsMemory(), Guard.NotNull(torquesNewtonMeters).AsMemory());

    /// <inheritdoc cref="FromTorques(ReadOnlyMemory{double}, ReadOnlyMemory{double})"/>
    /// <exception cref="ArgumentNullException">A column is null.</exception>
    /// <example><code>TighteningTrace.FromTorques([0, 0.1, 0.2], [1, 3, 6])     // seconds, newton-metres</code></example>
    public static TighteningTrace FromTorques(double[] timesSeconds, double[] torquesNewtonMeters) =>
        FromTorques(Guard.NotNull(timesSeconds).AsMemory(), Guard.NotNull(torquesNewtonMeters).AsMemory());

    /// <inheritdoc cref="FromTorques(Duration, Duration, ReadOnlyMemory{double})"/>
    /// <exception cref="ArgumentNullException">The column is null.</exception>
    /// <example><code>TighteningTrace.FromTorques(start: Duration.Zero, samplingInterval: Duration.FromMilliseconds(1), [1, 3, 6])</code></example>
    public static TighteningTrace FromTorques(Duration start, Duration samplingInterval, double[] torquesNewtonMeters) =>
        FromTorques(start, samplingInterval, Guard.NotNull(torquesNewtonMeters).AsMemory());

    /// <inheritdoc cref="WithForces(ReadOnlyMemory{double})"/>
    /// <exception cref="ArgumentNullException">The column is null.</exception>
    /// <example><code>TighteningTrace.FromTorques([0, 0.1, 0.2], [1, 3, 6]).WithForces([0, 800, 2000])     // newtons, from a load cell</code></example>
    public TighteningTrace WithForces(double[] forcesNewtons) => WithForces(Guard.NotNull(forcesNewtons).AsMemory());
}
