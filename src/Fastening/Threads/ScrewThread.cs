using System.Globalization;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A screw thread: its diameters, pitch, lead and stress area.</summary>
/// <remarks>
/// Basic dimensions without tolerances. ISO metric after ISO 68-1, ISO 724 and ISO 898-1:2013 §9.1.6.1; unified after ASME B1.1-2019.
/// A left-hand thread turns the sense of rotation and changes nothing else here.
/// </remarks>
/// <example><code>ScrewThread thread = ScrewThread.Parse("M16");
/// Area stressed = thread.StressArea;          // 156.7 mm²</code></example>
public sealed class ScrewThread
{
    private const double LeastCore = 0.1;
    private const string ToLeaveACore = "to leave a core of a tenth of the diameter";

    private static readonly Interval DiameterDomain = new(1e-4, 2);
    private static readonly Interval PitchDomain = new(1e-5, 0.5);
    private static readonly Interval ThreadsPerInchDomain = new(0.1, 400);
    private static readonly Interval StartsDomain = new(1, 100);

    private readonly double _diameter;
    private readonly double _pitch;

    private ScrewThread(ThreadProfile profile, string designation, double diameter, double pitch, double flankAngleDegrees, int starts, in ThreadGeometry geometry)
    {
        Profile = profile;
        Designation = designation;
        _diameter = diameter;
        _pitch = pitch;
        FlankAngle = Si.ToRadians(flankAngleDegrees);
        LoadFlankAngle = Si.Angle(flankAngleDegrees);
        Starts = starts;
        Geometry = geometry;
    }

    /// <summary>How the thread is called: <c>M16</c>, <c>M16x1.5</c>, <c>1/2-13 UNC</c>, or a description of a custom profile.</summary>
    public string Designation { get; }

    /// <summary>The family of profiles.</summary>
    public ThreadProfile Profile { get; }

    /// <summary>Number of starts, 1 or more.</summary>
    public int Starts { get; }

    /// <summary>Nominal (major) diameter d.</summary>
    public Length NominalDiameter => Si.Length(_diameter);

    /// <summary>Pitch P.</summary>
    public Length Pitch => Si.Length(_pitch);

    /// <summary>Lead P_h = starts × pitch.</summary>
    public Length Lead => Si.Length(Geometry.Lead);

    /// <summary>Angle of the load flank in the axial plane, from the normal to the axis: 30° for 60° threads.</summary>
    public Angle LoadFlankAngle { get; }

    /// <summary>Pitch diameter d₂.</summary>
    public Length PitchDiameter => Si.Length(Geometry.PitchDiameter);

    /// <summary>Root diameter d₃ of the external thread.</summary>
    public Length RootDiameter => Si.Length(Geometry.RootDiameter);

    /// <summary>Minor diameter D₁ of the mating internal thread; null for a custom profile, which does not determine it.</summary>
    public Length? InternalMinorDiameter => Geometry.InternalMinorDiameter is double minor ? Si.Length(minor) : null;

    /// <summary>Diameter of the stress cross-section.</summary>
    public Length StressDiameter => Si.Length(Geometry.StressDiameter);

    /// <summary>Stress area A_s, exact (not the three-digit table value).</summary>
    public Area StressArea => Si.Area(Geometry.StressArea);

    /// <summary>Lead angle φ at the pitch diameter.</summary>
    public Angle LeadAngle => Si.AngleFromRadians(Geometry.LeadAngle);

    internal ThreadGeometry Geometry { get; }

    internal double FlankAngle { get; }

    internal double Diameter => _diameter;

    internal double PitchSi => _pitch;

    /// <summary>Reads a designation of ISO 261:1998 (M1 to M64) or ASME B1.1-2019 (to 4 in): <c>M16</c>, <c>M16x1.5</c>, <c>1/2-13 UNC</c>.</summary>
    /// <remarks>
    /// Without a pitch a metric thread is coarse; the coarse pitch may be written (<c>M16x2</c> is <c>M16</c>). The pitch follows an x, never a hyphen.
    /// A unified size is a fraction (<c>1 1/8-7</c>), a decimal (<c>0.500-13</c>) or a number (<c>#10-32</c>, <c>No.10-32</c>), with threads per inch,
    /// series, or both: UNC, UNF, UNEF or UN (8-UN, 12-UN, 16-UN). A tolerance class (<c>M16-6g</c>, <c>1/2-13 UNC-2A</c>) and <c>LH</c> are
    /// accepted and left out: the dimensions are basic whatever the class, and a left hand turns only the sense of rotation.
    /// </remarks>
    /// <param name="designation">The designation, with a decimal point and without a unit; case and spaces do not matter.</param>
    /// <returns>The thread.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="FormatException">The text is no designation, or names a size that the standard does not have; the message says what to write.</exception>
    /// <example><code>ScrewThread.Parse("M16x1.5").Pitch.Millimeters   // 1.5</code></example>
    public static ScrewThread Parse(string designation) =>
        Find(Guard.NotNull(designation)) ?? throw new FormatException(ThreadRefusal.Explain(designation));

