using Fastening.Internals;

namespace Fastening;

/// <summary>Takes a whole log as it comes, and only when a line is out of place once more, sorted.</summary>
internal static class LogReplay
{
    public static MergedLog Of(TighteningProgram program, IReadOnlyList<JobEntry> log, JobOptions options, out long repeats) =>
        AsItComes(program, log, options, out repeats) ?? Sorted(program, log, options, out repeats);

    /// <summary>Null when a line came late, is withdrawn, or is perhaps not the repeat that it seems to be.</summary>
    private static MergedLog? AsItComes(TighteningProgram program, IReadOnlyList<JobEntry> log, JobOptions options, out long repeats)
    {
        var merged = new MergedLog(program, options);
        repeats = 0;
        for (int i = 0; i < log.Count; i++)
        {
            JobEntry entry = log[i] ?? throw new ArgumentNullException(Print.Text($"log[{i}]"));
            LogSource source = merged.Sources.Of(entry.Source);
            long received = LogLine.ReceivedOf(entry);
            if (entry.Sequence <= source.LastSequence)
            {
                JobEntry? same = source.FindRecent(entry.Sequence);
                if (same is null || !same.SaysTheSameAs(entry) || received < LogLine.ReceivedOf(same)) return null;
                repeats++;
                continue;
            }

            if (entry.Kind == JobEntryKind.Withdrawn) return null;
            LinePlace place = source.Next(entry, received, LineFlags.None, options.ToleranceTicks);
            if (!merged.IsBehindAll(place, entry)) return null;
            merged.Take(entry, place);
            source.Remember(entry);
        }

        return merged;
    }

    private static MergedLog Sorted(TighteningProgram program, IReadOnlyList<JobEntry> log, JobOptions options, out long repeats)
    {
        var merged = new MergedLog(program, options);
        List<LogLine> lines = LogOrder.Arrange(log.Select((entry, i) => new LogLine(Guard.NotNull(entry, $"log[{i}]"))), merged.Sources, new HashSet<(string, long)>());
        foreach (LogLine line in lines) merged.Take(line.Entry, line.Place);
        repeats = log.Count - lines.Count;
        return merged;
    }
}
