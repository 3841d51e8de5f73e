using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

public sealed partial class BoltCompliance
{
    // VDI 2230-1:2015 §5.1.1, from memory.
    private const double HexagonHead = 0.5, SocketHead = 0.4, EngagedThread = 0.5, Nut = 0.4, TappedPart = 0.33;

    private Term HeadFactor => _head == BoltHead.Hexagon ? Term.Given(HexagonHead, "hexagon head, VDI 2230") : Term.Given(SocketHead, "socket head, VDI 2230");

    private static Term EngagedThreadFactor => Term.Given(EngagedThread, "engaged thread, VDI 2230");

    private static Term NutFactor => Term.Given(Nut, "nut, VDI 2230");

    private static Term TappedPartFactor => Term.Given(TappedPart, "tapped part, VDI 2230");

    /// <summary>A bolt with nut after VDI 2230, with a shank of the nominal diameter. <see cref="TappedInto"/> replaces the nut by a tapped part.</summary>
    /// <param name="thread">Thread.</param>
    /// <param name="length">Length of the bolt under its head, at least the grip and half a diameter. A nut needs more: its height.</param>
    /// <param name="threadedLength">Threaded length, at most <paramref name="length"/>; equal to it for a bolt threaded to the head.</param>
    /// <param name="grip">Thickness of everything clamped, washers included; for a tapped part, without it.</param>
    /// <param name="head">Head.</param>
    /// <param name="material">Material of bolt and nut.</param>
    /// <returns>The bolt.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> or <paramref name="material"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its domain or does not fit the others, or the head is unknown.</exception>
    /// <example><code>BoltCompliance.Vdi2230(
    ///     ScrewThread.Parse("M16"), length: Length.FromMillimeters(80), threadedLength: Length.FromMillimeters(38),
    ///     grip: Length.FromMillimeters(60), BoltHead.Hexagon, ElasticMaterial.Steel)</code></example>
    public static BoltCompliance Vdi2230(ScrewThread thread, Length length, Length threadedLength, Length grip, BoltHead head, ElasticMaterial material)
    {
        Guard.NotNull(thread);
        BoltCut cut = Divide(length, threadedLength, grip);
        double beyond = cut.BeyondGrip.Value, engaged = EngagedThread * thread.Diameter;
        if (Tolerance.FallsShort(beyond, engaged))
        {
            Length longest = (length - Si.Length(engaged)).ToUnit(grip.Unit);
            Guard.RefuseAgainst(nameof(grip), grip, $"at most {Guard.ShowToCompare(longest)}: the bolt, {Guard.ShowToCompare(length)}, must reach half a diameter past it, the thread that is counted there");
        }

        BoltSection[] sections = GripOf(cut, thread, new SectionShape.Root(thread));
        return new BoltCompliance(BoltComplianceMethod.Vdi2230, thread, Guard.NotNull(material), sections, Known(head), cut: cut);
    }

    /// <summary>A bolt with nut after VDI 2230, of sections: waists, extension sleeves. <see cref="TappedInto"/> replaces the nut by a tapped part.</summary>
    /// <param name="thread">Thread.</param>
    /// <param name="sections">
    /// What lies between head and first engaged thread, free thread included (<see cref="BoltSection.OfRootArea"/>); head, engaged thread and
    /// nut are added.
    /// </param>
    /// <param name="head">Head.</param>
    /// <param name="material">Material of bolt and nut, and of every section without its own.</param>
    /// <returns>The bolt.</returns>
    /// <exception cref="ArgumentNullException">An argument or a section is null.</exception>
    /// <exception cref="ArgumentException">There are no sections.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The head is unknown.</exception>
    /// <example><code>BoltSection waist = BoltSection.OfDiameter(Length.FromMillimeters(40), Length.FromMillimeters(12));
    /// BoltCompliance bolt = BoltCompliance.Vdi2230(thread, [waist, BoltSection.OfRootArea(Length.FromMillimeters(15), thread)], BoltHead.Hexagon,
    ///     ElasticMaterial.Steel);</code></example>
    public static BoltCompliance Vdi2230(ScrewThread thread, IReadOnlyList<BoltSection> sections, BoltHead head, ElasticMaterial material) =>
        new(BoltComplianceMethod.Vdi2230, Guard.NotNull(thread), Guard.NotNull(material), Copy(sections), Known(head));

