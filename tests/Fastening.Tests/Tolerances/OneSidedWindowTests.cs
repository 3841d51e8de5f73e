using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Tolerances;

/// <summary>Windows with one limit. No far limit stands in for the missing one: what depends on the width must not see any.</summary>
public class OneSidedWindowTests
{
    private static readonly ToleranceWindow<Torque> AtLeast = ToleranceWindow.AtLeast(Nm(48));
    private static readonly ToleranceWindow<Torque> AtMost = ToleranceWindow.AtMost(Nm(52));
    private static readonly MeasurementUncertainty<Torque> U = MeasurementUncertainty.Expanded(Nm(0.6), 2);

    private static readonly DecisionRule[] OfTheWidth = [DecisionRule.RootSumSquare, DecisionRule.NcslRp10, DecisionRule.ManagedRisk];

    [Fact]
    public void What_is_not_stated_is_null()
    {
        Assert.Equal(48, AtLeast.Lower!.Value.NewtonMeters);
        Assert.Null(AtLeast.Upper);
        Assert.Null(AtLeast.Target);
        Assert.Equal(52, AtMost.Upper!.Value.NewtonMeters);
        Assert.Null(AtMost.Lower);
        Assert.Null(AtMost.Target);
        Assert.Equal("at least 48 N·m", AtLeast.ToString());
        Assert.Equal("at most 52 N·m", AtMost.ToString());
        Assert.Equal("at least 35.4 lbf·ft", AtLeast.ToString(ShopUnit.PoundForceFoot, 1));
        Assert.Equal("at most 30°", ToleranceWindow.AtMost(Angle.FromDegrees(30)).ToString());
    }

    [Fact]
    public void An_ordinary_window_gives_its_numbers_without_nulls_and_a_one_sided_window_refuses()
    {
        (Torque lower, Torque target, Torque upper) = ToleranceWindow.FromLimits(Nm(48), Nm(49), Nm(52)).TwoSided;
        Assert.Equal((48, 49, 52), (lower.NewtonMeters, target.NewtonMeters, upper.NewtonMeters));
        Assert.Equal(50, ToleranceWindow.FromLimits(Nm(48), Nm(52)).TwoSided.Target.NewtonMeters);
        Assert.Equal("The window is at least 48 N·m; it has no two limits with a target.", Assert.Throws<InvalidOperationException>(() => AtLeast.TwoSided).Message);
        Assert.Contains("at most 52 N·m", Assert.Throws<InvalidOperationException>(() => AtMost.TwoSided).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1e15, Conformity.Below, Conformity.Within)]
    [InlineData(47.999999, Conformity.Below, Conformity.Within)]
    [InlineData(48, Conformity.Within, Conformity.Within)]
    [InlineData(52, Conformity.Within, Conformity.Within)]
    [InlineData(52.000001, Conformity.Within, Conformity.Above)]
    [InlineData(1e15, Conformity.Within, Conformity.Above)]
    public void A_reading_has_a_verdict_by_the_one_limit(double reading, Conformity byLower, Conformity byUpper)
    {
        Assert.Equal(byLower, AtLeast.Classify(Nm(reading)));
        Assert.Equal(byUpper, AtMost.Classify(Nm(reading)));
        var verdicts = new Conformity[1];
        AtLeast.Classify([reading], verdicts);
        Assert.Equal(byLower, verdicts[0]);
        AtMost.Classify([reading], verdicts);
        Assert.Equal(byUpper, verdicts[0]);
    }

    [Fact]
    public void A_reading_that_is_not_finite_has_no_verdict_on_the_open_side_either()
    {
        double[] readings = [double.NaN, double.PositiveInfinity, double.NegativeInfinity, double.MaxValue, double.MinValue];
        var plain = new Conformity[5];
        var decided = new Conformity[5];
        AtLeast.Classify(readings, plain);
        AtLeast.Classify(readings, U, DecisionRule.IlacG8, decided);
        Conformity[] lower = [Conformity.Undefined, Conformity.Undefined, Conformity.Undefined, Conformity.Within, Conformity.Below];
        Assert.Equal(lower, plain);
        Assert.Equal(lower, decided);
        AtMost.Classify(readings, plain);
        AtMost.Classify(readings, U, DecisionRule.IlacG8, decided);
        Conformity[] upper = [Conformity.Undefined, Conformity.Undefined, Conformity.Undefined, Conformity.Above, Conformity.Within];
        Assert.Equal(upper, plain);
        Assert.Equal(upper, decided);
    }