    /// <summary>Reads a designation as <see cref="Parse"/> does, without an exception.</summary>
    /// <param name="designation">The text; null is not a designation.</param>
    /// <param name="thread">The thread, or null.</param>
    /// <returns>Whether the text is a designation of the catalogue.</returns>
    public static bool TryParse(string? designation, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out ScrewThread? thread)
    {
        thread = designation is null ? null : Find(designation);
        return thread is not null;
    }

    /// <summary>An ISO metric thread of any diameter and pitch, in the catalogue or not.</summary>
    /// <param name="diameter">Nominal diameter, 0.1 mm to 2 m.</param>
    /// <param name="pitch">Pitch; the root diameter d − 17/12 H must exceed a tenth of the nominal diameter.</param>
    /// <returns>The thread, named as in the catalogue if ISO 261 has it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its domain, or the pitch is too coarse for the diameter.</exception>
    /// <example><code>ScrewThread.IsoMetric(Length.FromMillimeters(19), Length.FromMillimeters(1.5))   // M19x1.5, not in ISO 261</code></example>
    public static ScrewThread IsoMetric(Length diameter, Length pitch)
    {
        double d = Guard.Check(diameter, DiameterDomain);
        double p = Guard.Check(pitch, PitchDomain);
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
        double d = Guard.Check(diameter, DiameterDomain);
        Guard.Check(threadsPerInch, ThreadsPerInchDomain);
        double least = PitchOf(CoarsestPitch(d, ThreadEquations.UnifiedRootDiameter(0, ThreadEquations.TriangleHeight(1))));
        if (threadsPerInch <= least) Guard.RefuseAgainst(nameof(threadsPerInch), threadsPerInch, $"more than {Number(least)}, {ToLeaveACore}");
        string designation = ThreadCatalogue.Default.NameOf(ThreadProfile.Unified, diameter.Inches, threadsPerInch)
            ?? $"{Number(diameter.Inches)}-{Number(threadsPerInch)} UNS";
        return FromCatalogue(ThreadProfile.Unified, designation, d, PitchOf(threadsPerInch));
    }

    /// <summary>A thread of any profile, from its diameters and the angle of its load flank.</summary>
    /// <param name="diameter">Nominal (major) diameter d.</param>
    /// <param name="pitch">Pitch.</param>
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
        double d = Guard.Check(diameter, DiameterDomain);
        double p = Guard.Check(pitch, PitchDomain);
        double alpha = Guard.Check(loadFlankAngle, Domains.FlankAngle);
        Guard.Check((double)starts, StartsDomain, name: nameof(starts));
        double d2 = Guard.Check(pitchDiameter, DiameterDomain);
        double d3 = Guard.Check(rootDiameter, DiameterDomain);
        if (d2 >= d) Guard.RefuseAgainst(nameof(pitchDiameter), pitchDiameter, $"less than the nominal diameter, {Guard.Show(diameter)}");
        if (d3 >= d2) Guard.RefuseAgainst(nameof(rootDiameter), rootDiameter, $"less than the pitch diameter, {Guard.Show(pitchDiameter)}");
        string designation = $"custom {Millimeters(diameter)}x{Millimeters(pitch)} mm, {starts} start{(starts == 1 ? "" : "s")}";
        return new ScrewThread(ThreadProfile.Custom, designation, d, p, alpha, starts, ThreadGeometry.OfProfile(null, p, starts, d2, d3));
    }

    /// <summary>The work behind the stress area: pitch diameter, root diameter, stress diameter, area.</summary>
    /// <returns>The steps; the last is the stress area.</returns>
    public Derivation DeriveStressArea()
    {
        var work = new Derivation($"Stress area of {Designation}");
        Derive(work);
        return work.KeepWhatCounts();
    }

    /// <inheritdoc />
    public override string ToString() => Designation;

    internal static ScrewThread FromCatalogue(ThreadProfile profile, string designation, double diameter, double pitch) =>
        new(profile, designation, diameter, pitch, 30, 1, ThreadGeometry.Of60Degrees(null, profile, diameter, pitch));

    /// <summary>The geometry again, by the same steps, with the work written down.</summary>
    internal ThreadGeometry Derive(Derivation? work) => work is null
        ? Geometry
        : Profile == ThreadProfile.Custom
            ? ThreadGeometry.OfProfile(work, _pitch, Starts, Geometry.PitchDiameter, Geometry.RootDiameter)
            : ThreadGeometry.Of60Degrees(work, Profile, _diameter, _pitch);

    /// <summary>Metres of pitch from threads per inch, and the reverse.</summary>
    internal static double PitchOf(double threadsPerInch) => 0.0254 / threadsPerInch;

    private static ScrewThread? Find(string designation) =>
        ThreadDesignation.TryRead(designation, out ThreadDesignation wanted) ? ThreadCatalogue.Default.Find(wanted) : null;

    /// <summary>The pitch that leaves a core of a tenth of the diameter; <paramref name="rootOfUnitPitch"/> is d₃ − d at a pitch of 1.</summary>
    private static double CoarsestPitch(double diameter, double rootOfUnitPitch) => (1 - LeastCore) * diameter / -rootOfUnitPitch;

    private static string Millimeters(Length length) => Number(Si.Millimeters(length));

    private static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
