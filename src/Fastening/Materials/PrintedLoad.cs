using Fastening.Internals;

namespace Fastening;

/// <summary>Loads as tables print them: newtons for metric threads, pounds-force for unified ones.</summary>
internal static class PrintedLoad
{
    private const double PoundForce = 4.4482216152605;

    public static double ToThreeDigits(ScrewThread thread, double newtons) =>
        PrintedNumber.ToSignificantDigits(newtons / UnitOf(thread), 3) * UnitOf(thread);

    /// <summary>To the whole kilonewton or kip.</summary>
    public static double ToThousand(ScrewThread thread, double newtons) =>
        PrintedNumber.Whole(newtons / (1000 * UnitOf(thread))) * (1000 * UnitOf(thread));

    private static double UnitOf(ScrewThread thread) => thread.Profile == ThreadProfile.Unified ? PoundForce : 1;
}
