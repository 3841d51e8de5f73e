using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>How fast a fastener may be turned for its rotation to be believed.</summary>
/// <remarks>
/// The limit comes from the maker of the measuring tool or the procedure; there is none by default. On a trace the rate is the mean over
/// a window that the caller states, rotation linear between samples, so the answer does not depend on the sampling step.
/// </remarks>
/// <example><code>RotationRateLimit limit = RotationRateLimit.FromTravel(Angle.FromDegrees(100), Duration.FromSeconds(4));
/// bool slowEnough = limit.Check(Angle.FromDegrees(60), Duration.FromSeconds(2.5)).Conforms;   // true</code></example>
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
    /// <example><code>RotationRateLimit.FromTravel(Angle.FromDegrees(120), shortestTime: Duration.FromSeconds(5))</code></example>
    public static RotationRateLimit FromTravel(Angle travel, Duration shortestTime) =>
        new(RotationEquations.Rate(Domains.PositiveRotation.Check(travel), Domains.Duration.Check(shortestTime)));

    /// <summary>A limit from a rate.</summary>
    /// <param name="rate">The highest rate, greater than 0.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rate"/> is outside its domain.</exception>
    /// <example><code>RotationRateLimit.FromRate(RotationalSpeed.FromRevolutionsPerMinute(3))</code></example>
    public static RotationRateLimit FromRate(RotationalSpeed rate) => new(Domains.RotationRate.Check(rate));

    /// <summary>The verdict on a single stroke.</summary>
    /// <param name="travel">Rotation in the tightening sense, 0 or more.</param>
    /// <param name="duration">The time it took.</param>
    /// <returns>Mean rate over the stroke, and verdict.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>RotationRateLimit.FromTravel(Angle.FromDegrees(50), Duration.FromSeconds(2)).Check(Angle.FromDegrees(90), Duration.FromSeconds(2.4))
    ///     .Conforms   // false</code></example>
    public RotationRateCheck Check(Angle travel, Duration duration)
    {
        double degrees = Domains.Rotation.Check(travel);
        double seconds = Domains.Duration.Check(duration);
        double rate = RotationEquations.Rate(degrees, seconds);
        bool isAbove = Tolerance.Exceeds(rate, _degreesPerSecond);
        return RotationRateCheck.OfOneValue(rate, _degreesPerSecond, seconds, isFalling: false, isAbove, seconds);
    }

    /// <summary>The verdict on a whole trace: the highest mean rate over any window of the stated length, in the sense in which the record turns.</summary>
    /// <remarks>
    /// The run-down counts too: for the turn past snug use <see cref="Check(TighteningTrace, Duration, TracePoint, TracePoint)"/>. The record is judged in the sense of
    /// falling angles if it ends behind its start and turned back for longer than forward (<see cref="RotationRateCheck.IsFalling"/>); turning against its sense is
    /// not judged.
    /// </remarks>
    /// <param name="trace">The trace.</param>
    /// <param name="window">Length of the window; a trace shorter than it gives one value, the greatest travel one way over all its time.</param>
    /// <returns>Highest mean rate, when its window ended, and verdict.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="trace"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="window"/> is outside its domain, or too short for the clock of the trace.</exception>
    /// <exception cref="ArgumentException">The trace has no duration, or no angles.</exception>
    /// <example><code>limit.Check(trace, window: Duration.FromSeconds(0.5)).FirstExceedance</code></example>
    public RotationRateCheck Check(TighteningTrace trace, Duration window)
    {
        double seconds = Domains.Duration.Check(window);
        if (!Guard.NotNull(trace).HasAngles) throw new ArgumentException("The trace has no angles: it has no rate.", nameof(trace));
        ReadOnlySpan<double> angles = trace.AnglesDegrees.Span;
        SampleClock clock = trace.Clock;
        var walk = new RateWalk(_degreesPerSecond, seconds);
        walk.Begin(clock[0], angles[0]);
        int tail = 0;
        for (int i = 1; i < angles.Length; i++)
        {
            walk.Approach(clock[i], angles[i]);
            for (; walk.TailIsDue; tail++) walk.PassTail(clock[tail + 1], angles[tail + 1]);
            walk.Arrive();
        }

        if (walk.Length <= 0) throw new ArgumentException("The trace begins and ends at the same time: it has no rate.", nameof(trace));
        if (LeastWindow(walk, seconds) is double least) Guard.RefuseAgainst(nameof(window), window, NeedOf(least));
        return walk.Result();
    }

    /// <summary>The verdict on a part of a trace, from snug to shut-off say: windows that begin before it or end after it do not count.</summary>
    /// <param name="trace">The trace.</param>
    /// <param name="window">Length of the window; a part shorter than it gives one value, the greatest travel one way over all its time.</param>
    /// <param name="from">The point at which the judgement begins, of an analysis of this trace.</param>
    /// <param name="to">The point at which it ends.</param>
    /// <returns>Highest mean rate, when its window ended on the clock of the trace, and verdict.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="trace"/>, <paramref name="from"/> or <paramref name="to"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="window"/> is outside its domain, or too short for the clock of the trace.</exception>
    /// <exception cref="ArgumentException">The points are not of this trace or not in order, or the part has no duration, or no angles.</exception>
    /// <example><code>TraceAnalysis analysis = trace.Analyze(options);
    /// if (analysis.Snug is TracePoint snug) Console.WriteLine(limit.Check(trace, Duration.FromSeconds(0.5), snug, analysis.ShutOff));</code></example>
    public RotationRateCheck Check(TighteningTrace trace, Duration window, TracePoint from, TracePoint to) => Check(Guard.NotNull(trace).Slice(from, to), window);

    /// <summary>
    /// The shortest window that raises no false alarm: with it a turn that stays below the limit by a stated share is never read as above it,
    /// however its angle falls between the steps of the display.
    /// </summary>
    /// <remarks>
    /// Equation rotation.safe-window, W = (q + (1 − s) ω_L Δt)/(s ω_L), and not less than Δt. Derived: an angle rounded or cut to steps of q is
    /// known to within q over two readings, and may be as old as one sampling interval when it is stamped; a turn at (1 − s) ω_L then reads at
    /// most ((1 − s) ω_L (W + Δt) + q)/W. A shorter window may raise one.
    /// </remarks>
    /// <param name="angleResolution">Step q of the angle as recorded; 0 when it is not quantised.</param>
    /// <param name="samplingInterval">Longest age Δt of an angle when it is stamped: the sampling interval, or the step of the clock if that is longer.</param>
    /// <param name="margin">Share s of the limit by which the true rate stays below it, greater than 0, less than 100 %.</param>
    /// <returns>The shortest safe window.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>Duration window = limit.SmallestSafeWindow(Angle.FromDegrees(0.25), Duration.FromMilliseconds(1.2), Ratio.FromPercent(10));</code></example>
    public Duration SmallestSafeWindow(Angle angleResolution, Duration samplingInterval, Ratio margin)
    {
        double resolution = Domains.Rotation.Check(angleResolution);
        double interval = Domains.SamplingInterval.Check(samplingInterval);
        double share = Domains.RateMargin.Check(margin);
        return Si.Duration(Math.Max(SafeWindowEquations.SafeWindow(resolution, _degreesPerSecond, interval, share), interval));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"at most {_degreesPerSecond:0.###}°/s");

    internal double RateInDegrees => _degreesPerSecond;

    /// <summary>The shortest time the clock can resolve, when the window or the record is shorter than it.</summary>
    internal static double? LeastWindow(in RateWalk walk, double window)
    {
        double least = LeastClockSteps * walk.ClockStep;
        return Math.Min(window, walk.Length) < least ? least : null;
    }

    internal static string NeedOf(double leastWindow) => Print.Text(
        $"at least {leastWindow:G3} s, a thousand times what the clock of the record can resolve");
}
