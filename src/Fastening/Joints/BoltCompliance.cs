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
public sealed partial class BoltCompliance
{
    private readonly BoltSection[] _grip;
    private readonly BoltHead _head;
    private readonly ElasticMaterial? _tappedMaterial;
    private readonly double _shank, _freeThread, _stated;
    private readonly StressAreaBasis _basis;

    private BoltCompliance(
        BoltComplianceMethod method, ScrewThread thread, ElasticMaterial? material, BoltSection[] grip, BoltHead head = default,
        ElasticMaterial? tappedMaterial = null, double shank = 0, double freeThread = 0, StressAreaBasis basis = default, double stated = 0,
        double? beyondGrip = null)
    {
        BeyondGripMeters = beyondGrip;
        _shank = shank;
        _freeThread = freeThread;
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
        MetersPerNewton = ResilienceOf(null);
        if (method != BoltComplianceMethod.Stated) TwistRadiansPerNewtonMeter = TwistOf(null);
        ExpansionPerKelvin = ExpansionOf();
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
    public Length GripLength => Si.Length(GripMeters);

    /// <summary>Length of the bolt past the grip, for nut or tapped part; null for a bolt of sections, which do not say it.</summary>
    public Length? BeyondGrip => BeyondGripMeters is double length ? Si.Length(length) : null;

    /// <summary>Elastic resilience δ_S, metres of stretch per newton.</summary>
    public double MetersPerNewton { get; }

    /// <summary>Stiffness 1/δ_S.</summary>
    public ForcePerLength Stiffness => Si.Stiffness(1 / MetersPerNewton);

    /// <summary>
    /// Twist Σ l_i/(G_i J_i) of the sections between head and first engaged thread, radians per newton-metre of torque in the thread; head
    /// and engaged thread are taken as rigid. Null for a stated stiffness, where it is not known.
    /// </summary>
    public double? TwistRadiansPerNewtonMeter { get; }

    /// <summary>Whether the bolt is screwed into a tapped part instead of a nut.</summary>
    public bool IsTapped => _tappedMaterial is not null;

    internal double GripMeters { get; }

    internal double? BeyondGripMeters { get; }

    /// <summary>Σ l_i α_i over the grip, metres per kelvin; null when the expansion of a section is unknown.</summary>
    internal double? ExpansionPerKelvin { get; }

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

        return new BoltCompliance(Method, Thread, Material, _grip, _head, material, beyondGrip: BeyondGripMeters);
    }

    /// <summary>Elongation of the bolt under a force (equation <c>bolt.elongation</c>).</summary>
    /// <param name="force">Tension in the bolt.</param>
    /// <returns>The elongation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="force"/> is outside its domain.</exception>
    /// <example><code>bolt.ElongationAt(Force.FromKilonewtons(70)).Micrometers</code></example>
    public Length ElongationAt(Force force) =>
        Si.Length(BoltComplianceEquations.Elongation(Domains.Force.Check(force), MetersPerNewton));

