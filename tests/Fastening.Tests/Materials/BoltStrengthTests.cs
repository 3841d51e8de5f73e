using Fastening.Equations;
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
        Assert.Equal(420.5, strength.ProofLoadStress!.Value.Megapascals);
        Assert.Null(strength.Provenance);
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
    [InlineData(800, 640, 640.1, "proofLoadStress")]
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
        Assert.Equal(800, new BoltStrength(stress, stress, stress).ProofLoadStress!.Value.Megapascals);
    }

    [Fact]
    public void Without_a_proof_stress_there_is_no_proof_load()
    {
        var strength = new BoltStrength(Pressure.FromMegapascals(700), Pressure.FromMegapascals(450));
        ScrewThread m10 = ScrewThread.Parse("M10");

        Assert.Null(strength.ProofLoadStress);
        Assert.Null(strength.ProofLoad(m10));
        Assert.Null(strength.PublishedProofLoad(m10));
        Assert.Throws<InvalidOperationException>(() => Derivation.Of(() => strength.ProofLoad(m10)));
        Assert.Equal("R_m 700 MPa, R_p 450 MPa", strength.ToString());
        Assert.Equal("yieldStrength", Assert.Throws<ArgumentOutOfRangeException>(
            () => new BoltStrength(Pressure.FromMegapascals(700), Pressure.FromMegapascals(701))).ParamName);
    }

    /// <summary>ISO 898-1, minimum ultimate tensile loads, in newtons as printed; 1999 edition for 3.6.</summary>
    [Theory]
    [InlineData("M3", 400, 2010)]
    [InlineData("M4", 1220, 10_700)]
    [InlineData("M7", 500, 14_400)]
    [InlineData("M8", 330, 12_100)]
    [InlineData("M12", 500, 42_200)]
    [InlineData("M12", 1040, 87_700)]
    [InlineData("M14", 900, 104_000)]
    [InlineData("M16", 1040, 163_000)]
    public void Ultimate_load_as_published(string thread, double tensile, double newtons)
    {
        Pressure stress = Pressure.FromMegapascals(tensile);
        Close.To(newtons, new BoltStrength(stress, stress).PublishedUltimateLoad(ScrewThread.Parse(thread)).Newtons);
    }

    /// <summary>ISO 898-1, proof loads, in newtons as printed.</summary>
    [Theory]
    [InlineData("M10", "4.6", 13_000)]
    [InlineData("M14", "12.9", 112_000)]
    [InlineData("M18", "5.8", 73_000)]
    [InlineData("M20", "10.9", 203_000)]
    [InlineData("M24", "8.8", 212_000)]
    [InlineData("M27", "12.9", 445_000)]
    public void Proof_load_as_published(string designation, string propertyClass, double newtons)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        Close.To(newtons, PropertyClass.Parse(propertyClass).StrengthFor(thread).PublishedProofLoad(thread)!.Value.Newtons);
    }

    /// <summary>Exact: closed form A_s = (π/4)(d − (13√3/24) P)², which is (d_2 + d_3)/2 worked out; tabulated: 245 mm² for M20, ISO 898-1.</summary>
    [Fact]
    public void Exact_and_tabulated_area_stand_side_by_side()
    {
        ScrewThread m20 = ScrewThread.Parse("M20");
        BoltStrength strength = PropertyClass.Parse("10.9").StrengthFor(m20);
        double exact = Math.PI / 4 * Math.Pow(20 - 13 * Math.Sqrt(3) / 24 * 2.5, 2);

        Close.To(1040 * exact, strength.UltimateLoad(m20).Newtons);
        Close.To(830 * exact, strength.ProofLoad(m20)!.Value.Newtons);
        Close.To(1040 * 245, strength.UltimateLoad(m20, StressAreaBasis.NominalTable).Newtons);
        Close.To(830 * 245, strength.ProofLoad(m20, StressAreaBasis.NominalTable)!.Value.Newtons);
    }

    /// <summary>0.142 in² and 120 ksi: 17 040 lbf, printed 17 000; common practice of SAE J429 tables, no source read.</summary>
    [Fact]
    public void Unified_threads_are_tabulated_in_square_inches_and_pounds()
    {
        ScrewThread half = ScrewThread.Parse("1/2-13 UNC");
        BoltStrength strength = BoltGrade.Parse("SAE J429 5").StrengthFor(half);

        Close.To(17_040, strength.UltimateLoad(half, StressAreaBasis.NominalTable).PoundsForce);
        Close.To(17_000, strength.PublishedUltimateLoad(half).PoundsForce);
        Close.To(12_070, strength.ProofLoad(half, StressAreaBasis.NominalTable)!.Value.PoundsForce);
        Close.To(12_100, strength.PublishedProofLoad(half)!.Value.PoundsForce);
    }

    [Fact]
    public void A_custom_thread_has_no_tabulated_area()
    {
        ScrewThread square = ScrewThread.FromProfile(
            Length.FromMillimeters(16), Length.FromMillimeters(4), Angle.Zero, 1, Length.FromMillimeters(14), Length.FromMillimeters(12));
        var strength = new BoltStrength(Pressure.FromMegapascals(800), Pressure.FromMegapascals(640), Pressure.FromMegapascals(580));

        Close.To(800 * Math.PI / 4 * 13 * 13, strength.UltimateLoad(square).Newtons);
        Assert.Equal("thread", Assert.Throws<ArgumentException>(() => strength.PublishedUltimateLoad(square)).ParamName);
        Assert.Throws<ArgumentException>(() => strength.ProofLoad(square, StressAreaBasis.NominalTable));
    }

    [Theory]
    [InlineData(StressAreaBasis.Exact, 6)]
    [InlineData(StressAreaBasis.NominalTable, 1)]
    public void The_work_ends_bit_for_bit_on_the_load(StressAreaBasis basis, int steps)
    {
        ScrewThread m12 = ScrewThread.Parse("M12");
        BoltStrength strength = PropertyClass.Parse("10.9").StrengthFor(m12);

        Assert.Equal(strength.UltimateLoad(m12, basis).Newtons, Derivation.Of(() => strength.UltimateLoad(m12, basis)).Result);
        Assert.Equal(strength.ProofLoad(m12, basis)!.Value.Newtons, Derivation.Of(() => strength.ProofLoad(m12, basis))!.Result);
        Assert.Equal(steps, Derivation.Of(() => strength.UltimateLoad(m12, basis)).Steps.Count);
        Assert.Equal("material.ultimate-load", Derivation.Of(() => strength.UltimateLoad(m12, basis)).Steps[^1].Equation.Id);
    }

    [Fact]
    public void Remembers_thread_and_class_it_was_looked_up_for()
    {
        ScrewThread m20 = ScrewThread.Parse("M20");
        BoltStrength looked = PropertyClass.Parse("8.8").StrengthFor(m20);
        Assert.Same(m20, looked.Thread);
        Assert.Equal("ISO 898-1 class 8.8", looked.ClassOrGrade);
        Assert.Equal("SAE J429 5", BoltGrade.Parse("SAE J429 5").StrengthFor(ScrewThread.Parse("1/2-13 UNC")).ClassOrGrade);

        var own = new BoltStrength(Pressure.FromMegapascals(700), Pressure.FromMegapascals(450));
        Assert.Null(own.Thread);
        Assert.Null(own.ClassOrGrade);
        Assert.True(own.UltimateLoad(m20) > own.UltimateLoad(ScrewThread.Parse("M16")));
    }

    /// <summary>ISO 898-1: class 8.8 has 800 MPa up to 16 mm and 830 MPa above; SAE J429 grade 5 120 ksi up to 1 in and 105 ksi above.</summary>
    [Theory]
    [InlineData("8.8", "M20", "M16")]
    [InlineData("8.8", "M16", "M20")]
    [InlineData("8.8", "M16", "M16x1.5")]
    [InlineData("SAE J429 5", "1-8 UNC", "1 1/4-7 UNC")]
    public void Strength_of_one_size_is_refused_on_another(string grade, string asked, string used)
    {
        ScrewThread thread = ScrewThread.Parse(asked), other = ScrewThread.Parse(used);
        BoltStrength strength = PropertyClass.TryParse(grade, out PropertyClass? found) ? found.StrengthFor(thread) : BoltGrade.Parse(grade).StrengthFor(thread);
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(
            other, BearingSurface.Annulus(1.5 * other.NominalDiameter, 1.1 * other.NominalDiameter), new FrictionCoefficients(0.12, 0.1));

        foreach (Action use in new Action[]
        {
            () => strength.UltimateLoad(other), () => strength.ProofLoad(other), () => strength.PublishedUltimateLoad(other), () => strength.PublishedProofLoad(other),
            () => Derivation.Of(() => strength.UltimateLoad(other)), () => Derivation.Of(() => strength.ProofLoad(other, StressAreaBasis.NominalTable)),
            () => PublishedPreload.ReusableJoint(strength, other), () => PublishedPreload.PermanentJoint(strength, other),
            () => model.PermittedPreload(strength, Ratio.FromPercent(90)), () => Derivation.Of(() => model.PermittedPreload(strength, Ratio.FromPercent(90))),
            () => JointCapacity.NothingStated.WithBolt(model, strength, Ratio.FromPercent(50)),
        })
        {
            ArgumentException refusal = Assert.Throws<ArgumentException>(use);
            Assert.Contains(refusal.ParamName, new[] { "thread", "strength" });
            Assert.Contains(thread.Designation, refusal.Message, StringComparison.Ordinal);
            Assert.Contains(other.Designation, refusal.Message, StringComparison.Ordinal);
        }

        Assert.True(strength.UltimateLoad(thread).Newtons > 0);
        Assert.True(strength.UltimateLoad(ScrewThread.FromProfile(
            thread.NominalDiameter, thread.Pitch, Angle.FromDegrees(30), 1, thread.PitchDiameter, thread.RootDiameter)).Newtons > 0);
    }
}
