using System.Numerics;

namespace Fastening.Tests.Equations;

/// <summary>A fraction of whole numbers: doubles go in without rounding, and nothing is rounded after.</summary>
internal readonly record struct ExactFraction(BigInteger Numerator, BigInteger Denominator)
{
    /// <summary>The double itself, every bit of it.</summary>
    public static ExactFraction Of(double value)
    {
        long bits = BitConverter.DoubleToInt64Bits(value);
        int exponent = (int)((bits >> 52) & 0x7FF);
        BigInteger mantissa = (bits & 0xFFFFFFFFFFFFF) | (exponent == 0 ? 0 : 1L << 52);
        int power = Math.Max(exponent, 1) - 1075;
        BigInteger signed = value < 0 ? -mantissa : mantissa;
        return power >= 0 ? new(signed << power, BigInteger.One) : new(signed, BigInteger.One << -power);
    }

    /// <summary>A printed decimal: <c>0.8973</c> is 8973/10000.</summary>
    public static ExactFraction Printed(decimal value)
    {
        int[] parts = decimal.GetBits(value);
        BigInteger whole = (new BigInteger((uint)parts[2]) << 64) | (new BigInteger((uint)parts[1]) << 32) | (uint)parts[0];
        return new(value < 0 ? -whole : whole, BigInteger.Pow(10, (parts[3] >> 16) & 0xFF));
    }

    public static ExactFraction operator +(ExactFraction a, ExactFraction b) =>
        new(a.Numerator * b.Denominator + b.Numerator * a.Denominator, a.Denominator * b.Denominator);

    public static ExactFraction operator -(ExactFraction a, ExactFraction b) => a + new ExactFraction(-b.Numerator, b.Denominator);

    public static ExactFraction operator *(ExactFraction a, ExactFraction b) => new(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    public static ExactFraction operator /(ExactFraction a, ExactFraction b) => a * new ExactFraction(b.Denominator, b.Numerator);

    /// <summary>How far a double lies from this, relative to this.</summary>
    public double RelativeErrorOf(double value)
    {
        ExactFraction error = (Of(value) - this) / this;
        return Math.Abs((double)(error.Numerator * BigInteger.Pow(10, 30) / error.Denominator) * 1e-30);
    }
}
