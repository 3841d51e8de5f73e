using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A preload that a published rule calls for, from the strength of the bolt alone: each rule by its name, none a default.</summary>
/// <remarks>
/// The rules differ in what they mean. Shigley's are recommended preloads; those of structural bolts are minima that the tightening must
/// reach. None looks at torsion while tightening: see <see cref="FrictionTorqueModel.PermittedPreload"/> for the limit that does.
/// </remarks>
/// <example><code>ScrewThread thread = ScrewThread.Parse("M16");
/// BoltStrength strength = PropertyClass.Parse("8.8").StrengthFor(thread);
/// Force preload = PublishedPreload.ReusableJoint(strength, thread).Preload;      // 68.2 kN, 75 % of the proof load</code></example>
public sealed class PublishedPreload
{
    private readonly Func<Term> _compute;

    private PublishedPreload(string name, string source, Func<Term> compute, double? tabulated, bool isMinimum)
    {
        IsMinimum = isMinimum;
        Name = name;
        Provenance = new Provenance(source);
        _compute = compute;
        compute();
        Tabulated = tabulated is double printed ? Si.Force(printed) : null;
    }

    /// <summary>What the rule says: <c>75 % of the proof load</c>.</summary>
    public string Name { get; }

    /// <summary>Document, edition and clause, and what is from memory.</summary>
    public Provenance Provenance { get; }

    /// <summary>Whether the tightening must reach this preload (structural bolts) or is recommended to aim at it.</summary>
    public bool IsMinimum { get; }

    /// <summary>
    /// The preload by the formula of the rule, not rounded. The structural rules name a minimum; where the standard prints it rounded, the
    /// printed value (<see cref="Tabulated"/>) is what must be reached.
    /// </summary>
    public Force Preload => Si.Force(PreloadTerm);

    /// <summary>
    /// The preload as the source's own table prints it; null where it prints none.
    /// </summary>
    /// <remarks>
    /// Tables round the formula: EN 1090-2 and AISC to the kilonewton with the tabulated stress area, AISC in inches to the kip with the area in
    /// thousandths of a square inch. What does not follow that rounding is stored as printed: the German annex, and A490M M20, printed 179 kN where
    /// 0.7 × 1040 MPa × 245 mm² is 178.4 kN.
    /// </remarks>
    public Force? Tabulated { get; }

    /// <summary>75 % of the proof load: recommended where the joint is dismantled and the bolts are used again.</summary>
    /// <remarks>Shigley 9th ed. (2011) eq. (8-31); equation <c>preload.reusable-joint</c>.</remarks>
    /// <param name="strength">Strength of the bolt, with a stress under proof load.</param>
    /// <param name="thread">The thread.</param>
    /// <param name="basis">Stress area; exact by default.</param>
    /// <returns>The rule's preload.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The strength has no stress under proof load or was looked up for another size, or the thread has no tabulated area.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="basis"/> is no basis.</exception>
    /// <example><code>PublishedPreload.ReusableJoint(strength, thread).Preload</code></example>
    public static PublishedPreload ReusableJoint(BoltStrength strength, ScrewThread thread, StressAreaBasis basis = StressAreaBasis.Exact) =>
        OfProofLoad("75 % of the proof load", PublishedPreloadEquations.ReusableJointEquation, strength, thread, basis);

    /// <summary>90 % of the proof load: recommended for a permanent joint.</summary>
    /// <remarks>Shigley 9th ed. (2011) eq. (8-31); equation <c>preload.permanent-joint</c>.</remarks>
    /// <param name="strength">Strength of the bolt, with a stress under proof load.</param>
    /// <param name="thread">The thread.</param>
    /// <param name="basis">Stress area; exact by default.</param>
    /// <returns>The rule's preload.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The strength has no stress under proof load or was looked up for another size, or the thread has no tabulated area.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="basis"/> is no basis.</exception>
    /// <example><code>PublishedPreload.PermanentJoint(strength, thread).Preload</code></example>
    public static PublishedPreload PermanentJoint(BoltStrength strength, ScrewThread thread, StressAreaBasis basis = StressAreaBasis.Exact) =>
        OfProofLoad("90 % of the proof load", PublishedPreloadEquations.PermanentJointEquation, strength, thread, basis);

