using Fastening.Equations;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Threads;

[Properties(Arbitrary = [typeof(FreeThreads)])]
public class EngagementStrengthTests
{
    private static readonly Length Deep = Length.FromMeters(1000);
    private static readonly ThreadEngagement M16 = ThreadEngagement.For(ScrewThread.Parse("M16"), Length.FromMillimeters(20));

    [Fact]
    public void Forces_are_areas_times_strengths()
    {
        EngagementStrength strength = M16.StrengthFor(Megapascals(996), Megapascals(996), Megapascals(540), Megapascals(150));

        Close.To(996e6 * M16.Thread.StressArea.SquareMeters, strength.BoltBreakingForce.Newtons);
        Close.To(540e6 * M16.ExternalShearArea.SquareMeters, strength.ExternalStripForce.Newtons);
        Close.To(150e6 * M16.InternalShearArea.SquareMeters, strength.InternalStripForce.Newtons);
        Assert.Equal(EngagementFailure.InternalThreadStrips, strength.FailsFirst);
        Assert.Equal(strength.InternalStripForce, strength.FailureForce);
    }

    /// <summary>
    /// FED-STD-H28/2 (from memory): L_e = 2 A_s/(π K_n (1/2 + n (E_s − K_n)/√3)) where bolt and nut are of one material with a shear strength of half
    /// the tensile strength. 1/2-13 UNC, inches.
    /// </summary>
    [Fact]
    public void Least_length_of_equal_materials_is_that_of_the_federal_standard()
    {
        ThreadEngagement engagement = ThreadEngagement.For(ScrewThread.Parse("1/2-13 UNC"), Length.FromInches(0.3));
        EngagementStrength strength = engagement.StrengthFor(Megapascals(800), Megapascals(800), Megapascals(400), Megapascals(400));

        const double n = 13, minor = 0.434, pitch = 0.4435;
        double area = Math.PI / 4 * Math.Pow(0.5 - 9 * Math.Sqrt(3) / 16 / n, 2);
        Close.To(2 * area / (Math.PI * minor * (0.5 + n * (pitch - minor) / Math.Sqrt(3))), strength.LeastLength.Inches);
    }

    /// <summary>The same standard lengthens it by J = AS_s R_m,bolt/(AS_n R_m,nut) where the nut is the weaker.</summary>
    [Fact]
    public void A_weaker_internal_thread_needs_the_length_in_proportion()
    {
        EngagementStrength equal = M16.StrengthFor(Megapascals(1000), Megapascals(1000), Megapascals(500), Megapascals(500));
        EngagementStrength weak = M16.StrengthFor(Megapascals(1000), Megapascals(1000), Megapascals(500), Megapascals(125));

        double proportion = M16.ExternalShearArea.SquareMeters * 500 / (M16.InternalShearArea.SquareMeters * 125);
        Close.To(proportion * equal.LeastLength.Meters, weak.LeastLength.Meters);
    }

    [Property]
    public void At_the_least_length_the_weaker_thread_strips_as_the_bolt_breaks(FreeThread free, PositiveInt external, PositiveInt inside)
    {
        ThreadLimits limits = ThreadLimits.AtBasicSize(ScrewThread.IsoMetric(free.Diameter, free.Pitch));
        Pressure bolt = Megapascals(300 + external.Get % 1000);
        EngagementStrength any = ThreadEngagement.For(limits, Length.FromMillimeters(3))
            .StrengthFor(bolt, bolt, 0.6 * bolt, bolt * (0.3 + inside.Get % 10 * 0.1));
        foreach (Func<EngagementStrength, EngagementStrength> reduce in Reductions(any))
        {
            Length least = reduce(any).LeastLength;
            EngagementStrength at = Over(least), shorter = Over(0.999 * least), longer = Over(1.001 * least);

            Close.To(at.BoltBreakingForce.Newtons, Math.Min(at.ExternalStripForce.Newtons, at.InternalStripForce.Newtons));
            Assert.Equal(EngagementFailure.BoltBreaks, at.FailsFirst);
            Assert.Equal(EngagementFailure.BoltBreaks, longer.FailsFirst);
            Assert.NotEqual(EngagementFailure.BoltBreaks, shorter.FailsFirst);
            Assert.True(shorter.FailureForce < at.FailureForce);
            Close.To(least.Meters, longer.LeastLength.Meters);

            EngagementStrength Over(Length length) => reduce(
                any.Engagement.WithLength(length).StrengthFor(bolt, bolt, 0.6 * bolt, bolt * (0.3 + inside.Get % 10 * 0.1)));
        }
    }

