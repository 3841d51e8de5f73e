using System.Runtime.CompilerServices;

namespace Fastening.Quality;

/// <summary>
/// Pseudo-random numbers of one block of draws: xoshiro256++ (Blackman and Vigna 2018) seeded through splitmix64, the same on every
/// framework. Normal numbers by the ziggurat (Marsaglia and Tsang 2000, in Doornik's form of 2005).
/// </summary>
internal sealed class RandomStream
{
    private const int Layers = 128;
    private const double TailStart = 3.442619855899;
    private const double LayerArea = 9.91256303526217e-3;
    private const double Unit = 1.0 / (1L << 53);

    private static readonly double[] Edges = MakeEdges();
    private static readonly double[] Ratios = [.. Enumerable.Range(0, Layers).Select(i => Edges[i + 1] / Edges[i])];

    private ulong _a, _b, _c, _d;

    public RandomStream(ulong seed, int block)
    {
        ulong state = seed;
        state = Scramble(ref state) ^ ((ulong)block * 0xD1342543DE82EF95UL);
        _a = Scramble(ref state);
        _b = Scramble(ref state);
        _c = Scramble(ref state);
        _d = Scramble(ref state);
    }

    public ulong Next() => Step(ref _a, ref _b, ref _c, ref _d);

    /// <summary>Above 0 and below 1: both ends have no quantile in an unbounded distribution.</summary>
    public double Uniform() => ((long)(Next() >> 11) + 0.5) * Unit;

    /// <summary>Fills with middle + half × (a number between −1 and 1). The state stays in registers.</summary>
    public void FillUniform(Span<double> numbers, double middle, double half)
    {
        ulong a = _a, b = _b, c = _c, d = _d;
        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i] = middle + half * (((long)(Step(ref a, ref b, ref c, ref d) >> 11) + 0.5) * (2 * Unit) - 1);
        }

        (_a, _b, _c, _d) = (a, b, c, d);
    }

    /// <summary>Fills with middle + deviation × a standard normal number.</summary>
    public void FillNormal(Span<double> numbers, double middle, double deviation)
    {
        double[] ratios = Ratios, edges = Edges;
        ulong a = _a, b = _b, c = _c, d = _d;
        for (int i = 0; i < numbers.Length; i++)
        {
            ulong bits = Step(ref a, ref b, ref c, ref d);
            int layer = (int)(bits & (Layers - 1));
            double side = ((long)(bits >> 11) + 0.5) * (2 * Unit) - 1;
            if (Math.Abs(side) < ratios[layer])
            {
                numbers[i] = middle + deviation * (side * edges[layer]);
                continue;
            }

            (_a, _b, _c, _d) = (a, b, c, d);
            numbers[i] = middle + deviation * Outside(side, layer);
            (a, b, c, d) = (_a, _b, _c, _d);
        }

        (_a, _b, _c, _d) = (a, b, c, d);
    }

    public double Normal()
    {
        ulong bits = Next();
        int layer = (int)(bits & (Layers - 1));
        double side = ((long)(bits >> 11) + 0.5) * (2 * Unit) - 1;
        return Math.Abs(side) < Ratios[layer] ? side * Edges[layer] : Outside(side, layer);
    }

    /// <summary>The one number in a hundred that is not inside its layer at once: the tail, the wedge, or another try.</summary>
    private double Outside(double side, int layer)
    {
        if (layer == 0) return Tail(side < 0);
        double x = side * Edges[layer];
        double below = Math.Exp(-0.5 * (Edges[layer] * Edges[layer] - x * x));
        double above = Math.Exp(-0.5 * (Edges[layer + 1] * Edges[layer + 1] - x * x));
        return above + Uniform() * (below - above) < 1 ? x : Normal();
    }

    /// <summary>χ² over its degrees of freedom, by Marsaglia and Tsang's gamma method (2000); ν is 1 or more.</summary>
    public double ChiSquareOverFreedom(double degreesOfFreedom)
    {
        double shape = degreesOfFreedom / 2;
        double boost = shape < 1 ? Math.Pow(Uniform(), 1 / shape) : 1;
        double d = (shape < 1 ? shape + 1 : shape) - 1.0 / 3, c = 1 / Math.Sqrt(9 * d);
        while (true)
        {
            double x = Normal(), v = 1 + c * x;
            if (v <= 0) continue;
            v = v * v * v;
            if (Math.Log(Uniform()) < 0.5 * x * x + d - d * v + d * Math.Log(v)) return d * v * boost / shape;
        }
    }

    private double Tail(bool negative)
    {
        double x, y;
        do
        {
            x = Math.Log(Uniform()) / TailStart;
            y = Math.Log(Uniform());
        }
        while (-2 * y < x * x);
        return negative ? x - TailStart : TailStart - x;
    }

    private static double[] MakeEdges()
    {
        var edges = new double[Layers + 1];
        double density = Math.Exp(-0.5 * TailStart * TailStart);
        edges[0] = LayerArea / density;
        edges[1] = TailStart;
        for (int i = 2; i < Layers; i++)
        {
            edges[i] = Math.Sqrt(-2 * Math.Log(LayerArea / edges[i - 1] + density));
            density = Math.Exp(-0.5 * edges[i] * edges[i]);
        }

        return edges;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ulong Step(ref ulong a, ref ulong b, ref ulong c, ref ulong d)
    {
        ulong result = Rotate(a + d, 23) + a;
        ulong shifted = b << 17;
        c ^= a;
        d ^= b;
        b ^= c;
        a ^= d;
        c ^= shifted;
        d = Rotate(d, 45);
        return result;
    }

    private static ulong Rotate(ulong value, int bits) => (value << bits) | (value >> (64 - bits));

    private static ulong Scramble(ref ulong state)
    {
        ulong z = state += 0x9E3779B97F4A7C15UL;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
