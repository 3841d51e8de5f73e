namespace Fastening;

/// <summary>The diameter at which thread friction is taken to act.</summary>
public enum MeanThreadDiameter
{
    /// <summary>The pitch diameter d₂ (ISO, VDI, JIS).</summary>
    PitchDiameter = 0,

    /// <summary>Midway between nominal and root diameter (textbooks).</summary>
    MajorAndRoot = 1,
}
