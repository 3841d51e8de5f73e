namespace Fastening;

/// <summary>Roughness of the surfaces of a joint, in the bands of the table of embedding: mean peak-to-valley height Rz (VDI 2230-1:2015 Table 5, from memory).</summary>
/// <example><code>Embedding.ForRoughness(SurfaceRoughness.Rz10To40, EmbeddingLoad.Axial, threads: 1, bearingFaces: 2, interfaces: 1)</code></example>
public enum SurfaceRoughness
{
    /// <summary>Rz below 10 µm.</summary>
    RzBelow10,

    /// <summary>Rz of 10 µm to below 40 µm.</summary>
    Rz10To40,

    /// <summary>Rz of 40 µm to below 160 µm.</summary>
    Rz40To160,
}
