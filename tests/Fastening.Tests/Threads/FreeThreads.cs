using FsCheck;
using FsCheck.Fluent;

namespace Fastening.Tests.Threads;

/// <summary>Generates <see cref="FreeThread"/>.</summary>
public static class FreeThreads
{
    public static Arbitrary<FreeThread> Arbitrary() => (
        from pitch in LogUniform(0.07, 9)
        from pitches in LogUniform(2, 100)
        select new FreeThread(pitch, pitches)).ToArbitrary();

    private static Gen<double> LogUniform(double low, double high) =>
        Gen.Choose(0, 1_000_000).Select(i => low * Math.Pow(high / low, i / 1e6));
}
