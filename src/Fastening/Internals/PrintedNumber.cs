namespace Fastening.Internals;

/// <summary>Numbers as tables print them. A tie goes to the even digit (ISO 80000-1:2009 B.3, rule A), and a decimal that misses its tie by its last bits is a tie.</summary>
internal static class PrintedNumber
{
    /// <summary>To a number of significant digits; the value is positive.</summary>
    public static double ToSignificantDigits(double value, int digits)
    {
        int decimals = digits - 1 - (int)Math.Floor(Math.Log10(value));
        return decimals >= 0
            ? Whole(value * Math.Pow(10, decimals)) / Math.Pow(10, decimals)
            : Whole(value / Math.Pow(10, -decimals)) * Math.Pow(10, -decimals);
    }

    /// <summary>To a whole number.</summary>
    public static double Whole(double value) => Math.Round(Tolerance.SnapToWhole(2 * value) / 2, MidpointRounding.ToEven);
}
