using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Unified inch threads: sizes, profile and tolerances of ASME B1.1.</summary>
internal sealed class UnifiedThreads : CataloguedThreads
{
    /// <summary>Names the constant-pitch series, and the profile of every series.</summary>
    public const string AnySeries = "UN";

    private const double SquareInch = 0.0254 * 0.0254;
    private const string UseFactory = "for a special thread use ScrewThread.Unified(diameter, threadsPerInch)";
    private const string Unc = "UNC", Unf = "UNF", Unef = "UNEF";

    private static readonly (string Column, string Series)[] Columns = [("unc_tpi", Unc), ("unf_tpi", Unf), ("unef_tpi", Unef), ("un_tpi", AnySeries)];

    public override ThreadProfile Profile => ThreadProfile.Unified;

    public override string Name => "unified";

    public override double LoadFlankDegrees => 30;

    public override bool IsSixtyDegrees => true;

    /// <summary>The pound-force.</summary>
    public override double LoadUnit => 4.4482216152605;

    public override MediumFit Fit { get; } = new("asme-b1-1-limits-2a-2b.csv", "2A", "2B", "in", "UNC and UNF to 3 in");

    public override IReadOnlyList<DesignationSlip> Slips { get; } =
        [new("the threads per inch follow a hyphen", text => text[0] == '#' || text.IndexOf('/') > 0 ? text.Replace('x', '-').Replace('×', '-') : text)];

    public override IReadOnlyList<NotationHint> Hints { get; } =
        [new("UNJ", Anywhere: true, "a thread with enlarged root " + FromProfile), new("UNS", Anywhere: true, UseFactory)];

    protected override double? AreaUnit => SquareInch;

    protected override string Document => "ASME B1.1";

    protected override string ForOthers => UseFactory;

    /// <summary>A thread of any diameter and threads per inch, named as ASME B1.1 names it where it has it, otherwise as a special thread.</summary>
    public ScrewThread Thread(Length diameter, double threadsPerInch)
    {
        double d = DiameterDomain.Check(diameter);
        ThreadsPerInchDomain.Check(threadsPerInch);
        double least = InchSize.PitchOf(CoarsestPitch(d, ThreadEquations.UnifiedRootDiameter(0, ThreadEquations.TriangleHeight(1))));
        if (threadsPerInch <= least)
        {
            Guard.RefuseAgainst(nameof(threadsPerInch), threadsPerInch, $"more than {Print.Number(least)}, to leave a core of a tenth of the diameter");
        }

        string designation = Catalogue.NameOf(diameter.Inches, threadsPerInch)
            ?? $"{Print.Number(diameter.Inches)}-{Print.Number(threadsPerInch)} UNS";
        return new ScrewThread(this, designation, Nominal(diameter), PitchOf(threadsPerInch));
    }

    public override ThreadGeometry Geometry(Term diameter, Term pitch, Term starts)
    {
        Term height = ThreadEquations.TriangleHeightEquation.Of(pitch);
        Term pitchDiameter = ThreadEquations.PitchDiameterEquation.Of(diameter, height);
        Term rootDiameter = ThreadEquations.UnifiedRootDiameterEquation.Of(diameter, height);
        Term stressDiameter = ThreadEquations.UnifiedStressDiameterEquation.Of(diameter, pitch);
        Term internalMinor = ThreadEquations.InternalMinorDiameterEquation.Of(diameter, height);
        Term minorArea = MinorArea(diameter, pitch, rootDiameter);
        return ThreadGeometry.Complete(pitch, starts, pitchDiameter, rootDiameter, internalMinor, stressDiameter, minorArea);
    }

    /// <summary>Handbooks tabulate the minor area at d − 3/2 H, not at the rounded root of the profile.</summary>
    public override Term MinorArea(Term diameter, Term pitch, Term rootDiameter) =>
        ThreadEquations.UnifiedMinorAreaEquation.Of(MinorAreaDiameter(diameter, pitch));

    /// <summary>The root of the textbooks is that of the minor area (Shigley 9th ed., Example 8-3).</summary>
    public override Term TextbookMeanDiameter(Term diameter, Term pitch, ThreadGeometry geometry) =>
        ThreadEquations.UnifiedTextbookMeanDiameterEquation.Of(diameter, MinorAreaDiameter(diameter, pitch));

