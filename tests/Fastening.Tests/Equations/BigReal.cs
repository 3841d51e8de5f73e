using System.Numerics;

namespace Fastening.Tests.Equations;

/// <summary>
/// A real number to about 70 digits, a whole number times a power of two: what the equations are held against. Each operation is rounded once;
/// functions by their series after a reduction, so that nothing of the platform's mathematics decides a digit.
/// </summary>
public readonly struct BigReal
{
    private const int Bits = 240;

    private readonly BigInteger _whole;
    private readonly int _power;

    private BigReal(BigInteger whole, int power)
    {
        int excess = (int)whole.GetBitLength() - Bits;
        if (excess > 0)
        {
            whole = (whole + (BigInteger.One << (excess - 1))) >> excess;
            power += excess;
        }

        (_whole, _power) = (whole, power);
    }

    public static BigReal Pi { get; } = 16 * ArcTangentOfInverse(5) - 4 * ArcTangentOfInverse(239);

    /// <summary>Natural logarithm of 2: 2 artanh(1/3).</summary>
    public static BigReal LnTwo { get; } = 2 * InverseSeries(3, alternating: false);

    public int Sign => _whole.Sign;

    public static implicit operator BigReal(int value) => new(value, 0);

    public static BigReal operator +(BigReal a, BigReal b)
    {
        if (a.Sign == 0) return b;
        if (b.Sign == 0) return a;
        if (a._power < b._power) (a, b) = (b, a);
        long gap = (long)a._power - b._power;

        // Too far apart for the smaller one to reach the last bit kept.
        if (gap > b._whole.GetBitLength() + Bits + 8) return a;
        return new((a._whole << (int)gap) + b._whole, b._power);
    }

    public static BigReal operator -(BigReal a) => new(-a._whole, a._power);

    public static BigReal operator -(BigReal a, BigReal b) => a + -b;

    public static BigReal operator *(BigReal a, BigReal b) => new(a._whole * b._whole, a._power + b._power);

    public static BigReal operator /(BigReal a, BigReal b)
    {
        int shift = Math.Max(0, Bits + 8 + (int)(b._whole.GetBitLength() - a._whole.GetBitLength()));
        return new((a._whole << shift) / b._whole, a._power - b._power - shift);
    }

    public static BigReal FromDouble(double value)
    {
        if (!double.IsFinite(value)) throw new ArgumentOutOfRangeException(nameof(value));
        if (value == 0) return default;
        long bits = BitConverter.DoubleToInt64Bits(value);
        int exponent = (int)(bits >> 52) & 0x7FF;
        long whole = bits & 0xFFFFFFFFFFFFFL;
        if (exponent == 0) exponent++;
        else whole |= 1L << 52;
        return new(value < 0 ? -whole : whole, exponent - 1075);
    }

    /// <summary>A printed decimal, as it is printed.</summary>
    public static BigReal FromDecimal(string text)
    {
        int point = text.IndexOf('.', StringComparison.Ordinal);
        BigReal digits = new(BigInteger.Parse(text.Replace(".", ""), System.Globalization.CultureInfo.InvariantCulture), 0);
        return point < 0 ? digits : digits / new BigReal(BigInteger.Pow(10, text.Length - point - 1), 0);
    }

    public static BigReal Abs(BigReal x) => x.Sign < 0 ? -x : x;

    public static BigReal Sqrt(BigReal x)
    {
        if (x.Sign < 0) throw new ArithmeticException("the root of a number below zero");
        if (x.Sign == 0) return x;
        int shift = 2 * Bits - (int)x._whole.GetBitLength();
        if (((x._power - shift) & 1) != 0) shift++;
        return new(Root(x._whole << shift), (x._power - shift) / 2);
    }

    public static BigReal Exp(BigReal x)
    {
        int twos = (int)Math.Round(x.ToDouble() / Math.Log(2));
        BigReal rest = Scale(x - twos * LnTwo, -12);
        BigReal term = 1, sum = 1;
        for (int n = 1; n < 22; n++) sum += term = term * rest / n;
        for (int n = 0; n < 12; n++) sum *= sum;
        return Scale(sum, twos);
    }

    /// <summary>By Halley's step on the exponential, which triples the digits.</summary>
    public static BigReal Ln(BigReal x)
    {
        if (x.Sign <= 0) throw new ArithmeticException("the logarithm of a number not above zero");
        int twos = (int)x._whole.GetBitLength() + x._power;
        BigReal near = Scale(x, -twos);
        BigReal log = FromDouble(Math.Log(near.ToDouble()));
        for (int n = 0; n < 2; n++)
        {
            BigReal power = Exp(log);
            log += 2 * (near - power) / (near + power);
        }

        return log + twos * LnTwo;
    }

    public static (BigReal Sine, BigReal Cosine) SineCosine(BigReal x)
    {
        BigReal quarter = Scale(Pi, -1);
        int turns = (int)Math.Round((x / quarter).ToDouble());
        BigReal rest = x - turns * quarter, square = -(rest * rest);
        BigReal sine = rest, cosine = 1, sineTerm = rest, cosineTerm = 1;
        for (int n = 1; n < 30; n++)
        {
            sine += sineTerm = sineTerm * square / (2 * n * (2 * n + 1));
            cosine += cosineTerm = cosineTerm * square / ((2 * n - 1) * (2 * n));
        }

        return (turns & 3) switch { 0 => (sine, cosine), 1 => (cosine, -sine), 2 => (-sine, -cosine), _ => (-cosine, sine) };
    }

    /// <summary>The double's arc tangent and what is missing: the tangent of the difference is d, and d − d³/3 is the difference to 80 digits.</summary>
    public static BigReal ArcTangent(BigReal x)
    {
        BigReal near = FromDouble(Math.Atan(x.ToDouble()));
        (BigReal sine, BigReal cosine) = SineCosine(near);
        BigReal d = (x * cosine - sine) / (cosine + x * sine);
        return near + d - d * d * d / 3;
    }

    public static BigReal Power(BigReal x, BigReal exponent)
    {
        double whole = exponent.ToDouble();
        if (whole != Math.Round(whole) || Math.Abs(whole) > 64) return x.Sign == 0 ? x : Exp(exponent * Ln(x));
        BigReal product = 1;
        for (int n = 0; n < Math.Abs(whole); n++) product *= x;
        return whole < 0 ? 1 / product : product;
    }

    /// <summary>Times 2 to a power.</summary>
    public static BigReal Scale(BigReal x, int twos) => new(x._whole, x._power + twos);

    public int CompareTo(BigReal other) => (this - other).Sign;

    public double ToDouble()
    {
        int excess = (int)_whole.GetBitLength() - 53;
        return excess > 0
            ? Math.ScaleB((double)((_whole + (BigInteger.One << (excess - 1))) >> excess), _power + excess)
            : Math.ScaleB((double)_whole, _power);
    }

    public override string ToString() => ToDouble().ToString("R", System.Globalization.CultureInfo.InvariantCulture);

    private static BigInteger Root(BigInteger x)
    {
        BigInteger root = BigInteger.One << (int)((x.GetBitLength() + 1) / 2);
        while (true)
        {
            BigInteger next = (root + x / root) >> 1;
            if (next >= root) return root;
            root = next;
        }
    }

    private static BigReal ArcTangentOfInverse(int n) => InverseSeries(n, alternating: true);

    /// <summary>Σ ±1/((2k + 1) n^(2k + 1)).</summary>
    private static BigReal InverseSeries(int n, bool alternating)
    {
        BigInteger power = (BigInteger.One << (Bits + 64)) / n, sum = power;
        for (int k = 1; !power.IsZero; k++)
        {
            power /= n * n;
            sum += (alternating && k % 2 == 1 ? -power : power) / (2 * k + 1);
        }

        return new(sum, -Bits - 64);
    }
}
