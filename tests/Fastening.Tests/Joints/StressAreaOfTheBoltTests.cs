using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>Free thread by root, stress or stated area; the stress area exact or as tabulated, the same on both sides of a comparison.</summary>
public class StressAreaOfTheBoltTests
{
    private static readonly ScrewThread M16 = ScrewThread.Parse("M16");
    private static readonly Length Free = Length.FromMillimeters(15);

    /// <summary>ISO 898-1: d₃ 13.546 mm, A_s 156.7, tabulated 157 mm².</summary>
    [Fact]
    public void Each_area_by_its_name()
    {
        Assert.Equal(Math.PI / 4 * 13.546 * 13.546, BoltSection.OfRootArea(Free, M16).Area.SquareMillimeters, 0.01);
        Assert.Equal(156.67, BoltSection.OfStressArea(Free, M16).Area.SquareMillimeters, 0.01);
        Close.To(157, BoltSection.OfStressArea(Free, M16, StressAreaBasis.NominalTable).Area.SquareMillimeters);
        Close.To(150, BoltSection.OfArea(Free, Area.FromSquareMillimeters(150)).Area.SquareMillimeters);
        Assert.Equal("basis", Assert.Throws<ArgumentOutOfRangeException>(() => BoltSection.OfStressArea(Free, M16, (StressAreaBasis)7)).ParamName);
    }

    /// <summary>Shigley 9th ed. eq. (8-17) by hand with the tabulated 157 mm²: 20 mm shank of 201.06 mm², 20 mm thread, 205 GPa.</summary>
    [Fact]
    public void A_textbook_bolt_with_the_tabulated_area()
    {
        BoltCompliance bolt = BoltCompliance.Textbook(
            M16, Length.FromMillimeters(60), Length.FromMillimeters(40), Length.FromMillimeters(40), ElasticMaterial.Steel, StressAreaBasis.NominalTable);
        double expected = (20 / (Math.PI * 64) + 20 / 157.0) / 205e3; // mm/N
        Close.To(expected, bolt.MetersPerNewton * 1e3);
        Assert.Equal(bolt.MetersPerNewton, Derivation.Of(() => bolt.MetersPerNewton).Result);
        Close.To(157, bolt.Sections[1].Area.SquareMillimeters);
        BoltCompliance exact = BoltCompliance.Textbook(
            M16, Length.FromMillimeters(60), Length.FromMillimeters(40), Length.FromMillimeters(40), ElasticMaterial.Steel);
        Assert.True(exact.Stiffness < bolt.Stiffness);
    }

    /// <summary>A preload of exactly the proof load leaves no load to grow: on one basis n_L is 0, on two it is not.</summary>
    [Theory]
    [InlineData(StressAreaBasis.Exact)]
    [InlineData(StressAreaBasis.NominalTable)]
    public void Preload_and_proof_load_are_compared_on_one_basis(StressAreaBasis basis)
    {
        BoltStrength strength = PropertyClass.Parse("8.8").StrengthFor(M16);
        Joint joint = Joint.FromStiffness(M16, ForcePerLength.FromKilonewtonsPerMillimeter(300), ForcePerLength.FromKilonewtonsPerMillimeter(900));
        Force proof = strength.ProofLoad(M16, basis)!.Value;
        ShigleyFactors factors = joint.ShigleyFactorsAt(proof, Force.FromKilonewtons(10), strength, basis);
        Assert.Equal(0, factors.Overload, 12);
        Close.To(proof.Newtons / (proof.Newtons + 0.25 * 10_000), factors.Yielding);
        Assert.Equal(factors.Overload, Derivation.Of(() => joint.ShigleyFactorsAt(proof, Force.FromKilonewtons(10), strength, basis).Overload).Result);
    }
}
