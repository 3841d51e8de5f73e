namespace Fastening;

/// <summary>
/// The draws in order, as far as they are asked for: sorted into buckets once, and within a bucket only when a rank falls into it.
/// Both coverage intervals of a million draws need the tails alone.
/// </summary>
internal sealed class OrderStatistics
{
    private const int Buckets = 2048;
    private const int Samples = 4096;

    private readonly double[] _values;
    private readonly int _threads;
    private readonly double _low;
    private readonly double _high;
    private readonly double _scale;
    private readonly int[] _starts;
    private (double[] Lowest, double[] Highest) _tails = ([], []);

    public OrderStatistics(double[] values, int threads)
    {
        _values = values;
        _threads = threads;
        (_low, _high) = Body();
        double width = _high - _low;
        _scale = width > 0 && (Buckets - 2) / width is var scale && !double.IsInfinity(scale) ? scale : 0;
        _starts = Count();
    }

    public int Length => _values.Length;

    /// <summary>The value of a rank, from 0.</summary>
    public double this[int rank]
    {
        get
        {
            int bucket = Array.BinarySearch(_starts, rank);
            if (bucket < 0) bucket = ~bucket - 1;
            while (_starts[bucket + 1] == _starts[bucket]) bucket++;
            double[] members = Members(bucket, bucket);
            return members[rank - _starts[bucket]];
        }
    }

    /// <summary>The lowest and the highest values, so many each, in rising order; kept for the next question about the same probability.</summary>
    public (double[] Lowest, double[] Highest) Tails(int count)
    {
        lock (_starts)
        {
            if (_tails.Lowest.Length != count) _tails = FindTails(count);
            return _tails;
        }
    }

    private (double[] Lowest, double[] Highest) FindTails(int count)
    {
        int last = 0, first = Buckets - 1;
        while (_starts[last + 1] < count) last++;
        while (Length - _starts[first] < count) first--;
        double[] lowest = [], highest = [];
        int lastBucket = last, firstBucket = first;
        Parallel.Invoke(
            new ParallelOptions { MaxDegreeOfParallelism = _threads },
            () => lowest = Members(0, lastBucket),
            () => highest = Members(firstBucket, Buckets - 1));
        return (lowest.AsSpan(0, count).ToArray(), highest.AsSpan(highest.Length - count).ToArray());
    }

    /// <summary>Limits that hold all but the outliers, from a regular sample: far outliers must not crowd the rest into one bucket.</summary>
    private (double Low, double High) Body()
    {
        int step = Math.Max(1, _values.Length / Samples);
        double[] sample = new double[_values.Length / step];
        for (int i = 0; i < sample.Length; i++) sample[i] = _values[i * step];
        Array.Sort(sample);
        int cut = sample.Length / 1000;
        return (sample[cut], sample[sample.Length - 1 - cut]);
    }

    private int BucketOf(double value)
    {
        if (value < _low) return 0;
        return value > _high ? Buckets - 1 : Math.Min(1 + (int)((value - _low) * _scale), Buckets - 2);
    }

    private int[] Count()
    {
        int parts = Math.Min(_threads, 64);
        int[][] counts = [.. Enumerable.Range(0, parts).Select(_ => new int[Buckets])];
        Parallel.For(0, parts, new ParallelOptions { MaxDegreeOfParallelism = _threads }, part =>
        {
            int[] own = counts[part];
            int end = (int)((long)(part + 1) * _values.Length / parts);
            for (int i = (int)((long)part * _values.Length / parts); i < end; i++) own[BucketOf(_values[i])]++;
        });

        var starts = new int[Buckets + 1];
        for (int bucket = 0; bucket < Buckets; bucket++) starts[bucket + 1] = starts[bucket] + counts.Sum(own => own[bucket]);
        return starts;
    }

    private double[] Members(int first, int last)
    {
        double[] members = new double[_starts[last + 1] - _starts[first]];
        int count = 0;
        foreach (double value in _values)
        {
            int bucket = BucketOf(value);
            if (bucket >= first && bucket <= last) members[count++] = value;
        }

        Array.Sort(members);
        return members;
    }
}
