using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A straight piece of a bolt: shank, waist, free thread, extension sleeve.</summary>
/// <example><code>BoltSection.OfDiameter(Length.FromMillimeters(40), Length.FromMillimeters(11))        // a waist
/// BoltSection.OfRootArea(Length.FromMillimeters(12), ScrewThread.Parse("M16"))           // free thread, as VDI 2230 counts it
/// BoltSection.OfStressArea(Length.FromMillimeters(12), ScrewThread.Parse("M16"))         // free thread, as textbooks count it</code></example>
public sealed class BoltSection
{
    private readonly double _length;
    private readonly double? _diameter;
    private readonly double _area;

    private BoltSection(double length, double? diameter, double area, ElasticMaterial? material)
    {
        _length = length;
        _diameter = diameter;
        _area = area;
        Material = material;
    }

    /// <summary>Length of the section.</summary>
    public Length Length => Si.Length(_length);

    /// <summary>Cross-section.</summary>
    public Area Area => Si.Area(_area);

    /// <summary>Material of the section; null when it is that of the bolt.</summary>
    public ElasticMaterial? Material { get; }

    internal double SiLength => _length;

    /// <summary>A round section.</summary>
    /// <param name="length">Its length.</param>
    /// <param name="diameter">Its diameter.</param>
    /// <returns>The section, of the bolt's material.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its domain.</exception>
    /// <example><code>BoltSection.OfDiameter(Length.FromMillimeters(40), diameter: Length.FromMillimeters(12))</code></example>
    public static BoltSection OfDiameter(Length length, Length diameter) =>
        Round(Domains.Length.Check(length), Domains.Length.Check(diameter));

    /// <summary>A section of any shape. For twist it counts as round.</summary>
    /// <param name="length">Its length.</param>
    /// <param name="area">Its cross-section.</param>
    /// <returns>The section, of the bolt's material.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>BoltSection.OfArea(Length.FromMillimeters(25), Area.FromSquareMillimeters(180))</code></example>
    public static BoltSection OfArea(Length length, Area area) =>
        new(Domains.Length.Check(length), null, Domains.Area.Check(area), null);

    /// <summary>Free thread on the area of the root diameter d₃, as VDI 2230 counts it.</summary>
    /// <param name="length">Its length.</param>
    /// <param name="thread">The thread.</param>
    /// <returns>The section, of the bolt's material.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> is outside its domain.</exception>
    /// <example><code>BoltSection.OfRootArea(Length.FromMillimeters(15), ScrewThread.Parse("M16")).Area.SquareMillimeters   // 144.1</code></example>
    public static BoltSection OfRootArea(Length length, ScrewThread thread) =>
        Round(Domains.Length.Check(length), Guard.NotNull(thread).Geometry.RootDiameter.Value);

    /// <summary>Free thread on the stress area, as the textbooks count it.</summary>
    /// <param name="length">Its length.</param>
    /// <param name="thread">The thread.</param>
    /// <param name="basis">Stress area; exact by default.</param>
    /// <returns>The section, of the bolt's material.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The thread has no tabulated area.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> is outside its domain, or <paramref name="basis"/> is no basis.</exception>
    /// <example><code>BoltSection.OfStressArea(
    ///     Length.FromMillimeters(15), ScrewThread.Parse("M16"), StressAreaBasis.NominalTable).Area.SquareMillimeters   // 157</code></example>
    public static BoltSection OfStressArea(Length length, ScrewThread thread, StressAreaBasis basis = StressAreaBasis.Exact)
    {
        double checkedLength = Domains.Length.Check(length);
        double area = StressAreas.Of(Guard.NotNull(thread), basis).Value;
        return basis == StressAreaBasis.Exact ? Round(checkedLength, thread.Geometry.StressDiameter.Value) : new BoltSection(checkedLength, null, area, null);
    }

    /// <summary>The same section of another material: an extension sleeve of aluminium.</summary>
    /// <param name="material">The material.</param>
    /// <returns>A new section.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is null.</exception>
    /// <example><code>BoltSection.OfArea(Length.FromMillimeters(25), Area.FromSquareMillimeters(180)).WithMaterial(ElasticMaterial.WroughtAluminium)</code></example>
    public BoltSection WithMaterial(ElasticMaterial material) => new(_length, _diameter, _area, Guard.NotNull(material));

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Si.Length(_length):0.###} of {Si.Area(_area):0.###}")
        + (Material is null ? "" : ", " + Material.Name);

    internal static BoltSection Round(double length, double diameter) => new(length, diameter, BoltComplianceEquations.SectionArea(diameter), null);

    internal double AreaOf(Derivation? work) => _diameter is double d ? BoltComplianceEquations.SectionAreaEquation.Step(work, d) : _area;

    internal double DiameterOf(Derivation? work) => _diameter ?? BoltComplianceEquations.RoundDiameterEquation.Step(work, _area);
}
