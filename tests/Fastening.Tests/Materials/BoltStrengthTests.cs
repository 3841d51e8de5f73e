using UnitsNet;

namespace Fastening.Tests.Materials;

public class BoltStrengthTests
{
    [Fact]
    public void Keeps_what_it_was_given()
    {
        var strength = new BoltStrength(Pressure.FromMegapascals(700), Pressure.FromMegapascals(450), Pressure.FromMegapascals(420.5));

        Assert.Equal(700, strength.TensileStrength.Megapascals);
        Assert.Equal(450, strength.YieldStrength.Megapascals);
        Assert.Equal(420.5, strength.ProofLoadStress.Megapascals);
        CommaCulture.Run(() => Assert.Equal("R_m 700 MPa, R_p 450 MPa, S_p 420.5 MPa", strength.ToString()));
    }

    [Theory]
    [InlineData(0, 640, 580, "tensileStrength")]
    [InlineData(-800, 640, 580, "tensileStrength")]
    [InlineData(2e6, 640, 580, "tensileStrength")]
    [InlineData(800, 0, 580, "yieldStrength")]
    [InlineData(800, 801, 580, "yieldStrength")]
    [InlineData(800, 640, -1, "proofLoadStress")]
    [InlineData(800, 640, 801, "proofLoadStress")]
    public void Stresses_out_of_order_or_domain_are_refused(double tensile, double yield, double proof, string parameter)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => new BoltStrength(
            Pressure.FromMegapascals(tensile), Pressure.FromMegapascals(yield), Pressure.FromMegapascals(proof)));
        Assert.Equal(parameter, refusal.ParamName);
        Assert.StartsWith(parameter + " is ", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Yield_and_proof_may_reach_the_tensile_strength()
    {
        Pressure stress = Pressure.FromMegapascals(800);
        Assert.Equal(800, new BoltStrength(stress, stress, stress).ProofLoadStress.Megapascals);
    }
}
