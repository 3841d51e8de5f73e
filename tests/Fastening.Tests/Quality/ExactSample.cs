using System.Numerics;

namespace Fastening.Tests.Quality;

/// <summary>Mean and variance in whole-number arithmetic, without any rounding: an independent route to the last digit.</summary>
internal static class ExactSample
{
    /// <summary>2^1074 turns every double into a whole number.</summary>
    private const int Shift = 1074;

    public static (double Mean, double Deviation) Of(IReadOnlyList<double> readings)
    {
        BigInteger n = readings.Count, sum = 0, squares = 0;
        foreach (double reading in readings)
        {
            BigInteger whole = Whole(reading);
            sum += whole;
            squares += whole * whole;
        }

        // n Σx² − (Σx)² over n(n − 1), and its root with 200 bits to spare.
        BigInteger numerator = n * squares - sum * sum, denominator = n * (n - 1);
        BigInteger root = Root((numerator << 400) / denominator);
        return (Ratio(sum, n << Shift), Ratio(root, BigInteger.One << (Shift + 200)));
    }

    private static BigInteger Whole(double value)
    {
        long bits = BitConverter.DoubleToInt64Bits(Math.Abs(value));
        int exponent = (int)(bits >> 52);
        BigInteger mantissa = bits & 0xFFFFFFFFFFFFF;
        if (exponent > 0) mantissa += 1L << 52;
        BigInteger whole = mantissa << Math.Max(0, exponent - 1);
        return value < 0 ? -whole : whole;
    }

    private static BigInteger Root(BigInteger square)
    {
        if (square.IsZero) return 0;
        BigInteger root = BigInteger.One << (int)((square.GetBitLength() + 1) / 2);
        while (true)
        {
            BigInteger next = (root + square / root) >> 1;
            if (next >= root) return root;
            root = next;
        }
    }

    private static double Ratio(BigInteger numerator, BigInteger denominator)
    {
        if (numerator.IsZero) return 0;
        int shift = 70 + (int)(denominator.GetBitLength() - BigInteger.Abs(numerator).GetBitLength());
        BigInteger quotient = shift >= 0 ? (numerator << shift) / denominator : numerator / (denominator << -shift);
        return Math.ScaleB((double)quotient, -shift);
    }
}
