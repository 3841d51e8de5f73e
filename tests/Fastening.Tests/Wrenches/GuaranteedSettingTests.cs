using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Wrenches;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 300)]
public class GuaranteedSettingTests
{
    private static readonly TorqueWrench Bare = new TorqueWrench(Length.FromMillimeters(400)).WithAccuracy(Ratio.FromPercent(4));

    [Property]
    public void Whatever_the_wrench_does_within_its_accuracy_the_fastener_is_within_the_window(AnyWrench any, AnyTorque target, int seed)
    {
        (TorqueWrench wrench, ToleranceWindow<Torque> required, Ratio uncertainty) = Draw(any, target, seed);
        GuaranteedSetting found = wrench.GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(uncertainty, 2));
        if (found.Window is not ToleranceWindow<Torque> window) return;

        // Brute force over the corners and between, by true = shown/(1 + deviation).
        double worst = wrench.Accuracy!.Value.DecimalFractions + uncertainty.DecimalFractions, step = wrench.Resolution!.Value.NewtonMeters;
        double[] shown = [window.Lower!.Value.NewtonMeters, window.Target!.Value.NewtonMeters, window.Upper!.Value.NewtonMeters];
        foreach (double setting in shown)
        {
            Assert.True(Math.Abs(setting / step - Math.Round(setting / step)) < 1e-6, $"{setting} is no step of {step}");
            Assert.InRange(setting, wrench.LowTorque!.Value.NewtonMeters * (1 - 1e-12), wrench.HighTorque!.Value.NewtonMeters * (1 + 1e-12));
            foreach (double deviation in new[] { -worst, -0.4 * worst, 0, 0.7 * worst, worst })
            {
                Torque atFastener = wrench.FastenerTorqueAt(Torque.FromNewtonMeters(setting)) / (1 + deviation);
                Assert.Equal(Conformity.Within, required.Classify(atFastener));
                Assert.Equal(Conformity.Within, found.Delivered!.Classify(atFastener));
            }
        }

