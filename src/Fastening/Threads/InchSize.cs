using Fastening.Internals;

namespace Fastening;

/// <summary>Reads and writes the size of an inch thread: 1/2, 1 1/8, 1-1/8, 0.500, #10, No.10 or a bare 10; and reads its threads per inch.</summary>
internal static class InchSize
{
    private const long SmallestNumbered = 60_000, NumberedStep = 13_000, GreatestNumber = 12, GreatestDenominator = 64;

    /// <summary>Metres of pitch from threads per inch, and the reverse.</summary>
    public static double PitchOf(double threadsPerInch) => 0.0254 / threadsPerInch;

    /// <summary>The size, and the threads per inch behind its hyphen: 13, 4.5 or 4 1/2; 0 when they are not written.</summary>
    /// <remarks>Millionths; <paramref name="numbered"/> is 0 unless a bare whole number leaves open whether it is a numbered size.</remarks>
    public static bool TryReadThread(ref TextCursor cursor, out long diameter, out long numbered, out long threadsPerInch)
    {
        threadsPerInch = 0;
        if (!TryRead(ref cursor, out diameter, out numbered)) return false;

        TextCursor afterSize = cursor;
        cursor.TrySpaces();
        if (!cursor.TryHyphen() || !TryThreadsPerInch(ref cursor, out threadsPerInch))
        {
            threadsPerInch = 0;
            cursor = afterSize;
        }

        return true;
    }

    /// <summary>The size as it is written: 1 1/2, or a decimal where it is no fraction of a ruler.</summary>
    public static string Name(double inches)
    {
        double parts = inches * GreatestDenominator, nearest = Math.Round(parts);
        if (Math.Abs(parts - nearest) > Tolerance.Widening * parts) return Print.Number(inches);

        long whole = (long)nearest / GreatestDenominator, numerator = (long)nearest % GreatestDenominator, denominator = GreatestDenominator;
        if (numerator == 0) return Print.Number(whole);
        for (; numerator % 2 == 0; denominator /= 2) numerator /= 2;
        return whole == 0 ? Print.Text($"{numerator}/{denominator}") : Print.Text($"{whole} {numerator}/{denominator}");
    }

    private static bool TryRead(ref TextCursor cursor, out long diameter, out long numbered)
    {
        numbered = 0;
        if (cursor.Try('#') || TryNo(ref cursor))
        {
            cursor.TrySpaces();
            bool isNumber = cursor.TryWhole(out long number) && number <= GreatestNumber;
            diameter = SmallestNumbered + NumberedStep * number;
            return isNumber;
        }

        if (TryFraction(ref cursor, out diameter)) return true;

        TextCursor start = cursor;
        if (!cursor.TryWhole(out long whole) || cursor.Next == '.')
        {
            cursor = start;
            return cursor.TryDecimal(out diameter);
        }

        diameter = whole * TextCursor.Million;
        TextCursor afterWhole = cursor;
        if ((cursor.TrySpaces() || cursor.TryHyphen()) && TryFraction(ref cursor, out long fraction))
        {
            diameter += fraction;
            return true;
        }

        cursor = afterWhole;
        numbered = whole <= GreatestNumber ? SmallestNumbered + NumberedStep * whole : 0;
        return true;
    }

    /// <summary>A fraction of an inch as rulers have it, to sixty-fourths; the cursor stays where it is otherwise.</summary>
    private static bool TryFraction(ref TextCursor cursor, out long millionths)
    {
        TextCursor start = cursor;
        millionths = 0;
        if (cursor.TryWhole(out long numerator) && numerator > 0 && cursor.Try('/') && cursor.TryWhole(out long denominator)
            && denominator is > 1 and <= GreatestDenominator && (denominator & (denominator - 1)) == 0)
        {
            millionths = numerator * (TextCursor.Million / denominator);
            return true;
        }

        cursor = start;
        return false;
    }

    private static bool TryNo(ref TextCursor cursor)
    {
        if (!cursor.TryWord("No")) return false;
        cursor.Try('.');
        return true;
    }

    private static bool TryThreadsPerInch(ref TextCursor cursor, out long threadsPerInch)
    {
        cursor.TrySpaces();
        if (!cursor.TryDecimal(out threadsPerInch) || threadsPerInch == 0) return false;

        TextCursor afterNumber = cursor;
        if (cursor.TrySpaces() && TryFraction(ref cursor, out long fraction)) threadsPerInch += fraction;
        else cursor = afterNumber;
        return true;
    }
}
