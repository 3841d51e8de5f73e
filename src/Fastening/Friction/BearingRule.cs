namespace Fastening;

/// <summary>At which diameter bearing friction acts: the choice on which handbooks differ.</summary>
public enum BearingRule
{
    /// <summary>Midway between outer and inner diameter, as of uniform wear: ISO 16047, VDI 2230.</summary>
    MeanDiameter = 0,

    /// <summary>(2/3)(D_o³ − D_i³)/(D_o² − D_i²), as of uniform pressure: Machinery's Handbook, JIS.</summary>
    UniformPressure = 1,

    /// <summary>
    /// 1.25 d under a standard head or nut, whatever its ring (Shigley 9th ed., eq. (8-26); TM-106943); the mean diameter of a ring that was
    /// stated, as of the collar of a power screw (Shigley §8-2).
    /// </summary>
    TextbookCollar = 2,
}