    /// <summary>AISC and RCSC print it to the thousandth of a square inch.</summary>
    public override double? StructuralArea(double stressArea) => PrintedNumber.Whole(stressArea / SquareInch * 1000) / 1000 * SquareInch;

    /// <summary>Above 100 ksi of tensile strength: ASME B1.1 and Machinery's Handbook, from memory.</summary>
    public override Term? HighStrengthStressArea(Term leastPitchDiameter, Term pitch) =>
        ThreadEquations.StressAreaEquation.Of(ThreadEquations.HighStrengthStressDiameterEquation.Of(leastPitchDiameter, pitch));

    /// <summary>1/2-13 UNC, 1/2-13, 1/2 UNC, each with or without a class.</summary>
    public override bool TryRead(TextCursor cursor, out ThreadDesignation designation)
    {
        designation = default;
        if (!InchSize.TryReadThread(ref cursor, out long diameter, out long numberedDiameter, out long threadsPerInch)) return false;

        TextCursor beforeSeries = cursor;
        cursor.TrySeparator();
        string? series = ReadSeries(ref cursor);
        if (series is null) cursor = beforeSeries;
        designation = new ThreadDesignation(this, diameter, threadsPerInch, numberedDiameter, series);
        return ToleranceClass.TryEnd(cursor, this);
    }

    /// <summary>ASME B1.1: 1A, 2A, 3A and 1B, 2B, 3B.</summary>
    public override bool TryToleranceClass(ref TextCursor cursor) =>
        cursor.TryWhole(out long grade) && grade is >= 1 and <= 3 && (cursor.TryWord("A") || cursor.TryWord("B"));

    protected override IEnumerable<ThreadSize> ReadSizes() => DataFile.Read("asme-b1-1-unified.csv").Select(Size);

    protected override string ExplainPitch(string shown, ThreadDesignation wanted, List<ThreadSize> sizes) =>
        sizes.Any(size => size.Threads.Any(thread => thread.Fits(wanted.Pitch, wanted.Series)))
            ? $"{shown} leaves the thread open; state the series and the threads per inch: {Enumerate(Names(sizes).Concat(MetricReadings(wanted)), "or")}."
            : $"{shown} is not in the catalogue of ASME B1.1 threads (UNC, UNF, UNEF, 8-UN, 12-UN, 16-UN), "
                + $"which has {Enumerate(Names(sizes), "and")}; {ForOthers}.";

    protected override string Lacks(long diameter) => $"the catalogue of ASME B1.1 threads has no size of {ThreadNumber.Show(diameter)} in";

    private ThreadSize Size(DataRow row)
    {
        double diameter = row.Number("basic_major_diameter_in");
        string name = row["size"];
        return new ThreadSize(name, ThreadNumber.Millionths(diameter), [.. Columns.SelectMany(of => row.Numbers(of.Column).Select(tpi => Listed(tpi, of.Series)))]);

        CatalogueThread Listed(double threadsPerInch, string series) => new(
            new ScrewThread(
                this, $"{name}-{Print.Number(threadsPerInch)} {series}", Nominal(Length.FromInches(diameter)), PitchOf(threadsPerInch)),
            ThreadNumber.Millionths(threadsPerInch),
            series);
    }

    /// <summary>A bare 8 may mean M8 as well as #8.</summary>
    private static IEnumerable<string> MetricReadings(ThreadDesignation wanted) =>
        wanted.NumberedDiameter != 0 && wanted.Pitch == 0 && wanted.Series is null && IsoMetric.Catalogue.SizeOf(wanted.Diameter) is ThreadSize size ? [size.Name] : [];

    private static Term MinorAreaDiameter(Term diameter, Term pitch) =>
        ThreadEquations.UnifiedMinorAreaDiameterEquation.Of(diameter, ThreadEquations.TriangleHeightEquation.Of(pitch));

    /// <summary>UNC, UNF, UNEF or UN; the R of a rounded root (UNRC) states what is assumed for every thread.</summary>
    private static string? ReadSeries(ref TextCursor cursor)
    {
        if (!cursor.TryWord("UN")) return null;
        cursor.TryWord("R");
        if (cursor.TryWord("C")) return Unc;
        if (cursor.TryWord("EF")) return Unef;
        return cursor.TryWord("F") ? Unf : AnySeries;
    }
}
