using Fastening.Quality;
using FsCheck.Xunit;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Fastening.Tests.Uncertainty;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 40)]
public class PreloadBandTests
{
    private static readonly FrictionRange Friction = new(new FrictionCoefficients(thread: 0.10, bearing: 0.08), new FrictionCoefficients(thread: 0.16, bearing: 0.15));
    private static readonly FrictionTorqueModel M16 = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), Friction.Low).WithPrevailing(Torque.FromNewtonMeters(4));
    private static readonly ToleranceWindow<Torque> Window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(140), Torque.FromNewtonMeters(165));
    private static readonly MonteCarlo Quick = new MonteCarlo().WithDraws(1000);

    private static readonly TorqueWrench Wrench = new TorqueWrench(Length.FromMillimeters(450))
        .WithAccuracy(Ratio.FromPercent(4)).WithResolution(Torque.FromNewtonMeters(1)).WithPullOffSquare(Angle.FromDegrees(3))
        .WithAdapter(Length.FromMillimeters(120), Angle.FromDegrees(50)).WithAdapter(Length.FromMillimeters(40), Angle.FromDegrees(-80));

    public static TheoryData<TorqueConvention> Conventions =>
        [TorqueConvention.Iso16047, TorqueConvention.Shigley, TorqueConvention.Iso16047Printed, TorqueConvention.Vdi2230];

    /// <summary>The analytic sensitivities against differences of the whole function, every input there is.</summary>
    [Theory]
    [MemberData(nameof(Conventions))]
    public void Sensitivities_are_the_slopes_of_the_preload(TorqueConvention convention)
    {
        PreloadBandInputs inputs = WithEverything(new PreloadBandInputs(M16.WithConvention(convention), Wrench, Torque.FromNewtonMeters(130), Friction, FrictionCorrelation.Independent));
        UncertaintyBudget analytic = PreloadBand.Evaluate(inputs, Quick).Budget;
        UncertaintyBudget numeric = UncertaintyBudget.Of("preload", "kN", analytic.Function, [.. analytic.Inputs.Select(Bare)]);
        Assert.Equal(12, analytic.Rows.Count);
        foreach (UncertaintyBudgetRow row in analytic.Rows)
        {
            double slope = numeric.Rows.Single(other => other.Input.Name == row.Input.Name).Sensitivity;
            Assert.True(Math.Abs(slope * row.Input.StandardUncertainty - row.Part) < 1e-7, $"{row.Input.Name}: {row.Sensitivity} against {slope}");
        }
    }

    [Fact]
    public void Sensitivity_of_a_nut_factor_is_the_slope_of_the_preload()
    {
        NutFactorModel model = TorquePreloadModel.FromNutFactor(0.2, Length.FromMillimeters(16));
        PreloadBand band = PreloadBand.Evaluate(new PreloadBandInputs(model, Window, 0.15, 0.21), Quick);
        Close.To(-152.5 / (0.18 * 0.18 * 0.016) / 1e3, band.Budget.Rows.Single(row => row.Input.Name == "K").Sensitivity);
    }

    /// <summary>Worst case by brute force through the public models: a grid of every geometry, friction and torque.</summary>
    [Fact]
    public void Worst_case_is_the_extreme_of_all_corners()
    {
        PreloadBand band = PreloadBand.Evaluate(WithEverything(new PreloadBandInputs(M16, Wrench, Torque.FromNewtonMeters(130), Friction, FrictionCorrelation.Independent)), Quick);
        double[] ends = [-1, 1], fine = [-1, -0.5, 0, 0.5, 1];
        double lowest = double.PositiveInfinity, highest = 0;
        var corners =
            from lever in ends
            from e in ends
            from e2 in ends
            from pull in ends
            from angle in fine
            from angle2 in fine
            select (lever, e, e2, pull, angle, angle2);
        foreach ((double lever, double e, double e2, double pull, double angle, double angle2) in corners)
        {
            TorqueWrench held = new TorqueWrench(Length.FromMillimeters(450 + 12 * lever)).WithPullOffSquare(Angle.FromDegrees(3 + 6 * pull))
                .WithAdapter(Length.FromMillimeters(120 + 2 * e), Angle.FromDegrees(50 + 4 * angle))
                .WithAdapter(Length.FromMillimeters(40 + 2 * e2), Angle.FromDegrees(-80 + 4 * angle2));
            lowest = Math.Min(lowest, held.TorqueRatio);
            highest = Math.Max(highest, held.TorqueRatio);
        }

        double Preload(FrictionCoefficients friction, double torque, double prevailing, double diameter) => TorquePreloadModel
            .FromFriction(ScrewThread.Parse("M16"), BearingSurface.OfDiameter(M16.Bearing.EffectiveDiameter + Length.FromMillimeters(diameter)), friction)
            .WithPrevailing(Torque.FromNewtonMeters(prevailing)).PreloadAt(Torque.FromNewtonMeters(torque)).Kilonewtons;

        Close.To(Preload(Friction.High, 129.5 * lowest / 1.04, 6, 0.4), band.WorstCase.Low.Kilonewtons, 1e-9);
        Close.To(Preload(Friction.Low, 130.5 * highest / 0.96, 1, -0.4), band.WorstCase.High.Kilonewtons, 1e-9);
        Assert.All(band.Draws.Values.ToArray(), draw => Assert.InRange(draw, band.WorstCase.Low.Kilonewtons, band.WorstCase.High.Kilonewtons));
    }

    /// <summary>Where an adapter may stand along the pull, the extreme lies inside its angles, not at an end.</summary>
    [Fact]
    public void An_adapter_straight_ahead_can_only_lose()
    {
        TorqueWrench straight = new TorqueWrench(Length.FromMillimeters(400)).WithAccuracy(Ratio.Zero).WithAdapter(Length.FromMillimeters(100), Angle.Zero);
        PreloadBand band = PreloadBand.Evaluate(
            new PreloadBandInputs(M16, straight, Torque.FromNewtonMeters(120), new FrictionRange(Friction.Low, Friction.Low), FrictionCorrelation.Independent)
                .WithAdapterErrors(Length.Zero, Angle.FromDegrees(8)));
        double Preload(double ratio) => M16.PreloadAt(Torque.FromNewtonMeters(120 * ratio)).Kilonewtons;

        Close.To(Preload(1.25), band.WorstCase.High.Kilonewtons);
        Close.To(Preload(1 + 0.25 * Math.Cos(8 * Math.PI / 180)), band.WorstCase.Low.Kilonewtons);

        // First order is zero; the mean falls by (E/L) u_θ²/2 of the ratio.
        double shift = M16.PreloadAt(Torque.FromNewtonMeters(124)).Kilonewtons - M16.PreloadAt(Torque.FromNewtonMeters(4)).Kilonewtons;
        Close.To(-shift * 0.25 * Math.Pow(8 * Math.PI / 180, 2) / 6, band.Budget.MeanShift, 1e-3);
        Close.To(band.Budget.MeanShift, band.Mean.Kilonewtons - band.Nominal.Kilonewtons, 0.02);
        Assert.True(band.Budget.StandardUncertainty > 0);
    }

    /// <summary>One rectangular coefficient alone: F = M/(a + b µ), whose mean and quantiles have closed forms.</summary>
    [Fact]
    public void One_scattering_coefficient_has_a_closed_form()
    {
        var range = new FrictionRange(new FrictionCoefficients(0.08, 0.10), new FrictionCoefficients(0.20, 0.10));
        var exact = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(150), Torque.FromNewtonMeters(150));
        PreloadBand band = PreloadBand.Evaluate(new PreloadBandInputs(M16, exact, range, FrictionCorrelation.Independent));
        double low = M16.WithFriction(range.Low).NutFactor * 16, high = M16.WithFriction(range.High).NutFactor * 16;
        double At(double share) => 146 / (low + share * (high - low));
        double mean = 146 * Math.Log(high / low) / (high - low);
        double meanSquare = 146.0 * 146 / (low * high);

        Close.To(At(0.5), band.Nominal.Kilonewtons);
        Close.To(mean, band.Mean.Kilonewtons, 4.5 * band.StandardDeviation / band.Mean / 1000);
        Close.To(Math.Sqrt(meanSquare - mean * mean), band.StandardDeviation.Kilonewtons, 0.004);
        Close.To(At(0.5), band.Median.Kilonewtons, 0.002);
        Close.To(At(0.975), band.Statistical.Low.Kilonewtons, 0.001);
        Close.To(At(0.025), band.Statistical.High.Kilonewtons, 0.001);

        // The density of F falls, so the shortest range starts at the least preload.
        Close.To(At(1), band.ShortestStatistical.Low.Kilonewtons, 0.001);
        Close.To(At(0.05), band.ShortestStatistical.High.Kilonewtons, 0.001);
        Close.To(0.3, band.ProbabilityBelow(Force.FromKilonewtons(At(0.7))), 0.01);
        Close.To(0.1, band.ProbabilityAbove(Force.FromKilonewtons(At(0.1))), 0.02);
        Assert.Equal(0, band.ProbabilityAbove(Force.FromKilonewtons(At(0) + 0.001)));
        Assert.Equal("µ_th", band.Dominating.Name);
        Close.To(At(0) - At(1), band.Dominating.Swing.Kilonewtons);
        Close.To((high - low) / (high + low) / Math.Sqrt(3), band.RelativeArmUncertainty.DecimalFractions, 1e-9);
    }

    /// <summary>1/κ of a normal κ: the ends of the band are those of κ, turned over; first order would say 0.76 to 1.24.</summary>
    [Fact]
    public void Skew_of_the_preload_is_not_lost()
    {
        NutFactorModel model = TorquePreloadModel.FromNutFactor(0.2, Length.FromMillimeters(16));
        var exact = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(150), Torque.FromNewtonMeters(150));
        PreloadBand band = PreloadBand.Evaluate(new PreloadBandInputs(model, exact, 0.2 * (1 - 0.24), 0.2 * (1 + 0.24)).WithFrictionShape(ScatterShape.Normal(2)));
        double z = Normal.InvCDF(0, 1, 0.975);
        Close.To(1 / (1 + 0.12 * z), band.Statistical.Low / band.Nominal, 0.002);
        Close.To(1 / (1 - 0.12 * z), band.Statistical.High / band.Nominal, 0.004);
        Assert.Equal(0.81, Math.Round(band.Statistical.Low / band.Nominal, 2));
        Assert.Equal(1.31, Math.Round(band.Statistical.High / band.Nominal, 2));
        Close.To(0.12, band.RelativeArmUncertainty.DecimalFractions, 1e-9);
        Assert.False(band.IsFirstOrderEnough);
        Assert.Contains("mean lies", string.Join(';', band.Budget.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void Correlated_friction_widens_the_statistical_band_and_leaves_the_worst_case()
    {
        var inputs = new PreloadBandInputs(M16, Window, Friction, FrictionCorrelation.Independent);
        PreloadBand apart = PreloadBand.Evaluate(inputs), together = PreloadBand.Evaluate(inputs.WithFrictionCorrelation(FrictionCorrelation.Of(0.9)));
        Assert.True(together.StandardDeviation > 1.2 * apart.StandardDeviation);
        Assert.Equal(apart.WorstCase.Low, together.WorstCase.Low);
        Assert.Equal(apart.WorstCase.High, together.WorstCase.High);
        Close.To(together.Budget.StandardUncertainty, together.StandardDeviation.Kilonewtons, 0.05);
    }

    /// <summary>Twice the torque, twice every preload; the worst case holds every draw; influences are complete.</summary>
    [Property]
    public void Bands_scale_and_contain(AnyJoint any, AnyTorque torque)
    {
        var range = new FrictionRange(any.Friction, new FrictionCoefficients(any.ThreadFriction * 1.5, any.BearingFriction * 1.3));
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(torque.Torque, Ratio.FromPercent(6), Ratio.FromPercent(3));
        PreloadBand one = PreloadBand.Evaluate(new PreloadBandInputs(any.Model, window, range, FrictionCorrelation.Independent), Quick);
        PreloadBand two = PreloadBand.Evaluate(new PreloadBandInputs(any.Model, window.Scale(2), range, FrictionCorrelation.Independent), Quick);

        Close.To(2 * one.Statistical.High.Newtons, two.Statistical.High.Newtons, 1e-9);
        Close.To(any.Model.PreloadRangeAt(window.Upper!.Value, range).High.Newtons, one.WorstCase.High.Newtons, 1e-9);
        Close.To(any.Model.PreloadRangeAt(window.Lower!.Value, range).Low.Newtons, one.WorstCase.Low.Newtons, 1e-9);
        Assert.True(one.Statistical.Low >= one.WorstCase.Low && one.Statistical.High <= one.WorstCase.High);
        Assert.True(one.ShortestStatistical.High - one.ShortestStatistical.Low <= one.Statistical.High - one.Statistical.Low);
        Close.To(1, one.Influences.Sum(influence => influence.Weight), 1e-9);
    }

    [Fact]
    public void Below_the_prevailing_torque_there_is_no_preload_and_no_crash()
    {
        var low = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(0), Torque.FromNewtonMeters(3));
        PreloadBand band = PreloadBand.Evaluate(new PreloadBandInputs(M16, low, Friction, FrictionCorrelation.Independent), Quick);
        Assert.Equal(Force.Zero, band.WorstCase.High);
        Assert.Equal(1, band.ProbabilityBelow(Force.FromNewtons(1)));
        Assert.Null(band.Statistical.HighOverLow);
    }

    [Fact]
    public void What_does_not_belong_is_refused()
    {
        var window = new PreloadBandInputs(M16, Window, Friction, FrictionCorrelation.Independent);
        var factor = new PreloadBandInputs(TorquePreloadModel.FromNutFactor(0.2, Length.FromMillimeters(16)), Window, 0.15, 0.2);
        Assert.Throws<InvalidOperationException>(() => window.WithPullError(Angle.FromDegrees(3)));
        Assert.Throws<InvalidOperationException>(() => window.WithAdapterErrors(Length.Zero, Angle.FromDegrees(3)));
        Assert.Throws<InvalidOperationException>(() => factor.WithFrictionCorrelation(FrictionCorrelation.Of(0.5)));
        Assert.Throws<InvalidOperationException>(() => factor.WithBearingDiameterError(Length.FromMillimeters(1)));
        Assert.Throws<ArgumentException>(() => new PreloadBandInputs(M16, new TorqueWrench(Length.FromMillimeters(400)), Torque.FromNewtonMeters(100), Friction, FrictionCorrelation.Independent));
        var held = new PreloadBandInputs(M16, Wrench, Torque.FromNewtonMeters(100), Friction, FrictionCorrelation.Independent);
        Assert.Throws<ArgumentOutOfRangeException>(() => held.WithLeverLengthError(Length.FromMillimeters(450)));
        Assert.Throws<ArgumentOutOfRangeException>(() => held.WithAdapterErrors(Length.FromMillimeters(40), Angle.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => held.WithPrevailingRange(Torque.FromNewtonMeters(3), Torque.FromNewtonMeters(2)));
    }

    [Fact]
    public void The_same_in_a_culture_with_decimal_commas() => CommaCulture.Run(() =>
    {
        string text = PreloadBand.Evaluate(new PreloadBandInputs(M16, Window, Friction, FrictionCorrelation.Independent), Quick).ToString();
        Assert.All(PreloadBand.NotCovered, left => Assert.Contains(left, text, StringComparison.Ordinal));
        Assert.Matches(@"^worst case \d\d\.\d+ … \d\d\.\d+ kN \(α_A \d\.\d\d\); 95 % of joints \d\d\.\d+ … \d\d\.\d+ kN \(α_A \d\.\d\d\); µ_b dominates; thread and bearing friction independent; not covered: ", text);
    });

    private static PreloadBandInputs WithEverything(PreloadBandInputs inputs) => inputs
        .WithLeverLengthError(Length.FromMillimeters(12)).WithAdapterErrors(Length.FromMillimeters(2), Angle.FromDegrees(4)).WithPullError(Angle.FromDegrees(6))
        .WithBearingDiameterError(Length.FromMillimeters(0.4)).WithPrevailingRange(Torque.FromNewtonMeters(1), Torque.FromNewtonMeters(6));

    private static UncertaintyContribution Bare(UncertaintyContribution input) => UncertaintyContribution.Normal(input.Name, input.Value, input.StandardUncertainty);
}