        // One step further out something breaks: the window, or the range.
        Assert.False(IsGuaranteed(wrench, required, uncertainty, window.Upper!.Value.NewtonMeters + step), $"{found} stops too early above");
        Assert.False(IsGuaranteed(wrench, required, uncertainty, window.Lower!.Value.NewtonMeters - step), $"{found} stops too early below");
    }

    [Property]
    public void Where_there_is_none_no_step_of_the_display_would_have_done(AnyWrench any, AnyTorque target, int seed)
    {
        (TorqueWrench wrench, ToleranceWindow<Torque> required, Ratio uncertainty) = Draw(any, target, seed);
        GuaranteedSetting found = wrench.GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(uncertainty, 2));
        Assert.Equal(found.Window is null, found.Obstacle != SettingObstacle.None);
        if (found.Window is not null) return;
        double step = wrench.Resolution!.Value.NewtonMeters, centre = target.NewtonMeters / wrench.TorqueRatio;
        for (double n = Math.Floor(centre * 0.4 / step); n * step <= centre * 1.8; n++)
        {
            Assert.False(IsGuaranteed(wrench, required, uncertainty, n * step, -1e-9), $"{n * step} would do; {found}");
        }
    }

    [Property]
    public void What_is_said_to_make_it_fit_makes_it_fit(AnyWrench any, AnyTorque target, int seed)
    {
        (TorqueWrench wrench, ToleranceWindow<Torque> required, Ratio uncertainty) = Draw(any, target, seed);
        GuaranteedSetting found = wrench.GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(uncertainty, 2));
        Assert.True(found.RequiredAccuracy is not Ratio stated || found.Window is null == stated.DecimalFractions < wrench.Accuracy!.Value.DecimalFractions * (1 - 1e-9), found.Reason);
        if (found.RequiredAccuracy is Ratio accuracy)
        {
            Assert.NotNull(wrench.WithAccuracy(accuracy * (1 - 1e-9)).GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(uncertainty, 2)).Window);
            if (accuracy.Percent < 49.9) Assert.Null(wrench.WithAccuracy(accuracy * (1 + 1e-9) + Ratio.FromPercent(1e-6)).GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(uncertainty, 2)).Window);
        }
        else
        {
            Assert.Null(wrench.WithAccuracy(Ratio.Zero).GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(uncertainty, 2)).Window);
        }

        if (found.RequiredWindow is ToleranceWindow<Torque> window)
        {
            ToleranceWindow<Torque> wider = ToleranceWindow.FromLimits(window.Lower!.Value * (1 - 1e-10), window.Upper!.Value * (1 + 1e-10));
            Assert.NotNull(wrench.GuaranteedSettingFor(wider, MeasurementUncertainty.Expanded(uncertainty, 2)).Window);
        }

        if (found.Obstacle == SettingObstacle.Resolution && found.RequiredResolution is Torque resolution && resolution.NewtonMeters > 1e-6)
        {
            Assert.NotNull(wrench.WithResolution(resolution * (1 - 1e-9)).GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(uncertainty, 2)).Window);
            Assert.NotNull(wrench.WithResolution(resolution / 3).GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(uncertainty, 2)).Window);
        }
    }

    [Property]
    public void Guarantee_is_the_inverse_of_what_is_delivered(AnyWrench any, AnyTorque torque)
    {
        TorqueWrench wrench = any.Wrench.WithAccuracy(Ratio.FromPercent(3));
        ToleranceWindow<Torque> delivered = wrench.DeliveredWindowAt(torque.Torque);
        ToleranceWindow<Torque> setting = wrench.GuaranteedSettingFor(delivered, MeasurementUncertainty.Expanded(Ratio.Zero, 2)).Window!;
        Close.To(torque.NewtonMeters, setting.Lower!.Value.NewtonMeters);
        Close.To(torque.NewtonMeters, setting.Upper!.Value.NewtonMeters);
    }

    [Property]
    public void More_uncertainty_never_gives_more_settings(AnyWrench any, AnyTorque torque)
    {
        TorqueWrench wrench = any.Wrench.WithAccuracy(Ratio.FromPercent(2));
        ToleranceWindow<Torque> required = ToleranceWindow.FromDeviations(torque.Torque, Ratio.FromPercent(7), Ratio.FromPercent(11));
        ToleranceWindow<Torque> before = wrench.GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(Ratio.Zero, 2)).Window!;
        for (double percent = 0.5; wrench.GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(Ratio.FromPercent(percent), 2)).Window is ToleranceWindow<Torque> after; percent += 0.5)
        {
            Assert.True(after.Lower > before.Lower && after.Upper < before.Upper);
            Assert.InRange(percent, 0, 7);
            before = after;
        }
    }

    [Fact]
    public void The_largest_deviation_a_window_bears_is_its_half_width_over_its_middle()
    {
        // Closed form: L(1 + A) = U(1 − A), so A = (U − L)/(U + L); 10/210 for 100 to 110 N·m.
        GuaranteedSetting found = Bare.WithAccuracy(Ratio.FromPercent(6)).GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(100), Nm(110)), MeasurementUncertainty.Expanded(Ratio.FromPercent(1), 2));
        Assert.Equal(SettingObstacle.Accuracy, found.Obstacle);
        Close.To(10.0 / 210 - 0.01, found.RequiredAccuracy!.Value.DecimalFractions);
        Close.To(2 * 100 * 110 / 210.0 / 1.07, found.RequiredWindow!.Lower!.Value.NewtonMeters);
        Close.To(2 * 100 * 110 / 210.0 / 0.93, found.RequiredWindow!.Upper!.Value.NewtonMeters);
        Assert.Null(Bare.GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(100), Nm(110)), MeasurementUncertainty.Expanded(Ratio.FromPercent(5), 2)).RequiredAccuracy);
    }

    [Fact]
    public void A_chain_worked_by_hand()
    {
        // ρ = 1.25. 150 to 175 N·m at the fastener, ±4 % and ±1 %: 150 × 1.05/1.25 = 126, 175 × 0.95/1.25 = 133; steps of 5: 130 alone.
        TorqueWrench wrench = Bare.WithAdapter(Length.FromMillimeters(100), Angle.Zero).WithRange(Nm(20), Nm(200));
        GuaranteedSetting found = wrench.GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(150), Nm(175)), MeasurementUncertainty.Expanded(Ratio.FromPercent(1), 2));
        Close.To(126, found.BeforeRounding!.Lower!.Value.NewtonMeters);
        Close.To(133, found.BeforeRounding.Upper!.Value.NewtonMeters);
        Assert.Equal(126, found.Window!.Lower!.Value.NewtonMeters, 1e-9);
        Assert.Equal("126 N·m", $"{Derivation.Of(() => found.LowestSetting).Steps[^1].ResultText}");
        Assert.Equal("133 N·m", $"{Derivation.Of(() => found.HighestSetting).Steps[^1].ResultText}");
        GuaranteedSetting inFives = wrench.WithResolution(Nm(5)).GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(150), Nm(175)), MeasurementUncertainty.Expanded(Ratio.FromPercent(1), 2));
        Assert.Equal(130, inFives.Window!.Lower!.Value.NewtonMeters);
        Assert.Equal(130, inFives.Window.Upper!.Value.NewtonMeters);
        Assert.Equal(
            "Every setting in 130 N·m to 130 N·m gives the fastener 154.7 N·m to 171.1 N·m, within the required 150 N·m to 175 N·m."
            + " Not counted: the hand off its place, an adapter off its angle.", inFives.Reason);
    }

    [Fact]
    public void Exact_decimals_keep_their_display_step()
    {
        // 100 × 1.04 and 150 × 0.96 are steps of 1 N·m.
        GuaranteedSetting found = Bare.WithResolution(Nm(1)).GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(100), Nm(150)), MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Equal(104, found.Window!.Lower!.Value.NewtonMeters);
        Assert.Equal(144, found.Window.Upper!.Value.NewtonMeters);
    }

    [Fact]
    public void None_says_why_and_what_would_make_it_fit()
    {
        TorqueWrench wrench = Bare.WithRange(Nm(20), Nm(100)).WithResolution(Nm(1));
        // At 51 N·m: min(51/50 − 1, 1 − 51/53) less 1 %; and 51/1.05 to 51/0.95.
        Assert.Equal(
            "No setting fits: with an accuracy of ±4 % and a calibration uncertainty of ±1 % the wrench scatters over more than 50 N·m to 53 N·m. "
            + "It would fit with an accuracy of ±1 % or better, or with a required window that holds 48.57 N·m to 53.69 N·m.",
            wrench.GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(50), Nm(53)), MeasurementUncertainty.Expanded(Ratio.FromPercent(1), 2)).Reason);
        GuaranteedSetting range = wrench.GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(150), Nm(180)), MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Equal(SettingObstacle.Range, range.Obstacle);
        Assert.StartsWith("No setting fits: it would have to lie in 156 N·m to 172.8 N·m, outside the range of the wrench, 20 N·m to 100 N·m.", range.Reason, StringComparison.Ordinal);
        GuaranteedSetting step = wrench.WithResolution(Nm(5)).GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(50), Nm(56)), MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Equal(SettingObstacle.Resolution, step.Obstacle);
        Assert.Contains("no step of the display (5 N·m) lies in 52 N·m to 53.76 N·m.", step.Reason, StringComparison.Ordinal);
        Assert.Contains("a display with steps of 1.76 N·m or finer", step.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(150, 170.5263, "150 N·m to 170.526 N·m")]
    [InlineData(150.0006, 170.5267, "150.001 N·m to 170.527 N·m")]
    public void What_the_fastener_gets_does_not_leave_the_window_by_rounding(double low, double high, string both)
    {
        string reason = Bare.WithRange(Nm(20), Nm(300)).GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(low), Nm(high)), MeasurementUncertainty.Expanded(Ratio.Zero, 2)).Reason;
        Assert.Contains($"gives the fastener {both}, within the required {both}.", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_window_far_from_the_joint_is_no_remedy()
    {
        // The wrench ends at 100 N·m: 96.2 to 104.2 N·m at the fastener says nothing of a joint that takes 150 to 180 N·m.
        GuaranteedSetting found = Bare.WithRange(Nm(20), Nm(100)).WithResolution(Nm(1))
            .GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(150), Nm(180)), MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Null(found.RequiredWindow);
        Assert.EndsWith("It would fit with a wrench or an adapter that brings these settings into the range.", found.Reason, StringComparison.Ordinal);
        GuaranteedSetting narrow = Bare.WithRange(Nm(20), Nm(100)).GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(150), Nm(151)), MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Equal(SettingObstacle.Accuracy, narrow.Obstacle);
        Assert.Null(narrow.RequiredWindow);
        Assert.EndsWith("No setting of this wrench comes near the required window: take another wrench.", narrow.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(20, 130, 104, 130)]
    [InlineData(110, 200, 110, 153.6)]
    [InlineData(110, 130, 110, 130)]
    public void Settings_are_clamped_to_the_range_without_a_display_step(double minimum, double maximum, double lowest, double highest)
    {
        // ±4 %: 100 to 160 N·m at the fastener asks for 100 × 1.04 = 104 to 160 × 0.96 = 153.6 N·m; the range cuts them off.
        GuaranteedSetting found = Bare.WithRange(Nm(minimum), Nm(maximum)).GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(100), Nm(160)), MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Equal(SettingObstacle.None, found.Obstacle);
        Close.To(lowest, found.Window!.Lower!.Value.NewtonMeters);
        Close.To(highest, found.Window.Upper!.Value.NewtonMeters);
        Close.To(104, found.BeforeRounding!.Lower!.Value.NewtonMeters);
        Close.To(153.6, found.BeforeRounding.Upper!.Value.NewtonMeters);
        Close.To(lowest / 1.04, found.Delivered!.Lower!.Value.NewtonMeters);
        Close.To(highest / 0.96, found.Delivered.Upper!.Value.NewtonMeters);
        Assert.EndsWith("The step of the display was not stated: round inward.", found.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Speaks_in_the_unit_of_the_display()
    {
        TorqueWrench wrench = Bare.WithResolution(Torque.FromPoundForceFeet(1));
        string reason = wrench.GuaranteedSettingFor(ToleranceWindow.FromLimits(Torque.FromPoundForceFeet(50), Torque.FromPoundForceFeet(60)), MeasurementUncertainty.Expanded(Ratio.Zero, 2)).Reason;
        Assert.StartsWith("Every setting in 52 lbf·ft to 57 lbf·ft gives the fastener 50 lbf·ft to 59.38 lbf·ft", reason, StringComparison.Ordinal);
        Assert.Contains("The range of the wrench was not stated, so it was not checked.", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_range_without_a_step_and_a_limit_of_zero()
    {
        TorqueWrench between = Bare.WithRange(Nm(51), Nm(59)).WithResolution(Nm(10));
        GuaranteedSetting none = between.GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(40), Nm(70)), MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Equal(SettingObstacle.Resolution, none.Obstacle);
        Assert.Null(none.RequiredAccuracy);
        Assert.Null(none.RequiredWindow);
        GuaranteedSetting onlyUpper = Bare.WithRange(Nm(20), Nm(100)).WithResolution(Nm(1)).GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(-5), Nm(50)), MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Equal(20, onlyUpper.Window!.Lower!.Value.NewtonMeters);
        Assert.Equal(48, onlyUpper.Window.Upper!.Value.NewtonMeters);
        Close.To(0.5, onlyUpper.RequiredAccuracy!.Value.DecimalFractions);
        GuaranteedSetting nothing = Bare.WithResolution(Nm(1)).GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(0), Nm(0)), MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Equal(0, nothing.Window!.Upper!.Value.NewtonMeters);
    }

    [Fact]
    public void Accuracy_is_not_guessed_and_a_window_beyond_the_trade_is_refused()
    {
        Assert.Throws<InvalidOperationException>(() => new TorqueWrench(Length.FromMillimeters(400)).GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(1), Nm(2)), MeasurementUncertainty.Expanded(Ratio.Zero, 2)));
        Assert.Equal("atFastener", Assert.Throws<ArgumentOutOfRangeException>(() => Bare.GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(1), Nm(2e7)), MeasurementUncertainty.Expanded(Ratio.Zero, 2))).ParamName);
        Assert.Equal("atFastener", Assert.Throws<ArgumentOutOfRangeException>(() => Bare.GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(-2), Nm(-1)), MeasurementUncertainty.Expanded(Ratio.Zero, 2))).ParamName);
        Assert.Equal("calibrationUncertainty", Assert.Throws<ArgumentOutOfRangeException>(() => Bare.GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(1), Nm(2)), MeasurementUncertainty.Expanded(Ratio.FromPercent(41), 2))).ParamName);
    }

    [Fact]
    public void The_draws_of_these_tests_meet_every_obstacle()
    {
        var any = new AnyWrench(420, [(75, 40)], 4);
        SettingObstacle[] met = [.. Enumerable.Range(0, 600).Select(seed =>
        {
            (TorqueWrench wrench, ToleranceWindow<Torque> required, Ratio uncertainty) = Draw(any, new AnyTorque(83), seed);
            return wrench.GuaranteedSettingFor(required, MeasurementUncertainty.Expanded(uncertainty, 2)).Obstacle;
        })];
        Assert.All(Enum.GetValues<SettingObstacle>(), obstacle => Assert.True(met.Count(o => o == obstacle) >= 10, $"{obstacle} is rare"));
    }

    /// <summary>A window, accuracy, uncertainty, range and display about the target.</summary>
    private static (TorqueWrench Wrench, ToleranceWindow<Torque> Required, Ratio Uncertainty) Draw(AnyWrench any, AnyTorque target, int seed)
    {
        var random = new Random(seed);
        double Uniform(double low, double high) => low + (high - low) * random.NextDouble();
        double atWrench = target.NewtonMeters / any.Wrench.TorqueRatio, low = Uniform(0.3, 1.2);
        ToleranceWindow<Torque> required = ToleranceWindow.FromDeviations(target.Torque, Ratio.FromPercent(Uniform(1, 9)), Ratio.FromPercent(Uniform(1, 9)));
        TorqueWrench wrench = any.Wrench.WithAccuracy(Ratio.FromPercent(Uniform(0, 6)))
            .WithRange(Nm(atWrench * low), Nm(atWrench * low * Uniform(1.02, 4)))
            .WithResolution(Nm(Math.Max(2e-6, atWrench * Math.Exp(Uniform(-7, -2.5)))));
        return (wrench, required, Ratio.FromPercent(Uniform(0, 2)));
    }

    /// <summary>The requirement itself, in other words: range kept, and both ends of the scatter within the limits, with a slack for the last bits.</summary>
    private static bool IsGuaranteed(TorqueWrench wrench, ToleranceWindow<Torque> required, Ratio uncertainty, double setting, double slack = 1e-9)
    {
        double worst = wrench.Accuracy!.Value.DecimalFractions + uncertainty.DecimalFractions, drive = setting * wrench.TorqueRatio;
        return setting >= wrench.LowTorque!.Value.NewtonMeters * (1 - slack) && setting <= wrench.HighTorque!.Value.NewtonMeters * (1 + slack)
            && drive / (1 + worst) >= required.Lower!.Value.NewtonMeters * (1 - slack) && drive / (1 - worst) <= required.Upper!.Value.NewtonMeters * (1 + slack);
    }

    private static Torque Nm(double value) => Torque.FromNewtonMeters(value);
}
