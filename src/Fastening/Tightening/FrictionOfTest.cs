using Fastening.Equations;

namespace Fastening;

/// <summary>The inverse of <see cref="TorqueArms"/>: coefficients of friction from what was measured. One sequence, with or without the work written down.</summary>
internal static class FrictionOfTest
{
    public static double Thread(Derivation? work, ScrewThread thread, TorqueConvention convention, double force, double threadTorque)
    {
        InclinedPlane plane = InclinedPlane.Of(work, thread, convention);
        double arm = FrictionTestEquations.MeasuredThreadArmEquation.Step(work, threadTorque, force);
        return convention.Form == TorqueForm.Exact
            ? FrictionTestEquations.ExactThreadFrictionEquation.Step(work, arm, plane.FlankFactor, plane.Diameter, plane.Slope)
            : FrictionTestEquations.LinearThreadFrictionEquation.Step(
                work, arm, PitchArm(work, thread, convention, plane), ThreadRadius(work, convention, plane));
    }

    public static double Bearing(Derivation? work, BearingSurface bearing, double force, double total, double threadTorque) =>
        FrictionTestEquations.BearingFrictionEquation.Step(
            work, FrictionTestEquations.MeasuredBearingArmEquation.Step(work, total, threadTorque, force), bearing.FrictionRadius(work));

    public static double Uniform(
        Derivation? work, ScrewThread thread, BearingSurface bearing, TorqueConvention convention, double force, double total)
    {
        InclinedPlane plane = InclinedPlane.Of(work, thread, convention);
        double arm = FrictionTestEquations.MeasuredTorqueArmEquation.Step(work, total, force);
        double bearingRadius = bearing.FrictionRadius(work);
        return convention.Form == TorqueForm.Exact
            ? FrictionTestEquations.ExactTotalFrictionEquation.Step(work, arm, plane.FlankFactor, plane.Diameter, plane.Slope, bearingRadius)
            : FrictionTestEquations.LinearTotalFrictionEquation.Step(
                work, arm, PitchArm(work, thread, convention, plane), ThreadRadius(work, convention, plane), bearingRadius);
    }

    private static double PitchArm(Derivation? work, ScrewThread thread, TorqueConvention convention, in InclinedPlane plane) =>
        convention.Form == TorqueForm.Printed ? FrictionTestEquations.PrintedPitchArmEquation.Step(work, thread.PitchSi) : plane.PitchArm;

    private static double ThreadRadius(Derivation? work, TorqueConvention convention, in InclinedPlane plane) => convention.Form switch
    {
        TorqueForm.Printed => FrictionTestEquations.PrintedThreadRadiusEquation.Step(work, plane.Diameter),
        TorqueForm.PrintedIso16047 => FrictionTestEquations.IsoPrintedThreadRadiusEquation.Step(work, plane.Diameter),
        _ => FrictionTestEquations.ThreadRadiusEquation.Step(work, plane.FlankFactor, plane.Diameter),
    };
}
