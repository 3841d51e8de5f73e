using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>ISO metric threads: sizes of ISO 261, profile of ISO 68-1, tolerances of ISO 965-1.</summary>
internal sealed class IsoMetricThreads : CataloguedThreads
{
    public const string Coarse = "coarse";

    private const string Fine = "fine";
    private static readonly string[] TolerancePositions = ["e", "f", "g", "h", "az", "ax"];

    public override ThreadProfile Profile => ThreadProfile.IsoMetric;

    public override string Name => "ISO metric";

    public override double LoadFlankDegrees => 30;

    public override bool IsSixtyDegrees => true;

    public override MediumFit Fit { get; } = new("iso-965-limits-6g-6h.csv", "6g", "6H", "mm", "M1.6 to M64 and fine threads of ISO 262");

    public override IReadOnlyList<DesignationSlip> Slips { get; } =
    [
        new("a metric designation starts with M", text => text[0] is >= '0' and <= '9' ? "m" + text : text),
        new("the pitch follows an x", text => text[0] == 'm' ? text.Replace('-', 'x') : text),
    ];

    public override IReadOnlyList<NotationHint> Hints { get; } = [new("MJ", Anywhere: true, "a thread with enlarged root " + FromProfile)];

    /// <summary>In "M1 6g" the space may be all that is left of a digit. ISO 965-1: M16-1.5 is therefore not read as a pitch.</summary>
    public override bool ClassFollowsHyphen => true;

    protected override double? AreaUnit => 1e-6;

    protected override string Document => "ISO 261";

    protected override string ForOthers => "for a thread outside the standard use ScrewThread.IsoMetric(diameter, pitch)";

    /// <summary>A thread of any diameter and pitch, named as ISO 261 names it where it has it.</summary>
    public ScrewThread Thread(Length diameter, Length pitch)
    {
        double d = DiameterDomain.Check(diameter);
        double p = PitchDomain.Check(pitch);
        double coarsest = CoarsestPitch(d, ThreadEquations.IsoRootDiameter(0, ThreadEquations.TriangleHeight(1)));
        if (p >= coarsest)
        {
            Guard.RefuseAgainst(nameof(pitch), pitch, $"less than {ThreadNumber.ShowMillimeters(Si.Length(coarsest))} mm, to leave a core of a tenth of the diameter");
        }

        string designation = Catalogue.NameOf(Si.Millimeters(diameter), Si.Millimeters(pitch))
            ?? $"M{ThreadNumber.ShowMillimeters(diameter)}x{ThreadNumber.ShowMillimeters(pitch)}";
        return new ScrewThread(this, designation, Nominal(diameter), PitchOf(pitch));
    }

    public override ThreadGeometry Geometry(Term diameter, Term pitch, Term starts)
    {
        Term height = ThreadEquations.TriangleHeightEquation.Of(pitch);
        Term pitchDiameter = ThreadEquations.PitchDiameterEquation.Of(diameter, height);
        Term rootDiameter = ThreadEquations.IsoRootDiameterEquation.Of(diameter, height);
        Term stressDiameter = ThreadEquations.MeanStressDiameterEquation.Of(pitchDiameter, rootDiameter);
        Term internalMinor = ThreadEquations.InternalMinorDiameterEquation.Of(diameter, height);
        Term minorArea = MinorArea(diameter, pitch, rootDiameter);
        return ThreadGeometry.Complete(pitch, starts, pitchDiameter, rootDiameter, internalMinor, stressDiameter, minorArea);
    }

    /// <summary>ISO 898-1 prints three significant digits of a square millimetre.</summary>
    public override Area? PrintedStressArea(double stressArea) => Area.FromSquareMillimeters(PrintedNumber.ToSignificantDigits(stressArea * 1e6, 3));

    /// <summary>ISO 965-1: M16, M16x1.5, M16x1.5-6g; without a pitch the thread is coarse.</summary>
    public override bool TryRead(TextCursor cursor, out ThreadDesignation designation)
    {
        designation = default;
        if (!cursor.TryWord("M")) return false;

        cursor.TrySpaces();
        if (!cursor.TryDecimal(out long diameter)) return false;

        long pitch = 0;
        TextCursor afterDiameter = cursor;
        cursor.TrySpaces();
        if (cursor.TryTimes())
        {
            cursor.TrySpaces();
            if (!cursor.TryDecimal(out pitch) || pitch == 0) return false;
        }
        else
        {
            cursor = afterDiameter;
        }

        designation = new ThreadDesignation(this, diameter, pitch, series: pitch == 0 ? Coarse : null);
        return ToleranceClass.TryEnd(cursor, this);
    }

    /// <summary>ISO 965-1: 6g, 5g6g, 6H/6g, and 6az, 6AZ, 6AX of hot dip galvanized threads.</summary>
    public override bool TryToleranceClass(ref TextCursor cursor) => ToleranceClass.TryGradesAndPositions(ref cursor, TolerancePositions);

    protected override IEnumerable<ThreadSize> ReadSizes() => DataFile.Read("iso-261-metric.csv").Select(Size);

    protected override string ExplainPitch(string shown, ThreadDesignation wanted, List<ThreadSize> sizes)
    {
        string pitches = Enumerate(sizes[0].Threads.Select(ShowPitch), "and");
        string fault = wanted.Pitch == 0
            ? $"no coarse pitch, only {pitches} mm; write {Enumerate(Names(sizes), "or")}"
            : $"the pitches {pitches} mm, not {ThreadNumber.Show(wanted.Pitch)} mm; {ForOthers}";
        return $"{shown}: ISO 261 gives {sizes[0].Name} {fault}.";
    }

    protected override string Lacks(long diameter) => $"ISO 261 has no M{ThreadNumber.Show(diameter)}";

    private ThreadSize Size(DataRow row)
    {
        double diameter = row.Number("nominal_diameter_mm");
        string name = "M" + Print.Number(diameter);
        return new ThreadSize(
            name,
            ThreadNumber.Millionths(diameter),
            [
                .. row.Numbers("coarse_pitch_mm").Select(pitch => Listed(name, pitch, Coarse)),
                .. row.Numbers("fine_pitches_mm").Select(pitch => Listed($"{name}x{Print.Number(pitch)}", pitch, Fine)),
            ]);

        CatalogueThread Listed(string designation, double pitch, string series) => new(
            new ScrewThread(this, designation, Nominal(Length.FromMillimeters(diameter)), PitchOf(Length.FromMillimeters(pitch))),
            ThreadNumber.Millionths(pitch),
            series);
    }

    private static string ShowPitch(CatalogueThread thread) => ThreadNumber.Show(thread.Pitch) + (thread.Series == Coarse ? " (coarse)" : "");
}
