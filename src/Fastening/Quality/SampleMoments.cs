namespace Fastening.Quality;

/// <summary>Mean and standard deviation to the last digits, also of readings far from zero: two passes, shifted, with the lost digits carried along.</summary>
internal static class SampleMoments
{
    public static double Mean(ReadOnlySpan<double> readings)
    {
        double pivot = readings[0];
        double sum = 0, lost = 0;
        foreach (double reading in readings) Add(reading - pivot, ref sum, ref lost);
        return pivot + (sum + lost) / readings.Length;
    }

    /// <summary>Sum of the squared deviations from the mean.</summary>
    public static double SquaredDeviations(ReadOnlySpan<double> readings)
    {
        // The mean is rounded; what the deviations then fail to add up to is taken off again.
        double mean = Mean(readings);
        double sum = 0, lost = 0, rest = 0, restLost = 0;
        foreach (double reading in readings)
        {
            double deviation = reading - mean;
            Add(deviation * deviation, ref sum, ref lost);
            Add(deviation, ref rest, ref restLost);
        }

        rest += restLost;
        return Math.Max(0, sum + lost - rest * rest / readings.Length);
    }

    public static double StandardDeviation(ReadOnlySpan<double> readings) => Math.Sqrt(SquaredDeviations(readings) / (readings.Length - 1));

    public static double Range(ReadOnlySpan<double> readings)
    {
        double least = readings[0], greatest = readings[0];
        foreach (double reading in readings)
        {
            least = Math.Min(least, reading);
            greatest = Math.Max(greatest, reading);
        }

        return greatest - least;
    }

    private static void Add(double term, ref double sum, ref double lost)
    {
        double next = sum + term;
        lost += Math.Abs(sum) >= Math.Abs(term) ? sum - next + term : term - next + sum;
        sum = next;
    }
}
