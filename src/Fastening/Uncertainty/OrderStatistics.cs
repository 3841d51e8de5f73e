using System.Buffers;

namespace Fastening.Quality;

/// <summary>
/// The draws in order, as far as they are needed. A regular sample shows roughly where a rank lies; only the draws about it are gathered
/// and sorted, and counted to be sure. Both coverage intervals of a million draws need the tails alone.
/// </summary>
internal sealed class OrderStatistics
{
    private const int Samples = 4096;

    private readonly object _finding = new();
    private readonly double[] _values;
    private readonly int _threads;
    private readonly double[] _sample;
    private (double[] Lowest, double[] Highest) _tails = ([], []);

    public OrderStatistics(double[] values, int threads)
    {
        _values = values;
        _threads = threads;
        int step = Math.Max(1, values.Length / Samples);
        _sample = new double[values.Length / step];
        for (int i = 0; i < _sample.Length; i++) _sample[i] = values[i * step];
        Array.Sort(_sample);
    }

    /// <summary>The value of a rank, from 0.</summary>
    public double this[int rank]
    {
        get
        {
            for (double margin = 4; ; margin *= 4)
            {
                (double low, double high) = Around(rank, margin);
                (double[] between, int below) = Gather(low, high, _values.Length / 16);
                if (rank >= below && rank < below + between.Length) return between[rank - below];
            }
        }
    }

    /// <summary>The lowest and the highest values, so many each, in rising order; kept for the next question about the same probability.</summary>
    public (double[] Lowest, double[] Highest) Tails(int count)
    {
        lock (_finding)
        {
            if (_tails.Lowest.Length == count) return _tails;
            double[] lowest = [], highest = [];
            Parallel.Invoke(
                new ParallelOptions { MaxDegreeOfParallelism = _threads },
                () => lowest = Lowest(count),
                () => highest = Highest(count));
            return _tails = (lowest, highest);
        }
    }

    private double[] Lowest(int count)
    {
        for (double margin = 4; ; margin *= 4)
        {
            (double[] found, _) = Gather(double.NegativeInfinity, Around(count, margin).High, count);
            if (found.Length >= count) return found.AsSpan(0, count).ToArray();
        }
    }

    private double[] Highest(int count)
    {
        for (double margin = 4; ; margin *= 4)
        {
            (double[] found, _) = Gather(Around(_values.Length - count, margin).Low, double.PositiveInfinity, count);
            if (found.Length >= count) return found.AsSpan(found.Length - count).ToArray();
        }
    }

    /// <summary>Values of the sample so many of its standard deviations of rank below and above a rank.</summary>
    private (double Low, double High) Around(int rank, double margin)
    {
        double share = (double)rank / _values.Length, place = share * _sample.Length;
        double width = margin * Math.Sqrt(_sample.Length * share * (1 - share)) + margin;
        int low = (int)(place - width), high = (int)(place + width);
        return (low >= 0 ? _sample[low] : double.NegativeInfinity, high < _sample.Length ? _sample[high] : double.PositiveInfinity);
    }

    /// <summary>The values from low to high in rising order, and how many lie below them.</summary>
    private (double[] Between, int Below) Gather(double low, double high, int expected)
    {
        double[] found = ArrayPool<double>.Shared.Rent(expected + expected / 4 + 1024);
        int count = 0, below = 0;
        foreach (double value in _values)
        {
            if (value < low) below++;
            if (value < low || value > high) continue;
            if (count == found.Length) found = Larger(found);
            found[count++] = value;
        }

        double[] sorted = BucketSort.Sorted(found.AsSpan(0, count));
        ArrayPool<double>.Shared.Return(found);
        return (sorted, below);
    }

    private static double[] Larger(double[] full)
    {
        double[] larger = ArrayPool<double>.Shared.Rent(2 * full.Length);
        full.CopyTo(larger, 0);
        ArrayPool<double>.Shared.Return(full);
        return larger;
    }
}