    [Fact]
    public void A_limit_in_another_unit_meets_its_decimal()
    {
        for (int tenths = 1; tenths < 900; tenths++)
        {
            Torque limit = Torque.FromPoundForceFeet(tenths / 10.0), same = Nm(limit.NewtonMeters);
            Assert.Equal(Conformity.Within, ToleranceWindow.AtLeast(limit).Classify(same));
            Assert.Equal(Conformity.Within, ToleranceWindow.AtMost(limit).Classify(same));
            Assert.Equal(Conformity.Below, ToleranceWindow.AtLeast(limit).Classify(same * (1 - 1e-9)));
            Assert.Equal(Conformity.Above, ToleranceWindow.AtMost(limit).Classify(same * (1 + 1e-9)));
        }
    }

    [Fact]
    public void Two_one_sided_windows_make_a_window_without_a_target()
    {
        ToleranceWindow<Torque> both = AtLeast.Intersect(AtMost)!;
        Assert.Equal("48 … 52 N·m", both.ToString());
        Assert.Null(both.Target);
        Assert.Null(ToleranceWindow.AtLeast(Nm(53)).Intersect(AtMost));
        ToleranceWindow<Torque> withTarget = AtLeast.Intersect(ToleranceWindow.FromLimits(Nm(40), Nm(45), Nm(60)))!;
        Assert.Equal("48 (48 … 60) N·m", withTarget.ToString());
        Assert.Equal("at least 49 N·m", AtLeast.Intersect(ToleranceWindow.AtLeast(Nm(49)))!.ToString());
    }

