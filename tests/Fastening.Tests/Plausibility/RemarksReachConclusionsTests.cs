using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.Plausibility;

/// <summary>What was remarked of an input is remarked of the conclusion drawn from it.</summary>
public class RemarksReachConclusionsTests
{
    private static readonly ScrewThread M16 = ScrewThread.Parse("M16");
    private static readonly FrictionRange Slipped = new(new FrictionCoefficients(0.012, 0.10), new FrictionCoefficients(0.14, 0.14));
    private static readonly ToleranceWindow<Torque> Window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(90), Torque.FromNewtonMeters(110));
    private static readonly TorqueWrench Long = new TorqueWrench(Length.FromMillimeters(4000)).WithAccuracy(Ratio.FromPercent(4));

    private static FrictionTorqueModel Model => TorquePreloadModel.ForHexagonBolt(M16, new FrictionCoefficients(0.12, 0.10));

    [Theory]
    [InlineData(90, 110)]
    [InlineData(100, 101)]
    public void A_guaranteed_setting_remarks_the_lever_whether_it_fits_or_not(double low, double high)
    {
        GuaranteedSetting found = Long.GuaranteedSettingFor(
            ToleranceWindow.FromLimits(Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(high)), MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Equal((PlausibilityKind.LeverLength, 4000.0), Only(found.Remarks));
        Assert.EndsWith(" [unusual: lever length 4000 mm]", found.Reason, StringComparison.Ordinal);
        Assert.DoesNotContain("Not counted", found.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void With_an_adapter_a_guaranteed_setting_says_what_is_not_counted()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400)).WithAccuracy(Ratio.FromPercent(4)).WithAdapter(Length.FromMillimeters(100), Angle.Zero);
        GuaranteedSetting found = wrench.GuaranteedSettingFor(Window, MeasurementUncertainty.Expanded(Ratio.Zero, 2));
        Assert.Empty(found.Remarks);
        Assert.EndsWith(" Not counted: the hand off its place, an adapter off its angle.", found.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_band_remarks_its_friction_and_its_wrench()
    {
        var inputs = new PreloadBandInputs(Model, Long, Torque.FromNewtonMeters(100), Slipped, FrictionCorrelation.Full);
        PreloadBand band = PreloadBand.Evaluate(inputs, new MonteCarlo().WithDraws(20_000));
        foreach (IReadOnlyList<PlausibilityRemark> remarks in new[] { inputs.Remarks, band.Remarks })
        {
            Assert.Equal([(PlausibilityKind.ThreadFriction, 0.012), (PlausibilityKind.LeverLength, 4000)], remarks.Select(remark => (remark.Kind, remark.Value)));
        }

        Assert.EndsWith(" [unusual: thread friction 0.012, lever length 4000 mm]", band.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Bounds_of_the_nut_factor_are_remarked_once_each()
    {
        NutFactorModel model = TorquePreloadModel.FromNutFactor(0.19, Length.FromMillimeters(16));
        Assert.Equal((PlausibilityKind.NutFactor, 0.012), Only(new PreloadBandInputs(model, Window, 0.012, 0.2).Remarks));
        Assert.Equal((PlausibilityKind.NutFactor, 0.012), Only(new PreloadBandInputs(model, Window, 0.012, 0.012).Remarks));
        TorquePreloadRange range = TorquePreloadRange.OfNutFactor(0.2, 1.9, Length.FromMillimeters(16));
        Assert.Equal((PlausibilityKind.NutFactor, 1.9), Only(range.Remarks));
        Assert.EndsWith(" [unusual: nut factor 1.9]", range.ToString(), StringComparison.Ordinal);
        Assert.Empty(TorquePreloadRange.OfNutFactor(0.15, 0.2, Length.FromMillimeters(16)).Remarks);
    }

    [Fact]
    public void Equal_ends_of_a_range_are_one_remark()
    {
        var range = new FrictionRange(Slipped.Low, Slipped.Low);
        Assert.Equal((PlausibilityKind.ThreadFriction, 0.012), Only(range.Remarks));
        Assert.Equal((PlausibilityKind.ThreadFriction, 0.012), Only(TorquePreloadRange.OfFriction(Model, range).WithPrevailing(Torque.Zero, Torque.FromNewtonMeters(9)).Remarks));
    }

    private static (PlausibilityKind Kind, double Value) Only(IReadOnlyList<PlausibilityRemark> remarks)
    {
        PlausibilityRemark remark = Assert.Single(remarks);
        return (remark.Kind, remark.Value);
    }
}
