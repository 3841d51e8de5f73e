namespace Fastening;

/// <summary>A log taken in order: the ledger so far, the sources, and what a person said of missing numbers.</summary>
internal sealed class MergedLog
{
    private readonly Dictionary<string, List<NumberRange>> _explained = new(StringComparer.Ordinal);
    private string? _lastName;
    private long _lastSequence;

    public MergedLog(TighteningProgram program, JobOptions options)
    {
        Program = program;
        Sources = new LogSources(options);
        Ledger = new JobLedger(program, options.ToleranceTicks);
    }

    private MergedLog(MergedLog other, JobLedger ledger, LogSources sources)
    {
        Program = other.Program;
        Sources = sources;
        Ledger = ledger;
        foreach (KeyValuePair<string, List<NumberRange>> explained in other._explained) _explained.Add(explained.Key, [.. explained.Value]);
        (LastTicks, _lastName, _lastSequence, Conflicts) = (other.LastTicks, other._lastName, other._lastSequence, other.Conflicts);
    }

    public TighteningProgram Program { get; }

    public JobLedger Ledger { get; }

    public LogSources Sources { get; }

    /// <summary>Lines whose number another one holds.</summary>
    public long Conflicts { get; private set; }

    public long LastTicks { get; private set; } = FastenerLedger.NoPlace;

    /// <summary>The numbers that are missing and that nobody has explained, by source.</summary>
    public IReadOnlyList<JobGap> Gaps
    {
        get
        {
            if (!Sources.HasMissing) return [];
            return Array.AsReadOnly((
                from source in Sources.All
                where source.Missing.Count > 0
                from range in NumberRange.Except(source.Missing, _explained.TryGetValue(source.Name, out List<NumberRange>? explained) ? explained : [])
                select new JobGap(source.Name, range.First, range.Last)).ToArray());
        }
    }

    public MergedLog Copy() => new(this, new JobLedger(Ledger), Sources.Copy());

    /// <summary>
    /// The same, where another ledger differs from this one in the named fasteners at most, and the sources are already those of the lines to come. Neither
    /// may be used elsewhere.
    /// </summary>
    public MergedLog CopyInto(JobLedger ledger, IEnumerable<int> fasteners, LogSources sources)
    {
        ledger.CopyFrom(Ledger, fasteners);
        return new(this, ledger, sources);
    }

    /// <summary>Whether a place is behind all that was taken so far: by time, then by the name of the source, then by number.</summary>
    public bool IsBehindAll(in LinePlace place, JobEntry entry)
    {
        if (place.Ticks != LastTicks) return place.Ticks > LastTicks;
        int byName = string.CompareOrdinal(entry.Source, _lastName);
        return byName != 0 ? byName > 0 : entry.Sequence > _lastSequence;
    }

    public JobOutcome Take(JobEntry entry, in LinePlace place)
    {
        (LastTicks, _lastName, _lastSequence) = (place.Ticks, entry.Source, entry.Sequence);
        if (place.Flags != LineFlags.None && (place.Flags & LineFlags.Reused) != 0) Conflicts++;
        if (entry.Kind == JobEntryKind.Explained && (place.Flags & (LineFlags.Reused | LineFlags.Withdrawn)) == 0)
        {
            if (!_explained.TryGetValue(entry.OfSource!, out List<NumberRange>? ranges)) _explained[entry.OfSource!] = ranges = [];
            ranges.Add(new(entry.OfSequence!.Value, entry.ToSequence!.Value));
        }

        return Ledger.Fold(entry, place);
    }
}
