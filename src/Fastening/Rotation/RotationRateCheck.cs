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
    private readonly double _slack;

    /// <param name="rate">Rate in degrees per second.</param>
    /// <param name="limit">Limit in degrees per second.</param>
    /// <param name="endTime">End of the fastest window in seconds.</param>
    /// <param name="timeSlack">Relative error of the rate that the rounding of the clock leaves.</param>
    internal RotationRateCheck(double rate, double limit, double endTime, double timeSlack = 0)
    {
        _rate = rate;
        _limit = limit;
        _slack = Tolerance.Widening + timeSlack;
        Rate = Si.RotationalSpeed(rate);
        Limit = Si.RotationalSpeed(limit);
        EndOfFastestWindow = Si.Duration(endTime);
    }

    /// <summary>The rate of the stroke, or the highest mean rate over the stated window of a trace; negative for a turn back.</summary>
    public RotationalSpeed Rate { get; }

    /// <summary>The limit.</summary>
    public RotationalSpeed Limit { get; }

    /// <summary>When the fastest window ended, on the clock of the trace; the duration itself for a single stroke.</summary>
    public Duration EndOfFastestWindow { get; }

    /// <summary>Whether the rate stayed at or below the limit.</summary>
    public bool Conforms => _rate <= _limit * (1 + _slack);

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant(
        $"{_rate:0.##}°/s, limit {_limit:0.##}°/s: {(Conforms ? "slow enough" : "too fast")}");
}
