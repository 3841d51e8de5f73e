using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>General purpose Acme threads of ASME B1.5, from memory.</summary>
internal sealed class AcmeThreads : PowerScrewThreads
{
    private const double Inch = 0.0254, Rounding = 1e-9;
    private const string Word = "ACME";

    public override ThreadProfile Profile => ThreadProfile.Acme;

    public override string Name => "Acme";

    public override double LoadFlankDegrees => 14.5;

    public override IReadOnlyList<NotationHint> Hints { get; } =
    [
        new("STUB", Anywhere: true, "a stub Acme thread " + FromProfile),
        new(Word, Anywhere: true, "write an Acme thread with its threads per inch, as in 1 1/2-4 ACME; for several starts use ScrewThread.Acme"),
    ];

    /// <summary>A thread of any diameter and threads per inch.</summary>
    public ScrewThread Thread(Length diameter, double threadsPerInch, int starts)
    {
        DiameterDomain.Check(diameter);
        ThreadsPerInchDomain.Check(threadsPerInch);
        StartsDomain.Check((double)starts, name: nameof(starts));
        ScrewThread? thread = Find(diameter, threadsPerInch, starts);
        if (thread is null) Guard.RefuseAgainst(nameof(threadsPerInch), threadsPerInch, FineEnough);
        return thread;
    }

    /// <summary>d − P/2, without the clearance at the root (from memory).</summary>
    public override Term TextbookMeanDiameter(Term diameter, Term pitch, ThreadGeometry geometry) => geometry.PitchDiameter;

    /// <summary>The word stands before the size or after the threads per inch, which are always written; Acme has no numbered sizes.</summary>
    public override bool TryRead(TextCursor cursor, out ThreadDesignation designation)
    {
        designation = default;
        bool isNamed = cursor.TryWord(Word);
        cursor.TrySpaces();
        bool isNumbered = cursor.Next is '#' or 'N' or 'n';
        if (!InchSize.TryReadThread(ref cursor, out long diameter, out _, out long threadsPerInch) || isNumbered || threadsPerInch == 0) return false;

        if (!isNamed)
        {
            cursor.TrySeparator();
            if (!cursor.TryWord(Word)) return false;
        }

        designation = new ThreadDesignation(this, diameter, threadsPerInch);
        return ToleranceClass.TryEnd(cursor, this);
    }

    /// <summary>ASME B1.5, general purpose: 2G, 3G, 4G. The centralizing classes (2C) belong to other diameters.</summary>
    public override bool TryToleranceClass(ref TextCursor cursor) => cursor.TryWhole(out long grade) && grade is >= 2 and <= 4 && cursor.TryWord("G");

    public override ScrewThread? Find(in ThreadDesignation wanted) =>
        Find(Length.FromInches(ThreadNumber.FromMillionths(wanted.Diameter)), ThreadNumber.FromMillionths(wanted.Pitch), wanted.Starts);

    public override string Explain(string shown, in ThreadDesignation wanted) =>
        $"{shown}: an Acme thread of {ThreadNumber.Show(wanted.Pitch)} threads per inch leaves no core in {ThreadNumber.Show(wanted.Diameter)} in; "
        + "the size stands before the hyphen, the threads per inch after it, as in 1 1/2-4 ACME.";

    protected override double CrestClearance(double pitch) => pitch >= Inch / 10 * (1 - Rounding) ? 0.010 * Inch : 0.005 * Inch;

    private ScrewThread? Find(Length diameter, double threadsPerInch, int starts)
    {
        if (!ThreadsPerInchDomain.Contains(threadsPerInch)) return null;
        string several = starts == 1 ? "" : ", " + ThreadNumber.ShowStarts(starts);
        string designation = $"{InchSize.Name(diameter.Inches)}-{Print.Number(threadsPerInch)} {Word}{several}";
        return WithCore(designation, Nominal(diameter), PitchOf(threadsPerInch), starts);
    }
}
