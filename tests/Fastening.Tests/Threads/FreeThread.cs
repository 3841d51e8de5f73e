using UnitsNet;

namespace Fastening.Tests.Threads;

/// <summary>A thread that both 60° profiles accept: pitch 0.07 to 9 mm, diameter 2 to 100 pitches, log-uniform.</summary>
public sealed record FreeThread(double PitchMillimeters, double PitchesPerDiameter)
{
    public Length Diameter => Length.FromMillimeters(PitchMillimeters * PitchesPerDiameter);

    public Length Pitch => Length.FromMillimeters(PitchMillimeters);

    public double ThreadsPerInch => 25.4 / PitchMillimeters;
}
