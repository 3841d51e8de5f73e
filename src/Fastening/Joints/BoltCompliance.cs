using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The bolt as a spring: how much it stretches per newton, and how much it twists per newton-metre.</summary>
/// <remarks>
/// Elastic, straight pull. Two ways compete and are never mixed: VDI 2230 counts head, engaged thread and nut by substitution lengths, the
/// textbooks count the grip alone. A third counts the sections that are given and nothing else.
/// </remarks>
/// <example><code>BoltCompliance bolt = BoltCompliance.Vdi2230(
///     ScrewThread.Parse("M16"), length: Length.FromMillimeters(80), threadedLength: Length.FromMillimeters(38),
///     grip: Length.FromMillimeters(60), BoltHead.Hexagon, ElasticMaterial.Steel);
/// bolt.Stiffness.KilonewtonsPerMillimeter</code></example>
public sealed partial class BoltCompliance : IDerives<BoltSprings>
{
    private readonly BoltSection[] _grip;
    private readonly BoltHead _head;
    private readonly ElasticMaterial? _tappedMaterial;
    private readonly StressAreaBasis _basis;
    private readonly BoltCut? _cut;
    private readonly Held<ForcePerLength>? _stated;
    private BoltSprings? _springs;

    private BoltCompliance(
        BoltComplianceMethod method, ScrewThread thread, ElasticMaterial? material, BoltSection[] grip, BoltHead head = default,
        ElasticMaterial? tappedMaterial = null, BoltCut? cut = null, StressAreaBasis basis = default, Held<ForcePerLength>? stated = null)
    {
        _cut = cut;
        _basis = basis;
        _stated = stated;
        Method = method;
        Thread = thread;
        Material = material;
        _grip = grip;
        _head = head;
        _tappedMaterial = tappedMaterial;
        Sections = Array.AsReadOnly(grip);
        foreach (BoltSection section in grip) GripMeters += section.SiLength;
    }

    /// <summary>The thread.</summary>
    public ScrewThread Thread { get; }

    /// <summary>The material of the bolt, and of every section that has none of its own; null for a stated stiffness.</summary>
    public ElasticMaterial? Material { get; }

    /// <summary>How the compliance was found.</summary>
    public BoltComplianceMethod Method { get; }

    /// <summary>The sections between head and first engaged thread, from the head on; none for a stated stiffness.</summary>
    public IReadOnlyList<BoltSection> Sections { get; }

    /// <summary>Length of the sections between head and first engaged thread.</summary>
    public Length GripLength => _grip.Length == 0 ? Si.Length(0) : Si.Length(GripTerm);

    /// <summary>Length of the bolt past the grip, for nut or tapped part; null for a bolt of sections, which do not say it.</summary>
    public Length? BeyondGrip => _cut is null ? null : Si.Length(_cut.BeyondGrip);

    /// <summary>Elastic resilience δ_S, metres of stretch per newton.</summary>
    public double MetersPerNewton => Si.Number(Springs.Resilience);

    /// <summary>Stiffness 1/δ_S.</summary>
    public ForcePerLength Stiffness => Si.Stiffness(BoltComplianceEquations.StiffnessOfResilienceEquation.Of(Springs.Resilience));

    /// <summary>
    /// Twist Σ l_i/(G_i J_i) of the sections between head and first engaged thread, radians per newton-metre of torque in the thread; head
    /// and engaged thread are taken as rigid. Null for a stated stiffness, where it is not known.
    /// </summary>
    public double? TwistRadiansPerNewtonMeter => Springs.Twist is Term twist ? Si.Number(twist) : null;

    /// <summary>Whether the bolt is screwed into a tapped part instead of a nut.</summary>
    public bool IsTapped => _tappedMaterial is not null;

    internal BoltSprings Springs => Derived.Of(ref _springs, this);

    internal double GripMeters { get; }

    internal double? BeyondGripMeters => _cut?.BeyondGrip.Value;

    /// <summary>The bolt screwed into a tapped part: 0.33 d of the part's material in place of the nut (VDI 2230-1:2015 §5.1.1, from memory).</summary>
    /// <param name="material">Material of the tapped part.</param>
    /// <returns>A new bolt.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is null.</exception>
    /// <exception cref="InvalidOperationException">The bolt is not one of VDI 2230, so it has no nut to replace; see <see cref="TappedGrip"/>.</exception>
    /// <example><code>bolt.TappedInto(ElasticMaterial.GreyCastIron)</code></example>
    public BoltCompliance TappedInto(ElasticMaterial material)
    {
        Guard.NotNull(material);
        if (Method != BoltComplianceMethod.Vdi2230)
        {
            throw new InvalidOperationException($"Only a bolt of VDI 2230 counts a nut; for this one ({MethodName}) take the grip of BoltCompliance.TappedGrip.");
        }

        return new BoltCompliance(Method, Thread, Material, _grip, _head, material, _cut);
    }

    /// <summary>Elongation of the bolt under a force (equation <c>bolt.elongation</c>).</summary>
    /// <param name="force">Tension in the bolt.</param>
    /// <returns>The elongation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="force"/> is outside its domain.</exception>
    /// <example><code>bolt.ElongationAt(Force.FromKilonewtons(70)).Micrometers</code></example>
    public Length ElongationAt(Force force) =>
        Si.Length(BoltComplianceEquations.ElongationEquation.Of(Domains.Force.Argument(force), Springs.Resilience));

