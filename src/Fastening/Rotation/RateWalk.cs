using Fastening.Internals;

namespace Fastening;

/// <summary>
/// The mean rate over a sliding window, walked once, sample by sample. The rotation is linear between samples, so the mean is linear in the end
/// of the window between the places where either end of the window meets a sample: there it has its extremes. Both senses are
/// walked, and the one in which the record turns is judged. A record no longer than the window gives one value, over all of it. The caller holds
/// the samples and hands them over: the newest, and those at the tail of the window as they are passed.
/// </summary>
internal struct RateWalk(double limit, double window)
{
    private (double Time, double Angle) _first;
    private (double Time, double Angle) _before;
    private (double Time, double Angle) _head;
    private (double Time, double Angle) _passed;
    private (double Time, double Angle) _tail;
    private RateExtremes _forward = new();
    private RateExtremes _back = new();
    private double _timeForward;
    private double _timeBack;
    private double _lowest;
    private double _highest;
    private double _rise;
    private double _drop;

    /// <summary>Whether the tail of the window has come to the tail sample: it must be passed before the head arrives.</summary>
    public readonly bool TailIsDue => _tail.Time + window <= _head.Time;

    public readonly double Length => _head.Time - _first.Time;

    public readonly double ClockStep => Tolerance.StepAt(Math.Max(Math.Abs(_first.Time), Math.Abs(_head.Time)));

    /// <summary>
    /// Whether the record turns in the sense of falling angles: it ends behind its start and turned back for longer than forward. An angle that
    /// only wraps ends behind its start too.
    /// </summary>
    private readonly bool Falls => _head.Angle < _first.Angle && _timeBack > _timeForward;

    /// <summary>The first sample; it is the tail sample too.</summary>
    public void Begin(double time, double angle)
    {
        _first = _before = _head = _passed = _tail = (time, angle);
        _lowest = _highest = angle;
    }

    /// <summary>The next sample; then pass the tail while it is due, then arrive.</summary>
    public void Approach(double time, double angle)
    {
        _before = _head;
        _head = (time, angle);
        _lowest = Math.Min(_lowest, angle);
        _highest = Math.Max(_highest, angle);
        _rise = Math.Max(_rise, angle - _lowest);
        _drop = Math.Max(_drop, _highest - angle);
        if (angle > _before.Angle) _timeForward += time - _before.Time;
        else if (angle < _before.Angle) _timeBack += time - _before.Time;
    }

    /// <summary>The window begins at the tail sample; the sample after it becomes the tail sample.</summary>
    public void PassTail(double nextTime, double nextAngle)
    {
        double end = _tail.Time + window;
        Meet(end, (Between(_before, _head, end) - _tail.Angle) / window);
        _passed = _tail;
        _tail = (nextTime, nextAngle);
    }

    /// <summary>The window ends at the newest sample.</summary>
    public void Arrive()
    {
        double begin = _head.Time - window;
        if (begin >= _first.Time) Meet(_head.Time, (_head.Angle - Between(_passed, _tail, begin)) / window);
    }

    /// <summary>The verdict in the sense in which the record turns.</summary>
    public readonly RotationRateCheck Result()
    {
        if (window >= Length || _forward.IsEmpty) return OverAll();
        bool falls = Falls;
        RateExtremes found = falls ? _back : _forward;
        return new RotationRateCheck(found.Peak, limit, window, falls, true)
        {
            EndOfFastestWindow = Si.Duration(found.PeakEnd),
            FirstExceedance = found.FirstAbove is double first ? Si.Duration(first) : null,
            LastExceedance = found.FirstAbove is null ? null : Si.Duration(found.LastAbove),
            TimeAbove = Si.Duration(found.TimeAbove),
        };
    }

    // Turning back does not take away from the travel: forth and back within the window is not rest.
    private readonly RotationRateCheck OverAll()
    {
        double rate = Math.Max(_rise, _drop) / Length;
        return RotationRateCheck.OfOneValue(rate, limit, Length, _drop > _rise, rate > Threshold(Length), _head.Time);
    }

    private void Meet(double end, double rate)
    {
        double threshold = Threshold(window);
        _forward.Meet(end, rate, threshold);
        _back.Meet(end, -rate, threshold);
    }

    /// <summary>The limit, widened by what decimals and the rounding of the clock leave.</summary>
    private readonly double Threshold(double length) => limit * (1 + Tolerance.Widening + 2 * ClockStep / length);

    /// <summary>The angle at a time; between repeated time stamps that of the later sample.</summary>
    private static double Between((double Time, double Angle) from, (double Time, double Angle) to, double time)
    {
        double step = to.Time - from.Time;
        if (step <= 0) return to.Angle;
        double share = Math.Min(Math.Max((time - from.Time) / step, 0), 1);
        return from.Angle + share * (to.Angle - from.Angle);
    }
}
