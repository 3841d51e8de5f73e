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
            double slack = Math.Max(Math.Abs(low), Math.Abs(high)) * Tolerance.Widening;
            _acceptLow = low - slack;
            _acceptHigh = high + slack;
            return;
        }

        WindowLimits? accepted = double.IsNaN(bands.Inside) ? null : window.Shrink(bands.Inside);
        _acceptLow = accepted?.Lowest ?? double.PositiveInfinity;
        _acceptHigh = accepted?.Highest ?? double.NegativeInfinity;
    }

    // Answers looked up by four bits instead of branches: readings near a limit come in no order that a processor could learn.
    private static ReadOnlySpan<byte> Zones =>
    [
        (byte)DecisionZone.Undefined, (byte)DecisionZone.Reject,
        (byte)DecisionZone.ConditionalReject, (byte)DecisionZone.ConditionalReject,
        (byte)DecisionZone.ConditionalAccept, (byte)DecisionZone.ConditionalAccept, (byte)DecisionZone.ConditionalAccept, (byte)DecisionZone.ConditionalAccept,
        (byte)DecisionZone.Accept, (byte)DecisionZone.Accept, (byte)DecisionZone.Accept, (byte)DecisionZone.Accept,
        (byte)DecisionZone.Accept, (byte)DecisionZone.Accept, (byte)DecisionZone.Accept, (byte)DecisionZone.Accept,
    ];

    private static ReadOnlySpan<byte> Verdicts =>
    [
        (byte)Conformity.Undefined, (byte)Conformity.Below, (byte)Conformity.Undefined, (byte)Conformity.Above,
        (byte)Conformity.Undecidable, (byte)Conformity.Undecidable, (byte)Conformity.Undecidable, (byte)Conformity.Undecidable,
        (byte)Conformity.Within, (byte)Conformity.Within, (byte)Conformity.Within, (byte)Conformity.Within,
        (byte)Conformity.Within, (byte)Conformity.Within, (byte)Conformity.Within, (byte)Conformity.Within,
    ];

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public DecisionZone ZoneOf(double reading)
    {
        int accepted = reading >= _acceptLow & reading <= _acceptHigh ? 8 : 0;
        int inside = reading >= _insideLow & reading <= _insideHigh ? 4 : 0;
        int near = reading >= _nearLow & reading <= _nearHigh ? 2 : 0;
        int finite = reading - reading == 0 ? 1 : 0;
        return (DecisionZone)Zones[accepted | inside | near | finite];
    }

    /// <summary>The zones with fewer questions: what is near a limit holds what is inside, and neither is decided.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Conformity Classify(double reading)
    {
        int accepted = reading >= _acceptLow & reading <= _acceptHigh ? 8 : 0;
        int near = reading >= _nearLow & reading <= _nearHigh ? 4 : 0;
        int above = reading > _nearHigh ? 2 : 0;
        int finite = reading - reading == 0 ? 1 : 0;
        return (Conformity)Verdicts[accepted | near | above | finite];
    }
}
