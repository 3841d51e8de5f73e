using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Fastening.Tests.Tolerances;

public class DecisionRuleTests
{
    private static readonly ToleranceWindow<Torque> Window = ToleranceWindow.FromLimits(Nm(45), Nm(49), Nm(55));

    public static TheoryData<DecisionRule, double, double> Factors => new()
    {
        // ILAC-G8:03/2009 Table 1 and ISO 14253-1:2017, from memory: r, and the bound on the risk at the limit.
        { DecisionRule.SimpleAcceptance, 0, 0.50 },
        { DecisionRule.IlacG8, 1, 0.025 },
        { DecisionRule.Iso14253, 0.83, 0.05 },
        { DecisionRule.ThreeSigma, 1.5, 0.0016 },
        { DecisionRule.SixSigma, 3, 1e-6 },
    };

    [Theory]
    [MemberData(nameof(Factors))]
    public void Factors_and_the_risk_at_the_limit_are_those_of_the_tables(DecisionRule rule, double factor, double atMost)
    {
        Assert.Equal(factor, rule.GuardBandFactor);
        Assert.Equal(factor * 1.3, rule.GuardBandFor(Window, MeasurementUncertainty.Expanded(Nm(1.3), 2))!.Value.NewtonMeters, 1e-15);
        Assert.InRange(rule.FalseAcceptanceAtLimit!.Value, 0, atMost);

        // The closed form Φ(−2r), by the distribution itself and by the risk of a reading on the acceptance limit of a wide window.
        Close.To(Normal.CDF(0, 1, -2 * factor), rule.FalseAcceptanceAtLimit!.Value, 1e-12);
        ToleranceWindow<Torque> wide = ToleranceWindow.FromLimits(Nm(0), Nm(1000));
        Torque onTheLimit = wide.AcceptanceWindow(rule.GuardBandFor(wide, MeasurementUncertainty.Expanded(Nm(2), 2))!.Value)!.Upper!.Value;
        Close.To(rule.FalseAcceptanceAtLimit!.Value, SpecificRisk.At(wide, onTheLimit, MeasurementUncertainty.Standard(Nm(1))).Consumer, 1e-6);
    }

    [Fact]
    public void The_exact_five_percent_lies_beside_its_rounding()
    {
        Assert.Equal(0.05, DecisionRule.Iso14253Exact.FalseAcceptanceAtLimit!.Value, 2e-5);
        Assert.Equal(1.645, DecisionRule.Iso14253Exact.GuardBandFor(Window, MeasurementUncertainty.Expanded(Nm(2), 2))!.Value.NewtonMeters, 1e-15);
        Assert.Equal(-2, DecisionRule.Uncritical.GuardBandFor(Window, MeasurementUncertainty.Expanded(Nm(2), 2))!.Value.NewtonMeters);
        Close.To(0.02275, 1 - DecisionRule.Uncritical.FalseAcceptanceAtLimit!.Value, 1e-4);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(1.4)]
    [InlineData(2.5)]
    [InlineData(3.999)]
    [InlineData(7.0)]
    public void Rules_of_the_ratio_by_their_other_forms(double ratio)
    {
        // With half width h: √ rule h − √(h² − U²); 1 − 1/TUR is U itself; RP-10 U − h/4; Dobbert M U.
        const double Half = 5;
        double u = Half / ratio;
        double Band(DecisionRule rule) => rule.GuardBandFor(Window, MeasurementUncertainty.Expanded(Nm(u), 2))!.Value.NewtonMeters;
        Assert.Equal(Half - Math.Sqrt(Half * Half - u * u), Band(DecisionRule.RootSumSquare), 1e-9);
        Assert.Equal(u, Band(DecisionRule.FullUncertainty), 1e-12);
        Assert.Equal(Math.Max(0, u - Half / 4), Band(DecisionRule.NcslRp10), 1e-12);
        Assert.Equal(Math.Max(0, 1.04 - Math.Exp(0.38 * Math.Log(ratio) - 0.54)) * u, Band(DecisionRule.ManagedRisk), 1e-12);
    }

