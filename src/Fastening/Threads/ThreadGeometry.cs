using Fastening.Equations;

namespace Fastening;

/// <summary>The doubles a thread reduces itself to, in SI; computed by one sequence of equations, with or without the work written down.</summary>
internal readonly record struct ThreadGeometry(
    double PitchDiameter, double RootDiameter, double? InternalMinorDiameter, double StressDiameter, double StressArea, double Lead, double LeadAngle)
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
        return Complete(work, pitch, starts: 1, pitchDiameter, rootDiameter, internalMinor, stressDiameter);
    }

    public static ThreadGeometry OfProfile(Derivation? work, double pitch, int starts, double pitchDiameter, double rootDiameter) =>
        Complete(
            work, pitch, starts, pitchDiameter, rootDiameter, null,
            ThreadEquations.MeanStressDiameterEquation.Step(work, pitchDiameter, rootDiameter));

    private static ThreadGeometry Complete(
        Derivation? work, double pitch, int starts, double pitchDiameter, double rootDiameter, double? internalMinor, double stressDiameter)
    {
        double lead = ThreadEquations.LeadEquation.Step(work, starts, pitch);
        double leadAngle = ThreadEquations.LeadAngleEquation.Step(work, lead, pitchDiameter);
        double stressArea = ThreadEquations.StressAreaEquation.Step(work, stressDiameter);
        return new ThreadGeometry(pitchDiameter, rootDiameter, internalMinor, stressDiameter, stressArea, lead, leadAngle);
    }
}
