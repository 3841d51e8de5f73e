namespace Fastening;

/// <summary>What is known of one source: its last number, its clock, and the numbers that are missing.</summary>
internal sealed class LogSource
{
    // Enough for the lines that a gateway sends twice in a row; what is older is found by sorting.
    private const int Remembered = 64;

    private readonly List<NumberRange> _missing = [];
    private readonly JobSource? _declared;
    private JobEntry?[]? _recent;
    private int _written;
    private long _lastStamp;
    private long _place = FastenerLedger.NoPlace;

    public LogSource(string name, int number, JobSource? declared)
    {
        Name = name;
        Number = number;
        Hash = Fingerprint.Of(name);
        _declared = declared;
        First = LastSequence = -1;
    }

    public string Name { get; }

    public int Number { get; }

    public ulong Hash { get; }

    /// <summary>The first number that belongs to the job; −1 before there is any.</summary>
    public long First { get; private set; }

    /// <summary>−1 before there is any.</summary>
    public long LastSequence { get; private set; }

    public bool IsSparse => _declared?.IsSparse ?? false;

    public IReadOnlyList<NumberRange> Missing => _missing;

    public LogSource Copy()
    {
        var copy = new LogSource(Name, Number, _declared) { First = First, LastSequence = LastSequence, _lastStamp = _lastStamp, _place = _place };
        copy._missing.AddRange(_missing);
        return copy;
    }

    /// <summary>Takes the next number: its place in time is its stamp, and never before an earlier number. A clock that cannot be right tells no time.</summary>
    public LinePlace Next(JobEntry entry, long received, LineFlags flags, long tolerance)
    {
        bool wentBack = LastSequence >= 0 && entry.Ticks < _lastStamp;
        bool isUntold = IsAhead(entry.Ticks, received, tolerance) || LastSequence >= 0 && entry.Ticks < _place - tolerance;
        long place = !isUntold ? entry.Ticks : received == NotReceived ? _place : received;
        Count(entry.Sequence);
        _lastStamp = entry.Ticks;
        _place = Math.Max(place, _place);
        if (wentBack) flags |= LineFlags.ClockWentBack;
        if (isUntold) flags |= LineFlags.TimeUntold;
        return new(Number, Hash, _place, received, flags);
    }

    /// <summary>The place of a line whose number another one holds: it is no part of what the source counts.</summary>
    public LinePlace Beside(JobEntry entry, long received, LineFlags flags, long tolerance)
    {
        bool isUntold = IsAhead(entry.Ticks, received, tolerance);
        return new(Number, Hash, isUntold ? received : entry.Ticks, received, flags | LineFlags.Reused | (isUntold ? LineFlags.TimeUntold : LineFlags.None));
    }

    public const long NotReceived = long.MaxValue;

    public void Remember(JobEntry entry)
    {
        _recent ??= new JobEntry?[Remembered];
        _recent[_written++ & Remembered - 1] = entry;
    }

    public JobEntry? FindRecent(long sequence)
    {
        for (int back = 1; back <= Remembered && back <= _written; back++)
        {
            JobEntry? entry = _recent![_written - back & Remembered - 1];
            if (entry!.Sequence == sequence) return entry;
        }

        return null;
    }

    private static bool IsAhead(long stamp, long received, long tolerance) => received != NotReceived && stamp - tolerance > received;

    private void Count(long sequence)
    {
        if (LastSequence < 0)
        {
            First = Math.Min(_declared?.First ?? sequence, sequence);
            LastSequence = First - 1;
        }

        if (!IsSparse && sequence > LastSequence + 1) _missing.Add(new(LastSequence + 1, sequence - 1));
        LastSequence = sequence;
    }
}
