namespace Fastening;

/// <summary>All sources of a log, by name.</summary>
internal sealed class LogSources(JobOptions options)
{
    private readonly Dictionary<string, LogSource> _sources = new(StringComparer.Ordinal);
    private LogSource? _latest;

    public long Tolerance => options.ToleranceTicks;

    /// <summary>By name.</summary>
    public IEnumerable<LogSource> All => _sources.Values.OrderBy(source => source.Name, StringComparer.Ordinal);

    public bool HasMissing => _sources.Values.Any(source => source.Missing.Count > 0);

    public LogSource Of(string name)
    {
        if (_latest is not null && _latest.Name == name) return _latest;
        if (!_sources.TryGetValue(name, out LogSource? source))
        {
            source = new LogSource(name, _sources.Count, DeclarationOf(name));
            _sources.Add(name, source);
        }

        return _latest = source;
    }

    // Apart: what it captures would be allocated by every call of the method it stands in.
    private JobSource? DeclarationOf(string name) => options.Sources.FirstOrDefault(declared => declared.Name == name);

    public LogSources Copy()
    {
        var copy = new LogSources(options);
        foreach (KeyValuePair<string, LogSource> source in _sources) copy._sources.Add(source.Key, source.Value.Copy());
        return copy;
    }
}
