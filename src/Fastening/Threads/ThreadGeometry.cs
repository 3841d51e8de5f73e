using Fastening.Equations;

namespace Fastening;

/// <summary>The doubles a thread reduces itself to, in SI; computed by one sequence of equations, with or without the work written down.</summary>
internal readonly record struct ThreadGeometry(
    double PitchDiameter, double RootDiameter, double? InternalMinorDiameter, double StressDiameter, double StressArea, double MinorArea,
    double Lead, double LeadAngle)
{
    public static ThreadGeometry Of60Degrees(Derivation? work, ThreadProfile profile, double diameter, double pitch)
    {
        bool metric = profile == ThreadProfile.IsoMetric;
        double height = ThreadEquations.TriangleHeightEquation.Step(work, pitch);
        double pitchDiameter = ThreadEquations.PitchDiameterEquation.Step(work, diameter, height);
        double rootDiameter = (metric ? ThreadEquations.IsoRootDiameterEquation : ThreadEquations.UnifiedRootDiameterEquation)
            .Step(work, diameter, height);
        double stressDiameter = metric
            ? ThreadEquations.MeanStressDiameterEquation.Step(work, pitchDiameter, rootDiameter)
            : ThreadEquations.UnifiedStressDiameterEquation.Step(work, diameter, pitch);
        double internalMinor = ThreadEquations.InternalMinorDiameter(diameter, height);
        double minorArea = MinorAreaOf(null, profile, diameter, pitch, rootDiameter);
        return Complete(work, pitch, starts: 1, pitchDiameter, rootDiameter, internalMinor, stressDiameter, minorArea);
    }

    public static ThreadGeometry OfPowerScrew(Derivation? work, ThreadProfile profile, double diameter, double pitch, int starts)
    {
        double pitchDiameter = ThreadEquations.PowerPitchDiameterEquation.Step(work, diameter, pitch);
        double rootDiameter = profile == ThreadProfile.Square
            ? ThreadEquations.SquareRootDiameterEquation.Step(work, diameter, pitch)
            : ThreadEquations.TrapezoidalRootDiameterEquation.Step(work, diameter, pitch, PowerScrewProfile.CrestClearance(profile, pitch));
        double internalMinor = ThreadEquations.PowerInternalMinorDiameter(diameter, pitch);
        return OfDiameters(work, profile, diameter, pitch, starts, pitchDiameter, rootDiameter, internalMinor);
    }

    public static ThreadGeometry OfProfile(Derivation? work, double diameter, double pitch, int starts, double pitchDiameter, double rootDiameter) =>
        OfDiameters(work, ThreadProfile.Custom, diameter, pitch, starts, pitchDiameter, rootDiameter, null);

    /// <summary>Handbooks tabulate the minor area of a unified thread at another diameter than the root of its profile.</summary>
    public static double MinorAreaOf(Derivation? work, ThreadProfile profile, double diameter, double pitch, double rootDiameter)
    {
        if (profile != ThreadProfile.Unified) return ThreadEquations.MinorAreaEquation.Step(work, rootDiameter);

        double height = ThreadEquations.TriangleHeightEquation.Step(work, pitch);
        return ThreadEquations.UnifiedMinorAreaEquation.Step(work, ThreadEquations.UnifiedMinorAreaDiameterEquation.Step(work, diameter, height));
    }

    private static ThreadGeometry OfDiameters(
        Derivation? work, ThreadProfile profile, double diameter, double pitch, int starts, double pitchDiameter, double rootDiameter, double? internalMinor) =>
        Complete(
            work, pitch, starts, pitchDiameter, rootDiameter, internalMinor,
            ThreadEquations.MeanStressDiameterEquation.Step(work, pitchDiameter, rootDiameter),
            MinorAreaOf(null, profile, diameter, pitch, rootDiameter));

    private static ThreadGeometry Complete(
        Derivation? work, double pitch, int starts, double pitchDiameter, double rootDiameter, double? internalMinor, double stressDiameter, double minorArea)
    {
        double lead = ThreadEquations.LeadEquation.Step(work, starts, pitch);
        double leadAngle = ThreadEquations.LeadAngleEquation.Step(work, lead, pitchDiameter);
        double stressArea = ThreadEquations.StressAreaEquation.Step(work, stressDiameter);
        return new ThreadGeometry(pitchDiameter, rootDiameter, internalMinor, stressDiameter, stressArea, minorArea, lead, leadAngle);
    }
}
