namespace Fastening;

/// <summary>How torsional stress is spread over the cross-section at the assembly limit.</summary>
public enum TorsionDistribution
{
    /// <summary>The whole section at yield, W_p = π d³/12: VDI 2230 since 2001.</summary>
    Plastic = 0,

    /// <summary>Only the surface at yield, W_p = π d³/16: VDI 2230:1986, JIS, Machinery's Handbook. Gives less preload.</summary>
    Elastic = 1,
}
