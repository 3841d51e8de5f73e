namespace Fastening;

/// <summary>The direction of the load in service, on which embedding depends (VDI 2230-1:2015 Table 5, from memory).</summary>
public enum EmbeddingLoad
{
    /// <summary>Along the bolt: tension or compression.</summary>
    Axial,

    /// <summary>Across the bolt; also where both directions occur, because it embeds more.</summary>
    Shear,
}
