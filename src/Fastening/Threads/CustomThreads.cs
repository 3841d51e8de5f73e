using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The profile of one thread that is given by its diameters and its load flank.</summary>
internal sealed class CustomThreads : ThreadStandard
{
    private readonly Stated<Length> _pitchDiameter, _rootDiameter;

    private CustomThreads(double loadFlankDegrees, Stated<Length> pitchDiameter, Stated<Length> rootDiameter)
    {
        LoadFlankDegrees = loadFlankDegrees;
        _pitchDiameter = pitchDiameter;
        _rootDiameter = rootDiameter;
    }

    public override ThreadProfile Profile => ThreadProfile.Custom;

    public override string Name => "custom";

    public override double LoadFlankDegrees { get; }

    public static ScrewThread Thread(Length diameter, Length pitch, Angle loadFlankAngle, int starts, Length pitchDiameter, Length rootDiameter)
    {
        double d = DiameterDomain.Check(diameter);
        double p = PitchDomain.Check(pitch);
        double alpha = Domains.FlankAngle.Check(loadFlankAngle);
        StartsDomain.Check((double)starts, name: nameof(starts));
        Stated<Length> d2 = DiameterDomain.Stated(pitchDiameter);
        Stated<Length> d3 = DiameterDomain.Stated(rootDiameter);
        if (p >= d) Guard.RefuseAgainst(nameof(pitch), pitch, $"less than the nominal diameter, {Guard.ShowToCompare(diameter)}");
        if (d2.Value >= d) Guard.RefuseAgainst(nameof(pitchDiameter), pitchDiameter, $"less than the nominal diameter, {Guard.ShowToCompare(diameter)}");
        if (d3.Value >= d2.Value) Guard.RefuseAgainst(nameof(rootDiameter), rootDiameter, $"less than the pitch diameter, {Guard.ShowToCompare(pitchDiameter)}");
        string size = $"{ThreadNumber.ShowMillimeters(diameter)}x{ThreadNumber.ShowMillimeters(pitch)}";
        return new ScrewThread(new CustomThreads(alpha, d2, d3), $"custom {size} mm, {ThreadNumber.ShowStarts(starts)}", Nominal(diameter), PitchOf(pitch), starts);
    }

    /// <summary>The internal thread is not determined by the profile of the external one.</summary>
    public override ThreadGeometry Geometry(Term diameter, Term pitch, Term starts)
    {
        Term pitchDiameter = _pitchDiameter.Term, rootDiameter = _rootDiameter.Term;
        Term stressDiameter = ThreadEquations.MeanStressDiameterEquation.Of(pitchDiameter, rootDiameter);
        return ThreadGeometry.Complete(
            pitch, starts, pitchDiameter, rootDiameter, internalMinor: null, stressDiameter, MinorArea(diameter, pitch, rootDiameter));
    }
}
