using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

public sealed partial class ScrewThread
{
    private const double LeastCore = 0.1;
    private const string ToLeaveACore = "to leave a core of a tenth of the diameter";

    private static readonly Domain<Length> DiameterDomain = new(1e-4, 2);
    private static readonly Domain<Length> PitchDomain = new(1e-5, 0.5);
    private static readonly Interval ThreadsPerInchDomain = new(0.1, 400);
    private static readonly Interval StartsDomain = new(1, 100);

    /// <summary>An ISO metric thread of any diameter and pitch, in the catalogue or not.</summary>
    /// <param name="diameter">Nominal diameter, 0.1 mm to 2 m.</param>
    /// <param name="pitch">Pitch; the root diameter d − 17/12 H must exceed a tenth of the nominal diameter.</param>
    /// <returns>The thread, named as in the catalogue if ISO 261 has it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its domain, or the pitch is too coarse for the diameter.</exception>
    /// <example><code>ScrewThread.IsoMetric(Length.FromMillimeters(19), Length.FromMillimeters(1.5))   // M19x1.5, not in ISO 261</code></example>
    public static ScrewThread IsoMetric(Length diameter, Length pitch)
    {
        double d = DiameterDomain.Check(diameter);
        double p = PitchDomain.Check(pitch);
        double coarsest = CoarsestPitch(d, ThreadEquations.IsoRootDiameter(0, ThreadEquations.TriangleHeight(1)));
        if (p >= coarsest) Guard.RefuseAgainst(nameof(pitch), pitch, $"less than {Millimeters(Si.Length(coarsest))} mm, {ToLeaveACore}");
        string designation = ThreadCatalogue.Default.NameOf(ThreadProfile.IsoMetric, Si.Millimeters(diameter), Si.Millimeters(pitch))
            ?? $"M{Millimeters(diameter)}x{Millimeters(pitch)}";
        return FromCatalogue(ThreadProfile.IsoMetric, designation, d, p);
    }

    /// <summary>A unified thread of any diameter and threads per inch, in a series or not.</summary>
    /// <param name="diameter">Nominal diameter, 0.1 mm to 2 m.</param>
    /// <param name="threadsPerInch">Threads per inch, 0.1 to 400; the root diameter d − 11/8 H must exceed a tenth of the nominal diameter.</param>
    /// <returns>The thread, named as in the catalogue if ASME B1.1 has it there, otherwise as a special thread, UNS.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its domain, or the pitch is too coarse for the diameter.</exception>
    /// <example><code>ScrewThread.Unified(Length.FromInches(0.5), 14)   // 0.5-14 UNS</code></example>
    public static ScrewThread Unified(Length diameter, double threadsPerInch)
    {
        double d = DiameterDomain.Check(diameter);
        ThreadsPerInchDomain.Check(threadsPerInch);
        double least = PitchOf(CoarsestPitch(d, ThreadEquations.UnifiedRootDiameter(0, ThreadEquations.TriangleHeight(1))));
        if (threadsPerInch <= least) Guard.RefuseAgainst(nameof(threadsPerInch), threadsPerInch, $"more than {Print.Number(least)}, {ToLeaveACore}");
        string designation = ThreadCatalogue.Default.NameOf(ThreadProfile.Unified, diameter.Inches, threadsPerInch)
            ?? $"{Print.Number(diameter.Inches)}-{Print.Number(threadsPerInch)} UNS";
        return FromCatalogue(ThreadProfile.Unified, designation, d, PitchOf(threadsPerInch));
    }

    /// <summary>A thread of any profile, from its diameters and the angle of its load flank. Its stress diameter is (d₂ + d₃)/2.</summary>
    /// <param name="diameter">Nominal (major) diameter d.</param>
    /// <param name="pitch">Pitch, less than the nominal diameter; the lead is pitch times starts.</param>
    /// <param name="loadFlankAngle">Angle of the load flank in the axial plane, 0° (square) to below 90°.</param>
    /// <param name="starts">Number of starts, 1 to 100.</param>
    /// <param name="pitchDiameter">Pitch diameter, between root and nominal diameter.</param>
    /// <param name="rootDiameter">Root diameter of the external thread.</param>
    /// <returns>The thread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or not root &lt; pitch &lt; nominal diameter.</exception>
    /// <example><code>// A square thread, 32 mm by 4 mm, two starts
    /// ScrewThread.FromProfile(Length.FromMillimeters(32), Length.FromMillimeters(4), Angle.Zero, 2,
    ///     pitchDiameter: Length.FromMillimeters(30), rootDiameter: Length.FromMillimeters(28))</code></example>
    public static ScrewThread FromProfile(Length diameter, Length pitch, Angle loadFlankAngle, int starts, Length pitchDiameter, Length rootDiameter)
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
        string designation = $"custom {Millimeters(diameter)}x{Millimeters(pitch)} mm, {Count(starts)}";
        return new ScrewThread(ThreadProfile.Custom, designation, d, p, alpha, starts, ThreadGeometry.OfProfile(null, d, p, starts, d2, d3));
    }

    /// <summary>The pitch that leaves a core of a tenth of the diameter; <paramref name="rootOfUnitPitch"/> is d₃ − d at a pitch of 1.</summary>
    private static double CoarsestPitch(double diameter, double rootOfUnitPitch) => (1 - LeastCore) * diameter / -rootOfUnitPitch;

    private static string Count(int starts) => $"{starts} start{(starts == 1 ? "" : "s")}";

    private static string Millimeters(Length length) => Print.Number(Si.Millimeters(length));
}
