namespace Fastening.Quality;

/// <summary>How the confidence bounds of a capability index are found.</summary>
public enum CapabilityBound
{
    /// <summary>Potential index: χ², exact for a normal process.</summary>
    ChiSquared = 0,

    /// <summary>The smaller of two indices: Bissell's normal approximation.</summary>
    Bissell = 1,

    /// <summary>Index against one limit: noncentral t, exact for a normal process.</summary>
    NoncentralT = 2,
}
