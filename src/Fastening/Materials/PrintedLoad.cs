using Fastening.Internals;

namespace Fastening;

/// <summary>Loads as tables print them: newtons for metric threads, pounds-force for unified ones.</summary>
internal static class PrintedLoad
{
    public static double ToThreeDigits(ScrewThread thread, double newtons) =>
        PrintedNumber.ToSignificantDigits(newtons / thread.Standard.LoadUnit, 3) * thread.Standard.LoadUnit;

    /// <summary>To the whole kilonewton or kip.</summary>
    public static double ToThousand(ScrewThread thread, double newtons) =>
        PrintedNumber.Whole(newtons / (1000 * thread.Standard.LoadUnit)) * (1000 * thread.Standard.LoadUnit);
}
