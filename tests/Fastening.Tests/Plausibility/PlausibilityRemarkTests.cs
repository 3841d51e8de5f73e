using UnitsNet;

namespace Fastening.Tests.Plausibility;

/// <summary>Possible but unusual values are calculated with and remarked, as data.</summary>
public class PlausibilityRemarkTests
{
    private static readonly ScrewThread M16 = ScrewThread.Parse("M16");

    [Theory]
    [InlineData(1.2, 0.10, PlausibilityKind.ThreadFriction, 1.2)]
    [InlineData(0.012, 0.10, PlausibilityKind.ThreadFriction, 0.012)]
    [InlineData(0.12, 1.0, PlausibilityKind.BearingFriction, 1.0)]
    [InlineData(0.12, 0, PlausibilityKind.BearingFriction, 0.0)]
    public void A_slipped_decimal_of_friction_is_remarked(double thread, double bearing, PlausibilityKind kind, double value)
    {
        var friction = new FrictionCoefficients(thread, bearing);
        PlausibilityRemark remark = Assert.Single(friction.Remarks);
        Assert.Equal((kind, value, 0.04, 0.45, ""), (remark.Kind, remark.Value, remark.Low, remark.High, remark.Unit));
        Assert.Contains("VDI 2230-1:2015 Table A5", remark.Source, StringComparison.Ordinal);
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(M16, friction);
        Assert.Equal(remark.ToString(), Assert.Single(model.Remarks).ToString());
        Assert.True(model.TorqueFor(Force.FromKilonewtons(50)).NewtonMeters > 0);
        Assert.Contains("[unusual: ", model.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_ends_of_the_ranges_are_the_published_ones()
    {
        // The library's own tables, read here again: lowest µ and K. The highest: Machinery's Handbook 31st ed. p. 1662 (JIS B 1083), µ to 0.45, K to 0.553.
        double lowest = FrictionGuidance.Coefficients.Min(f => f.Low), lowestK = FrictionGuidance.NutFactors.Min(k => k.Low);
        Assert.Equal((0.04, 0.09), (lowest, lowestK));
        Assert.True(FrictionGuidance.Coefficients.All(f => f.High is null or <= 0.45) && FrictionGuidance.NutFactors.All(k => k.High <= 0.553));
        Assert.Empty(new FrictionCoefficients(lowest, 0.45).Remarks);
        Assert.Empty(TorquePreloadModel.FromNutFactor(lowestK, Length.FromMillimeters(16)).Remarks);
        Assert.Empty(TorquePreloadModel.FromNutFactor(0.553, Length.FromMillimeters(16)).Remarks);
        Assert.Equal(2, new FrictionCoefficients(0.0399, 0.4501).Remarks.Count);
        Assert.Single(TorquePreloadModel.FromNutFactor(0.0899, Length.FromMillimeters(16)).Remarks);
        Assert.Single(TorquePreloadModel.FromNutFactor(0.5531, Length.FromMillimeters(16)).Remarks);
    }

    [Fact]
    public void A_range_collects_the_remarks_of_its_ends()
    {
        var range = new FrictionRange(new FrictionCoefficients(0.012, 0.09), new FrictionCoefficients(0.16, 1.4));
        Assert.Equal([PlausibilityKind.ThreadFriction, PlausibilityKind.BearingFriction], range.Remarks.Select(remark => remark.Kind));
        Assert.EndsWith("[unusual: thread friction 0.012, bearing friction 1.4]", range.ToString(), StringComparison.Ordinal);
        Assert.Empty(new FrictionRange(new FrictionCoefficients(0.10, 0.09), new FrictionCoefficients(0.16, 0.14)).Remarks);
    }

    [Fact]
    public void A_nut_factor_of_two_is_calculated_and_remarked()
    {
        NutFactorModel model = TorquePreloadModel.FromNutFactor(2.0, Length.FromMillimeters(16));
        PlausibilityRemark remark = Assert.Single(model.Remarks);
        Assert.Equal((PlausibilityKind.NutFactor, 2.0), (remark.Kind, remark.Value));
        Assert.StartsWith("nut factor 2 is outside 0.09 to 0.553 (Shigley 9th ed. (2011) Table 8-15", remark.ToString(), StringComparison.Ordinal);
        Close.To(1600, model.TorqueFor(Force.FromKilonewtons(50)).NewtonMeters);
    }

    [Theory]
    [InlineData(4000, 0, PlausibilityKind.LeverLength, 4000)]
    [InlineData(40, 0, PlausibilityKind.LeverLength, 40)]
    [InlineData(400, 500, PlausibilityKind.TorqueRatio, 2.25)]
    public void An_unusual_lever_or_ratio_is_remarked_and_is_a_warning_of_the_wrench(double lever, double adapter, PlausibilityKind kind, double value)
    {
        var wrench = new TorqueWrench(Length.FromMillimeters(lever));
        if (adapter > 0) wrench = wrench.WithAdapter(Length.FromMillimeters(adapter), Angle.Zero);
        PlausibilityRemark remark = Assert.Single(wrench.Remarks);
        Assert.Equal(kind, remark.Kind);
        Close.To(value, remark.Value);
        Assert.Equal("common practice, no source", remark.Source);
        WrenchFit fit = wrench.FitOf(Torque.FromNewtonMeters(100));
        Assert.True(fit.Has(WrenchWarning.Unusual));
        Assert.Contains(fit.Messages, message => message == $"{remark}.");
        Assert.Contains("[unusual: ", wrench.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_usual_wrench_has_no_remark() =>
        Assert.False(new TorqueWrench(Length.FromMillimeters(400)).WithAdapter(Length.FromMillimeters(100), Angle.FromDegrees(45))
            .FitOf(Torque.FromNewtonMeters(100)).Has(WrenchWarning.Unusual));

    [Fact]
    public void A_multiplier_with_an_unusual_gear_or_efficiency_is_remarked()
    {
        Assert.Empty(new TorqueMultiplier(5, 0.92).Remarks);
        Assert.Equal(
            [PlausibilityKind.GearRatio, PlausibilityKind.Efficiency], new TorqueMultiplier(500, 0.3).Remarks.Select(remark => remark.Kind));
    }

    [Fact]
    public void Nothing_is_allocated_when_there_is_no_remark()
    {
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(M16, new FrictionCoefficients(0.12, 0.10));
        NutFactorModel factor = TorquePreloadModel.FromNutFactor(0.18, Length.FromMillimeters(16));
        var wrench = new TorqueWrench(Length.FromMillimeters(400));
        var range = new FrictionRange(model.Friction, model.Friction);
        int Count() => model.Remarks.Count + factor.Remarks.Count + wrench.Remarks.Count + range.Remarks.Count;
        Assert.Equal(0, Count());
        Assert.InRange(
            Allocation.Of(() =>
            {
                for (int i = 0; i < 1000; i++) Count();
            }),
            0, 200);
    }
}
