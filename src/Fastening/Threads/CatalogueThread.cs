namespace Fastening;

/// <summary>One thread of a size: its pitch as the designation writes it (see <see cref="ThreadDesignation.Pitch"/>) and its series.</summary>
internal sealed class CatalogueThread(ScrewThread thread, long pitch, string series)
{
    public ScrewThread Thread { get; } = thread;

    public long Pitch { get; } = pitch;

    public string Series { get; } = series;

    /// <summary>UN names the profile of every unified series, so it fits each of them once the threads per inch are written.</summary>
    public bool Fits(long wantedPitch, string? wantedSeries) =>
        (wantedPitch == 0 || wantedPitch == Pitch)
        && (wantedSeries is null || wantedSeries == Series || (wantedSeries == UnifiedThreads.AnySeries && wantedPitch != 0));
}
