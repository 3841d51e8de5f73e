using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>An isotropic material of bolt or clamped part: Young's modulus, Poisson's ratio, thermal expansion.</summary>
/// <remarks>
/// The tables are averages of handbooks at room temperature; the handbooks agree only between the least and the greatest value, so take
/// those for a tolerance study. Thermal expansion is the mean from 20 to 100 °C. <see cref="Provenance"/> says what is from memory. No permitted
/// bearing pressure is chosen: the published ones depend on the edition and on the strength of the part.
/// </remarks>
/// <example><code>ElasticMaterial.GreyCastIron.YoungsModulus.Gigapascals          // 110 (103 to 118)
/// new ElasticMaterial("36 % nickel steel", Pressure.FromGigapascals(141), 0.29, CoefficientOfThermalExpansion.FromPpmPerKelvin(1.3))</code></example>
public sealed class ElasticMaterial
{
    private readonly Stated<Pressure> _modulus;
    private readonly StatedNumber _poissonRatio;
    private readonly Stated<CoefficientOfThermalExpansion>? _expansion;

    private static readonly Dictionary<string, ElasticMaterial> Table = DataFile.Read("elastic-materials.csv")
        .Select(row => new ElasticMaterial(row)).ToDictionary(material => material.Name);

    /// <summary>A material of the user's own.</summary>
    /// <param name="name">What to call it.</param>
    /// <param name="youngsModulus">Young's modulus E.</param>
    /// <param name="poissonRatio">Poisson's ratio ν, 0 to below 0.5.</param>
    /// <param name="thermalExpansion">Mean coefficient of linear thermal expansion α over the temperatures that matter; null when unknown.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>new ElasticMaterial("laminate", Pressure.FromGigapascals(21), poissonRatio: 0.3, thermalExpansion: null)     // expansion not known</code></example>
    public ElasticMaterial(string name, Pressure youngsModulus, double poissonRatio, CoefficientOfThermalExpansion? thermalExpansion)
        : this(Guard.NotNull(name), youngsModulus, poissonRatio, thermalExpansion, null, [])
    {
        LowYoungsModulus = HighYoungsModulus = youngsModulus;
        LowPoissonRatio = HighPoissonRatio = poissonRatio;
        LowThermalExpansion = HighThermalExpansion = thermalExpansion;
    }

    private ElasticMaterial(
        string name, Pressure youngsModulus, double poissonRatio, CoefficientOfThermalExpansion? thermalExpansion,
        Provenance? provenance, IReadOnlyList<BearingPressureLimit> published)
    {
        _modulus = new Stated<Pressure>(youngsModulus, Domains.Modulus.Check(youngsModulus), "Young's modulus");
        _poissonRatio = new StatedNumber(Domains.PoissonRatio.Check(poissonRatio), "Poisson's ratio");
        if (thermalExpansion is CoefficientOfThermalExpansion expansion) _expansion = Domains.ThermalExpansion.Stated(expansion, nameof(thermalExpansion));
        Name = name;
        Provenance = provenance;
        PublishedBearingPressures = published;
    }

    private ElasticMaterial(DataRow row)
        : this(
            row["name"], Pressure.FromGigapascals(row.Number("e_gpa")), row.Number("nu"), Expansion(row, "alpha"), SourceOf(row),
            [.. BearingPressureLimit.Vdi2230Of2003.Concat(BearingPressureLimit.Vdi2230Of1986).Where(limit => limit.ElasticMaterialName == row["name"])])
    {
        LowYoungsModulus = Pressure.FromGigapascals(row.Number("e_least"));
        HighYoungsModulus = Pressure.FromGigapascals(row.Number("e_greatest"));
        LowPoissonRatio = row.Number("nu_least");
        HighPoissonRatio = row.Number("nu_greatest");
        LowThermalExpansion = Expansion(row, "alpha_least");
        HighThermalExpansion = Expansion(row, "alpha_greatest");
    }

    private ElasticMaterial(ElasticMaterial other, Pressure permittedBearingPressure)
        : this(other.Name, other.YoungsModulus, other.PoissonRatio, other.ThermalExpansion, other.Provenance, other.PublishedBearingPressures)
    {
        LowYoungsModulus = other.LowYoungsModulus;
        HighYoungsModulus = other.HighYoungsModulus;
        LowPoissonRatio = other.LowPoissonRatio;
        HighPoissonRatio = other.HighPoissonRatio;
        LowThermalExpansion = other.LowThermalExpansion;
        HighThermalExpansion = other.HighThermalExpansion;
        PermittedBearingPressure = permittedBearingPressure;
    }

    /// <summary>Every material of the table.</summary>
    public static IReadOnlyList<ElasticMaterial> All { get; } = Array.AsReadOnly(Table.Values.ToArray());

    /// <summary>Carbon and alloy steel: S235 to S355, C45, 42CrMo4.</summary>
    public static ElasticMaterial Steel => Table["carbon and alloy steel"];

    /// <summary>Austenitic stainless steel: 1.4301, 1.4401, A2, A4.</summary>
    public static ElasticMaterial AusteniticStainlessSteel => Table["austenitic stainless steel"];

