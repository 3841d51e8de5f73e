namespace Fastening;

/// <summary>
/// What a mean rate over a sliding window reached in one sense: its highest value, and when and for how long it was above a threshold. It is met
/// at the places where it has its extremes and is linear in between, so its crossings of the threshold are exact.
/// </summary>
internal struct RateExtremes()
{
    private (double End, double Rate)? _event;
    private double _timeAbove;
    private double? _firstAbove;
    private double _lastAbove;

    public double Peak { get; private set; } = double.NegativeInfinity;

    public double PeakEnd { get; private set; }

    public readonly double TimeAbove => _timeAbove;

    public readonly double? FirstAbove => _firstAbove;

    public readonly double LastAbove => _lastAbove;

    public readonly bool IsEmpty => _event is null;

    public void Meet(double end, double rate, double threshold)
    {
        if (rate > Peak) (Peak, PeakEnd) = (rate, end);
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
}
