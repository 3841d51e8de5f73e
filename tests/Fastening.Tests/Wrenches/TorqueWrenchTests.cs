using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Wrenches;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 300)]
public class TorqueWrenchTests
{
    private static readonly Torque Wanted = Torque.FromNewtonMeters(100);

    [Property]
    public void Setting_and_fastener_torque_come_back(AnyWrench any, AnyTorque torque) =>
        Close.To(torque.NewtonMeters, any.Wrench.FastenerTorqueAt(any.Wrench.SettingFor(torque.Torque)).NewtonMeters);

    [Property]
    public void Ratio_is_the_moment_of_the_hand_force_about_the_fastener(AnyWrench any)
    {
        // Independent route: force and positions as vectors in the plane. Hand at (−L, 0), force leaning by β from +y towards +x.
        double x = 0, y = 0;
        foreach ((double length, double degrees) in any.Chain)
        {
            (double sine, double cosine) = Math.SinCos(degrees * Math.PI / 180);
            x += length * cosine;
            y += length * sine;
        }

        (double fx, double fy) = Math.SinCos(any.PullDegrees * Math.PI / 180);
        double MomentAbout(double px, double py) => (-any.LeverMm - px) * fy - (0 - py) * fx;
        Close.To(MomentAbout(x, y) / MomentAbout(0, 0), any.Wrench.TorqueRatio, 1e-12, 1 + any.Chain.Sum(a => a.LengthMm) / any.LeverMm);
    }

    [Property]
    public void Order_of_the_adapters_does_not_matter(AnyWrench any)
    {
        AnyWrench reversed = any with { Chain = [.. any.Chain.Reverse()] };
        Close.To(any.Wrench.TorqueRatio, reversed.Wrench.TorqueRatio);
    }

    [Property]
    public void Twice_the_size_changes_nothing(AnyWrench any)
    {
        var twice = new AnyWrench(any.LeverMm * 2, [.. any.Chain.Select(a => (a.LengthMm * 2, a.Degrees))], any.PullDegrees);
        Close.To(any.Wrench.TorqueRatio, twice.Wrench.TorqueRatio);
    }

    [Property]
    public void Sensitivities_match_central_differences(AnyWrench any)
    {
        WrenchSensitivities s = any.Wrench.SensitivitiesAt(Wanted);
        double scale = 100 * (1 + any.Chain.Sum(a => a.LengthMm) / any.LeverMm);
        Close.To(Difference(h => (any with { LeverMm = any.LeverMm + h }).Wrench) * 1e3, s.PerLeverLength.NewtonMetersPerMeter, 1e-6, scale / any.LeverMm * 1e3);
        Close.To(Difference(h => (any with { PullDegrees = any.PullDegrees + h }).Wrench), s.PerPullAngle.NewtonMetersPerRadian * Math.PI / 180, 1e-6, scale);
        for (int i = 0; i < any.Chain.Count; i++)
        {
            int moved = i;
            AnyWrench With(double length, double angle) => any with
            {
                Chain = [.. any.Chain.Select((a, n) => n == moved ? (a.LengthMm + length, a.Degrees + angle) : a)],
            };
            Close.To(Difference(h => With(h, 0).Wrench) * 1e3, s.PerAdapterLength[i].NewtonMetersPerMeter, 1e-6, scale / any.LeverMm * 1e3);
            Close.To(Difference(h => With(0, h).Wrench), s.PerAdapterAngle[i].NewtonMetersPerRadian * Math.PI / 180, 1e-6, scale);
        }

        Assert.Equal(any.Wrench.TorqueRatio, s.PerSetting);

        static double Difference(Func<double, TorqueWrench> at) =>
            (at(1e-3).FastenerTorqueAt(Wanted).NewtonMeters - at(-1e-3).FastenerTorqueAt(Wanted).NewtonMeters) / 2e-3;
    }

    [Property]
    public void Window_at_the_wrench_accepts_what_the_window_at_the_fastener_accepts(AnyWrench any, AnyTorque torque)
    {
        ToleranceWindow<Torque> atFastener = ToleranceWindow.FromDeviations(torque.Torque, Ratio.FromPercent(3), Ratio.FromPercent(5));
        ToleranceWindow<Torque> atWrench = any.Wrench.SettingWindowFor(atFastener);
        foreach (double share in new[] { 0.95, 0.97, 0.971, 1, 1.049, 1.05, 1.07 })
        {
            Torque fastener = torque.Torque * share;
            Assert.Equal(atFastener.Classify(fastener), atWrench.Classify(any.Wrench.SettingFor(fastener)));
        }
    }