    /// <summary>Grey cast iron EN-GJL-250; its modulus falls with stress.</summary>
    public static ElasticMaterial GreyCastIron => Table["grey cast iron"];

    /// <summary>Ductile cast iron EN-GJS-400.</summary>
    public static ElasticMaterial DuctileCastIron => Table["ductile cast iron"];

    /// <summary>Wrought aluminium EN AW-6082, EN AW-6061.</summary>
    public static ElasticMaterial WroughtAluminium => Table["wrought aluminium"];

    /// <summary>Cast aluminium EN AC-46000, AlSi9Cu3(Fe).</summary>
    public static ElasticMaterial CastAluminium => Table["cast aluminium"];

    /// <summary>Brass CuZn39Pb3, CW614N.</summary>
    public static ElasticMaterial Brass => Table["brass"];

    /// <summary>Titanium alloy Ti-6Al-4V.</summary>
    public static ElasticMaterial Titanium => Table["titanium"];

    /// <summary>Magnesium alloy AZ91D.</summary>
    public static ElasticMaterial Magnesium => Table["magnesium"];

    /// <summary>The name.</summary>
    public string Name { get; }

    /// <summary>Young's modulus E.</summary>
    public Pressure YoungsModulus => _modulus.AsStated;

    /// <summary>Least Young's modulus of the handbooks; of a material of one's own, the value itself.</summary>
    public Pressure LowYoungsModulus { get; }

    /// <summary>Greatest Young's modulus of the handbooks; of a material of one's own, the value itself.</summary>
    public Pressure HighYoungsModulus { get; }

    /// <summary>Poisson's ratio ν.</summary>
    public double PoissonRatio => _poissonRatio.Value;

    /// <summary>Least Poisson's ratio of the handbooks; of a material of one's own, the value itself.</summary>
    public double LowPoissonRatio { get; }

    /// <summary>Greatest Poisson's ratio of the handbooks; of a material of one's own, the value itself.</summary>
    public double HighPoissonRatio { get; }

    /// <summary>Shear modulus G = E/(2(1 + ν)) (equation <c>material.shear-modulus</c>).</summary>
    public Pressure ShearModulus => Si.Pressure(ShearOf(Name));

    /// <summary>Mean coefficient of linear thermal expansion α, in the table from 20 to 100 °C; null when unknown.</summary>
    public CoefficientOfThermalExpansion? ThermalExpansion => _expansion?.AsStated;

    /// <summary>Least thermal expansion of the handbooks; of a material of one's own, the value itself.</summary>
    public CoefficientOfThermalExpansion? LowThermalExpansion { get; }

    /// <summary>Greatest thermal expansion of the handbooks; of a material of one's own, the value itself.</summary>
    public CoefficientOfThermalExpansion? HighThermalExpansion { get; }

    /// <summary>The bearing pressure that the user permits; null until <see cref="WithPermittedBearingPressure"/>.</summary>
    public Pressure? PermittedBearingPressure { get; }

    /// <summary>What VDI 2230 prints for grades of this material, edition beside edition; empty for a material of one's own.</summary>
    public IReadOnlyList<BearingPressureLimit> PublishedBearingPressures { get; }

    /// <summary>Where each value comes from, and which is from memory; null for a material of one's own.</summary>
    public Provenance? Provenance { get; }

    internal double Modulus => _modulus.Value;

    internal bool HasExpansion => _expansion is not null;

    internal Term ModulusOf(string owner) => _modulus.TermOf(owner);

    internal Term ShearOf(string owner) => MaterialEquations.ShearModulusEquation.Of(ModulusOf(owner), _poissonRatio.TermOf(owner));

    internal Term ExpansionOf(string owner) => _expansion!.Value.TermOf(owner);

    /// <summary>The material with a permitted bearing pressure, from a table or from a test.</summary>
    /// <param name="permitted">The pressure.</param>
    /// <returns>A new material.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is outside 1 kPa to 100 GPa.</exception>
    /// <example><code>ElasticMaterial.GreyCastIron.WithPermittedBearingPressure(Pressure.FromMegapascals(800))</code></example>
    public ElasticMaterial WithPermittedBearingPressure(Pressure permitted)
    {
        Domains.Stress.Check(permitted);
        return new ElasticMaterial(this, permitted);
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Name}: E {YoungsModulus.Gigapascals:0.###} GPa, ν {PoissonRatio:0.###}")
        + (ThermalExpansion is CoefficientOfThermalExpansion alpha ? Print.Text($", α {alpha.PpmPerKelvin:0.###}e-6/K") : "");

    private static CoefficientOfThermalExpansion Expansion(DataRow row, string column) => CoefficientOfThermalExpansion.FromPpmPerKelvin(row.Number(column));

    private static Provenance SourceOf(DataRow row) => new(
        $"E: {row["e_source"]}, {row["e_confidence"]}; ν: {row["nu_source"]}, {row["nu_confidence"]}; α: {row["alpha_source"]}, {row["alpha_confidence"]}", note: row["note"]);
}
