using System.Numerics;
using System.Runtime.InteropServices;

namespace Fastening;

/// <summary>The times of the samples: a column, or a start and a steady interval.</summary>
internal readonly ref struct SampleClock(ReadOnlySpan<double> times, double start, double interval)
{
    private const int BlockLength = 512;

    private readonly ReadOnlySpan<double> _times = times;

    public double this[int index] => _times.IsEmpty ? start + index * interval : _times[index];

    /// <summary>Number of repeated times, the longest time between two samples, and the first sample that ends one so long.</summary>
    public (int Repeated, double Longest, int End) Gaps(int count)
    {
        if (_times.IsEmpty) return (0, interval, 1);
        int repeated = 0, longestBlock = 0;
        double longest = 0;
        for (int from = 0; from < count - 1; from += BlockLength)
        {
            int steps = Math.Min(BlockLength, count - 1 - from);
            (int again, double gap) = GapsOf(_times.Slice(from, steps + 1));
            repeated += again;
            if (gap > longest) (longest, longestBlock) = (gap, from);
        }

        int end = longestBlock + 1;
        while (longest > 0 && _times[end] - _times[end - 1] != longest) end++;
        return (repeated, longest, end);
    }

    private static (int Repeated, double Longest) GapsOf(ReadOnlySpan<double> times)
    {
        int steps = times.Length - 1, done = steps / Vector<double>.Count * Vector<double>.Count;
        ReadOnlySpan<Vector<double>> before = MemoryMarshal.Cast<double, Vector<double>>(times.Slice(0, done)), now = MemoryMarshal.Cast<double, Vector<double>>(times.Slice(1, done));
        Vector<double> most = default;
        Vector<long> same = default;
        for (int v = 0; v < now.Length; v++)
        {
            Vector<double> gap = now[v] - before[v];
            most = Vector.Max(most, gap);
            same += Vector.Equals(gap, Vector<double>.Zero);
        }

        int repeated = 0;
        double longest = 0;
        for (int lane = 0; lane < Vector<double>.Count; lane++)
        {
            repeated -= (int)same[lane];
            longest = Math.Max(longest, most[lane]);
        }

        for (int i = done + 1; i <= steps; i++)
        {
            double gap = times[i] - times[i - 1];
            if (gap == 0) repeated++;
            longest = Math.Max(longest, gap);
        }

        return (repeated, longest);
    }
}