    [Fact]
    public void Limit_cases_of_one_adapter()
    {
        TorqueWrench bare = new(Length.FromMillimeters(400));
        TorqueWrench With(double degrees) => bare.WithAdapter(Length.FromMillimeters(100), Angle.FromDegrees(degrees));
        Assert.Equal(1, bare.TorqueRatio);
        Close.To(1.25, With(0).TorqueRatio);
        Close.To(1, With(90).TorqueRatio);
        Close.To(1, With(-90).TorqueRatio);
        Close.To(0.75, With(180).TorqueRatio);
        Close.To(0.75, With(-180).TorqueRatio);
        Close.To(1, bare.WithAdapter(Length.Zero, Angle.FromDegrees(33)).TorqueRatio);

        // A pull out of square changes nothing without an adapter, and has its largest effect with one at 90°: −(E/L) tan β.
        Assert.Equal(1, bare.WithPullOffSquare(Angle.FromDegrees(20)).TorqueRatio);
        Close.To(1 - 0.25 * Math.Tan(Math.PI / 18), With(90).WithPullOffSquare(Angle.FromDegrees(10)).TorqueRatio);
        Close.To(1.25, With(0).WithPullOffSquare(Angle.FromDegrees(10)).TorqueRatio);
    }

    [Fact]
    public void An_adapter_at_a_right_angle_needs_no_correction()
    {
        // Common practice, no source (and US Navy NAVEDTRA 14008, in the published tests).
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(350)).WithAdapter(Length.FromMillimeters(60), Angle.FromDegrees(90));
        Close.To(100, wrench.SettingFor(Wanted).NewtonMeters);
    }

    [Fact]
    public void At_a_right_angle_the_lever_does_not_matter_and_straight_ahead_the_angle_does_not()
    {
        TorqueWrench bare = new(Length.FromMillimeters(400));
        WrenchSensitivities right = bare.WithAdapter(Length.FromMillimeters(100), Angle.FromDegrees(90)).SensitivitiesAt(Wanted);
        Assert.Equal(0, right.PerLeverLength.NewtonMetersPerMeter, 1e-12);
        Close.To(-25, right.PerAdapterAngle[0].NewtonMetersPerRadian);
        Close.To(-25, right.PerPullAngle.NewtonMetersPerRadian);
        WrenchSensitivities ahead = bare.WithAdapter(Length.FromMillimeters(100), Angle.Zero).SensitivitiesAt(Wanted);
        Assert.Equal(0, ahead.PerAdapterAngle[0].NewtonMetersPerRadian, 1e-12);
    }

    [Fact]
    public void Refuses_a_chain_that_would_turn_the_fastener_backwards()
    {
        TorqueWrench bare = new(Length.FromMillimeters(400));
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => bare.WithAdapter(Length.FromMillimeters(500), Angle.FromDegrees(180)));
        Assert.Equal("length", refusal.ParamName);
        Assert.Contains("500 mm", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(
            () => bare.WithAdapter(Length.FromMillimeters(300), Angle.FromDegrees(90)).WithPullOffSquare(Angle.FromDegrees(85)));
    }

    [Fact]
    public void Fit_warns_as_data()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400))
            .WithRange(Torque.FromNewtonMeters(20), Torque.FromNewtonMeters(200)).WithResolution(Torque.FromNewtonMeters(0.1));
        Assert.Equal(WrenchWarning.None, wrench.FitOf(Torque.FromNewtonMeters(123.4)).Warnings);
        Assert.Equal(WrenchWarning.None, wrench.FitOf(Torque.FromNewtonMeters(20)).Warnings);
        Assert.Equal(WrenchWarning.None, wrench.FitOf(Torque.FromNewtonMeters(200)).Warnings);
        Assert.Equal(WrenchWarning.BelowRange, wrench.FitOf(Torque.FromNewtonMeters(19.9)).Warnings);
        Assert.Equal(WrenchWarning.AboveRange, wrench.FitOf(Torque.FromNewtonMeters(200.1)).Warnings);
        Assert.Equal(WrenchWarning.BetweenSteps, wrench.FitOf(Torque.FromNewtonMeters(123.45)).Warnings);
        Assert.True(wrench.FitOf(Torque.FromNewtonMeters(123.4)).IsInRange);
        Assert.Empty(wrench.FitOf(Torque.FromNewtonMeters(123.4)).Messages);

        WrenchFit chained = wrench.WithAdapter(Length.FromMillimeters(50), Angle.Zero).FitOf(Torque.FromNewtonMeters(250.05));
        Assert.Equal(WrenchWarning.AboveRange | WrenchWarning.BetweenSteps | WrenchWarning.HandPositionMatters, chained.Warnings);
        Assert.Equal(3, chained.Messages.Count);
        Assert.False(chained.IsInRange);
        Assert.True(new TorqueWrench(Length.FromMillimeters(400)).FitOf(Wanted).Has(WrenchWarning.RangeNotStated));
    }

    [Fact]
    public void An_adapter_at_a_right_angle_is_warned_of_though_its_ratio_is_one()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400)).WithRange(Torque.Zero, Torque.FromNewtonMeters(200));
        WrenchFit square = wrench.WithAdapter(Length.FromMillimeters(200), Angle.FromDegrees(90)).FitOf(Wanted);
        Assert.Equal(WrenchWarning.HandPositionMatters, square.Warnings);
        Assert.Contains("pull square to the handle", square.Messages[0], StringComparison.Ordinal);
        WrenchFit leaning = wrench.WithAdapter(Length.FromMillimeters(80), Angle.FromDegrees(30)).WithPullOffSquare(Angle.FromDegrees(-5)).FitOf(Wanted);
        Assert.Contains("5° off square, leaning away from the head", leaning.Messages[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Warns_in_the_unit_in_which_the_wrench_was_stated()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400))
            .WithRange(Torque.FromPoundForceFeet(20), Torque.FromPoundForceFeet(150)).WithResolution(Torque.FromPoundForceFeet(1));
        string message = Assert.Single(wrench.FitOf(ShopUnit.PoundForceFoot.From(93.5)).Messages);
        Assert.Equal("93.5 lbf·ft lies between two steps of the display (1 lbf·ft).", message);
    }

    [Fact]
    public void Every_display_step_is_found_to_be_one()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400))
            .WithRange(Torque.Zero, Torque.FromNewtonMeters(1000)).WithResolution(Torque.FromNewtonMeters(0.1));
        for (int tenths = 0; tenths <= 10_000; tenths++)
        {
            Assert.False(wrench.FitOf(Torque.FromNewtonMeters(tenths / 10.0)).Has(WrenchWarning.BetweenSteps));
        }
    }

    [Fact]
    public void Delivered_window_follows_from_the_accuracy_and_is_not_guessed()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400)).WithAdapter(Length.FromMillimeters(100), Angle.Zero);
        Assert.Throws<InvalidOperationException>(() => wrench.DeliveredWindowAt(Wanted));
        ToleranceWindow<Torque> delivered = wrench.WithAccuracy(Ratio.FromPercent(4)).DeliveredWindowAt(Wanted);
        Close.To(125 / 1.04, delivered.Lower!.Value.NewtonMeters);
        Close.To(125, delivered.Target!.Value.NewtonMeters);
        Close.To(125 / 0.96, delivered.Upper!.Value.NewtonMeters);
    }

    [Fact]
    public void What_was_stated_is_kept_through_every_change()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400))
            .WithRange(Torque.FromNewtonMeters(20), Torque.FromNewtonMeters(200))
            .WithResolution(Torque.FromNewtonMeters(0.1))
            .WithAccuracy(Ratio.FromPercent(3))
            .WithPullOffSquare(Angle.FromDegrees(3))
            .WithCoaxialExtension(CoaxialExtension.Hexagon(Length.FromMillimeters(100), Length.FromMillimeters(12), Pressure.FromGigapascals(79)))
            .WithAdapter(Length.FromMillimeters(30), Angle.FromDegrees(17));
        Assert.Equal(20, wrench.LowTorque!.Value.NewtonMeters);
        Assert.Equal(200, wrench.HighTorque!.Value.NewtonMeters);
        Assert.Equal(0.1, wrench.Resolution!.Value.NewtonMeters);
        Assert.Equal(3, wrench.Accuracy!.Value.Percent);
        Assert.Equal(3, wrench.PullOffSquare.Degrees);
        Assert.Equal(17, Assert.Single(wrench.Adapters).AngleFromHandle.Degrees);
        Assert.Single(wrench.CoaxialExtensions);
    }
}