    [Fact]
    public void Below_a_ratio_of_one_those_rules_accept_nothing()
    {
        foreach (DecisionRule rule in new[] { DecisionRule.RootSumSquare, DecisionRule.FullUncertainty, DecisionRule.NcslRp10, DecisionRule.ManagedRisk })
        {
            Assert.Null(rule.GuardBandFor(Window, MeasurementUncertainty.Expanded(Nm(5.001), 2)));
            Assert.NotNull(rule.GuardBandFor(Window, MeasurementUncertainty.Expanded(Nm(5), 2)));
            Assert.Equal(DecisionZone.ConditionalAccept, Window.ZoneOf(Nm(50), MeasurementUncertainty.Expanded(Nm(5.001), 2), rule));
            Assert.Null(rule.GuardBandFactor);
            Assert.Null(rule.FalseAcceptanceAtLimit);
        }
    }

    [Theory]
    [InlineData(100, 1.6449)]
    [InlineData(5, 1.649)]
    [InlineData(4, 1.796)]
    public void A_narrow_window_asks_for_more_than_one_side_does(double widthInUncertainties, double band)
    {
        // Derived: Φ(w/u) − Φ((w − T)/u) = 0.95, solved by bisection outside the library.
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Nm(10), Nm(10 + widthInUncertainties));
        Assert.Equal(band, DecisionRule.FromProbability(0.95).GuardBandFor(window, MeasurementUncertainty.Expanded(Nm(2), 2))!.Value.NewtonMeters, 5e-4);
    }

    [Fact]
    public void There_is_no_zone_where_even_the_middle_is_too_uncertain()
    {
        // At 95 % below T = 2 × 1.959964 u.
        DecisionRule rule = DecisionRule.FromProbability(0.95);
        Assert.Null(rule.GuardBandFor(ToleranceWindow.FromLimits(Nm(10), Nm(13.9199)), MeasurementUncertainty.Expanded(Nm(2), 2)));
        Torque? band = rule.GuardBandFor(ToleranceWindow.FromLimits(Nm(10), Nm(13.91994)), MeasurementUncertainty.Expanded(Nm(2), 2));
        Assert.InRange(band!.Value.NewtonMeters, 1.9, 1.96);
    }

    [Fact]
    public void The_solved_band_gives_the_probability_it_was_asked_for()
    {
        var random = new Random(11);
        for (int n = 0; n < 5000; n++)
        {
            double p = 0.5 + 0.499999 * Math.Pow(random.NextDouble(), 0.3), width = Math.Exp(random.NextDouble() * 7 - 3), u = Math.Exp(random.NextDouble() * 12 - 6);
            ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Nm(0), Nm(width * u));
            if (DecisionRule.FromProbability(p).GuardBandFor(window, MeasurementUncertainty.Expanded(Nm(2 * u), 2)) is not Torque band)
            {
                Assert.True(2 * Normal.CDF(0, 1, width / 2) - 1 < p);
                continue;
            }

            double x = band.NewtonMeters / u;
            Assert.InRange(x, 0, width / 2 * (1 + 1e-12));
            Assert.Equal(p, Normal.CDF(0, 1, x) - Normal.CDF(0, 1, x - width), 1e-9);
        }
    }

    [Fact]
    public void A_rule_that_was_agreed_is_kept_as_agreed()
    {
        DecisionRule rule = DecisionRule.FromFactor(0.37);
        Assert.Equal(0.37, rule.GuardBandFactor);
        Assert.Equal("agreed guard band, 0.37 U", rule.Name);
        Assert.Equal("conforming with a probability of 97.5 %", DecisionRule.FromProbability(0.975).ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => DecisionRule.FromProbability(0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => DecisionRule.FromProbability(1));
    }

    [Fact]
    public void Every_named_rule_has_a_name_of_its_own()
    {
        DecisionRule[] rules = [.. typeof(DecisionRule).GetProperties().Where(p => p.PropertyType == typeof(DecisionRule)).Select(p => (DecisionRule)p.GetValue(null)!)];
        Assert.Equal(11, rules.Length);
        Assert.Equal(rules.Length, rules.Select(rule => rule.Name).Distinct().Count());
    }

    private static Torque Nm(double value) => Torque.FromNewtonMeters(value);
}
