namespace Fastening;

/// <summary>Puts lines that came in any order into their order in time. The answer depends on the set of lines alone.</summary>
internal static class LogOrder
{
    /// <summary>The lines in their order, each with its place; the sources are taken on to the last of them; repeats are left out.</summary>
    public static List<LogLine> Arrange(IEnumerable<LogLine> lines, LogSources sources, ISet<(string Source, long Sequence)> withdrawn)
    {
        List<LogLine> held = [];
        foreach (IGrouping<string, LogLine> source in lines.GroupBy(line => line.Entry.Source, StringComparer.Ordinal))
        {
            held.AddRange(Distinct(source.OrderBy(line => line.Entry.Sequence).ThenBy(line => line.Entry.Ticks).ThenBy(line => Fingerprint.OfContent(line.Entry))));
        }

        HashSet<(string, long)> withdrawals = [];
        foreach (LogLine line in held)
        {
            if (line.Entry.Kind == JobEntryKind.Withdrawn && !line.IsReused) withdrawals.Add((line.Entry.Source, line.Entry.Sequence));
        }

        foreach (LogLine line in held)
        {
            if (line.Entry.Kind == JobEntryKind.Withdrawn && !line.IsReused) withdrawn.Add((line.Entry.OfSource!, line.Entry.OfSequence!.Value));
        }

        foreach (LogLine line in held) line.Place = PlaceOf(line, sources, withdrawn, withdrawals);
        held.Sort(Compare);
        return held;
    }

    /// <summary>By number and time: the first holds the number, what says the same repeats it, what says something else is beside it.</summary>
    private static IEnumerable<LogLine> Distinct(IEnumerable<LogLine> lines)
    {
        List<LogLine> ofOneNumber = [];
        foreach (LogLine line in lines)
        {
            if (ofOneNumber.Count > 0 && ofOneNumber[0].Entry.Sequence != line.Entry.Sequence) ofOneNumber.Clear();
            LogLine? same = ofOneNumber.Find(other => other.Entry.SaysTheSameAs(line.Entry));
            if (same is not null)
            {
                same.Received = Math.Min(same.Received, line.Received);
                continue;
            }

            line.Place = line.Place with { Flags = ofOneNumber.Count > 0 ? LineFlags.Reused : LineFlags.None };
            ofOneNumber.Add(line);
            yield return line;
        }
    }

    private static LinePlace PlaceOf(LogLine line, LogSources sources, ISet<(string, long)> withdrawn, HashSet<(string, long)> withdrawals)
    {
        JobEntry entry = line.Entry;
        LogSource source = sources.Of(entry.Source);
        LineFlags flags = LineFlags.None;
        if (entry.Kind != JobEntryKind.Withdrawn && withdrawn.Contains((entry.Source, entry.Sequence))) flags = LineFlags.Withdrawn;
        if (entry.Kind == JobEntryKind.Withdrawn && withdrawals.Contains((entry.OfSource!, entry.OfSequence!.Value))) flags = LineFlags.Void;
        return line.IsReused
            ? source.Beside(entry, line.Received, flags, sources.Tolerance)
            : source.Next(entry, line.Received, flags, sources.Tolerance);
    }

    private static int Compare(LogLine one, LogLine other)
    {
        int byTime = one.Place.Ticks.CompareTo(other.Place.Ticks);
        if (byTime != 0) return byTime;
        int byName = string.CompareOrdinal(one.Entry.Source, other.Entry.Source);
        if (byName != 0) return byName;
        int byNumber = one.Entry.Sequence.CompareTo(other.Entry.Sequence);
        if (byNumber != 0) return byNumber;
        int byHolder = one.IsReused.CompareTo(other.IsReused);
        return byHolder != 0 ? byHolder : Fingerprint.OfContent(one.Entry).CompareTo(Fingerprint.OfContent(other.Entry));
    }
}