    [Fact]
    public void Arithmetic_leaves_the_open_side_open()
    {
        Assert.Equal("at least 38.4 N·m", AtLeast.Scale(0.8).ToString());
        Assert.Equal("at most 41.6 N·m", AtMost.Scale(0.8).ToString());
        Assert.Equal("at least 48 N·m", ToleranceWindow.AtLeast(Nm(47.6)).RoundInward(Nm(0.5))!.ToString());
        Assert.Equal("at most 52 N·m", ToleranceWindow.AtMost(Nm(52.4)).RoundInward(Nm(0.5))!.ToString());
        Assert.Equal("at least 48.6 N·m", AtLeast.AcceptanceWindow(Nm(0.6))!.ToString());
        Assert.Equal("at most 52.6 N·m", AtMost.AcceptanceWindow(Nm(-0.6))!.ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => ToleranceWindow.AtLeast(Nm(1e12)).Scale(1e9));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToleranceWindow.AtMost(Nm(-1e12)).Scale(1e9));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToleranceWindow.AtLeast(Nm(1e17)));
    }

    [Fact]
    public void A_rule_of_a_factor_or_a_probability_keeps_its_band_at_the_one_limit()
    {
        // w = r U, and for a probability w = z u: z of 0.95 is 1.6448536 (any normal table).
        Assert.Equal(0.6, DecisionRule.IlacG8.GuardBandFor(AtLeast, U)!.Value.NewtonMeters);
        Assert.Equal(0.6, DecisionRule.FullUncertainty.GuardBandFor(AtMost, U)!.Value.NewtonMeters);
        Assert.Equal(1.6448536 * 0.3, DecisionRule.FromProbability(0.95).GuardBandFor(AtLeast, U)!.Value.NewtonMeters, 1e-7);
        Assert.Equal(0, DecisionRule.SimpleAcceptance.GuardBandFor(AtLeast, U)!.Value.NewtonMeters);
        foreach ((double reading, DecisionZone zone) in new[]
        {
            (47.3, DecisionZone.Reject), (47.4, DecisionZone.ConditionalReject), (48, DecisionZone.ConditionalAccept), (48.6, DecisionZone.Accept), (9e9, DecisionZone.Accept),
        })
        {
            Assert.Equal(zone, AtLeast.ZoneOf(Nm(reading), U, DecisionRule.IlacG8));
            Assert.Equal(zone, AtLeast.ZoneOf(Nm(reading), U, DecisionRule.FullUncertainty));
            Assert.Equal(zone, ToleranceWindow.AtMost(Nm(-48)).ZoneOf(Nm(-reading), U, DecisionRule.IlacG8));
        }
    }

    [Fact]
    public void A_rule_of_the_width_refuses_one_limit_instead_of_losing_its_band()
    {
        Assert.Equal(OfTheWidth, AllRules.Where(rule => rule.RequiresTwoLimits));
        foreach (DecisionRule rule in OfTheWidth)
        {
            foreach (ToleranceWindow<Torque> window in new[] { AtLeast, AtMost })
            {
                Assert.Equal("window", Assert.Throws<ArgumentException>(() => rule.GuardBandFor(window, U)).ParamName);
                Assert.Equal("rule", Assert.Throws<ArgumentException>(() => window.ZoneOf(Nm(50), U, rule)).ParamName);
                Assert.Equal("rule", Assert.Throws<ArgumentException>(() => window.Decide(Nm(50), U, rule)).ParamName);
                var verdicts = new Conformity[1];
                Assert.Equal("rule", Assert.Throws<ArgumentException>(() => window.Classify([50.0], U, rule, verdicts)).ParamName);
                Assert.Equal(Conformity.Undefined, verdicts[0]);

                // Whether the reading is exact changes nothing in what was agreed.
                Assert.Throws<ArgumentException>(() => window.ZoneOf(Nm(50), MeasurementUncertainty.Standard(Torque.Zero), rule));
            }
        }
    }

    [Fact]
    public void The_record_says_one_limit()
    {
        Decision<Torque> decision = AtLeast.Decide(Nm(48.2), U, DecisionRule.IlacG8);
        Assert.Equal("Cannot tell: 48.2 N·m against at least 48 N·m is 0.2 N·m inside the limit, which is acceptance on condition; "
            + "the rule (ILAC-G8, guard band 1 U) requires 0.6 N·m inside.", decision.Reason);
        Assert.Equal("at least 48.6 N·m", decision.AcceptanceWindow!.ToString());
        Assert.Equal("Rejected: 53 N·m against at most 52 N·m is 1 N·m beyond the limit; the rule (ILAC-G8, guard band 1 U) rejects from 0.6 N·m beyond the limit.",
            AtMost.Decide(Nm(53), U, DecisionRule.IlacG8).Reason);
    }

    [Fact]
    public void Risks_count_the_one_tail()
    {
        // Φ(1) and Φ(−1) of the normal table; with a far second limit the same.
        SpecificRisk risk = SpecificRisk.At(AtMost, Nm(51.7), U);
        Assert.Equal(0.158655, risk.Consumer, 1e-6);
        Assert.Equal(0.841345, risk.ProbabilityOfConformity, 1e-6);
        Assert.Equal(0.158655, SpecificRisk.At(AtLeast, Nm(48.3), U).Consumer, 1e-6);

        Prior<Torque> process = Prior.Normal(Nm(50.2), Nm(0.8));
        ToleranceWindow<Torque> far = ToleranceWindow.FromLimits(Nm(-50), Nm(52));
        GlobalRisk one = GlobalRisk.Of(AtMost, AtMost.AcceptanceWindow(Nm(0.4)), process, U);
        GlobalRisk same = GlobalRisk.Of(far, far.AcceptanceWindow(Nm(0.4)), process, U);
        Close.To(same.Consumer, one.Consumer, 1e-12);
        Close.To(same.Producer, one.Producer, 1e-12);
        Close.To(same.ProbabilityOfAcceptance, one.ProbabilityOfAcceptance, 1e-12);
        Close.To(1, one.Consumer + one.Producer + (one.ProbabilityOfAcceptance - one.Consumer) + (1 - one.ProbabilityOfConformity - one.Consumer), 1e-12);
    }

    [Fact]
    public void A_wrench_guarantees_a_lower_limit_alone()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400)).WithAccuracy(Ratio.FromPercent(4));
        var calibration = MeasurementUncertainty.Expanded(Ratio.FromPercent(1), 2);
        GuaranteedSetting open = wrench.GuaranteedSettingFor(AtLeast, calibration);

        // S_lo = M_lo (1 + a + W), by hand.
        Assert.Equal(48 * 1.05, open.Window!.Lower!.Value.NewtonMeters, 1e-12);
        Assert.Null(open.Window.Upper);
        Assert.Equal(48, open.Delivered!.Lower!.Value.NewtonMeters, 1e-12);
        Assert.Null(open.Delivered.Upper);
        Assert.Equal("Every setting of at least 50.4 N·m gives the fastener at least 48 N·m, within the required at least 48 N·m. "
            + "The range of the wrench was not stated, so it was not checked. The step of the display was not stated: round inward.", open.Reason);
        Assert.Throws<InvalidOperationException>(() => Derivation.Of(() => open.HighestSetting));
        Assert.Equal(50.4, Derivation.Of(() => open.LowestSetting).Result, 1e-12);

        TorqueWrench ranged = wrench.WithRange(Nm(10), Nm(60)).WithResolution(Nm(1));
        GuaranteedSetting closed = ranged.GuaranteedSettingFor(AtLeast, calibration);
        Assert.Equal(51, closed.Window!.Lower!.Value.NewtonMeters, 1e-12);
        Assert.Equal(60, closed.Window.Upper!.Value.NewtonMeters, 1e-12);

        GuaranteedSetting beyond = ranged.GuaranteedSettingFor(ToleranceWindow.AtLeast(Nm(59)), calibration);
        Assert.Null(beyond.Window);
        Assert.Equal(SettingObstacle.Range, beyond.Obstacle);

        // At 60 N·m the deviation may be 60/59 − 1 = 1.695 %, of which the calibration has 1 %.
        Assert.Equal(60.0 / 59 - 1.01, beyond.RequiredAccuracy!.Value.DecimalFractions, 1e-12);

        GuaranteedSetting most = ranged.GuaranteedSettingFor(ToleranceWindow.AtMost(Nm(50)), calibration);
        Assert.Equal(10, most.Window!.Lower!.Value.NewtonMeters);
        Assert.Equal(47, most.Window.Upper!.Value.NewtonMeters);
        Assert.Null(most.Window.Target);
    }

    [Fact]
    public void A_step_takes_a_lower_limit_alone_and_refuses_an_upper_limit_alone()
    {
        TighteningStep step = TighteningStep.ByTorque("audit", AtLeast);
        Assert.Equal(JobVerdict.Accepted, step.Judge(Nm(480), null, null).Verdict);
        Assert.Equal(JobVerdict.Rejected, step.Judge(Nm(47), null, null).Verdict);
        Assert.Contains("never tightened", Assert.Throws<ArgumentException>(() => TighteningStep.ByTorque("audit", AtMost)).Message, StringComparison.Ordinal);

        // Watched, or beside a torque that decides, an upper limit alone is what a procedure often has.
        TighteningStep watched = TighteningStep.ByTorqueWatchingRotation("final", AtLeast, ToleranceWindow.AtMost(Angle.FromDegrees(30)));
        Assert.Equal(JobVerdict.Accepted, watched.Judge(Nm(50), Angle.FromDegrees(30), null).Verdict);
        Assert.Equal(JobVerdict.Remarked, watched.Judge(Nm(50), Angle.FromDegrees(31), null).Verdict);
        TighteningStep turn = TighteningStep.ByRotation("turn", Nm(40), ToleranceWindow.AtLeast(Angle.FromDegrees(60))).With(Criterion.TorqueAtMost(Nm(90)));
        Assert.Equal(JobVerdict.Rejected, turn.Judge(Nm(91), Angle.FromDegrees(400), null).Verdict);
        Assert.Equal(JobVerdict.Accepted, turn.Judge(Nm(89), Angle.FromDegrees(400), null).Verdict);
    }

    [Fact]
    public void What_needs_both_limits_refuses_one()
    {
        Assert.Throws<ArgumentException>(() => TestUncertaintyRatio.OfTolerance(AtLeast, U));
        Assert.Throws<ArgumentException>(() => new PreloadBandInputs(
            TorquePreloadModel.FromNutFactor(0.2, Length.FromMillimeters(16)), AtLeast, 0.15, 0.25));
    }

    private static IEnumerable<DecisionRule> AllRules =>
        typeof(DecisionRule).GetProperties().Where(p => p.PropertyType == typeof(DecisionRule)).Select(p => (DecisionRule)p.GetValue(null)!)
            .Append(DecisionRule.FromFactor(0.37)).Append(DecisionRule.FromProbability(0.95));

    private static Torque Nm(double value) => Torque.FromNewtonMeters(value);
}