    [Theory]
    [InlineData(900, 540, 150, EngagementFailure.InternalThreadStrips)]
    [InlineData(900, 540, 700, EngagementFailure.BoltBreaks)]
    [InlineData(900, 250, 700, EngagementFailure.ExternalThreadStrips)]
    public void The_least_force_says_what_fails_first(double tensile, double external, double inside, EngagementFailure first)
    {
        EngagementStrength strength = M16.StrengthFor(Megapascals(tensile), Megapascals(tensile), Megapascals(external), Megapascals(inside));

        Assert.Equal(first, strength.FailsFirst);
        Assert.Equal(
            new[] { strength.BoltBreakingForce, strength.ExternalStripForce, strength.InternalStripForce }.Min(), strength.FailureForce);
    }

    /// <summary>
    /// Alexander's factors (1977), from memory, at hand-picked points: 0.75 at 1.4 d and 1 from 1.9 d; both bending factors are 0.897 where the threads
    /// are equally strong, and the one of the stronger thread stays there.
    /// </summary>
    [Fact]
    public void Reduction_factors_at_the_ends_of_their_range()
    {
        Close.To(0.75, Fastening.Equations.EngagementEquations.NutDilationFactor(1.4, 1));
        Close.To(0.84, Fastening.Equations.EngagementEquations.NutDilationFactor(1.5, 1));
        Close.To(1, Fastening.Equations.EngagementEquations.NutDilationFactor(1.9, 1));
        Close.To(1, Fastening.Equations.EngagementEquations.NutDilationFactor(3, 1));
        foreach (double stronger in new[] { 1, 1.5, 2.2 }) Close.To(0.897, Fastening.Equations.EngagementEquations.InternalBendingFactor(stronger));
        foreach (double weaker in new[] { 0.4, 0.7, 1 }) Close.To(0.897, Fastening.Equations.EngagementEquations.ExternalBendingFactor(weaker), 4e-4);
    }

    [Fact]
    public void A_nut_bears_less_than_a_tapped_hole_and_that_less_than_the_areas_alone()
    {
        EngagementStrength alone = M16.StrengthFor(Megapascals(1000), Megapascals(1000), Megapascals(600), Megapascals(450));
        EngagementStrength hole = alone.InTappedHole(Deep), nut = alone.InNut(Length.FromMillimeters(24), Deep);

        // R_S is about 1.1 here: C_3 = 0.897, and C_1 = 0.84 for 24 mm on M16.
        Assert.InRange(alone.StrippingRatio, 1, 1.2);
        Assert.Equal(alone.StrippingRatio, nut.StrippingRatio);
        Close.To(0.897, hole.InternalStripForce / alone.InternalStripForce);
        Close.To(0.84, nut.InternalStripForce / hole.InternalStripForce);
        Close.To(0.84, nut.ExternalStripForce / hole.ExternalStripForce);
        Assert.True(hole.ExternalStripForce < alone.ExternalStripForce);
        Assert.Equal(alone.BoltBreakingForce, nut.BoltBreakingForce);
        Assert.True(nut.LeastLength > hole.LeastLength && hole.LeastLength > alone.LeastLength);
        Close.To(nut.InternalStripForce.Newtons, hole.InNut(Length.FromMillimeters(24), Deep).InternalStripForce.Newtons);
    }

    [Fact]
    public void Derivations_end_on_their_answers()
    {
        EngagementStrength alone = M16.StrengthFor(Megapascals(996), Megapascals(996), Megapascals(540), Megapascals(430));
        Assert.Equal(3, Reductions(alone).Count());
        foreach (Func<EngagementStrength, EngagementStrength> reduce in Reductions(alone))
        {
            EngagementStrength strength = reduce(alone);
            Equations.DerivationCheck.EndsOn(strength.BoltBreakingForce.Newtons, Derivation.Of(() => strength.BoltBreakingForce));
            Equations.DerivationCheck.EndsOn(strength.ExternalStripForce.Newtons, Derivation.Of(() => strength.ExternalStripForce));
            Equations.DerivationCheck.EndsOn(strength.InternalStripForce.Newtons, Derivation.Of(() => strength.InternalStripForce));
            Equations.DerivationCheck.EndsOn(strength.FailureForce.Newtons, Derivation.Of(() => strength.FailureForce));
            Equations.DerivationCheck.EndsOn(strength.LeastLength.Meters, Derivation.Of(() => strength.LeastLength));
        }
    }

