using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A standard of threads: how it writes a size, which sizes it has, its profile and its fit. All that depends on the profile stands in one file of each.</summary>
/// <remarks>Standards compare by reference; a thread of a free profile has one of its own (<see cref="CustomThreads"/>).</remarks>
internal abstract class ThreadStandard
{
    /// <summary>The root diameter exceeds this share of the nominal diameter.</summary>
    protected const double LeastCore = 0.1;

    protected const string FromProfile = "is given by its diameters with ScrewThread.FromProfile";

    protected static readonly Domain<Length> DiameterDomain = new(1e-4, 2), PitchDomain = new(1e-5, 0.5);
    protected static readonly Interval ThreadsPerInchDomain = new(0.1, 400), StartsDomain = new(1, 100);

    public static UnifiedThreads Unified { get; } = new();

    public static IsoMetricThreads IsoMetric { get; } = new();

    public static TrapezoidalThreads Trapezoidal { get; } = new();

    public static AcmeThreads Acme { get; } = new();

    public static SquareThreads Square { get; } = new();

    /// <summary>In the order in which a text is shown to them. Slips are undone from the last to the first: that an M is missing is guessed at the end.</summary>
    public static ThreadStandard[] All { get; } = [IsoMetric, Unified, Trapezoidal, Acme, Square];

    public abstract ThreadProfile Profile { get; }

    /// <summary>As a message calls its threads.</summary>
    public abstract string Name { get; }

    /// <summary>Angle of the load flank in the axial plane, from the normal to the axis.</summary>
    public abstract double LoadFlankDegrees { get; }

    public virtual bool IsSixtyDegrees => false;

    /// <summary>Newtons in the unit in which tables print loads.</summary>
    public virtual double LoadUnit => 1;

    /// <summary>The limits of the usual fit; null where the package has none.</summary>
    public virtual MediumFit? Fit => null;

    /// <summary>Slips in writing a designation of this standard, in the order in which they are undone.</summary>
    public virtual IReadOnlyList<DesignationSlip> Slips => [];

    /// <summary>Marks of this standard and of its kin in a text that cannot be read. The longer mark stands before the one it contains.</summary>
    public virtual IReadOnlyList<NotationHint> Hints => [];

    /// <summary>Whether the tolerance class stands behind a hyphen, and not behind a space alone.</summary>
    public virtual bool ClassFollowsHyphen => false;

    /// <summary>Whether LH may stand before the tolerance class.</summary>
    public virtual bool LeftHandPrecedesClass => false;

    /// <summary>Square metres in the unit in which tables print the stress area; null where no table does.</summary>
    protected virtual double? AreaUnit => null;

    /// <summary>The dimensions and areas, by one sequence of equations, with or without the work written down.</summary>
    /// <summary>The diameter as a thread keeps it.</summary>
    protected static Stated<Length> Nominal(Length diameter) => new(diameter, Si.Of(diameter), "nominal diameter");

    /// <summary>The pitch as a thread keeps it.</summary>
    protected static Stated<Length> PitchOf(Length pitch) => new(pitch, Si.Of(pitch), "pitch");

    /// <summary>The same from threads per inch.</summary>
    protected static Stated<Length> PitchOf(double threadsPerInch) => Stated<Length>.Of(InchSize.PitchOf(threadsPerInch), "pitch");

    public abstract ThreadGeometry Geometry(Term diameter, Term pitch, Term starts);

    /// <summary>The section at the root; a standard may tabulate it at another diameter.</summary>
    public virtual Term MinorArea(Term diameter, Term pitch, Term rootDiameter) =>
        ThreadEquations.MinorAreaEquation.Of(rootDiameter);

    /// <summary>Midway between major and root diameter, as the textbooks take it.</summary>
    public virtual Term TextbookMeanDiameter(Term diameter, Term pitch, ThreadGeometry geometry) =>
        ThreadEquations.TextbookMeanDiameterEquation.Of(diameter, geometry.RootDiameter);

    /// <summary>The stress area as the standard of its bolts prints it; null where none does.</summary>
    public virtual Area? PrintedStressArea(double stressArea) => null;

    /// <summary>The stress area to the three significant digits of the tables, in square metres; null where no table has it.</summary>
    public double? TabulatedArea(double stressArea) => AreaUnit is double unit ? PrintedNumber.ToSignificantDigits(stressArea / unit, 3) * unit : null;

    /// <summary>The stress area as the tables of structural bolts print it.</summary>
    public virtual double? StructuralArea(double stressArea) => TabulatedArea(stressArea);

    /// <summary>The stress area of a bolt of high strength at its least pitch diameter; null where the standard makes no difference.</summary>
    public virtual Term? HighStrengthStressArea(Term leastPitchDiameter, Term pitch) => null;

    /// <summary>Reads a designation of this standard; whether there is such a thread is for <see cref="Find"/> to say.</summary>
    public virtual bool TryRead(TextCursor cursor, out ThreadDesignation designation)
    {
        designation = default;
        return false;
    }

    /// <summary>Reads a tolerance class; where it fails the cursor may stand anywhere.</summary>
    public virtual bool TryToleranceClass(ref TextCursor cursor) => false;

    /// <summary>The thread that a designation names; null when the standard has none, or when its numbers give no thread.</summary>
    public virtual ScrewThread? Find(in ThreadDesignation wanted) => null;

    /// <summary>Whether the size written is one of the standard, so that only pitch or series can be wrong.</summary>
    public virtual bool HasSizeOf(in ThreadDesignation wanted) => true;

    /// <summary>Why a designation that can be read names no thread, and what to write instead.</summary>
    public virtual string Explain(string shown, in ThreadDesignation wanted) => $"{shown} names no {Name} thread; such a thread {FromProfile}.";
}
