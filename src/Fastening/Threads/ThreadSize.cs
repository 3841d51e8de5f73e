namespace Fastening;

/// <summary>A nominal size of the catalogue, M16 or 1/2, with its threads: the coarse one first.</summary>
internal sealed class ThreadSize(string name, long diameter, IReadOnlyList<CatalogueThread> threads)
{
    public string Name { get; } = name;

    /// <summary>See <see cref="ThreadDesignation.Diameter"/>.</summary>
    public long Diameter { get; } = diameter;

    public IReadOnlyList<CatalogueThread> Threads { get; } = threads;

    /// <summary>The only thread that fits what is written; null when none fits, or when too little is written to choose one.</summary>
    public ScrewThread? Only(long pitch, string? series)
    {
        if (pitch == 0 && series is null or UnifiedThreads.AnySeries) return null;

        ScrewThread? only = null;
        for (int i = 0; i < Threads.Count; i++)
        {
            if (!Threads[i].Fits(pitch, series)) continue;
            if (only is not null) return null;
            only = Threads[i].Thread;
        }

        return only;
    }
}
