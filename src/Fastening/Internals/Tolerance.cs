namespace Fastening.Internals;

/// <summary>How close is equal, where limits and readings come from decimals.</summary>
internal static class Tolerance
{
    /// <summary>Relative widening of a limit, so that a reading equal to it in any unit conforms.</summary>
    public const double Widening = 1e-12;

    /// <summary>Not above a limit. Four names, because NaN, as value or as limit, answers false to all of them: <c>!IsAtMost</c> is not <see cref="Exceeds"/>.</summary>
    public static bool IsAtMost(double value, double limit) => value <= Above(limit);

    /// <summary>Not below a limit; false for NaN.</summary>
    public static bool IsAtLeast(double value, double limit) => value >= Below(limit);

    /// <summary>Above a limit; false for NaN.</summary>
    public static bool Exceeds(double value, double limit) => value > Above(limit);

    /// <summary>Below a limit; false for NaN.</summary>
    public static bool FallsShort(double value, double limit) => value < Below(limit);

    /// <summary>The distance from a positive double to the next: what a clock can resolve when it reads this.</summary>
    public static double StepAt(double value) =>
        value == 0 ? 0 : BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(value) + 1) - value;

    /// <summary>A count of display steps, made whole when it misses a whole number only in its last bits: 16 % of exact decimals do.</summary>
    public static double SnapToWhole(double steps)
    {
        double nearest = Math.Round(steps);
        return Math.Abs(steps - nearest) <= Math.Max(1e-9, Math.Abs(steps) * Widening) ? nearest : steps;
    }

    // A factor and not a sum: an infinite limit stays infinite.
    private static double Above(double limit) => limit * (limit < 0 ? 1 - Widening : 1 + Widening);

    private static double Below(double limit) => limit * (limit < 0 ? 1 + Widening : 1 - Widening);
}
