namespace Fastening;

/// <summary>How wide the hole is through which the bolt passes: ISO 273 for metric threads, ASME B18.2.8 for unified ones.</summary>
public enum HoleSeries
{
    /// <summary>Fine series of ISO 273 (H12), close fit of ASME B18.2.8.</summary>
    Fine = 0,

    /// <summary>Medium series of ISO 273 (H13), normal fit of ASME B18.2.8.</summary>
    Medium = 1,

    /// <summary>Coarse series of ISO 273 (H14), loose fit of ASME B18.2.8.</summary>
    Coarse = 2,
}
