using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The profile of one thread that is given by its diameters and its load flank.</summary>
internal sealed class CustomThreads : ThreadStandard
{
    private readonly double _pitchDiameter, _rootDiameter;

    private CustomThreads(double loadFlankDegrees, double pitchDiameter, double rootDiameter)
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
        double d2 = DiameterDomain.Check(pitchDiameter);
        double d3 = DiameterDomain.Check(rootDiameter);
        if (p >= d) Guard.RefuseAgainst(nameof(pitch), pitch, $"less than the nominal diameter, {Guard.ShowToCompare(diameter)}");
        if (d2 >= d) Guard.RefuseAgainst(nameof(pitchDiameter), pitchDiameter, $"less than the nominal diameter, {Guard.ShowToCompare(diameter)}");
        if (d3 >= d2) Guard.RefuseAgainst(nameof(rootDiameter), rootDiameter, $"less than the pitch diameter, {Guard.ShowToCompare(pitchDiameter)}");
        string size = $"{ThreadNumber.ShowMillimeters(diameter)}x{ThreadNumber.ShowMillimeters(pitch)}";
        return new ScrewThread(new CustomThreads(alpha, d2, d3), $"custom {size} mm, {ThreadNumber.ShowStarts(starts)}", d, p, starts);
    }

    /// <summary>The internal thread is not determined by the profile of the external one.</summary>
    public override ThreadGeometry Geometry(Derivation? work, double diameter, double pitch, int starts)
    {
        double stressDiameter = ThreadEquations.MeanStressDiameterEquation.Step(work, _pitchDiameter, _rootDiameter);
        double minorArea = MinorArea(null, diameter, pitch, _rootDiameter);
        return ThreadGeometry.Complete(work, pitch, starts, _pitchDiameter, _rootDiameter, internalMinor: null, stressDiameter, minorArea);
    }
}
