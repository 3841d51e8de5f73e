namespace Fastening;

/// <summary>How the compliance of the clamped parts was found.</summary>
public enum ClampedStackMethod
{
    /// <summary>The deformation cone of VDI 2230-1:2015 §5.1.2 (from memory), whose angle follows from the proportions of the parts.</summary>
    Vdi2230Cone = 0,

    /// <summary>A stack of frusta of one chosen angle: Shigley 9th ed. (2011) §8-5.</summary>
    Frusta = 1,

    /// <summary>The exponential fit by Wileman, Choudhury and Green (1991).</summary>
    Wileman = 2,

    /// <summary>Sleeves: each layer bears over its whole cross-section.</summary>
    Sleeve = 3,

    /// <summary>A stiffness as stated, from a test or from finite elements.</summary>
    Stated = 4,
}
