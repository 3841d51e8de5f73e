using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Irregularities of a record, reported and not corrected: none of them is an error.</summary>
/// <example><code>if (analysis.Irregularities.LongestGap > Duration.FromMilliseconds(50)) Console.WriteLine(analysis.Irregularities);</code></example>
public sealed class TraceIrregularities
{
    private const double HalfATurn = 180;

    private readonly double _longestGap;
    private readonly double _largestStepBack;

    private TraceIrregularities(int repeatedTimes, int stepsBack, double largestStepBack, double longestGap, int endOfLongestGap, int samplesAfterShutOff)
    {
        (RepeatedTimes, StepsBack, EndOfLongestGap, SamplesAfterShutOff) = (repeatedTimes, stepsBack, endOfLongestGap, samplesAfterShutOff);
        (_largestStepBack, _longestGap) = (largestStepBack, longestGap);
        LargestStepBack = Si.Angle(largestStepBack);
        LongestGap = Si.Duration(longestGap);
    }

    /// <summary>Samples with the time stamp of the sample before.</summary>
    public int RepeatedTimes { get; }

    /// <summary>Samples whose angle is less than that of the sample before, the recoil after shut-off included.</summary>
    public int StepsBack { get; }

    /// <summary>The largest step back of the angle from one sample to the next; 0 when there is none.</summary>
    public Angle LargestStepBack { get; }

    /// <summary>The longest time between two samples.</summary>
    public Duration LongestGap { get; }

    /// <summary>Index of the sample at which that gap ends.</summary>
    public int EndOfLongestGap { get; }

    /// <summary>Samples after shut-off: the tail, in which the torque falls and the angle recoils.</summary>
    public int SamplesAfterShutOff { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"{RepeatedTimes} repeated times, {StepsBack} steps back (largest {_largestStepBack:0.###}°), longest gap {_longestGap:0.####} s, {SamplesAfterShutOff} samples after shut-off");

    internal bool StepsBackHalfATurn => _largestStepBack > HalfATurn;

    internal static TraceIrregularities Of(TraceBlocks? blocks, SampleClock clock, int count, int shutOff)
    {
        (int repeated, double longest, int end) = clock.Gaps(count);
        return new TraceIrregularities(repeated, blocks?.StepsBack ?? 0, blocks?.LargestStepBack ?? 0, longest, end, count - 1 - shutOff);
    }
}