    /// <summary>A bolt as the textbooks count it: shank and thread in the grip, neither head nor nut (equation <c>bolt.textbook-stiffness</c>).</summary>
    /// <param name="thread">Thread.</param>
    /// <param name="length">Length of the bolt under its head, at least the grip.</param>
    /// <param name="threadedLength">Threaded length, at most <paramref name="length"/>.</param>
    /// <param name="grip">Thickness of everything clamped; with a tapped part, the effective one of <see cref="TappedGrip"/>.</param>
    /// <param name="material">Material of the bolt.</param>
    /// <param name="basis">Stress area; exact by default.</param>
    /// <returns>The bolt.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> or <paramref name="material"/> is null.</exception>
    /// <exception cref="ArgumentException">The thread has no tabulated area.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its domain or does not fit the others, or <paramref name="basis"/> is no basis.</exception>
    /// <example><code>BoltCompliance.Textbook(
    ///     ScrewThread.Parse("1/2-13 UNC"), length: Length.FromInches(1.5), threadedLength: Length.FromInches(1.25),
    ///     grip: Length.FromInches(1.095), ElasticMaterial.Steel)</code></example>
    public static BoltCompliance Textbook(
        ScrewThread thread, Length length, Length threadedLength, Length grip, ElasticMaterial material, StressAreaBasis basis = StressAreaBasis.Exact)
    {
        Guard.NotNull(thread);
        BoltCut cut = Divide(length, threadedLength, grip);
        StressAreas.Of(thread, basis);
        SectionShape shape = basis == StressAreaBasis.Exact ? new SectionShape.Stress(thread) : new SectionShape.TabulatedRound(thread, basis);
        return new BoltCompliance(
            BoltComplianceMethod.Textbook, thread, Guard.NotNull(material), GripOf(cut, thread, shape), cut: cut, basis: basis);
    }

    /// <summary>A bolt of the sections that are given; nothing is added for head, engaged thread and nut.</summary>
    /// <param name="thread">Thread.</param>
    /// <param name="sections">The sections that stretch.</param>
    /// <param name="material">Material of every section without its own.</param>
    /// <returns>The bolt.</returns>
    /// <exception cref="ArgumentNullException">An argument or a section is null.</exception>
    /// <exception cref="ArgumentException">There are no sections.</exception>
    /// <example><code>BoltCompliance.OfSections(thread, [BoltSection.OfDiameter(Length.FromMillimeters(50), Length.FromMillimeters(16))], ElasticMaterial.Steel)</code></example>
    public static BoltCompliance OfSections(ScrewThread thread, IReadOnlyList<BoltSection> sections, ElasticMaterial material) =>
        new(BoltComplianceMethod.SectionsOnly, Guard.NotNull(thread), Guard.NotNull(material), Copy(sections));

    /// <summary>A bolt of a stated stiffness: neither sections nor material are known of it.</summary>
    internal static BoltCompliance OfStiffness(ScrewThread thread, Held<ForcePerLength> stiffness) =>
        new(BoltComplianceMethod.Stated, thread, null, [], stated: stiffness);

    /// <summary>
    /// Effective grip of a bolt screwed into its last part, as the textbooks take it: the parts above, and half of the tapped part or of the
    /// nominal diameter, whichever is less (equation <c>bolt.tapped-grip</c>).
    /// </summary>
    /// <param name="thread">Thread.</param>
    /// <param name="clampedThickness">Thickness of the parts between head and tapped part.</param>
    /// <param name="tappedThickness">Thickness of the tapped part.</param>
    /// <returns>The effective grip, for <see cref="Textbook"/> and for the layers under a frustum stack.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A thickness is outside its domain.</exception>
    /// <example><code>BoltCompliance.TappedGrip(ScrewThread.Parse("M16"), clampedThickness: Length.FromMillimeters(30),
    ///     tappedThickness: Length.FromMillimeters(40)).Millimeters   // 38</code></example>
    public static Length TappedGrip(ScrewThread thread, Length clampedThickness, Length tappedThickness) => Si.Length(BoltComplianceEquations.TappedGripEquation.Of(
        Domains.Length.Argument(clampedThickness), Domains.Length.Argument(tappedThickness), Guard.NotNull(thread).DiameterTerm));

    private static BoltCut Divide(Length length, Length threadedLength, Length grip)
    {
        var whole = new Stated<Length>(length, Domains.Length.Check(length), "length of the bolt");
        var threaded = new Stated<Length>(threadedLength, Domains.LengthOrZero.Check(threadedLength), "threaded length of the bolt");
        Stated<Length> clamped = Domains.Length.Stated(grip);
        if (threaded.Value > whole.Value) Guard.RefuseAgainst(nameof(threadedLength), threadedLength, $"at most the length of the bolt, {Guard.ShowToCompare(length)}");
        if (clamped.Value > whole.Value) Guard.RefuseAgainst(nameof(grip), grip, $"at most the length of the bolt, {Guard.ShowToCompare(length)}");
        return new BoltCut(whole, threaded, clamped);
    }

    private static BoltSection[] GripOf(BoltCut cut, ScrewThread thread, SectionShape freeThread)
    {
        var sections = new List<BoltSection>(2);
        if (cut.Shank.Value > 0) sections.Add(BoltSection.ShankOf(cut, thread));
        if (cut.FreeThread.Value > 0) sections.Add(BoltSection.FreeThreadOf(cut, freeThread));
        return [.. sections];
    }

    private static BoltSection[] Copy(IReadOnlyList<BoltSection> sections)
    {
        BoltSection[] copy = [.. Guard.NotNull(sections)];
        if (copy.Length == 0) throw new ArgumentException("A bolt has at least one section between head and first engaged thread.", nameof(sections));
        foreach (BoltSection section in copy) Guard.NotNull(section, nameof(sections));
        return copy;
    }

    private static BoltHead Known(BoltHead head) => head is BoltHead.Hexagon or BoltHead.HexagonSocket
        ? head
        : throw new ArgumentOutOfRangeException(nameof(head), Print.Text($"head is {(int)head}; it must be Hexagon or HexagonSocket."));
}