    /// <inheritdoc />
    public override string ToString() => $"{Thread}, "
        + (Method == BoltComplianceMethod.Stated ? "" : Print.Text($"grip {Si.Length(GripMeters):0.###}, "))
        + Print.Text($"{Si.Stiffness(1 / Springs.Resilience.Value):G4} ({MethodName})");

    private string MethodName => Method switch
    {
        BoltComplianceMethod.Vdi2230 => IsTapped ? "VDI 2230, tapped part" : "VDI 2230, nut",
        BoltComplianceMethod.Textbook => "textbook, neither head nor nut",
        BoltComplianceMethod.Stated => "stiffness as stated",
        _ => "sections as given",
    };

    /// <summary>Length of all sections.</summary>
    private Term GripTerm
    {
        get
        {
            Term grip = _grip[0].LengthOf(NameOf(0));
            for (int i = 1; i < _grip.Length; i++) grip = ConeGeometryEquations.GripEquation.Of(grip, _grip[i].LengthOf(NameOf(i)));
            return grip;
        }
    }

    /// <summary>How a section is called in a derivation; put together only while one listens.</summary>
    internal string NameOf(int section) => Recording.IsOn ? _grip[section].NameAt(section) : "";

    /// <summary>The material of a section, its own or that of the bolt.</summary>
    internal ElasticMaterial MaterialOf(int section) => _grip[section].Material ?? Material!;

    internal string MaterialNameOf(int section) =>
        _grip[section].Material is ElasticMaterial own ? NameOf(own, NameOf(section)) : NameOf(Material!, "the bolt");

    internal static string NameOf(ElasticMaterial material, string part) => Recording.IsOn ? $"{part}, {material.Name}" : "";

    /// <summary>The term of the twist.</summary>
    /// <exception cref="InvalidOperationException">The stiffness is stated.</exception>
    internal Term TwistTerm =>
        Springs.Twist ?? throw new InvalidOperationException("The stiffness of the bolt is stated; how much it twists is not known from it.");

    BoltSprings IDerives<BoltSprings>.Derive() => new() { Resilience = ResilienceOf(), Twist = TwistOf() };

    private Term ResilienceOf()
    {
        if (Method == BoltComplianceMethod.Textbook) return TextbookResilience();
        if (_stated is not null) return BoltComplianceEquations.ResilienceOfStiffnessEquation.Of(_stated.Term);
        bool isVdi = Method == BoltComplianceMethod.Vdi2230;
        Term nominal = isVdi ? NominalArea : default, modulus = Material!.ModulusOf(NameOf(Material, "the bolt"));
        Term? delta = isVdi ? Substitute(HeadFactor, nominal, modulus) : null;
        for (int i = 0; i < _grip.Length; i++)
        {
            string name = NameOf(i);
            delta = Add(delta, Piece(_grip[i].LengthOf(name), _grip[i].AreaOf(name), MaterialOf(i).ModulusOf(MaterialNameOf(i))));
        }

        if (!isVdi) return delta!.Value;
        Term rootArea = BoltComplianceEquations.SectionAreaEquation.Of(Thread.Geometry.RootDiameter);
        delta = Add(delta, Substitute(EngagedThreadFactor, rootArea, modulus));
        return Add(delta, _tappedMaterial is null
            ? Substitute(NutFactor, nominal, modulus)
            : Substitute(TappedPartFactor, nominal, _tappedMaterial.ModulusOf(NameOf(_tappedMaterial, "the tapped part"))));
    }

    private Term TextbookResilience() => BoltComplianceEquations.ResilienceOfStiffnessEquation.Of(BoltComplianceEquations.TextbookStiffnessEquation.Of(
        NominalArea, StressAreas.Of(Thread, _basis), Material!.ModulusOf(NameOf(Material, "the bolt")), _cut!.FreeThread, _cut.Shank));

    private Term? TwistOf()
    {
        if (Method == BoltComplianceMethod.Stated) return null;
        Term twist = Term.Given(0, "twist before the first section"), solid = Term.Given(0, "bore of a solid bolt");
        for (int i = 0; i < _grip.Length; i++)
        {
            string name = NameOf(i);
            Term constant = WrenchEquations.RoundTorsionConstantEquation.Of(_grip[i].DiameterOf(name), solid);
            twist = WrenchEquations.ComplianceEquation.Of(twist, _grip[i].LengthOf(name), MaterialOf(i).ShearOf(MaterialNameOf(i)), constant);
        }

        return twist;
    }

    private Term NominalArea => BoltComplianceEquations.NominalAreaEquation.Of(Thread.DiameterTerm);

    private Term Substitute(Term factor, Term area, Term modulus) =>
        Piece(BoltComplianceEquations.SubstitutionLengthEquation.Of(factor, Thread.DiameterTerm), area, modulus);

    private static Term Piece(Term length, Term area, Term modulus) =>
        BoltComplianceEquations.SectionResilienceEquation.Of(length, modulus, area);

    private static Term Add(Term? before, Term piece) =>
        before is Term delta ? BoltComplianceEquations.BoltResilienceEquation.Of(delta, piece) : piece;
}
