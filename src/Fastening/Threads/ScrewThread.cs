using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A screw thread: its diameters, pitch, lead and stress area.</summary>
/// <remarks>
/// Basic dimensions without tolerances. ISO metric after ISO 68-1, ISO 724 and ISO 898-1:2013 §9.1.6.1; unified after ASME B1.1-2019; power
/// screws (trapezoidal, Acme, square) as their factories say.
/// A left-hand thread turns the sense of rotation and changes nothing else here.
/// </remarks>
/// <example><code>ScrewThread thread = ScrewThread.Parse("M16");
/// Area stressed = thread.StressArea;          // 156.7 mm²</code></example>
public sealed partial class ScrewThread : IDerives<ThreadGeometry>
{
    private readonly Stated<Length> _diameter, _pitch;
    private ThreadGeometry? _geometry;

    internal ScrewThread(ThreadStandard standard, string designation, Stated<Length> diameter, Stated<Length> pitch, int starts = 1)
    {
        Standard = standard;
        Designation = designation;
        _diameter = diameter;
        _pitch = pitch;
        Starts = starts;
    }

    /// <summary>How the thread is called: <c>M16</c>, <c>M16x1.5</c>, <c>1/2-13 UNC</c>, <c>Tr40x14 (P7)</c>, or a description of a custom profile.</summary>
    public string Designation { get; }

    /// <summary>The standard profile.</summary>
    public ThreadProfile Profile => Standard.Profile;

    /// <summary>Number of starts, 1 or more.</summary>
    public int Starts { get; }

    /// <summary>Nominal (major) diameter d.</summary>
    public Length NominalDiameter => Si.Length(DiameterTerm);

    /// <summary>Pitch P.</summary>
    public Length Pitch => Si.Length(PitchTerm);

    /// <summary>Lead P_h = starts × pitch.</summary>
    public Length Lead => Si.Length(Geometry.Lead);

    /// <summary>Angle of the load flank in the axial plane, from the normal to the axis: 30° for 60° threads.</summary>
    public Angle LoadFlankAngle => Si.Angle(Standard.LoadFlankDegrees);

    /// <summary>Pitch diameter d₂.</summary>
    public Length PitchDiameter => Si.Length(Geometry.PitchDiameter);

    /// <summary>Root diameter d₃ of the external thread; of a unified thread, the minor diameter of the rounded root (UNR) at d − 11/8 H.</summary>
    public Length RootDiameter => Si.Length(Geometry.RootDiameter);

    /// <summary>Minor diameter D₁ of the mating internal thread; null for a custom profile, which does not determine it.</summary>
    public Length? InternalMinorDiameter => Geometry.InternalMinorDiameter is Term minor ? Si.Length(minor) : null;

    /// <summary>Diameter of the stress cross-section.</summary>
    public Length StressDiameter => Si.Length(Geometry.StressDiameter);

    /// <summary>Stress area A_s, exact (not the three-digit table value).</summary>
    public Area StressArea => Si.Area(Geometry.StressArea);

    /// <summary>Stress area of an ISO metric thread in three significant digits of a square millimetre, as ISO 898-1 prints it; null for other profiles.</summary>
    /// <remarks>
    /// For published loads, which are stress times this area: ISO 898-1:2013, M3 to M39 and M8x1 to M39x3. For any other metric thread it is the
    /// same rounding of the exact area, which ISO 898-1 does not print.
    /// </remarks>
    public Area? TabulatedStressArea => Standard.PrintedStressArea(Geometry.StressArea.Value);

    /// <summary>Minor area: the cross-section at the root diameter d₃; of a unified thread at d − 3/2 H = d − 1.299038 P, where it is tabulated.</summary>
    /// <remarks>Unified: ASME B1.1-2019 and Machinery's Handbook 31st ed. (2020), section at minor diameter. Others: (π/4) d₃², A_d3 of VDI 2230.</remarks>
    public Area MinorArea => Si.Area(Geometry.MinorArea);

    /// <summary>Lead angle φ at the pitch diameter.</summary>
    public Angle LeadAngle => Si.AngleFromRadians(Geometry.LeadAngle);

    internal ThreadGeometry Geometry => Derived.Of(ref _geometry, this);

    internal ThreadStandard Standard { get; }

    internal Term FlankAngle => Stated<Angle>.Of(Standard.LoadFlankDegrees, "angle of the load flank").TermOf(Designation);

    internal Term DiameterTerm => _diameter.TermOf(Designation);

    internal Term PitchTerm => _pitch.TermOf(Designation);

    internal double Diameter => _diameter.Value;

    internal double PitchSi => _pitch.Value;

    /// <summary>
    /// Reads a designation of ISO 261:1998 (M1 to M64) or ASME B1.1-2019 (to 4 in), of an ISO trapezoidal thread (ISO 2903:1993) or of an Acme thread
    /// (ASME B1.5): <c>M16</c>, <c>M16x1.5</c>, <c>1/2-13 UNC</c>, <c>Tr40x14 (P7)</c>, <c>1 1/2-4 ACME</c>.
    /// </summary>
    /// <remarks>
    /// Without a pitch a metric thread is coarse; the coarse pitch may be written (<c>M16x2</c> is <c>M16</c>). The pitch follows an x, never a hyphen.
    /// A unified size is a fraction (<c>1 1/8-7</c>), a decimal (<c>0.500-13</c>) or a number (<c>#10-32</c>, <c>No.10-32</c>), with threads per inch,
    /// series, or both: UNC, UNF, UNEF or UN (8-UN, 12-UN, 16-UN). A tolerance class (<c>M16-6g</c>, <c>1/2-13 UNC-2A</c>) and <c>LH</c> are
    /// accepted and left out: the dimensions are basic whatever the class, and a left hand turns only the sense of rotation.
    /// A trapezoidal or Acme size is computed from the numbers written, whether the standard lists the diameter or not; of several starts the lead
    /// stands first, then the pitch: <c>Tr40x14 (P7)</c> or <c>Tr40x14P7</c>.
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
    /// <returns>Whether the text is a designation that <see cref="Parse"/> reads.</returns>
    /// <example><code>bool known = ScrewThread.TryParse("M16x1.5", out ScrewThread? thread);   // true</code></example>
    public static bool TryParse(string? designation, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out ScrewThread? thread)
    {
        thread = designation is null ? null : Find(designation);
        return thread is not null;
    }

    /// <inheritdoc />
    public override string ToString() => Designation;

    /// <summary>Same diameter and pitch, whatever the profile says beyond them.</summary>
    internal bool HasSizeOf(ScrewThread other) => IsLike(Diameter, other.Diameter) && IsLike(PitchSi, other.PitchSi);

    /// <summary>Midway between major and root diameter, as the textbooks take it.</summary>
    internal Term TextbookMeanDiameter => Standard.TextbookMeanDiameter(DiameterTerm, PitchTerm, Geometry);

    ThreadGeometry IDerives<ThreadGeometry>.Derive() => Standard.Geometry(DiameterTerm, PitchTerm, Term.Given(Starts, "number of starts", Designation));

    private static bool IsLike(double one, double other) => Math.Abs(one - other) <= 1e-9 * other;

    private static ScrewThread? Find(string designation) =>
        ThreadDesignation.TryRead(designation.AsSpan(), out ThreadDesignation wanted) ? wanted.Standard.Find(wanted) : null;
}