    [Theory]
    [InlineData(0, 500, 500, "leastTensileStrength")]
    [InlineData(1000, 0, 500, "externalShearStrength")]
    [InlineData(1000, 1001, 500, "externalShearStrength")]
    [InlineData(1000, 500, -1, "internalShearStrength")]
    [InlineData(1000, 500, 1e7, "internalShearStrength")]
    public void Strengths_out_of_their_domain_are_refused(double tensile, double external, double inside, string parameter)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => M16.StrengthFor(Megapascals(tensile), Megapascals(tensile), Megapascals(external), Megapascals(inside)));
        Assert.Equal(parameter, refusal.ParamName);
    }

    [Fact]
    public void Nuts_and_ratios_without_published_factors_are_refused()
    {
        EngagementStrength steel = M16.StrengthFor(Megapascals(1000), Megapascals(1000), Megapascals(600), Megapascals(500));
        EngagementStrength soft = M16.StrengthFor(Megapascals(1000), Megapascals(1000), Megapascals(600), Megapascals(100));
        EngagementStrength hard = M16.StrengthFor(Megapascals(1000), Megapascals(1000), Megapascals(200), Megapascals(600));

        Assert.Equal("widthAcrossFlats", Assert.Throws<ArgumentOutOfRangeException>(() => steel.InNut(Length.FromMillimeters(22.3), Deep)).ParamName);
        Assert.Equal("widthAcrossFlats", Assert.Throws<ArgumentOutOfRangeException>(() => steel.InNut(Length.FromMillimeters(161), Deep)).ParamName);
        Assert.Contains("0.4 to 2.2", Assert.Throws<InvalidOperationException>(() => soft.InTappedHole(Deep)).Message, StringComparison.Ordinal);
        Assert.Contains("0.4 to 2.2", Assert.Throws<InvalidOperationException>(() => hard.InNut(Length.FromMillimeters(24), Deep)).Message, StringComparison.Ordinal);
    }

    /// <summary>
    /// The bolt may be stronger than its class requires. VDI 2230-1:2015 §5.5.5, R11, from memory: m_eff from the greatest tensile strength. Against the
    /// closed form R_m,max A_s/(τ AS_n per length); the nut thread governs here.
    /// </summary>
    [Fact]
    public void The_length_is_that_of_the_strongest_bolt_and_the_load_that_of_the_weakest()
    {
        EngagementStrength weak = M16.StrengthFor(Megapascals(830), Megapascals(830), Megapascals(540), Megapascals(350));
        EngagementStrength range = M16.StrengthFor(Megapascals(830), Megapascals(996), Megapascals(540), Megapascals(350));

        Close.To(1.2 * weak.LeastLength.Meters, range.LeastLength.Meters);
        Close.To(996e6 * M16.Thread.StressArea.SquareMeters / (350e6 * M16.InternalShearArea.SquareMeters / 0.02), range.LeastLength.Meters);
        Assert.Equal(weak.FailureForce, range.FailureForce);
        Close.To(1.2 * range.BoltBreakingForce.Newtons, range.GreatestBoltBreakingForce.Newtons);
        Equations.DerivationCheck.EndsOn(range.LeastLength.Meters, Derivation.Of(() => range.LeastLength));
    }

    /// <summary>Hand-picked: 996 MPa × 156.67 mm² = 156.0 kN for the strongest bolt, 130.0 kN for the weakest; the nut thread strips between, then above.</summary>
    [Theory]
    [InlineData(200, EngagementFailure.DependsOnBolt)]
    [InlineData(150, EngagementFailure.InternalThreadStrips)]
    [InlineData(330, EngagementFailure.BoltBreaks)]
    public void That_the_bolt_breaks_first_must_hold_for_the_strongest_bolt(double inside, EngagementFailure first)
    {
        EngagementStrength strength = M16.StrengthFor(Megapascals(830), Megapascals(996), Megapascals(540), Megapascals(inside));
        Assert.Equal(first, strength.FailsFirst);
        Assert.Equal(first == EngagementFailure.BoltBreaks, strength.LeastLength <= M16.EngagedLength);
    }

    /// <summary>VDI 2230-1 §5.5.5, from memory: 2 pitches in the edition of 2015, 0.8 in that of 2003.</summary>
    [Fact]
    public void Incomplete_threads_come_on_top_by_edition()
    {
        EngagementStrength strength = M16.StrengthFor(Megapascals(830), Megapascals(996), Megapascals(540), Megapascals(350));
        Close.To(strength.LeastLength.Millimeters + 4, strength.LeastTotalLength(IncompleteThreads.Vdi2230Of2015).Millimeters);
        Close.To(strength.LeastLength.Millimeters + 1.6, strength.LeastTotalLength(IncompleteThreads.Vdi2230Of2003).Millimeters);
        Equations.DerivationCheck.EndsOn(
            strength.LeastTotalLength(IncompleteThreads.Vdi2230Of2003).Meters, Derivation.Of(() => strength.LeastTotalLength(IncompleteThreads.Vdi2230Of2003)));
    }

    [Fact]
    public void More_thread_than_nut_or_hole_have_cannot_engage()
    {
        EngagementStrength strength = M16.StrengthFor(Megapascals(830), Megapascals(996), Megapascals(540), Megapascals(430));
        ArgumentOutOfRangeException nut = Assert.Throws<ArgumentOutOfRangeException>(
            () => strength.InNut(Length.FromMillimeters(24), nutHeight: Length.FromMillimeters(14.8)));
        Assert.Equal("nutHeight", nut.ParamName);
        Assert.StartsWith("nutHeight is 14.8 mm; it must be at least the engaged length, 20 mm.", nut.Message, StringComparison.Ordinal);
        Assert.Equal("threadDepth", Assert.Throws<ArgumentOutOfRangeException>(() => strength.InTappedHole(Length.FromMillimeters(19.9))).ParamName);
        Assert.Equal(20, strength.InTappedHole(Length.FromMillimeters(20)).ThreadLength!.Value.Millimeters, 9);
        Assert.Null(strength.ThreadLength);
        Assert.Equal("greatestTensileStrength", Assert.Throws<ArgumentOutOfRangeException>(
            () => M16.StrengthFor(Megapascals(830), Megapascals(829), Megapascals(540), Megapascals(350))).ParamName);
    }

    [Theory]
    [InlineData(0.399)]
    [InlineData(2.201)]
    [InlineData(double.NaN)]
    public void Bending_factors_are_not_extrapolated(double ratio)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Fastening.Equations.EngagementEquations.ExternalBendingFactor(ratio));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fastening.Equations.EngagementEquations.InternalBendingFactor(ratio));
    }

    [Theory]
    [InlineData(1.399)]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void The_widening_of_a_nut_is_not_extrapolated(double width) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Fastening.Equations.EngagementEquations.NutDilationFactor(width, 1));

    [Fact]
    public void Extreme_inputs_stay_finite()
    {
        EngagementStrength strength = M16.WithLength(Length.FromMicrometers(1)).StrengthFor(Megapascals(1e5), Megapascals(1e5), Megapascals(1e-3), Megapascals(1e-3));

        Assert.True(double.IsFinite(strength.LeastLength.Meters) && strength.FailureForce.Newtons > 0);
    }

    [Fact]
    public void Says_what_it_is() => CommaCulture.Run(() => Assert.Matches(
        @"^M16 6g/6H over 20 mm: bolt 156\.\d+ … 156\.\d+ kN, external thread [\d.]+ kN, internal thread [\d.]+ kN$",
        M16.StrengthFor(Megapascals(1000), Megapascals(1000), Megapascals(600), Megapascals(500)).ToString()));

    /// <summary>The shear areas alone, and the reduced forms where their factors are published.</summary>
    private static IEnumerable<Func<EngagementStrength, EngagementStrength>> Reductions(EngagementStrength any) => any.StrippingRatio is >= 0.4 and <= 2.2
        ? [alone => alone, alone => alone.InTappedHole(Deep), alone => alone.InNut(1.55 * any.Engagement.Thread.NominalDiameter, Deep)]
        : [alone => alone];

    private static Pressure Megapascals(double value) => Pressure.FromMegapascals(value);
}
