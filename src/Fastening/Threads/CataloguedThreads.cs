namespace Fastening;

/// <summary>A standard that lists its sizes: a designation names one of them, or none.</summary>
internal abstract class CataloguedThreads : ThreadStandard
{
    private readonly Lazy<ThreadCatalogue> _catalogue;

    protected CataloguedThreads() => _catalogue = new(() => new ThreadCatalogue(ReadSizes()));

    /// <summary>One instance per thread, read once at first use.</summary>
    public ThreadCatalogue Catalogue => _catalogue.Value;

    /// <summary>The document that lists the sizes.</summary>
    protected abstract string Document { get; }

    /// <summary>What to do for a thread that the document lacks.</summary>
    protected abstract string ForOthers { get; }

    public override ScrewThread? Find(in ThreadDesignation wanted) => Catalogue.Find(wanted);

    public override bool HasSizeOf(in ThreadDesignation wanted) => Catalogue.SizesOf(wanted).Count > 0;

    public override string Explain(string shown, in ThreadDesignation wanted)
    {
        List<ThreadSize> sizes = Catalogue.SizesOf(wanted);
        return sizes.Count > 0 ? ExplainPitch(shown, wanted, sizes) : ExplainSize(shown, wanted.Diameter);
    }

    /// <summary>The sizes from the data file, smallest first.</summary>
    protected abstract IEnumerable<ThreadSize> ReadSizes();

    /// <summary>Why none of the threads of a size fits, or more than one.</summary>
    protected abstract string ExplainPitch(string shown, ThreadDesignation wanted, List<ThreadSize> sizes);

    /// <summary>That the document has no such diameter.</summary>
    protected abstract string Lacks(long diameter);

    protected static IEnumerable<string> Names(IEnumerable<ThreadSize> sizes) => sizes.SelectMany(size => size.Threads).Select(t => t.Thread.Designation);

    protected static string Enumerate(IEnumerable<string> items, string conjunction)
    {
        string[] all = items.ToArray();
        return all.Length == 1 ? all[0] : $"{string.Join(", ", all, 0, all.Length - 1)} {conjunction} {all[all.Length - 1]}";
    }

    /// <summary>The pitch that leaves a core of a tenth of the diameter; <paramref name="rootOfUnitPitch"/> is d₃ − d at a pitch of 1.</summary>
    protected static double CoarsestPitch(double diameter, double rootOfUnitPitch) => (1 - LeastCore) * diameter / -rootOfUnitPitch;

    private string ExplainSize(string shown, long diameter)
    {
        IReadOnlyList<ThreadSize> sizes = Catalogue.Sizes;
        ThreadSize? below = sizes.LastOrDefault(size => size.Diameter < diameter);
        ThreadSize? above = sizes.FirstOrDefault(size => size.Diameter > diameter);
        return below is null || above is null
            ? $"{shown} is outside the catalogue of {Document} threads, {sizes[0].Name} to {sizes[sizes.Count - 1].Name}; {ForOthers}."
            : $"{shown}: {Lacks(diameter)}; the nearest are {below.Name} and {above.Name}; {ForOthers}.";
    }
}
