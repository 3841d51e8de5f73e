namespace Fastening.Tests.Materials;

public class BearingPressureLimitTests
{
    /// <summary>VDI 2230:2003 Table A9, in a table that reproduces it: tensile strength and limiting surface pressure in MPa; true = unverified there.</summary>
    [Theory]
    [InlineData("1.0036", 340, 490, false)]
    [InlineData("1.0553", 510, 760, false)]
    [InlineData("1.1192", 700, 630, true)]
    [InlineData("1.4401", 510, 460, true)]
    [InlineData("0.6020", 250, 900, false)]
    [InlineData("3.3547.08", 260, 230, true)]
    [InlineData("3.7165.10", 890, 890, true)]
    public void Edition_of_2003(string number, double tensile, double limit, bool unverified)
    {
        BearingPressureLimit row = BearingPressureLimit.Vdi2230Of2003.Single(x => x.MaterialNumber == number);

        Assert.Equal(tensile, row.TensileStrength.Megapascals, 9);
        Assert.Equal(limit, row.Limit.Megapascals, 9);
        Assert.Equal(unverified, row.IsUnverified);
        Assert.Equal("VDI 2230:2003", row.Provenance.Source);
    }

    /// <summary>VDI 2230:1986, in the same table.</summary>
    [Theory]
    [InlineData("St 37", 370, 260)]
    [InlineData("St 50", 500, 420)]
    [InlineData("GG 25", 250, 800)]
    [InlineData("X5CrNiMo18.10", 500, 210)]
    [InlineData("GD MgAl 9", 300, 220)]
    public void Edition_of_1986(string material, double tensile, double limit)
    {
        BearingPressureLimit row = BearingPressureLimit.Vdi2230Of1986.Single(x => x.Material == material);

        Assert.Equal(tensile, row.TensileStrength.Megapascals, 9);
        Assert.Equal(limit, row.Limit.Megapascals, 9);
        Assert.Null(row.MaterialNumber);
        Assert.Equal("VDI 2230:1986", row.Provenance.Source);
    }

    [Fact]
    public void Both_editions_are_whole_and_print_in_every_culture()
    {
        Assert.Equal((25, 14), (BearingPressureLimit.Vdi2230Of2003.Count, BearingPressureLimit.Vdi2230Of1986.Count));
        string[] names = [.. ElasticMaterial.All.Select(m => m.Name), ""];
        Assert.All(BearingPressureLimit.Vdi2230Of2003.Concat(BearingPressureLimit.Vdi2230Of1986), x => Assert.Contains(x.ElasticMaterialName, names));
        CommaCulture.Run(() => Assert.Equal("AZ91: 280 MPa (VDI 2230:2003, unverified there)", BearingPressureLimit.Vdi2230Of2003.Single(x => x.Material == "AZ91").ToString()));
    }
}
