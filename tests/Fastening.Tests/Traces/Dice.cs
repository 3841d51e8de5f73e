namespace Fastening.Tests.Traces;

/// <summary>Random numbers that are the same on every runtime: SplitMix64 (Steele, Lea and Flood 2014), and a normal by twelve uniforms.</summary>
internal sealed class Dice(ulong seed)
{
    private ulong _state = seed * 0x9E3779B97F4A7C15UL + 0x1234567UL;

    public double Uniform(double low, double high) => low + (high - low) * (Next() >> 11) * (1.0 / (1UL << 53));

    public double LogUniform(double low, double high) => Math.Exp(Uniform(Math.Log(low), Math.Log(high)));

    public bool Chance(double share) => Uniform(0, 1) < share;

    /// <summary>Sum of twelve uniforms less six: mean 0, variance 1, no logarithm or sine that could differ in the last bit.</summary>
    public double Normal()
    {
        double sum = -6;
        for (int i = 0; i < 12; i++) sum += Uniform(0, 1);
        return sum;
    }

    private ulong Next()
    {
        ulong z = _state += 0x9E3779B97F4A7C15UL;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
