namespace Fastening;

/// <summary>The family of profiles a thread belongs to.</summary>
public enum ThreadProfile
{
    /// <summary>ISO 68-1 metric profile, 60°.</summary>
    IsoMetric = 0,

    /// <summary>ASME B1.1 unified profile, 60°, with the UNR reference root.</summary>
    Unified = 1,

    /// <summary>Given by its diameters and its load flank.</summary>
    Custom = 2,
}
