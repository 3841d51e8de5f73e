using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>How fast a fastener may be turned for its rotation to be believed.</summary>
/// <remarks>
/// The limit comes from the maker of the measuring tool or the procedure; there is none by default. On a trace the rate is the mean over
/// a window that the caller states, rotation linear between samples, so the answer does not depend on the sampling step.
/// </remarks>
/// <example><code>RotationRateLimit limit = RotationRateLimit.FromTravel(Angle.FromDegrees(180), Duration.FromSeconds(6));
/// bool slowEnough = limit.Check(Angle.FromDegrees(90), Duration.FromSeconds(3.5)).Conforms;   // true</code></example>
public sealed class RotationRateLimit
{
    private const double LeastClockSteps = 1000;

    private readonly double _degreesPerSecond;

    private RotationRateLimit(double degreesPerSecond) => _degreesPerSecond = degreesPerSecond;

    /// <summary>The highest rate permitted.</summary>
    public RotationalSpeed Rate => Si.RotationalSpeed(_degreesPerSecond);

    /// <summary>A limit from a travel and the shortest time it may take.</summary>
    /// <param name="travel">Rotation, greater than 0.</param>
    /// <param name="shortestTime">The shortest time for it.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    public static RotationRateLimit FromTravel(Angle travel, Duration shortestTime) =>
        new(RotationEquations.Rate(Guard.Check(travel, Domains.PositiveRotation), Guard.Check(shortestTime, Domains.Duration)));

    /// <summary>A limit from a rate.</summary>
    /// <param name="rate">The highest rate, greater than 0.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rate"/> is outside its domain.</exception>
    public static RotationRateLimit FromRate(RotationalSpeed rate) => new(Guard.Check(rate, Domains.RotationRate));

    /// <summary>The verdict on a single stroke.</summary>
    /// <param name="travel">Rotation in the tightening sense, 0 or more.</param>
    /// <param name="duration">The time it took.</param>
    /// <returns>Mean rate and verdict.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    public RotationRateCheck Check(Angle travel, Duration duration)
    {
        double degrees = Guard.Check(travel, Domains.Rotation);
        double seconds = Guard.Check(duration, Domains.Duration);
        return new RotationRateCheck(RotationEquations.Rate(degrees, seconds), _degreesPerSecond, seconds);
    }

    /// <summary>The verdict on a trace: the highest mean rate in the tightening sense over any window of the stated length; turning back is not judged.</summary>
    /// <param name="trace">The trace.</param>
    /// <param name="window">Length of the window; a trace shorter than it gives one value, over all of it.</param>
    /// <returns>Highest mean rate, when its window ended, and verdict.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="trace"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="window"/> is outside its domain, or too short for the clock of the trace.</exception>
    /// <exception cref="ArgumentException">The trace has no duration.</exception>
    public RotationRateCheck Check(TighteningTrace trace, Duration window)
    {
        double seconds = Guard.Check(window, Domains.Duration);
        ReadOnlySpan<double> times = Guard.NotNull(trace).TimesSeconds.Span;
        double length = times[times.Length - 1] - times[0];
        if (length <= 0) throw new ArgumentException("The trace begins and ends at the same time: it has no rate.", nameof(trace));
        double clockStep = Tolerance.StepAt(Math.Max(Math.Abs(times[0]), Math.Abs(times[times.Length - 1])));
        if (Math.Min(seconds, length) < LeastClockSteps * clockStep)
        {
            Guard.RefuseAgainst(nameof(window), window, FormattableString.Invariant(
                $"at least {LeastClockSteps * clockStep:G3} s, a thousand times what a clock that reads {times[times.Length - 1]:G6} s can resolve"));
        }

        FastestWindow fastest = FastestWindow.Of(times, trace.AnglesDegrees.Span, seconds);
        return new RotationRateCheck(fastest.Rate, _degreesPerSecond, fastest.EndSeconds, 2 * clockStep / Math.Min(seconds, length));
    }

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"at most {_degreesPerSecond:0.###}°/s");
}
