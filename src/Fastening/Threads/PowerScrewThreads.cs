using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Threads of power screws: any size is computed from its numbers, d₂ = d − P/2, d₃ = d − P − 2 a_c, nut D₁ = d − P.</summary>
internal abstract class PowerScrewThreads : ThreadStandard
{
    protected const string FineEnough = "fine enough that the root diameter exceeds a tenth of the nominal diameter";

    public sealed override ThreadGeometry Geometry(Term diameter, Term pitch, Term starts)
    {
        Term pitchDiameter = ThreadEquations.PowerPitchDiameterEquation.Of(diameter, pitch);
        Term rootDiameter = RootDiameter(diameter, pitch);
        Term internalMinor = ThreadEquations.PowerInternalMinorDiameterEquation.Of(diameter, pitch);
        Term stressDiameter = ThreadEquations.MeanStressDiameterEquation.Of(pitchDiameter, rootDiameter);
        Term minorArea = MinorArea(diameter, pitch, rootDiameter);
        return ThreadGeometry.Complete(pitch, starts, pitchDiameter, rootDiameter, internalMinor, stressDiameter, minorArea);
    }

    /// <summary>Clearance between the crest of one thread and the root of the other, on the radius.</summary>
    protected abstract double CrestClearance(double pitch);

    protected virtual Term RootDiameter(Term diameter, Term pitch) =>
        ThreadEquations.TrapezoidalRootDiameterEquation.Of(diameter, pitch, Term.Given(CrestClearance(pitch.Value), "crest clearance", Name + " threads"));

    /// <summary>The thread; null when the diameter is outside its domain, or the pitch leaves no core.</summary>
    protected ScrewThread? WithCore(string designation, Stated<Length> diameter, Stated<Length> pitch, int starts) =>
        DiameterDomain.Contains(diameter.Value) && RootDiameter(diameter.Term, pitch.Term).Value > LeastCore * diameter.Value
            ? new ScrewThread(this, designation, diameter, pitch, starts)
            : null;
}
