using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The verdict on how fast a fastener was turned.</summary>
/// <example><code>RotationRateCheck check = limit.Check(Angle.FromDegrees(90), Duration.FromSeconds(2.4));
/// if (!check.Conforms) Console.WriteLine(check);</code></example>
public sealed class RotationRateCheck
{
    private readonly double _rate;
    private readonly double _limit;

    /// <param name="rate">Rate in degrees per second.</param>
    /// <param name="limit">Limit in degrees per second.</param>
    /// <param name="endTime">End of the fastest window in seconds.</param>
    /// <param name="firstAbove">End of the first window above the limit, null when none was.</param>
    /// <param name="lastAbove">End of the last.</param>
    /// <param name="timeAbove">For how long the windows that ended were above.</param>
    internal RotationRateCheck(double rate, double limit, double endTime, double? firstAbove, double lastAbove, double timeAbove)
    {
        _rate = rate;
        _limit = limit;
        Rate = Si.RotationalSpeed(rate);
        Limit = Si.RotationalSpeed(limit);
        EndOfFastestWindow = Si.Duration(endTime);
        if (firstAbove is not double first) return;
        FirstExceedance = Si.Duration(first);
        LastExceedance = Si.Duration(lastAbove);
        TimeAbove = Si.Duration(timeAbove);
    }

    /// <summary>The rate of the stroke, or the highest mean rate over the stated window of a trace; negative for a turn back.</summary>
    public RotationalSpeed Rate { get; }

    /// <summary>The limit.</summary>
    public RotationalSpeed Limit { get; }

    /// <summary>When the fastest window ended, on the clock of the trace; the duration itself for a single stroke.</summary>
    public Duration EndOfFastestWindow { get; }

    /// <summary>When the first window ended whose mean rate passed the limit, interpolated between samples; null when none did.</summary>
    public Duration? FirstExceedance { get; }

    /// <summary>When the last window ended whose mean rate was above the limit; null when none was.</summary>
    public Duration? LastExceedance { get; }

    /// <summary>For how long the mean rate over the window that just ended was above the limit; the whole duration where there is one value only.</summary>
    public Duration TimeAbove { get; }

    /// <summary>Whether the rate stayed at or below the limit.</summary>
    public bool Conforms => FirstExceedance is null;

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant(
        $"{_rate:0.##}°/s, limit {_limit:0.##}°/s: {(Conforms ? "slow enough" : "too fast")}");
}
