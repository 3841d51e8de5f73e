using Fastening.Internals;

namespace Fastening;

/// <summary>
/// The mean rate over a sliding window, walked once, sample by sample. The rotation is linear between samples, so the mean is linear in the end
/// of the window between the places where either end of the window meets a sample: there it has its extremes, and in between its crossings of
/// the limit are exact. A record no longer than the window gives one value, over all of it. Who walks holds the samples and hands them over:
/// the newest, and those at the tail of the window as they are passed.
/// </summary>
internal struct RateWalk(double limit, double window)
{
    private (double Time, double Angle) _first;
    private (double Time, double Angle) _before;
    private (double Time, double Angle) _head;
    private (double Time, double Angle) _passed;
    private (double Time, double Angle) _tail;
    private (double End, double Rate)? _event;
    private double _peak = double.NegativeInfinity;
    private double _peakEnd;
    private double _timeAbove;
    private double? _firstAbove;
    private double _lastAbove;

    /// <summary>Whether the tail of the window has come to the tail sample: it must be passed before the head arrives.</summary>
    public readonly bool TailIsDue => _tail.Time + window <= _head.Time;

    public readonly double Length => _head.Time - _first.Time;

    public readonly double ClockStep => Tolerance.StepAt(Math.Max(Math.Abs(_first.Time), Math.Abs(_head.Time)));

    /// <summary>The first sample; it is the tail sample too.</summary>
    public void Begin(double time, double angle) => _first = _before = _head = _passed = _tail = (time, angle);

    /// <summary>The next sample; then pass the tail while it is due, then arrive.</summary>
    public void Approach(double time, double angle)
    {
        _before = _head;
        _head = (time, angle);
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

    public readonly RotationRateCheck Result()
    {
        if (window < Length && _event is not null) return new RotationRateCheck(_peak, limit, _peakEnd, _firstAbove, _lastAbove, _timeAbove);
        double rate = (_head.Angle - _first.Angle) / Length;
        bool isAbove = rate > Threshold(Length);
        return new RotationRateCheck(rate, limit, _head.Time, isAbove ? _head.Time : null, _head.Time, isAbove ? Length : 0);
    }

    private void Meet(double end, double rate)
    {
        if (rate > _peak) (_peak, _peakEnd) = (rate, end);
        double threshold = Threshold(window);
        bool isAbove = rate > threshold;
        if (_event is (double lastEnd, double lastRate))
        {
            bool wasAbove = lastRate > threshold;
            double crossing = lastEnd + (end - lastEnd) * (isAbove == wasAbove ? 0 : (threshold - lastRate) / (rate - lastRate));
            if (isAbove) _timeAbove += end - (wasAbove ? lastEnd : crossing);
            else if (wasAbove) _timeAbove += crossing - lastEnd;
            if (isAbove) _firstAbove ??= wasAbove ? lastEnd : crossing;
            else if (wasAbove) _lastAbove = crossing;
        }

        if (isAbove)
        {
            _firstAbove ??= end;
            _lastAbove = end;
        }

        _event = (end, rate);
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
