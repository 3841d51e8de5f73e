using Fastening.Equations;

namespace Fastening;

/// <summary>
/// What a joint reduces itself to for torque: metres of torque per newton of preload. One sequence of equations, with or without the
/// work written down.
/// </summary>
internal readonly record struct TorqueArms(double Pitch, double Thread, double Bearing, double Total)
{
    public static TorqueArms Tightening(
        Derivation? work, ScrewThread thread, BearingSurface bearing, FrictionCoefficients friction, TorqueConvention convention)
    {
        InclinedPlane plane = InclinedPlane.Of(work, thread, convention);
        double threadArm = ThreadArm(work, plane, thread, friction, convention);
        double bearingArm = bearing.Arm(work, friction.Bearing);
        return new TorqueArms(plane.PitchArm, threadArm, bearingArm, TorqueEquations.TorqueArmEquation.Step(work, threadArm, bearingArm));
    }

    /// <summary>Torque per unit preload that twists the shank: the thread's, in the form that the convention has for the stress.</summary>
    public static double InShank(Derivation? work, ScrewThread thread, FrictionCoefficients friction, TorqueConvention convention) =>
        ThreadArm(work, InclinedPlane.Of(work, thread, convention.InShank), thread, friction, convention.InShank);

    /// <summary>Loosening torque per unit preload, signed.</summary>
    public static double Loosening(
        Derivation? work, ScrewThread thread, BearingSurface bearing, FrictionCoefficients friction, TorqueConvention convention)
    {
        InclinedPlane plane = InclinedPlane.Of(work, thread, convention);
        double threadArm = convention.Form switch
        {
            TorqueForm.Printed => TorqueEquations.PrintedLooseningThreadArmEquation.Step(work, thread.PitchSi, friction.Thread, plane.Diameter),
            TorqueForm.PrintedIso16047 => TorqueEquations.IsoPrintedLooseningThreadArmEquation.Step(
                work, plane.PitchArm, friction.Thread, plane.Diameter),
            TorqueForm.Linear => TorqueEquations.LinearLooseningThreadArmEquation.Step(
                work, plane.PitchArm, plane.FlankFactor, friction.Thread, plane.Diameter),
            _ => TorqueEquations.ExactLooseningThreadArmEquation.Step(work, plane.FlankFactor, friction.Thread, plane.Diameter, plane.Slope),
        };
        return TorqueEquations.LooseningArmEquation.Step(work, threadArm, bearing.Arm(work, friction.Bearing));
    }

    private static double ThreadArm(
        Derivation? work, in InclinedPlane plane, ScrewThread thread, FrictionCoefficients friction, TorqueConvention convention) => convention.Form switch
        {
            TorqueForm.Printed => TorqueEquations.PrintedThreadArmEquation.Step(work, thread.PitchSi, friction.Thread, plane.Diameter),
            TorqueForm.PrintedIso16047 => TorqueEquations.IsoPrintedThreadArmEquation.Step(work, plane.PitchArm, friction.Thread, plane.Diameter),
            TorqueForm.Linear => TorqueEquations.LinearThreadArmEquation.Step(work, plane.PitchArm, plane.FlankFactor, friction.Thread, plane.Diameter),
            _ => TorqueEquations.ExactThreadArmEquation.Step(work, plane.FlankFactor, friction.Thread, plane.Diameter, plane.Slope),
        };
}
