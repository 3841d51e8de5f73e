using System.Globalization;

namespace Fastening;

/// <summary>Decimal numbers as text, the same under every culture: sign, digits, decimal point, exponent.</summary>
internal static class NumberText
{
    /// <summary>Logs written under some cultures carry the typographic minus.</summary>
    private const char TypographicMinus = '\u2212';

    private const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    public static int SkipSpace(string text, int start)
    {
        while (start < text.Length && char.IsWhiteSpace(text[start])) start++;
        return start;
    }

    public static bool IsDigit(char c) => c is >= '0' and <= '9';

    /// <summary>Where the number that begins at <paramref name="start"/> ends; <paramref name="start"/> itself where none begins.</summary>
    public static int End(string text, int start)
    {
        int digits = start;
        if (digits < text.Length && text[digits] is '+' or '-' or TypographicMinus) digits++;
        int end = AfterDigits(text, digits);
        bool any = end > digits;
        if (end < text.Length && text[end] == '.')
        {
            int fraction = AfterDigits(text, end + 1);
            if (fraction > end + 1) (any, end) = (true, fraction);
        }

        if (!any) return start;
        if (end == text.Length || text[end] is not ('e' or 'E')) return end;
        int exponent = end + 1;
        if (exponent < text.Length && text[exponent] is '+' or '-') exponent++;
        int after = AfterDigits(text, exponent);
        return after > exponent ? after : end;
    }

    /// <summary>False for an empty number, one beyond a double, and one so small that a double would make it zero.</summary>
    public static bool TryRead(string text, int start, int end, out double value)
    {
        bool negated = end > start && text[start] == TypographicMinus;
        int from = negated ? start + 1 : start;
        if (!double.TryParse(text.Substring(from, end - from), Style, CultureInfo.InvariantCulture, out value)) return false;
        if (negated) value = -value;
        return !double.IsInfinity(value) && (value != 0 || IsWrittenZero(text, start, end));
    }

    /// <summary>The shortest text that reads back as the same double.</summary>
    public static string Exact(double value)
    {
        string text = value.ToString("R", CultureInfo.InvariantCulture);
#if NETSTANDARD2_0
        // .NET Framework writes some doubles one bit off under "R", and drops the sign of zero.
        if (value == 0 && double.IsNegativeInfinity(1 / value)) return "-0";
        if (double.Parse(text, Style, CultureInfo.InvariantCulture) != value) return value.ToString("G17", CultureInfo.InvariantCulture);
#endif
        return text;
    }

    /// <summary>Fixed decimals; halves away from zero, judged on the 15 significant digits that a decimal keeps of a double.</summary>
    public static string Rounded(double value, int decimals)
    {
        string format = "F" + decimals.ToString(CultureInfo.InvariantCulture);
        if (Math.Abs(value) >= 1e15) return value.ToString(format, CultureInfo.InvariantCulture);
        return Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero).ToString(format, CultureInfo.InvariantCulture);
    }

    private static int AfterDigits(string text, int start)
    {
        while (start < text.Length && IsDigit(text[start])) start++;
        return start;
    }

    private static bool IsWrittenZero(string text, int start, int end)
    {
        for (int i = start; i < end && text[i] is not ('e' or 'E'); i++)
        {
            if (text[i] is >= '1' and <= '9') return false;
        }

        return true;
    }
}
