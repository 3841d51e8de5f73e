namespace Fastening;

/// <summary>The sizes that a standard lists, with their threads.</summary>
internal sealed class ThreadCatalogue
{
    private readonly Dictionary<long, ThreadSize> _byDiameter;

    public ThreadCatalogue(IEnumerable<ThreadSize> sizes)
    {
        Sizes = [.. sizes];
        _byDiameter = Sizes.ToDictionary(size => size.Diameter);
    }

    /// <summary>Smallest first.</summary>
    public IReadOnlyList<ThreadSize> Sizes { get; }

    /// <summary>See <see cref="ThreadDesignation.Diameter"/>.</summary>
    public ThreadSize? SizeOf(long diameter) => _byDiameter.TryGetValue(diameter, out ThreadSize? size) ? size : null;

    /// <summary>The sizes that a designation may mean: two where a bare whole number may be a numbered size.</summary>
    public List<ThreadSize> SizesOf(in ThreadDesignation wanted)
    {
        var sizes = new List<ThreadSize>();
        if (SizeOf(wanted.Diameter) is ThreadSize size) sizes.Add(size);
        if (SizeOf(wanted.NumberedDiameter) is ThreadSize numbered) sizes.Add(numbered);
        return sizes;
    }

    /// <summary>The thread, if the catalogue has exactly one that fits.</summary>
    public ScrewThread? Find(in ThreadDesignation wanted)
    {
        ScrewThread? found = SizeOf(wanted.Diameter)?.Only(wanted.Pitch, wanted.Series);
        if (wanted.NumberedDiameter == 0) return found;

        ScrewThread? numbered = SizeOf(wanted.NumberedDiameter)?.Only(wanted.Pitch, wanted.Series);
        return found is null ? numbered : numbered is null ? found : null;
    }

    /// <summary>What the standard calls a thread of this diameter and pitch (mm and mm, or in and threads per inch); null when it has none.</summary>
    public string? NameOf(double diameter, double pitch) =>
        ThreadNumber.TryMillionths(diameter, out long d) && ThreadNumber.TryMillionths(pitch, out long p)
            ? SizeOf(d)?.Only(p, null)?.Designation
            : null;
}
