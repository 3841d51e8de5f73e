namespace Fastening;

/// <summary>A line of a log that is still held: the entry, when it first came in, and its place.</summary>
internal sealed class LogLine(JobEntry entry)
{
    public JobEntry Entry { get; } = entry;

    /// <summary>The earliest time at which it came in, over all its repeats.</summary>
    public long Received { get; set; } = ReceivedOf(entry);

    public LinePlace Place { get; set; }

    public bool IsReused => (Place.Flags & LineFlags.Reused) != 0;

    public static long ReceivedOf(JobEntry entry) => entry.Received is DateTimeOffset time ? time.UtcTicks : LogSource.NotReceived;
}
