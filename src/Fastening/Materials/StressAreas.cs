using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>The stress area of a thread on either basis, in square metres.</summary>
internal static class StressAreas
{
    private const double SquareMillimeter = 1e-6, SquareInch = 0.0254 * 0.0254;

    /// <summary>The area, by the thread's own steps when the work is to be shown; a tabulated area has none.</summary>
    public static double Of(Derivation? work, ScrewThread thread, StressAreaBasis basis)
    {
        Guard.NotNull(thread);
        if (basis is < StressAreaBasis.Exact or > StressAreaBasis.NominalTable) Guard.RefuseAgainst(nameof(basis), (int)basis, "Exact or NominalTable");
        return basis == StressAreaBasis.Exact ? thread.Derive(work).StressArea : Tabulated(thread);
    }

    /// <summary>The area to the thousandth of a square inch, as the tables of structural bolts in inches print it.</summary>
    public static double InThousandthsOfSquareInch(ScrewThread thread) =>
        PrintedNumber.Whole(thread.Geometry.StressArea / SquareInch * 1000) / 1000 * SquareInch;

    private static double Tabulated(ScrewThread thread)
    {
        if (thread.Profile is not (ThreadProfile.IsoMetric or ThreadProfile.Unified))
        {
            throw new ArgumentException($"no standard tabulates the stress area of {thread}; use StressAreaBasis.Exact.", nameof(thread));
        }

        double unit = thread.Profile == ThreadProfile.Unified ? SquareInch : SquareMillimeter;
        return PrintedNumber.ToSignificantDigits(thread.Geometry.StressArea / unit, 3) * unit;
    }
}
