using Fastening.Equations;

namespace Fastening;

/// <summary>The doubles a thread reduces itself to, in SI; computed by one sequence of equations, with or without the work written down.</summary>
internal readonly record struct ThreadGeometry(
    double PitchDiameter, double RootDiameter, double? InternalMinorDiameter, double StressDiameter, double StressArea, double MinorArea,
    double Lead, double LeadAngle)
{
    /// <summary>What follows from the diameters alike in every standard.</summary>
    public static ThreadGeometry Complete(
        Derivation? work, double pitch, int starts, double pitchDiameter, double rootDiameter, double? internalMinor, double stressDiameter, double minorArea)
    {
        double lead = ThreadEquations.LeadEquation.Step(work, starts, pitch);
        double leadAngle = ThreadEquations.LeadAngleEquation.Step(work, lead, pitchDiameter);
        double stressArea = ThreadEquations.StressAreaEquation.Step(work, stressDiameter);
        return new ThreadGeometry(pitchDiameter, rootDiameter, internalMinor, stressDiameter, stressArea, minorArea, lead, leadAngle);
    }
}
