using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The verdict on how fast a fastener was turned.</summary>
/// <example><code>RotationRateCheck check = limit.Check(Angle.FromDegrees(90), Duration.FromSeconds(2.4));
/// if (!check.Conforms) Console.WriteLine(check);     // 37.5°/s over 2.4 s, limit 25°/s: too fast</code></example>
public sealed class RotationRateCheck
{
    private readonly double _rate;
    private readonly double _limit;
    private readonly double _window;
    private readonly bool _isOfMany;

    /// <param name="rate">Rate in degrees per second, in the sense in which the record turns.</param>
    /// <param name="limit">Limit in degrees per second.</param>
    /// <param name="window">Seconds over which the mean is taken.</param>
    /// <param name="isFalling">Whether the angle falls.</param>
    /// <param name="isOfMany">Whether the rate is the highest of many windows.</param>
    internal RotationRateCheck(double rate, double limit, double window, bool isFalling, bool isOfMany)
    {
        (_rate, _limit, _window, _isOfMany) = (rate, limit, window, isOfMany);
        HighestRate = Si.RotationalSpeed(rate);
        Limit = Si.RotationalSpeed(limit);
        Window = Si.Duration(window);
        IsFalling = isFalling;
    }

    /// <summary>The highest mean rate over any window of <see cref="Window"/>, in the sense in which the record turns; the one mean where there is one window only.</summary>
    /// <remarks>
    /// An upper bound, not the rate of the turn. On a record whose angle comes in steps of q, a steady turn at ω reads up to
    /// (ω (W + Δt) + q)/W: with <see cref="RotationRateLimit.SmallestSafeWindow"/> the excess does not raise a false alarm. It bounds means over the window:
    /// a jerk shorter than the window turns faster. A single stroke has one mean, over all of it, and was faster at times.
    /// </remarks>
    public RotationalSpeed HighestRate { get; }

    /// <summary>The limit.</summary>
    public RotationalSpeed Limit { get; }

    /// <summary>Time over which the means are taken: the stated window, or all of a stroke or of a shorter record.</summary>
    public Duration Window { get; }

    /// <summary>Whether the record turns in the sense of falling angles: it ends behind its start and turned back for longer than forward. The rate is judged in that sense.</summary>
    public bool IsFalling { get; }

    /// <summary>When the fastest window ended, on the clock of the trace; the duration itself for a single stroke.</summary>
    public Duration EndOfFastestWindow { get; internal init; }

    /// <summary>When the first window ended whose mean rate passed the limit, interpolated between samples; null when none did.</summary>
    public Duration? FirstExceedance { get; internal init; }

    /// <summary>When the last window ended whose mean rate was above the limit; null when none was.</summary>
    public Duration? LastExceedance { get; internal init; }

    /// <summary>For how long the mean rate over the window that just ended was above the limit; the whole duration where there is one value only.</summary>
    public Duration TimeAbove { get; internal init; }

    /// <summary>Whether the rate stayed at or below the limit.</summary>
    public bool Conforms => FirstExceedance is null;

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"{(_isOfMany ? "up to " : "")}{_rate:0.##}°/s over {_window:0.####} s{(IsFalling ? ", angle falling" : "")}, limit {_limit:0.##}°/s: {(Conforms ? "slow enough" : "too fast")}");

    /// <summary>The verdict on one mean over all of a stroke or record.</summary>
    internal static RotationRateCheck OfOneValue(double rate, double limit, double length, bool isFalling, bool isAbove, double end) => new(rate, limit, length, isFalling, false)
    {
        EndOfFastestWindow = Si.Duration(end),
        FirstExceedance = isAbove ? Si.Duration(end) : null,
        LastExceedance = isAbove ? Si.Duration(end) : null,
        TimeAbove = Si.Duration(isAbove ? length : 0),
    };
}
