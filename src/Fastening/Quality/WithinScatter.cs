using Fastening.Equations;

namespace Fastening.Quality;

/// <summary>A standard deviation within subgroups, with the degrees of freedom it is worth.</summary>
/// <remarks>
/// Pooled: Σ(n_i − 1), exact. Otherwise the degrees of freedom of the standard deviation that scatters, relative to its mean, as the
/// estimator does (Patnaik 1950); about 0.9 k(n − 1) for the mean range of subgroups of 4 to 6.
/// </remarks>
internal readonly record struct WithinScatter(double Deviation, double DegreesOfFreedom)
{
    private const double RangeOfTwo = 1.1283791670955126;

    public static WithinScatter Pooled(IReadOnlyList<double[]> subgroups)
    {
        double squares = 0;
        int freedom = 0;
        foreach (double[] subgroup in subgroups)
        {
            squares += SampleMoments.SquaredDeviations(subgroup);
            freedom += subgroup.Length - 1;
        }

        return new(Math.Sqrt(squares / freedom), freedom);
    }

    public static WithinScatter FromRanges(double meanRange, int size, int count)
    {
        ControlChart chart = ControlChart.ForSubgroupsOf(size);
        double relative = chart.RangeDeviation / chart.RangeMean;
        return new(CapabilityEquations.DeviationFromRange(meanRange, chart.RangeMean), FreedomOf(relative * relative / count));
    }

    public static WithinScatter FromDeviations(double meanDeviation, int size, int count)
    {
        double c4 = ControlChart.ForSubgroupsOf(size).C4;
        return new(CapabilityEquations.DeviationFromDeviations(meanDeviation, c4), FreedomOf(RelativeVariance(size - 1) / count));
    }

    /// <summary>Neighbouring moving ranges share a reading: their covariance is (4/π)(√3/2 + π/12 − 1)σ², their variance (2 − 4/π)σ².</summary>
    public static WithinScatter FromMovingRanges(ReadOnlySpan<double> readings)
    {
        double sum = 0;
        for (int i = 1; i < readings.Length; i++) sum += Math.Abs(readings[i] - readings[i - 1]);
        int ranges = readings.Length - 1;
        double shared = Math.Sqrt(3) / 2 + Math.PI / 12 - 1;
        double relative = (ranges * (Math.PI / 2 - 1) + 2 * (ranges - 1) * shared) / ranges / ranges;
        return new(CapabilityEquations.DeviationFromRange(sum / ranges, RangeOfTwo), FreedomOf(relative));
    }

    /// <summary>The ν at which a standard deviation has a relative variance.</summary>
    private static double FreedomOf(double relativeVariance) => relativeVariance < 1e-3
        ? 0.5 / relativeVariance + 0.25
        : MonotoneRoot.Of(freedom => relativeVariance - RelativeVariance(freedom), 0.5 / relativeVariance, 0.1 / relativeVariance);

    private static double RelativeVariance(double degreesOfFreedom)
    {
        double c4 = ControlChart.C4Of(degreesOfFreedom);
        return (1 - c4) * (1 + c4) / (c4 * c4);
    }
}
