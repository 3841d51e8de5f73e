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

    internal RotationRateCheck(double rate, double limit, double endTime)
    {
        _rate = rate;
        _limit = limit;
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
    public bool Conforms => _rate <= _limit * (1 + Tolerance.Widening);

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant(
        $"{_rate:0.##}°/s, limit {_limit:0.##}°/s: {(Conforms ? "slow enough" : "too fast")}");
}
