using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>ISO metric trapezoidal threads: profile of ISO 2901, pitches of ISO 2902, designation of ISO 2903; from memory.</summary>
internal sealed class TrapezoidalThreads : PowerScrewThreads
{
    private const double Millimeter = 1e-3, Rounding = 1e-9;
    private const string ListedPitches = "1.5, 2 to 10, 12 to 24 by twos, 28 to 44 by fours";

    private static readonly double[] PitchesInMillimeters = [1.5, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24, 28, 32, 36, 40, 44];
    private static readonly string[] TolerancePositions = ["c", "e", "h"];

    public override ThreadProfile Profile => ThreadProfile.IsoTrapezoidal;

    public override string Name => "ISO trapezoidal";

    public override double LoadFlankDegrees => 15;

    public override IReadOnlyList<DesignationSlip> Slips { get; } =
        [new("the pitch follows an x", text => text[0] == 't' ? text.Replace('-', 'x') : text)];

    public override IReadOnlyList<NotationHint> Hints { get; } =
    [
        new("TR", Anywhere: false, "write a trapezoidal thread with its pitch, as in Tr40x7, and with several starts lead before pitch, as in Tr40x14 (P7)"),
    ];

    /// <summary>ISO 2903 puts LH before the class; behind it LH is read as well.</summary>
    public override bool LeftHandPrecedesClass => true;

    /// <summary>A thread of any diameter and a pitch of ISO 2902.</summary>
    public ScrewThread Thread(Length diameter, Length pitch, int starts)
    {
        DiameterDomain.Check(diameter);
        double p = PitchDomain.Check(pitch);
        StartsDomain.Check((double)starts, name: nameof(starts));
        if (!IsListed(p)) Guard.RefuseAgainst(nameof(pitch), pitch, $"a pitch of ISO 2902, {ListedPitches} mm");
        ScrewThread? thread = Find(diameter, pitch, starts);
        if (thread is null) Guard.RefuseAgainst(nameof(pitch), pitch, FineEnough);
        return thread;
    }

    /// <summary>d − P/2, without the clearance at the root (from memory).</summary>
    public override Term TextbookMeanDiameter(Term diameter, Term pitch, ThreadGeometry geometry) => geometry.PitchDiameter;

    /// <summary>ISO 2903: Tr 40 x 7, and with several starts Tr 40 x 14 (P7), the lead before the pitch; brackets may be left out.</summary>
    public override bool TryRead(TextCursor cursor, out ThreadDesignation designation)
    {
        designation = default;
        if (!cursor.TryWord("Tr")) return false;

        cursor.TrySpaces();
        if (!cursor.TryDecimal(out long diameter)) return false;

        cursor.TrySpaces();
        if (!cursor.TryTimes()) return false;

        cursor.TrySpaces();
        if (!cursor.TryDecimal(out long lead) || lead == 0) return false;

        long pitch = lead;
        TextCursor afterLead = cursor;
        cursor.TrySpaces();
        bool bracket = cursor.Try('(');
        if (cursor.TryWord("P"))
        {
            cursor.TrySpaces();
            if (!cursor.TryDecimal(out pitch) || pitch == 0 || (bracket && !cursor.Try(')'))) return false;
        }
        else
        {
            cursor = afterLead;
        }

        designation = new ThreadDesignation(this, diameter, pitch, lead: lead);
        return ToleranceClass.TryEnd(cursor, this);
    }

    /// <summary>ISO 2903: 7e, 7H/7e.</summary>
    public override bool TryToleranceClass(ref TextCursor cursor) => ToleranceClass.TryGradesAndPositions(ref cursor, TolerancePositions);

    public override ScrewThread? Find(in ThreadDesignation wanted) => Find(
        Length.FromMillimeters(ThreadNumber.FromMillionths(wanted.Diameter)),
        Length.FromMillimeters(ThreadNumber.FromMillionths(wanted.Pitch)),
        wanted.Starts);

    public override string Explain(string shown, in ThreadDesignation wanted)
    {
        string pitch = ThreadNumber.Show(wanted.Pitch);
        if (wanted.Starts == 0)
        {
            return $"{shown}: the lead, {ThreadNumber.Show(wanted.Lead)} mm, is no multiple of the pitch, {pitch} mm; "
                + "the lead stands before the pitch, as in Tr40x14 (P7).";
        }

        return IsListed(ThreadNumber.FromMillionths(wanted.Pitch) / 1000)
            ? $"{shown}: a trapezoidal thread of {ThreadNumber.Show(wanted.Diameter)} mm with {wanted.Starts} starts of pitch "
                + $"{pitch} mm is outside what is computed: the diameter goes to 2 m, the starts to 100, and the root must leave a tenth of the diameter."
            : $"{shown}: ISO 2902 has no pitch of {pitch} mm, only {ListedPitches} mm; any other profile {FromProfile}.";
    }

    protected override double CrestClearance(double pitch) => Millimeter * (pitch / Millimeter) switch
    {
        <= 1.5 + Rounding => 0.15,
        <= 5 + Rounding => 0.25,
        <= 12 + Rounding => 0.5,
        _ => 1,
    };

    private static bool IsListed(double pitch) => Array.Exists(PitchesInMillimeters, listed => Math.Abs(pitch / Millimeter - listed) <= Rounding);

    private ScrewThread? Find(Length diameter, Length pitch, int starts)
    {
        double p = Si.Of(pitch);
        if (!IsListed(p) || !StartsDomain.Contains(starts)) return null;
        string d = ThreadNumber.ShowMillimeters(diameter), of = ThreadNumber.ShowMillimeters(pitch);
        string designation = starts == 1 ? $"Tr{d}x{of}" : $"Tr{d}x{ThreadNumber.ShowMillimeters(starts * pitch)} (P{of})";
        return WithCore(designation, Nominal(diameter), PitchOf(pitch), starts);
    }
}
