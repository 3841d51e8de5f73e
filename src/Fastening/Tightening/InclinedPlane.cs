using Fastening.Equations;

namespace Fastening;

/// <summary>The thread unrolled, as a convention sees it: pitch torque per unit preload, flank factor, diameter of friction and slope there.</summary>
internal readonly record struct InclinedPlane(double PitchArm, double FlankFactor, double Diameter, double Slope)
{
    public static InclinedPlane Of(Derivation? work, ScrewThread thread, TorqueConvention convention)
    {
        ThreadGeometry geometry = thread.Derive(work);
        double pitchArm = TorqueEquations.PitchArmEquation.Step(work, geometry.Lead);
        if (convention.HasPrintedCoefficients)
        {
            return new InclinedPlane(pitchArm, TorqueEquations.AxialFlankFactor(thread.FlankAngle), geometry.PitchDiameter, geometry.LeadAngle);
        }

        double flankFactor = convention.FlankSection == FlankSection.Axial
            ? TorqueEquations.AxialFlankFactorEquation.Step(work, thread.FlankAngle)
            : TorqueEquations.NormalFlankFactorEquation.Step(work, thread.FlankAngle, geometry.LeadAngle);
        if (convention.MeanDiameter == MeanThreadDiameter.PitchDiameter)
        {
            return new InclinedPlane(pitchArm, flankFactor, geometry.PitchDiameter, geometry.LeadAngle);
        }

        double diameter = thread.TextbookMeanDiameter(work, geometry);
        double slope = ThreadEquations.LeadAngleAtMeanDiameterEquation.Step(work, geometry.Lead, diameter);
        return new InclinedPlane(pitchArm, flankFactor, diameter, slope);
    }

    /// <summary>
    /// Beyond c µ tan φ = 1 no torque turns the thread. From 0.99 on it is as good as jammed: the torque is a hundred times that of the flank's
    /// friction, and the last digit of a coefficient decides it.
    /// </summary>
    public bool Jams(double friction) => FlankFactor * friction * Math.Tan(Slope) >= 0.99;

    /// <summary>The friction from which the thread holds without a torque: tan φ/c, in the linear and in the exact form.</summary>
    public double HoldingFriction(Derivation? work) => PowerScrewEquations.HoldingFrictionEquation.Step(work, FlankFactor, Slope);
}
