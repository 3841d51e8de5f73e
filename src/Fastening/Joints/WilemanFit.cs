using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The coefficients of the fit k = E d A e^(B d/l) for a material.</summary>
/// <remarks>
/// Wileman, Choudhury and Green, J. Mech. Design 113 (1991), as in Shigley 9th ed. (2011) Table 8-8. The coefficients depend on the material
/// through Poisson's ratio only; <see cref="General"/> is the fit to all four.
/// </remarks>
/// <example><code>WilemanFit.Steel.Coefficient   // 0.78715</code></example>
public sealed class WilemanFit
{
    private static readonly Dictionary<string, WilemanFit> Table = DataFile.Read("wileman-coefficients.csv")
        .Select(row => new WilemanFit(row)).ToDictionary(fit => fit.Name);

    private WilemanFit(DataRow row)
    {
        Name = row["name"];
        Modulus = row["e_gpa"].Length == 0 ? null : row.Number("e_gpa") * 1e9;
        Coefficient = row.Number("a");
        Exponent = row.Number("b");
        Provenance = new Provenance("Wileman, Choudhury and Green, J. Mech. Design 113 (1991), as in Shigley 9th ed. (2011) Table 8-8", row["confidence"]);
    }

    /// <summary>Every row of the table.</summary>
    public static IReadOnlyList<WilemanFit> All { get; } = Array.AsReadOnly(Table.Values.ToArray());

    /// <summary>Steel.</summary>
    public static WilemanFit Steel => Table["steel"];

    /// <summary>Grey cast iron.</summary>
    public static WilemanFit GreyCastIron => Table["grey cast iron"];

    /// <summary>Aluminium.</summary>
    public static WilemanFit Aluminium => Table["aluminium"];

    /// <summary>Copper.</summary>
    public static WilemanFit Copper => Table["copper"];

    /// <summary>The expression fitted to all four materials.</summary>
    public static WilemanFit General => Table["any material"];

    /// <summary>The material.</summary>
    public string Name { get; }

    /// <summary>Young's modulus of the fit; null for the general one.</summary>
    public Pressure? YoungsModulus => Modulus is double modulus ? Si.Pressure(modulus) : null;

    /// <summary>Coefficient A.</summary>
    public double Coefficient { get; }

    /// <summary>Exponent B.</summary>
    public double Exponent { get; }

    /// <summary>Where the numbers come from.</summary>
    public Provenance Provenance { get; }

    internal double? Modulus { get; }

    internal Term CoefficientTerm => Term.Given(Coefficient, "coefficient of the fit", Name);

    internal Term ExponentTerm => Term.Given(Exponent, "exponent of the fit", Name);

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Name}: A {Coefficient}, B {Exponent}");
}