    /// <summary>F_p,C = 0.7 f_ub A_s, the minimum preloading force of EN 1090-2, with the <em>nominal</em> tensile strength: 800 or 1000 MPa.</summary>
    /// <remarks>EN 1090-2:2008+A1:2011 §8.5.1 and Table 19; equation <c>preload.structural-europe</c>.</remarks>
    /// <param name="propertyClass">8.8 or 10.9.</param>
    /// <param name="thread">A thread of that class, in a size that the table has.</param>
    /// <param name="basis">Stress area; exact by default; Table 19 is computed with the tabulated one.</param>
    /// <returns>The rule's preload.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The class is neither 8.8 nor 10.9 or does not cover the thread, or the standard has no bolt of that size.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="basis"/> is no basis.</exception>
    /// <example><code>PublishedPreload.StructuralEurope(PropertyClass.Parse("10.9"), ScrewThread.Parse("M20")).Tabulated   // 172 kN</code></example>
    public static PublishedPreload StructuralEurope(PropertyClass propertyClass, ScrewThread thread, StressAreaBasis basis = StressAreaBasis.Exact)
    {
        RequireStructural(propertyClass, thread);
        var row = StructuralPreloadTable.Of(StructuralPreloadTable.Europe, thread);
        Term Nominal() => Stated<Pressure>.Of(Si.Of(propertyClass.NominalTensileStrength), "nominal tensile strength").TermOf(propertyClass.Designation);
        double nominal = Si.Of(propertyClass.NominalTensileStrength);
        return new PublishedPreload(
            "F_p,C, 70 % of the nominal tensile strength",
            Marked("EN 1090-2:2008+A1:2011 §8.5.1", row, columnFromMemory: propertyClass.Designation == "8.8"),
            () => PublishedPreloadEquations.StructuralEuropeEquation.Of(Nominal(), StressAreas.Of(thread, basis)),
            Rounded(thread, area => PublishedPreloadEquations.StructuralEurope(nominal, area)), isMinimum: true);
    }

    /// <summary>F_p,C* = 0.7 f_yb A_s, the regular preloading force of the German annex, with the <em>nominal</em> yield strength: 640 or 900 MPa.</summary>
    /// <remarks>DIN EN 1993-1-8/NA:2010, for 10.9 with Table NA.A.2; equation <c>preload.structural-germany</c>. Not to be confused with F_p,C.</remarks>
    /// <param name="propertyClass">8.8 or 10.9.</param>
    /// <param name="thread">A thread of that class, in a size that the table has.</param>
    /// <param name="basis">Stress area; exact by default.</param>
    /// <returns>The rule's preload.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The class is neither 8.8 nor 10.9 or does not cover the thread, or the standard has no bolt of that size.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="basis"/> is no basis.</exception>
    /// <example><code>PublishedPreload.StructuralGermany(PropertyClass.Parse("10.9"), ScrewThread.Parse("M16")).Tabulated   // 100 kN</code></example>
    public static PublishedPreload StructuralGermany(PropertyClass propertyClass, ScrewThread thread, StressAreaBasis basis = StressAreaBasis.Exact)
    {
        RequireStructural(propertyClass, thread);
        Term Nominal() => Stated<Pressure>.Of(Si.Of(propertyClass.NominalYieldStrength!.Value), "nominal yield strength").TermOf(propertyClass.Designation);
        var row = StructuralPreloadTable.Of(StructuralPreloadTable.Germany, thread);
        return new PublishedPreload(
            "F_p,C*, 70 % of the nominal yield strength",
            Marked("DIN EN 1993-1-8/NA:2010", row),
            () => PublishedPreloadEquations.StructuralGermanyEquation.Of(Nominal(), StressAreas.Of(thread, basis)),
            propertyClass.Designation == "10.9" ? row.Printed : null, isMinimum: true);
    }

    /// <summary>70 % of the minimum tensile strength, the minimum pretension of a structural bolt after AISC and RCSC.</summary>
    /// <remarks>AISC 360-05 Table J3.1 and J3.1M; F3125 as in AISC 360-16; equation <c>preload.structural-america</c>.</remarks>
    /// <param name="grade">A325, A490 or their F3125 grades, inch or metric.</param>
    /// <param name="thread">A thread of that grade, in a size that the table has.</param>
    /// <param name="basis">Stress area; exact by default.</param>
    /// <returns>The rule's preload.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The grade is no structural bolt or does not cover the thread, or the table has no bolt of that size.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="basis"/> is no basis.</exception>
    /// <example><code>PublishedPreload.StructuralAmerica(BoltGrade.Parse("ASTM F3125 A325"), ScrewThread.Parse("3/4-10 UNC")).Tabulated   // 28 kip</code></example>
    public static PublishedPreload StructuralAmerica(BoltGrade grade, ScrewThread thread, StressAreaBasis basis = StressAreaBasis.Exact)
    {
        BoltStrength strength = StrengthOf(grade, thread);
        return new PublishedPreload(
            "minimum pretension, 70 % of the minimum tensile strength",
            Marked(
                grade.Designation.Contains("F3125") ? "AISC 360-16 Table J3.1" : "AISC 360-05 Table J3.1",
                StructuralPreloadTable.Of(StructuralPreloadTable.America, thread, grade.Designation)),
            () => Pretension(strength, StressAreas.Of(thread, basis)),
            TabulatedPretension(grade, strength.Tensile, thread), isMinimum: true);
    }

