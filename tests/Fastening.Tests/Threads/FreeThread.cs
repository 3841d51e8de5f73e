using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace Fastening.Tests.Threads;

/// <summary>A thread that both 60° profiles accept: pitch 0.07 to 9 mm, diameter 2 to 100 pitches, log-uniform.</summary>
public sealed record FreeThread(double PitchMillimeters, double PitchesPerDiameter)
{
    public Length Diameter => Length.FromMillimeters(PitchMillimeters * PitchesPerDiameter);

    public Length Pitch => Length.FromMillimeters(PitchMillimeters);

    public double ThreadsPerInch => 25.4 / PitchMillimeters;
}

public static class FreeThreads
{
    public static Arbitrary<FreeThread> Arbitrary() => (
        from pitch in LogUniform(0.07, 9)
        from pitches in LogUniform(2, 100)
        select new FreeThread(pitch, pitches)).ToArbitrary();

    private static Gen<double> LogUniform(double low, double high) =>
        Gen.Choose(0, 1_000_000).Select(i => low * Math.Pow(high / low, i / 1e6));
}