    /// <summary>The work behind <see cref="MetersPerNewton"/>.</summary>
    /// <returns>The steps; the last is the resilience δ_S.</returns>
    /// <example><code>Console.WriteLine(bolt.DeriveResilience());</code></example>
    public Derivation DeriveResilience()
    {
        var work = new Derivation($"Resilience of the bolt {Thread}, {MethodName}");
        ResilienceOf(work);
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="TwistRadiansPerNewtonMeter"/>.</summary>
    /// <returns>The steps; the last is the torsional compliance.</returns>
    /// <exception cref="InvalidOperationException">The stiffness is stated, so the twist is not known.</exception>
    /// <example><code>Console.WriteLine(bolt.DeriveTwist());</code></example>
    public Derivation DeriveTwist()
    {
        var work = new Derivation($"Twist of the bolt {Thread}");
        TwistOf(work);
        return work.KeepWhatCounts();
    }

    /// <inheritdoc />
    public override string ToString() => $"{Thread}, "
        + (Method == BoltComplianceMethod.Stated ? "" : Print.Text($"grip {Si.Length(GripMeters):0.###}, "))
        + Print.Text($"{Si.Stiffness(1 / MetersPerNewton):G4} ({MethodName})");

    private string MethodName => Method switch
    {
        BoltComplianceMethod.Vdi2230 => IsTapped ? "VDI 2230, tapped part" : "VDI 2230, nut",
        BoltComplianceMethod.Textbook => "textbook, neither head nor nut",
        BoltComplianceMethod.Stated => "stiffness as stated",
        _ => "sections as given",
    };

    internal double ResilienceOf(Derivation? work)
    {
        if (Method == BoltComplianceMethod.Textbook) return TextbookResilience(work);
        if (Method == BoltComplianceMethod.Stated) return BoltComplianceEquations.ResilienceOfStiffnessEquation.Step(work, _stated);
        double delta = Method == BoltComplianceMethod.Vdi2230 ? AddSubstitute(work, 0, HeadFactor, NominalArea(work), Material!) : 0;
        foreach (BoltSection section in _grip) delta = AddPiece(work, delta, section.SiLength, section.AreaOf(work), section.Material ?? Material!);
        if (Method == BoltComplianceMethod.SectionsOnly) return delta;
        double rootArea = BoltComplianceEquations.SectionAreaEquation.Step(work, Thread.Geometry.RootDiameter.Value);
        delta = AddSubstitute(work, delta, EngagedThreadFactor, rootArea, Material!);
        return AddSubstitute(work, delta, IsTapped ? TappedPartFactor : NutFactor, NominalArea(work), _tappedMaterial ?? Material!);
    }

    private double TextbookResilience(Derivation? work)
    {
        double nominal = NominalArea(work);
        double stressed = _basis == StressAreaBasis.Exact
            ? ThreadEquations.StressAreaEquation.Step(work, Thread.Geometry.StressDiameter.Value)
            : StressAreas.Of(Thread, _basis).Value;
        double stiffness = BoltComplianceEquations.TextbookStiffnessEquation.Step(work, nominal, stressed, Si.Of(Material!.YoungsModulus), _freeThread, _shank);
        return BoltComplianceEquations.ResilienceOfStiffnessEquation.Step(work, stiffness);
    }

    internal double TwistOf(Derivation? work)
    {
        if (Method == BoltComplianceMethod.Stated) throw new InvalidOperationException("The stiffness of the bolt is stated; how much it twists is not known from it.");
        double twist = 0;
        foreach (BoltSection section in _grip)
        {
            double constant = WrenchEquations.RoundTorsionConstantEquation.Step(work, section.DiameterOf(work), 0);
            twist = WrenchEquations.ComplianceEquation.Step(work, twist, section.SiLength, Si.Of((section.Material ?? Material!).ShearModulus), constant);
        }

        return twist;
    }

    private double? ExpansionOf()
    {
        double? sum = Method == BoltComplianceMethod.Stated ? null : 0;
        foreach (BoltSection section in _grip)
        {
            sum += (section.Material ?? Material!).ThermalExpansion is CoefficientOfThermalExpansion alpha ? section.SiLength * Si.Of(alpha) : null;
        }

        return sum;
    }

    private double NominalArea(Derivation? work) => BoltComplianceEquations.NominalAreaEquation.Step(work, Si.Of(Thread.NominalDiameter));

    private double AddSubstitute(Derivation? work, double before, double factor, double area, ElasticMaterial material) =>
        AddPiece(work, before, BoltComplianceEquations.SubstitutionLengthEquation.Step(work, factor, Si.Of(Thread.NominalDiameter)), area, material);

    private static double AddPiece(Derivation? work, double before, double length, double area, ElasticMaterial material) =>
        BoltComplianceEquations.BoltResilienceEquation.Step(
            work, before, BoltComplianceEquations.SectionResilienceEquation.Step(work, length, Si.Of(material.YoungsModulus), area));
}
