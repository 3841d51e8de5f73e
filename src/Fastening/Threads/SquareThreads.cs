using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The square thread of the textbooks, without clearance; no standard has it, and no designation names it.</summary>
internal sealed class SquareThreads : PowerScrewThreads
{
    public override ThreadProfile Profile => ThreadProfile.Square;

    public override string Name => "square";

    public override double LoadFlankDegrees => 0;

    public ScrewThread Thread(Length diameter, Length pitch, int starts)
    {
        DiameterDomain.Check(diameter);
        PitchDomain.Check(pitch);
        StartsDomain.Check((double)starts, name: nameof(starts));
        string size = $"{ThreadNumber.ShowMillimeters(diameter)}x{ThreadNumber.ShowMillimeters(pitch)}";
        ScrewThread? thread = WithCore($"square {size} mm, {ThreadNumber.ShowStarts(starts)}", Nominal(diameter), PitchOf(pitch), starts);
        if (thread is null) Guard.RefuseAgainst(nameof(pitch), pitch, FineEnough);
        return thread;
    }

    protected override double CrestClearance(double pitch) => 0;

    protected override Term RootDiameter(Term diameter, Term pitch) =>
        ThreadEquations.SquareRootDiameterEquation.Of(diameter, pitch);
}
