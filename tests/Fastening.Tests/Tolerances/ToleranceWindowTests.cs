using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;

namespace Fastening.Tests.Tolerances;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 300)]
public class ToleranceWindowTests
{
    private static Torque Nm(double value) => Torque.FromNewtonMeters(value);

    [Fact]
    public void Common_practice_rows()
    {
        // Common practice, no source: upper tolerance +4 % of the target; 50 with limits 48…52; 50° with 45…55.
        Close.To(52, ToleranceWindow.FromDeviations(Nm(50), minus: Ratio.Zero, plus: Ratio.FromPercent(4)).Upper!.Value.NewtonMeters);
        ToleranceWindow<Torque> torque = ToleranceWindow.FromLimits(Nm(48), Nm(52));
        Assert.Equal(50, torque.Target!.Value.NewtonMeters);
        Assert.Equal(
            [Conformity.Below, Conformity.Within, Conformity.Within, Conformity.Within, Conformity.Above],
            new[] { 47.9, 48, 50, 52, 52.1 }.Select(x => torque.Classify(Nm(x))));
        ToleranceWindow<Angle> angle = ToleranceWindow.FromDeviations(Angle.FromDegrees(50), Angle.FromDegrees(5), Angle.FromDegrees(5));
        Assert.Equal(
            [Conformity.Below, Conformity.Within, Conformity.Within, Conformity.Above],
            new[] { 44.9, 45, 55, 55.1 }.Select(x => angle.Classify(Angle.FromDegrees(x))));
    }

    [Fact]
    public void A_reading_equal_to_the_decimal_limit_conforms_for_every_decimal_target_and_percentage()
    {
        // Independent route: decimal arithmetic, where T·(100 + p)/100 is exact.
        for (int tenths = 1; tenths <= 3000; tenths += 7)
        {
            for (int percentTenths = 0; percentTenths <= 100; percentTenths += 3)
            {
                decimal target = tenths / 10m, percent = percentTenths / 10m;
                ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(Nm((double)target), Ratio.FromPercent((double)percent), Ratio.FromPercent((double)percent));
                decimal upper = target * (100 + percent) / 100, lower = target * (100 - percent) / 100;
                Assert.Equal(Conformity.Within, window.Classify(Nm((double)upper)));
                Assert.Equal(Conformity.Within, window.Classify(Nm((double)lower)));
                Assert.Equal(Conformity.Above, window.Classify(Nm((double)(upper + 0.0001m))));
                Assert.Equal(Conformity.Below, window.Classify(Nm((double)(lower - 0.0001m))));
            }
        }
    }

    [Fact]
    public void A_limit_stated_in_one_unit_conforms_in_every_other()
    {
        TorqueUnit[] units = [TorqueUnit.NewtonMeter, TorqueUnit.PoundForceFoot, TorqueUnit.PoundForceInch, TorqueUnit.KilogramForceMeter, TorqueUnit.NewtonCentimeter];
        for (int n = 1; n <= 500; n++)
        {
            foreach (TorqueUnit stated in units)
            {
                var limit = new Torque(n / 10.0, stated);
                ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(limit, limit);
                foreach (TorqueUnit read in units) Assert.Equal(Conformity.Within, window.Classify(limit.ToUnit(read)));
            }
        }
    }

