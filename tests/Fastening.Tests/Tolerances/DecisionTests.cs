using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tolerances;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 300)]
public class DecisionTests
{
    private static readonly ToleranceWindow<Torque> Window = ToleranceWindow.FromLimits(Nm(48), Nm(50), Nm(53));

    private static readonly DecisionRule[] Inward =
    [
        DecisionRule.SimpleAcceptance, DecisionRule.IlacG8, DecisionRule.Iso14253, DecisionRule.Iso14253Exact, DecisionRule.ThreeSigma, DecisionRule.SixSigma,
        DecisionRule.RootSumSquare, DecisionRule.FullUncertainty, DecisionRule.NcslRp10, DecisionRule.ManagedRisk, DecisionRule.FromFactor(0.37),
        DecisionRule.FromProbability(0.95), DecisionRule.FromProbability(0.7), DecisionRule.FromProbability(0.9999),
    ];

    public static TheoryData<double, DecisionZone, Conformity> Zones => new()
    {
        { 46.9, DecisionZone.Reject, Conformity.Below },
        { 47.0, DecisionZone.ConditionalReject, Conformity.Undecidable },
        { 47.9, DecisionZone.ConditionalReject, Conformity.Undecidable },
        { 48.0, DecisionZone.ConditionalAccept, Conformity.Undecidable },
        { 48.9, DecisionZone.ConditionalAccept, Conformity.Undecidable },
        { 49.0, DecisionZone.Accept, Conformity.Within },
        { 52.0, DecisionZone.Accept, Conformity.Within },
        { 52.1, DecisionZone.ConditionalAccept, Conformity.Undecidable },
        { 53.0, DecisionZone.ConditionalAccept, Conformity.Undecidable },
        { 53.1, DecisionZone.ConditionalReject, Conformity.Undecidable },
        { 54.0, DecisionZone.ConditionalReject, Conformity.Undecidable },
        { 54.1, DecisionZone.Reject, Conformity.Above },
    };

    [Theory]
    [MemberData(nameof(Zones))]
    public void Four_zones_in_order_each_limit_to_the_side_stated(double reading, DecisionZone zone, Conformity verdict)
    {
        Assert.Equal(zone, Window.ZoneOf(Nm(reading), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.IlacG8));
        Assert.Equal(verdict, Window.Classify(Nm(reading), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.IlacG8));
        Decision<Torque> decision = Window.Decide(Nm(reading), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.IlacG8);
        Assert.Equal(zone, decision.Zone);
        Assert.Equal(verdict, decision.Conformity);
    }