    /// <summary>1.05 times the minimum pretension: what a sample of bolts must reach in the pre-installation verification test.</summary>
    /// <remarks>RCSC 2014 §7, from memory; equation <c>preload.pre-installation-verification</c>. Its table multiplies the rounded pretension and rounds again.</remarks>
    /// <param name="grade">A325, A490 or their F3125 grades, inch or metric.</param>
    /// <param name="thread">A thread of that grade, in a size that the table has.</param>
    /// <param name="basis">Stress area; exact by default.</param>
    /// <returns>The rule's preload.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The grade is no structural bolt or does not cover the thread, or the table has no bolt of that size.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="basis"/> is no basis.</exception>
    /// <example><code>PublishedPreload.PreInstallationVerification(BoltGrade.Parse("ASTM F3125 A325"), ScrewThread.Parse("3/4-10 UNC")).Tabulated   // 29 kip</code></example>
    public static PublishedPreload PreInstallationVerification(BoltGrade grade, ScrewThread thread, StressAreaBasis basis = StressAreaBasis.Exact)
    {
        BoltStrength strength = StrengthOf(grade, thread);
        return new PublishedPreload(
            "pre-installation verification, 1.05 times the minimum pretension", "RCSC 2014 §7 (from memory)",
            () => PublishedPreloadEquations.PreInstallationVerificationEquation.Of(Pretension(strength, StressAreas.Of(thread, basis))),
            PrintedLoad.ToThousand(thread, PublishedPreloadEquations.PreInstallationVerification(TabulatedPretension(grade, strength.Tensile, thread))), isMinimum: true);
    }

    internal Term PreloadTerm => _compute();

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Name}: {Preload:0.###}");

    private static PublishedPreload OfProofLoad(
        string name, Equation<Func<double, double>> rule, BoltStrength strength, ScrewThread thread, StressAreaBasis basis)
    {
        if (Guard.NotNull(strength).RequireFor(Guard.NotNull(thread), nameof(strength)).Proof is null)
        {
            throw new ArgumentException(
                $"the strength ({strength}) has no stress under proof load, so no share of a proof load can be taken.", nameof(strength));
        }

        return new PublishedPreload(
            name, rule.Source,
            () => rule.Of(MaterialEquations.ProofLoadEquation.Of(strength.ProofTerm!.Value, StressAreas.Of(thread, basis))), tabulated: null, isMinimum: false);
    }

    private static void RequireStructural(PropertyClass propertyClass, ScrewThread thread)
    {
        if (Guard.NotNull(propertyClass).Designation is not ("8.8" or "10.9"))
        {
            throw new ArgumentException($"structural bolts are preloaded in class 8.8 and 10.9, not {propertyClass}.", nameof(propertyClass));
        }

        propertyClass.StrengthFor(thread);
    }

    private static BoltStrength StrengthOf(BoltGrade grade, ScrewThread thread) => Guard.NotNull(grade).IsStructural
        ? grade.StrengthFor(thread)
        : throw new ArgumentException($"AISC and RCSC give a minimum pretension for A325 and A490 bolts, not for {grade}.", nameof(grade));

    private static Term Pretension(BoltStrength strength, Term area) => PublishedPreloadEquations.StructuralAmericaEquation.Of(strength.TensileTerm, area);

    private static double TabulatedPretension(BoltGrade grade, double tensile, ScrewThread thread) =>
        StructuralPreloadTable.Of(StructuralPreloadTable.America, thread, grade.Designation).Printed ?? Rounded(thread, area => PublishedPreloadEquations.StructuralAmerica(tensile, area));

    /// <summary>A tabulated value that was recalled and not read says so.</summary>
    private static string Marked(string source, StructuralPreloadTable row, bool columnFromMemory = false) =>
        columnFromMemory || row.IsFromMemory ? source + "; tabulated value from memory" : source;

    /// <summary>To the whole kilonewton or kip.</summary>
    private static double Rounded(ScrewThread thread, Func<double, double> preloadOfArea) =>
        PrintedLoad.ToThousand(thread, preloadOfArea(StressAreas.InStructuralTables(thread)));
}
