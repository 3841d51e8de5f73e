namespace Fastening;

/// <summary>Which stress area a load is computed with.</summary>
/// <remarks>The two differ by up to half a unit of the third digit, 0.5 %; they are offered by name and never mixed.</remarks>
/// <example><code>strength.ProofLoad(thread, StressAreaBasis.NominalTable)</code></example>
public enum StressAreaBasis
{
    /// <summary>The exact area of the thread's basic dimensions, ISO 898-1:2013 §9.1.6.1.</summary>
    Exact = 0,

    /// <summary>The nominal area to three significant digits, as standards tabulate it and as their tables of loads use it.</summary>
    NominalTable = 1,
}