    [Fact]
    public void A_guard_band_stated_in_another_unit_meets_its_decimal()
    {
        for (int tenths = 1; tenths < 20; tenths++)
        {
            var uncertainty = Torque.FromPoundForceInches(tenths / 10.0);
            Torque onTheLimit = ShopUnit.PoundForceFoot.From(40 + tenths / 120.0);
            ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Torque.FromPoundForceFeet(40), Torque.FromPoundForceFeet(50));
            Assert.Equal(DecisionZone.Accept, window.ZoneOf(onTheLimit, MeasurementUncertainty.Expanded(uncertainty, 2), DecisionRule.IlacG8));
            Assert.Equal(DecisionZone.ConditionalAccept, window.ZoneOf(onTheLimit * (1 - 1e-9), MeasurementUncertainty.Expanded(uncertainty, 2), DecisionRule.IlacG8));
        }
    }

    [Property]
    public void Simple_acceptance_and_no_uncertainty_decide_by_the_limits(AnyTorque target, AnyTorque reading, AnyTorque uncertainty)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(target.Torque * 0.4, target.Torque, target.Torque * 10);
        Assert.Equal(window.Classify(reading.Torque), window.Classify(reading.Torque, MeasurementUncertainty.Expanded(uncertainty.Torque, 2), DecisionRule.SimpleAcceptance));
        foreach (DecisionRule rule in Inward.Append(DecisionRule.Uncritical))
        {
            Assert.Equal(window.Classify(reading.Torque), window.Classify(reading.Torque, MeasurementUncertainty.Expanded(Torque.Zero, 2), rule));
        }
    }

    [Property]
    public void Accepted_is_what_the_acceptance_window_holds(AnyTorque target, double share, double uncertaintyShare)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(target.Torque, Ratio.FromPercent(3), Ratio.FromPercent(9));
        Torque uncertainty = target.Torque * 0.08 * Fraction(uncertaintyShare), reading = target.Torque * (0.9 + 0.3 * Fraction(share));
        foreach (DecisionRule rule in Inward.Append(DecisionRule.Uncritical))
        {
            ToleranceWindow<Torque>? accepted = rule.GuardBandFor(window, MeasurementUncertainty.Expanded(uncertainty, 2)) is Torque band ? window.AcceptanceWindow(band) : null;
            Decision<Torque> decision = window.Decide(reading, MeasurementUncertainty.Expanded(uncertainty, 2), rule);
            Assert.Equal(accepted?.Classify(reading) == Conformity.Within, decision.Zone == DecisionZone.Accept);
            Assert.Equal(accepted?.Lower?.NewtonMeters, decision.AcceptanceWindow?.Lower?.NewtonMeters);
            Assert.Equal(accepted?.Upper?.NewtonMeters, decision.AcceptanceWindow?.Upper?.NewtonMeters);
            Assert.Equal(decision.Zone, window.ZoneOf(reading, MeasurementUncertainty.Expanded(uncertainty, 2), rule));
            Assert.Equal(decision.Conformity, window.Classify(reading, MeasurementUncertainty.Expanded(uncertainty, 2), rule));
            Assert.Equal(decision.Conformity == Conformity.Undecidable, decision.Zone is DecisionZone.ConditionalAccept or DecisionZone.ConditionalReject);
        }
    }

    [Property]
    public void Acceptance_never_widens_as_the_uncertainty_grows(AnyTorque target, double first, double second)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(target.Torque, Ratio.FromPercent(3), Ratio.FromPercent(9));
        double small = Math.Min(Fraction(first), Fraction(second)), large = Math.Max(Fraction(first), Fraction(second));
        foreach (DecisionRule rule in Inward)
        {
            double narrow = WidthOf(rule, window, target.Torque * 0.08 * large), wide = WidthOf(rule, window, target.Torque * 0.08 * small);
            Assert.True(narrow <= wide + 1e-9 * target.NewtonMeters, $"{rule}: {wide} grew to {narrow}");
            Assert.True(wide <= 0.12 * target.NewtonMeters * (1 + 1e-12));
        }
    }

    [Property]
    public void A_verdict_never_improves_as_the_window_shrinks(AnyTorque target, double share, double uncertaintyShare, double cutBelow, double cutAbove)
    {
        Torque uncertainty = target.Torque * 0.06 * Fraction(uncertaintyShare), reading = target.Torque * (0.9 + 0.3 * Fraction(share));
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(target.Torque, Ratio.FromPercent(3), Ratio.FromPercent(9));
        ToleranceWindow<Torque> smaller = ToleranceWindow.FromDeviations(target.Torque, Ratio.FromPercent(3 * Fraction(cutBelow)), Ratio.FromPercent(9 * Fraction(cutAbove)));
        foreach (DecisionRule rule in Inward)
        {
            // The zones are numbered from accept to reject. Bands that depend on the window say nothing more strict of what was rejected before.
            DecisionZone before = window.ZoneOf(reading, MeasurementUncertainty.Expanded(uncertainty, 2), rule), after = smaller.ZoneOf(reading, MeasurementUncertainty.Expanded(uncertainty, 2), rule);
            bool byRatio = rule.GuardBandFactor is null && rule.Name.Contains("TUR", StringComparison.Ordinal) || rule == DecisionRule.ManagedRisk;
            Assert.True(after >= (byRatio && before == DecisionZone.Reject ? DecisionZone.ConditionalReject : before), $"{rule}: {before} became {after}");
        }
    }

    /// <summary>Found by chance: an uncertainty next to nothing against a window of no width.</summary>
    [Fact]
    public void A_verdict_never_improves_at_the_edge_of_the_numbers() =>
        A_verdict_never_improves_as_the_window_shrinks(new AnyTorque(8.7289939432739), 0.0, double.Epsilon, -0.0, 0.0);

    [Property]
    public void Batch_agrees_with_single_calls_and_marks_what_is_not_finite(AnyTorque any)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(any.Torque, Ratio.FromPercent(4), Ratio.FromPercent(7));
        Torque uncertainty = any.Torque * 0.013;
        double[] readings =
        [
            .. Enumerable.Range(0, 60).Select(i => any.NewtonMeters * (0.92 + i * 0.003)), 0, -1, double.MaxValue, double.MinValue,
            double.NaN, double.PositiveInfinity, double.NegativeInfinity,
        ];
        foreach (DecisionRule rule in Inward.Append(DecisionRule.Uncritical))
        {
            var verdicts = new Conformity[readings.Length];
            window.Classify(readings, MeasurementUncertainty.Expanded(uncertainty, 2), rule, verdicts);
            for (int i = 0; i < readings.Length; i++)
            {
                Assert.Equal(double.IsFinite(readings[i]) ? window.Classify(Nm(readings[i]), MeasurementUncertainty.Expanded(uncertainty, 2), rule) : Conformity.Undefined, verdicts[i]);
            }
        }

        var untouched = new Conformity[3];
        Assert.Throws<ArgumentException>(() => window.Classify(readings, MeasurementUncertainty.Expanded(uncertainty, 2), DecisionRule.IlacG8, untouched));
        Assert.All(untouched, verdict => Assert.Equal(Conformity.Undefined, verdict));
        Assert.Equal("rule", Assert.Throws<ArgumentNullException>(() => window.Classify(readings, MeasurementUncertainty.Expanded(uncertainty, 2), null!, new Conformity[readings.Length])).ParamName);
        Assert.Equal("expandedUncertainty", Assert.Throws<ArgumentOutOfRangeException>(
            () => window.Classify(readings, MeasurementUncertainty.Expanded(-uncertainty, 2), DecisionRule.IlacG8, new Conformity[readings.Length])).ParamName);
    }

    [Fact]
    public void The_uncritical_rule_rejects_only_what_is_surely_outside()
    {
        Assert.Equal(DecisionZone.Accept, Window.ZoneOf(Nm(54), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.Uncritical));
        Assert.Equal(DecisionZone.Accept, Window.ZoneOf(Nm(47), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.Uncritical));
        Assert.Equal(Conformity.Above, Window.Classify(Nm(54.001), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.Uncritical));
        Assert.Equal(Conformity.Below, Window.Classify(Nm(46.999), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.Uncritical));
        Assert.Equal(
            "Accepted: 53.6 N·m against 48 N·m to 53 N·m is 0.6 N·m beyond the limit; the rule (ILAC-G8 uncritical, guard band −1 U) permits up to 1 N·m beyond a limit.",
            Window.Decide(Nm(53.6), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.Uncritical).Reason);
    }

    [Fact]
    public void Reasons_say_what_where_and_by_which_rule()
    {
        Assert.Equal(
            "Cannot tell: 52.4 N·m against 48 N·m to 53 N·m is 0.6 N·m inside the nearer limit, which is acceptance on condition; the rule (ILAC-G8, guard band 1 U) requires 1 N·m inside.",
            Window.Decide(Nm(52.4), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.IlacG8).Reason);
        Assert.StartsWith("Cannot tell: 53.4 N·m against 48 N·m to 53 N·m is 0.4 N·m beyond the limit, which is rejection on condition", Window.Decide(Nm(53.4), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.IlacG8).Reason, StringComparison.Ordinal);
        Assert.StartsWith("Rejected: 40 N·m", Window.Decide(Nm(40), MeasurementUncertainty.Expanded(Nm(1), 2), DecisionRule.IlacG8).Reason, StringComparison.Ordinal);
        Assert.Contains("too narrow for this uncertainty", Window.Decide(Nm(50), MeasurementUncertainty.Expanded(Nm(2.6), 2), DecisionRule.IlacG8).Reason, StringComparison.Ordinal);
        Assert.Contains("too narrow for this uncertainty", Window.Decide(Nm(50), MeasurementUncertainty.Expanded(Nm(3), 2), DecisionRule.FromProbability(0.95)).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_window_of_any_quantity_and_any_reading_gets_a_decision()
    {
        ToleranceWindow<Angle> window = ToleranceWindow.FromLimits(Angle.FromDegrees(-30), Angle.FromDegrees(60));
        Assert.Equal(Conformity.Undecidable, window.Classify(Angle.FromRadians(1), MeasurementUncertainty.Expanded(Angle.FromDegrees(4), 2), DecisionRule.IlacG8));
        foreach (double reading in new[] { 1e200, -1e200, 0, double.Epsilon })
        {
            Decision<Torque> decision = Window.Decide(Nm(reading), MeasurementUncertainty.Expanded(Nm(1e15), 2), DecisionRule.Iso14253);
            Assert.InRange(decision.ProbabilityOfConformity, 0, 1);
            Assert.NotEmpty(decision.Reason);
        }

        Assert.Equal("expandedUncertainty", Assert.Throws<ArgumentOutOfRangeException>(() => Window.Decide(Nm(50), MeasurementUncertainty.Expanded(Nm(-1), 2), DecisionRule.IlacG8)).ParamName);
    }

    [Fact]
    public void Zone_numbers_are_frozen() => Assert.Equal(
        [("Undefined", (byte)0), ("Accept", (byte)1), ("ConditionalAccept", (byte)2), ("ConditionalReject", (byte)3), ("Reject", (byte)4)],
        Enum.GetValues<DecisionZone>().Select(zone => (zone.ToString(), (byte)zone)));

    private static double WidthOf(DecisionRule rule, ToleranceWindow<Torque> window, Torque uncertainty) =>
        rule.GuardBandFor(window, MeasurementUncertainty.Expanded(uncertainty, 2)) is Torque band && window.AcceptanceWindow(band) is ToleranceWindow<Torque> accepted
            ? (accepted.Upper - accepted.Lower)!.Value.NewtonMeters
            : 0;

    private static double Fraction(double any) => double.IsFinite(any) ? Math.Abs(any) % 1 : 0.5;

    private static Torque Nm(double value) => Torque.FromNewtonMeters(value);
}
