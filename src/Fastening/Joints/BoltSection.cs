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
    private readonly Stated<Length> _length;
    private readonly SectionShape _shape;
    private readonly BoltCut? _cut;
    private readonly bool _isShank;

    private BoltSection(Stated<Length> length, SectionShape shape, ElasticMaterial? material = null, BoltCut? cut = null, bool isShank = false)
    {
        _length = length;
        _shape = shape;
        _cut = cut;
        _isShank = isShank;
        Material = material;
    }

    /// <summary>Length of the section.</summary>
    public Length Length => Si.Length(LengthOf("the section"));

    /// <summary>Cross-section.</summary>
    public Area Area => Si.Area(AreaOf("the section"));

    /// <summary>Material of the section; null when it is that of the bolt.</summary>
    public ElasticMaterial? Material { get; }

    internal double SiLength => _length.Value;

    /// <summary>A round section.</summary>
    /// <param name="length">Its length.</param>
    /// <param name="diameter">Its diameter.</param>
    /// <returns>The section, of the bolt's material.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its domain.</exception>
    /// <example><code>BoltSection.OfDiameter(Length.FromMillimeters(40), diameter: Length.FromMillimeters(12))</code></example>
    public static BoltSection OfDiameter(Length length, Length diameter) =>
        new(Domains.Length.Stated(length), new SectionShape.Round(Domains.Length.Stated(diameter)));

    /// <summary>A section of any shape. For twist it counts as round.</summary>
    /// <param name="length">Its length.</param>
    /// <param name="area">Its cross-section.</param>
    /// <returns>The section, of the bolt's material.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>BoltSection.OfArea(Length.FromMillimeters(25), Area.FromSquareMillimeters(180))</code></example>
    public static BoltSection OfArea(Length length, Area area) =>
        new(Domains.Length.Stated(length), new SectionShape.OfArea(Domains.Area.Stated(area)));

    /// <summary>Free thread on the area of the root diameter d₃, as VDI 2230 counts it.</summary>
    /// <param name="length">Its length.</param>
    /// <param name="thread">The thread.</param>
    /// <returns>The section, of the bolt's material.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> is outside its domain.</exception>
    /// <example><code>BoltSection.OfRootArea(Length.FromMillimeters(15), ScrewThread.Parse("M16")).Area.SquareMillimeters   // 144.1</code></example>
    public static BoltSection OfRootArea(Length length, ScrewThread thread) =>
        new(Domains.Length.Stated(length), new SectionShape.Root(Guard.NotNull(thread)));

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
        Stated<Length> stated = Domains.Length.Stated(length);
        StressAreas.Of(Guard.NotNull(thread), basis);
        return new BoltSection(stated, basis == StressAreaBasis.Exact ? new SectionShape.Stress(thread) : new SectionShape.Tabulated(thread, basis));
    }

    /// <summary>The same section of another material: an extension sleeve of aluminium.</summary>
    /// <param name="material">The material.</param>
    /// <returns>A new section.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is null.</exception>
    /// <example><code>BoltSection.OfArea(Length.FromMillimeters(25), Area.FromSquareMillimeters(180)).WithMaterial(ElasticMaterial.WroughtAluminium)</code></example>
    public BoltSection WithMaterial(ElasticMaterial material) => new(_length, _shape, Guard.NotNull(material), _cut, _isShank);

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Si.Length(SiLength):0.###} of {Si.Area(AreaOf("").Value):0.###}")
        + (Material is null ? "" : ", " + Material.Name);

    /// <summary>The shank of a bolt as it is ordered.</summary>
    internal static BoltSection ShankOf(BoltCut cut, ScrewThread thread) =>
        new(Stated<Length>.Of(cut.Shank.Value, "length of the shank"), new SectionShape.Nominal(thread), null, cut, isShank: true);

    /// <summary>Its thread in the grip.</summary>
    internal static BoltSection FreeThreadOf(BoltCut cut, SectionShape shape) =>
        new(Stated<Length>.Of(cut.FreeThread.Value, "length of the free thread"), shape, null, cut);

    /// <summary>How the section is called among those of a bolt.</summary>
    internal string NameAt(int index) => _cut is null ? Print.Text($"section {index + 1}") : _isShank ? "the shank" : "the free thread";

    internal Term LengthOf(string owner) => _cut is null ? _length.TermOf(owner) : _isShank ? _cut.Shank : _cut.FreeThread;

    internal Term AreaOf(string owner) => _shape.Area(owner);

    internal Term DiameterOf(string owner) => _shape.Diameter(owner);
}