    [Property]
    public void Verdict_is_ordered_in_the_reading_and_ends_are_inside(AnyTorque any)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(any.Torque, Ratio.FromPercent(7), Ratio.FromPercent(11));
        Assert.Equal(Conformity.Below, window.Classify(window.Lower!.Value * (1 - 1e-9)));
        Assert.Equal(Conformity.Within, window.Classify(window.Lower!.Value));
        Assert.Equal(Conformity.Within, window.Classify(window.Target!.Value));
        Assert.Equal(Conformity.Within, window.Classify(window.Upper!.Value));
        Assert.Equal(Conformity.Above, window.Classify(window.Upper!.Value * (1 + 1e-9)));
    }

    [Property]
    public void Intersection_permits_what_both_permit(AnyTorque a, AnyTorque b, AnyTorque reading)
    {
        ToleranceWindow<Torque> first = ToleranceWindow.FromLimits(a.Torque * 0.1, a.Torque, a.Torque * 5);
        ToleranceWindow<Torque> second = ToleranceWindow.FromLimits(b.Torque * 0.2, b.Torque, b.Torque * 10);
        ToleranceWindow<Torque>? both = first.Intersect(second);
        bool inBoth = first.Classify(reading.Torque) == Conformity.Within && second.Classify(reading.Torque) == Conformity.Within;
        Assert.Equal(inBoth, both?.Classify(reading.Torque) == Conformity.Within);
        Assert.Equal(both?.Lower?.NewtonMeters, second.Intersect(first)?.Lower?.NewtonMeters);
        Assert.Equal(both?.Upper?.NewtonMeters, second.Intersect(first)?.Upper?.NewtonMeters);
        if (both is not null) Assert.True(both.Lower <= both.Target && both.Target <= both.Upper);
    }

    [Fact]
    public void Windows_that_touch_in_different_units_meet_in_one_point()
    {
        ToleranceWindow<Torque> low = ToleranceWindow.FromLimits(Nm(10), Torque.FromPoundForceFeet(30.1));
        ToleranceWindow<Torque> high = ToleranceWindow.FromLimits(Torque.FromPoundForceInches(361.2), Nm(90));
        Assert.NotNull(low.Intersect(high));
        Assert.Null(low.Intersect(ToleranceWindow.FromLimits(Torque.FromPoundForceInches(361.3), Nm(90))));
    }

    [Property]
    public void Scaling_there_and_back_keeps_the_window(AnyTorque any, AnyWrench wrench)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(any.Torque, Ratio.FromPercent(2), Ratio.FromPercent(6));
        double factor = wrench.Wrench.TorqueRatio;
        ToleranceWindow<Torque> back = window.Scale(factor).Scale(1 / factor);
        Close.To(window.Lower!.Value.NewtonMeters, back.Lower!.Value.NewtonMeters);
        Close.To(window.Target!.Value.NewtonMeters, back.Target!.Value.NewtonMeters);
        Close.To(window.Upper!.Value.NewtonMeters, back.Upper!.Value.NewtonMeters);
    }

    [Fact]
    public void Inward_rounding_keeps_every_exact_step_and_never_leaves_the_window()
    {
        // Independent route: whole counts in integer arithmetic.
        foreach (int perUnit in new[] { 1, 2, 5, 10, 20, 100 })
        {
            Torque step = Nm(1.0 / perUnit);
            for (int first = 1; first < 700; first += 3)
            {
                int last = first + 5;
                ToleranceWindow<Torque> exact = ToleranceWindow.FromLimits(Nm(first / (double)perUnit), Nm(last / (double)perUnit)).RoundInward(step)!;
                Assert.Equal(first / (double)perUnit, exact.Lower!.Value.NewtonMeters, 1e-12);
                Assert.Equal(last / (double)perUnit, exact.Upper!.Value.NewtonMeters, 1e-12);
                ToleranceWindow<Torque> between = ToleranceWindow.FromLimits(Nm((first - 0.4) / perUnit), Nm((last + 0.4) / perUnit)).RoundInward(step)!;
                Assert.Equal(first / (double)perUnit, between.Lower!.Value.NewtonMeters, 1e-12);
                Assert.Equal(last / (double)perUnit, between.Upper!.Value.NewtonMeters, 1e-12);
            }
        }

        Assert.Null(ToleranceWindow.FromLimits(Nm(10.1), Nm(10.9)).RoundInward(Nm(1)));
        Assert.Equal(11, ToleranceWindow.FromLimits(Nm(10.1), Nm(10.2), Nm(11.9)).RoundInward(Nm(1))!.Target!.Value.NewtonMeters);
    }

    [Property]
    public void Acceptance_window_shrinks_by_the_band_and_ends_as_none(AnyTorque any)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(any.Torque, Ratio.FromPercent(10), Ratio.FromPercent(20));
        ToleranceWindow<Torque> accepted = window.AcceptanceWindow(any.Torque * 0.03)!;
        Close.To(any.NewtonMeters * 0.93, accepted.Lower!.Value.NewtonMeters);
        Close.To(any.NewtonMeters * 1.17, accepted.Upper!.Value.NewtonMeters);
        Close.To(any.NewtonMeters * 0.87, window.AcceptanceWindow(-any.Torque * 0.03)!.Lower!.Value.NewtonMeters);
        Assert.NotNull(window.AcceptanceWindow(any.Torque * 0.15));
        Assert.Null(window.AcceptanceWindow(any.Torque * 0.1501));
    }

    [Property]
    public void Batch_agrees_with_single_calls_and_marks_what_is_not_finite(AnyTorque any)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(any.Torque, Ratio.FromPercent(4), Ratio.FromPercent(4));
        double[] readings =
        [
            any.NewtonMeters, window.Lower!.Value.NewtonMeters, window.Upper!.Value.NewtonMeters, any.NewtonMeters * 0.9, any.NewtonMeters * 1.1, -1, 0,
            double.NaN, double.PositiveInfinity, double.NegativeInfinity, double.MaxValue,
        ];
        var verdicts = new Conformity[readings.Length];
        window.Classify(readings, verdicts);
        for (int i = 0; i < readings.Length; i++)
        {
            Assert.Equal(double.IsFinite(readings[i]) ? window.Classify(Nm(readings[i])) : Conformity.Undefined, verdicts[i]);
        }

        Assert.Throws<ArgumentException>(() => window.Classify(readings, new Conformity[3]));
    }

    [Fact]
    public void Every_quantity_of_tightening_has_a_window_and_no_other()
    {
        Assert.Equal("50 (48 … 52) N·m", ToleranceWindow.FromLimits(Nm(48), Nm(52)).ToString());
        Assert.Equal("50 (45 … 55)°", ToleranceWindow.FromLimits(Angle.FromDegrees(45), Angle.FromDegrees(55)).ToString());
        Assert.Equal("1.5 (1 … 2) kN", ToleranceWindow.FromLimits(Force.FromNewtons(1000), Force.FromNewtons(2000)).ToString());
        Assert.Equal("30 (20 … 40)°/s", ToleranceWindow.FromLimits(RotationalSpeed.FromDegreesPerSecond(20), RotationalSpeed.FromDegreesPerSecond(40)).ToString());
        Assert.Equal("300 (200 … 400) mm", ToleranceWindow.FromLimits(Length.FromMeters(0.2), Length.FromMeters(0.4)).ToString());
        Assert.Contains("Mass", Assert.Throws<NotSupportedException>(
            () => ToleranceWindow.FromLimits(Mass.FromKilograms(1), Mass.FromKilograms(2))).Message, StringComparison.Ordinal);
    }

    [Property]
    public void A_percentage_of_nothing_leaves_the_target_itself(AnyTorque any)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(any.Torque, Ratio.Zero, Ratio.Zero);
        Assert.Equal(any.NewtonMeters, window.Lower!.Value.NewtonMeters);
        Assert.Equal(any.NewtonMeters, window.Upper!.Value.NewtonMeters);
        ToleranceWindow<Torque> again = ToleranceWindow.FromLimits(window.Lower!.Value, window.Target!.Value, window.Upper!.Value);
        Assert.Equal(Conformity.Within, again.Classify(any.Torque));
    }

    [Fact]
    public void Inward_rounding_never_rounds_outward()
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Nm(0), Nm(9.9999999995));
        Assert.Equal(9, window.RoundInward(Nm(1))!.Upper!.Value.NewtonMeters);
        Assert.Equal(1, ToleranceWindow.FromLimits(Nm(5e-10), Nm(3)).RoundInward(Nm(1))!.Lower!.Value.NewtonMeters);
        var random = new Random(9);
        for (int n = 0; n < 20_000; n++)
        {
            double lower = random.NextDouble() * 100, step = Math.Pow(10, -3 + 4 * random.NextDouble());
            ToleranceWindow<Torque> any = ToleranceWindow.FromLimits(Nm(lower), Nm(lower + random.NextDouble() * 20));
            if (any.RoundInward(Nm(step)) is not ToleranceWindow<Torque> rounded) continue;
            Assert.Equal(Conformity.Within, any.Classify(rounded.Lower!.Value));
            Assert.Equal(Conformity.Within, any.Classify(rounded.Upper!.Value));
        }
    }

    [Fact]
    public void A_limit_left_over_by_two_large_numbers_still_meets_its_decimal()
    {
        ToleranceWindow<Angle> window = ToleranceWindow.FromDeviations(Angle.FromDegrees(5000.1), Angle.FromDegrees(5000), Angle.FromDegrees(1));
        Assert.Equal(Conformity.Within, window.Classify(Angle.FromDegrees(0.1)));
    }

    [Fact]
    public void Scaling_again_and_again_is_refused_before_it_is_infinite()
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Nm(1), Nm(2));
        Assert.Equal("factor", Assert.Throws<ArgumentOutOfRangeException>(() => window.Scale(1e9).Scale(1e9)).ParamName);
    }

    [Fact]
    public void Writes_itself_in_a_unit_of_the_trade()
    {
        // 150 N·m is 110.63 lbf·ft (1 lbf·ft = 1.3558179483314004 N·m by definition); ±4 % of it 106.21 and 115.06.
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(Nm(150), Ratio.FromPercent(4), Ratio.FromPercent(4));
        Assert.Equal("110.6 (106.2 … 115.1) lbf·ft", window.ToString(ShopUnit.PoundForceFoot, 1));
        Assert.Equal("30 (25 … 35)°", ToleranceWindow.FromLimits(Angle.FromDegrees(25), Angle.FromDegrees(35)).ToString(ShopUnit.Degree, 0));
    }

    [Fact]
    public void Limits_the_wrong_way_round_are_refused()
    {
        Assert.Equal("upper", Assert.Throws<ArgumentOutOfRangeException>(() => ToleranceWindow.FromLimits(Nm(52), Nm(48))).ParamName);
        Assert.Equal("target", Assert.Throws<ArgumentOutOfRangeException>(() => ToleranceWindow.FromLimits(Nm(48), Nm(47), Nm(52))).ParamName);
        Assert.Equal("upper", Assert.Throws<ArgumentOutOfRangeException>(() => ToleranceWindow.FromLimits(Nm(48), Nm(53), Nm(52))).ParamName);
    }

    [Fact]
    public void Verdict_numbers_are_frozen() => Assert.Equal(
        [("Undefined", (byte)0), ("Below", (byte)1), ("Within", (byte)2), ("Above", (byte)3), ("Undecidable", (byte)4)],
        Enum.GetValues<Conformity>().Select(c => (c.ToString(), (byte)c)));
}
