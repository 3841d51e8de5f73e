namespace Fastening;

/// <summary>The times of the samples: a column, or a start and a steady interval.</summary>
internal readonly ref struct SampleClock(ReadOnlySpan<double> times, double start, double interval)
{
    private readonly ReadOnlySpan<double> _times = times;

    public double this[int index] => _times.IsEmpty ? start + index * interval : _times[index];
}
