namespace Fastening;

/// <summary>The section in which the flank angle enters the thread torque.</summary>
public enum FlankSection
{
    /// <summary>The axial plane: c = 1/cos α (VDI 2230, ISO 16047, textbooks).</summary>
    Axial = 0,

    /// <summary>Normal to the helix: c = 1/cos α_n with tan α_n = tan α·cos φ (Machinery's Handbook, JIS; rigorous).</summary>
    Normal = 1,
}
