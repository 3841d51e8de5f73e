using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>The stress area of a thread on either basis, in square metres.</summary>
internal static class StressAreas
{
    /// <summary>The area, by the thread's own steps when the work is to be shown; a tabulated area has none.</summary>
    public static Term Of(ScrewThread thread, StressAreaBasis basis)
    {
        Guard.NotNull(thread);
        if (basis is < StressAreaBasis.Exact or > StressAreaBasis.NominalTable) Guard.RefuseAgainst(nameof(basis), (int)basis, "Exact or NominalTable");
        return basis == StressAreaBasis.Exact ? thread.Geometry.StressArea : Tabulated(thread);
    }

    /// <summary>The area as the tables of structural bolts print it.</summary>
    public static double InStructuralTables(ScrewThread thread) => thread.Standard.StructuralArea(thread.Geometry.StressArea.Value) ?? throw Untabulated(thread);

    private static Term Tabulated(ScrewThread thread) =>
        Term.Given(thread.Standard.TabulatedArea(thread.Geometry.StressArea.Value) ?? throw Untabulated(thread), "stress area, three digits as tabulated,", thread.Designation);

    private static ArgumentException Untabulated(ScrewThread thread) =>
        new($"no standard tabulates the stress area of {thread}; use StressAreaBasis.Exact.", nameof(thread));
}
