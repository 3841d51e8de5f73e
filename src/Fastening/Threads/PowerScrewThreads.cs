using Fastening.Equations;

namespace Fastening;

/// <summary>Threads of power screws: any size is computed from its numbers, d₂ = d − P/2, d₃ = d − P − 2 a_c, nut D₁ = d − P.</summary>
internal abstract class PowerScrewThreads : ThreadStandard
{
    protected const string FineEnough = "fine enough that the root diameter exceeds a tenth of the nominal diameter";

    public sealed override ThreadGeometry Geometry(Derivation? work, double diameter, double pitch, int starts)
    {
        double pitchDiameter = ThreadEquations.PowerPitchDiameterEquation.Step(work, diameter, pitch);
        double rootDiameter = RootDiameter(work, diameter, pitch);
        double internalMinor = ThreadEquations.PowerInternalMinorDiameter(diameter, pitch);
        double stressDiameter = ThreadEquations.MeanStressDiameterEquation.Step(work, pitchDiameter, rootDiameter);
        double minorArea = MinorArea(null, diameter, pitch, rootDiameter);
        return ThreadGeometry.Complete(work, pitch, starts, pitchDiameter, rootDiameter, internalMinor, stressDiameter, minorArea);
    }

    /// <summary>Clearance between the crest of one thread and the root of the other, on the radius.</summary>
    protected abstract double CrestClearance(double pitch);

    protected virtual double RootDiameter(Derivation? work, double diameter, double pitch) =>
        ThreadEquations.TrapezoidalRootDiameterEquation.Step(work, diameter, pitch, CrestClearance(pitch));

    /// <summary>The thread; null when the diameter is outside its domain, or the pitch leaves no core.</summary>
    protected ScrewThread? WithCore(string designation, double diameter, double pitch, int starts) =>
        DiameterDomain.Contains(diameter) && RootDiameter(null, diameter, pitch) > LeastCore * diameter
            ? new ScrewThread(this, designation, diameter, pitch, starts)
            : null;
}
