namespace Fastening.Quality;

/// <summary>
/// Sorts finite numbers by even buckets first, then each bucket: near the speed of counting when they lie evenly, that of an ordinary sort
/// when they do not.
/// </summary>
internal static class BucketSort
{
    private const int InABucket = 16;

    public static double[] Sorted(ReadOnlySpan<double> values)
    {
        double[] sorted = new double[values.Length];
        if (values.IsEmpty) return sorted;
        double low = values[0], high = values[0];
        foreach (double value in values)
        {
            if (value < low) low = value;
            if (value > high) high = value;
        }

        int buckets = values.Length / InABucket + 1;
        double scale = buckets / (high - low);
        if (double.IsInfinity(scale) || scale == 0)
        {
            // All alike, or too widely spread to count.
            values.CopyTo(sorted);
            Array.Sort(sorted);
            return sorted;
        }

        int[] ends = new int[buckets + 1];
        foreach (double value in values) ends[Math.Min((int)((value - low) * scale), buckets - 1) + 1]++;
        for (int i = 0; i < buckets; i++) ends[i + 1] += ends[i];
        int[] next = (int[])ends.Clone();
        foreach (double value in values) sorted[next[Math.Min((int)((value - low) * scale), buckets - 1)]++] = value;
        for (int i = 0; i < buckets; i++) Array.Sort(sorted, ends[i], ends[i + 1] - ends[i]);
        return sorted;
    }
}
