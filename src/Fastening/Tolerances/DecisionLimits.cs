using System.Runtime.CompilerServices;

namespace Fastening.Internals;

/// <summary>The limits of a window and its guard bands, laid out for comparison. What <see cref="WindowLimits.Shrink"/> leaves is what is accepted.</summary>
internal readonly struct DecisionLimits
{
    private readonly double _acceptLow;
    private readonly double _acceptHigh;
    private readonly double _insideLow;
    private readonly double _insideHigh;
    private readonly double _nearLow;
    private readonly double _nearHigh;

    public DecisionLimits(in WindowLimits window, in GuardBands bands)
    {
        _insideLow = window.Lowest;
        _insideHigh = window.Highest;
        _nearLow = window.Lowest - bands.Outside;
        _nearHigh = window.Highest + bands.Outside;
        double low = window.Lower + bands.Inside, high = window.Upper - bands.Inside;
        if (low <= high)
        {
            // What Shrink would leave, without building it: this is the path of every single decision.
            double slack = WindowLimits.Slack(low, high);
            _acceptLow = Math.Max(low - slack, double.MinValue);
            _acceptHigh = Math.Min(high + slack, double.MaxValue);
            return;
        }

        WindowLimits? accepted = double.IsNaN(bands.Inside) ? null : window.Shrink(bands.Inside);
        _acceptLow = accepted?.Lowest ?? double.PositiveInfinity;
        _acceptHigh = accepted?.Highest ?? double.NegativeInfinity;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public DecisionZone ZoneOf(double reading)
    {
        if (reading >= _acceptLow && reading <= _acceptHigh) return DecisionZone.Accept;
        if (reading >= _insideLow && reading <= _insideHigh) return DecisionZone.ConditionalAccept;
        if (reading >= _nearLow && reading <= _nearHigh) return DecisionZone.ConditionalReject;
        return reading - reading == 0 ? DecisionZone.Reject : DecisionZone.Undefined;
    }

    /// <summary>The zones with fewer questions: what is near a limit holds what is inside, and neither is decided.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Conformity Classify(double reading)
    {
        if (reading >= _acceptLow && reading <= _acceptHigh) return Conformity.Within;
        if (reading >= _nearLow && reading <= _nearHigh) return Conformity.Undecidable;
        if (reading - reading != 0) return Conformity.Undefined;
        return reading < _nearLow ? Conformity.Below : Conformity.Above;
    }
}
