using UnitsNet;

namespace Fastening.Tests.Materials;

public class ElasticMaterialTests
{
    /// <summary>
    /// Handbook averages: Callister Tables B.2 and B.6, Gere, EN 1563:1997 and EN 10088-1 as quoted, data sheets. From memory: ν and α of grey iron (EN 1561), ν of
    /// ductile iron, α of EN AW-6082, E of cast aluminium (71 was read for its neighbour A380), E of brass (96 to 110 was read).
    /// </summary>
    public static TheoryData<string, double, double, double> Values => new()
    {
        { "carbon and alloy steel", 205, 0.30, 11.7 },
        { "austenitic stainless steel", 200, 0.30, 16 },
        { "grey cast iron", 110, 0.26, 11.7 },
        { "ductile cast iron", 169, 0.275, 11.2 },
        { "wrought aluminium", 70, 0.33, 23.4 },
        { "cast aluminium", 75, 0.33, 21 },
        { "brass", 97, 0.34, 20.5 },
        { "titanium", 114, 0.34, 8.6 },
        { "magnesium", 45, 0.35, 26 },
    };

    [Theory]
    [MemberData(nameof(Values))]
    public void Constants_of_the_table(string name, double gigapascals, double poisson, double expansion)
    {
        ElasticMaterial material = ElasticMaterial.All.Single(m => m.Name == name);

        Assert.Equal(gigapascals, material.YoungsModulus.Gigapascals, 9);
        Assert.Equal(poisson, material.PoissonRatio, 12);
        Assert.Equal(expansion, material.ThermalExpansion!.Value.PpmPerKelvin, 9);
        Close.To(gigapascals / (2 + 2 * poisson), material.ShearModulus.Gigapascals);
        Assert.Null(material.PermittedBearingPressure);
    }

    [Fact]
    public void Every_material_has_a_name_of_its_own_and_lies_in_its_range()
    {
        ElasticMaterial[] named =
        [
            ElasticMaterial.Steel, ElasticMaterial.AusteniticStainlessSteel, ElasticMaterial.GreyCastIron, ElasticMaterial.DuctileCastIron,
            ElasticMaterial.WroughtAluminium, ElasticMaterial.CastAluminium, ElasticMaterial.Brass, ElasticMaterial.Titanium, ElasticMaterial.Magnesium,
        ];
        Assert.Equal(named, ElasticMaterial.All);
        Assert.All(named, m =>
        {
            Assert.InRange(m.YoungsModulus, m.LowYoungsModulus, m.HighYoungsModulus);
            Assert.InRange(m.PoissonRatio, m.LowPoissonRatio, m.HighPoissonRatio);
            Assert.InRange(m.ThermalExpansion!.Value, m.LowThermalExpansion!.Value, m.HighThermalExpansion!.Value);
            Assert.Matches("^E: .+, .+; ν: .+, .+; α: .+, .+$", m.Provenance!.Source);
        });
        Assert.EndsWith("ν: EN 1561, from memory; α: EN 1561, from memory", ElasticMaterial.GreyCastIron.Provenance!.Source, StringComparison.Ordinal);
        Assert.True(ElasticMaterial.GreyCastIron.Provenance.IsFromMemory);
        Assert.False(ElasticMaterial.Steel.Provenance!.IsFromMemory);
    }

    [Fact]
    public void Prints_the_same_in_every_culture() => CommaCulture.Run(() =>
    {
        Assert.Equal("grey cast iron: E 110 GPa, ν 0.26, α 11.7e-6/K", ElasticMaterial.GreyCastIron.ToString());
        Assert.Equal("own: E 3.2 GPa, ν 0.4", new ElasticMaterial("own", Pressure.FromGigapascals(3.2), 0.4, null).ToString());
    });

    [Fact]
    public void A_material_of_ones_own_is_its_own_range()
    {
        CoefficientOfThermalExpansion expansion = CoefficientOfThermalExpansion.FromPpmPerKelvin(1.3);
        var nickelSteel = new ElasticMaterial("36 % nickel steel", Pressure.FromGigapascals(141), 0.29, expansion);

        Assert.Equal((141, 141), (nickelSteel.LowYoungsModulus.Gigapascals, nickelSteel.HighYoungsModulus.Gigapascals));
        Assert.Equal((0.29, 0.29), (nickelSteel.LowPoissonRatio, nickelSteel.HighPoissonRatio));
        Assert.Equal(expansion, nickelSteel.LowThermalExpansion);
        Assert.Equal(expansion, nickelSteel.HighThermalExpansion);
        Assert.Null(nickelSteel.Provenance);
        Assert.Empty(nickelSteel.PublishedBearingPressures);
    }

    [Theory]
    [InlineData(0, 0.3, 12, "youngsModulus")]
    [InlineData(1e5, 0.3, 12, "youngsModulus")]
    [InlineData(205, -0.01, 12, "poissonRatio")]
    [InlineData(205, 0.5, 12, "poissonRatio")]
    [InlineData(205, double.NaN, 12, "poissonRatio")]
    [InlineData(205, 0.3, 1200, "thermalExpansion")]
    [InlineData(205, 0.3, -1200, "thermalExpansion")]
    public void What_is_outside_its_domain_is_refused(double gigapascals, double poisson, double expansion, string parameter) => Assert.Equal(
        parameter,
        Assert.Throws<ArgumentOutOfRangeException>(() => new ElasticMaterial(
            "x", Pressure.FromGigapascals(gigapascals), poisson, CoefficientOfThermalExpansion.FromPpmPerKelvin(expansion))).ParamName);

    [Fact]
    public void A_permitted_bearing_pressure_is_given_and_changes_nothing_else()
    {
        ElasticMaterial iron = ElasticMaterial.GreyCastIron;
        ElasticMaterial limited = iron.WithPermittedBearingPressure(Pressure.FromMegapascals(800));

        Assert.Equal(800, limited.PermittedBearingPressure!.Value.Megapascals);
        Assert.Null(iron.PermittedBearingPressure);
        Assert.All(
            typeof(ElasticMaterial).GetProperties().Where(p => p.GetMethod!.IsStatic is false && p.Name != nameof(ElasticMaterial.PermittedBearingPressure)),
            p => Assert.Equal(p.GetValue(iron), p.GetValue(limited)));
    }

    /// <summary>VDI 2230, both editions side by side: EN-GJL-250 has 900 MPa (2003) and 800 MPa (1986).</summary>
    [Fact]
    public void Published_bearing_pressures_stand_edition_beside_edition()
    {
        Assert.Equal(
            [("VDI 2230:2003", "EN-GJL-250 (GG-25)", 900.0), ("VDI 2230:1986", "GG 25", 800.0)],
            ElasticMaterial.GreyCastIron.PublishedBearingPressures.Select(x => (x.Provenance.Source, x.Material, x.Limit.Megapascals)));
        Assert.Equal([220.0, 290.0], ElasticMaterial.CastAluminium.PublishedBearingPressures.Select(x => x.Limit.Megapascals));
        Assert.Empty(ElasticMaterial.Brass.PublishedBearingPressures);
    }
}
