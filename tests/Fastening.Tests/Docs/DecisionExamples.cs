using UnitsNet;

namespace Fastening.Tests.Docs;

/// <summary>The code of docs/guide/accept-reject-or-cannot-tell.md, asserted. The page repeats the regions; a test compares them.</summary>
public class DecisionExamples
{
    [Fact]
    public void Decision_example()
    {
        #region decide
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(48), Torque.FromNewtonMeters(52));
        var uncertainty = MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(0.6), coverageFactor: 2);     // as the certificate prints it
        Torque reading = Torque.FromNewtonMeters(51.7);

        Conformity verdict = window.Classify(reading, uncertainty, DecisionRule.IlacG8);            // Undecidable
        DecisionZone zone = window.ZoneOf(reading, uncertainty, DecisionRule.IlacG8);               // ConditionalAccept
        Decision<Torque> decision = window.Decide(reading, uncertainty, DecisionRule.IlacG8);       // for the record
        ToleranceWindow<Torque>? accepted = decision.AcceptanceWindow;                              // 48.6 to 51.4 N·m
        double conforming = decision.ProbabilityOfConformity;                                       // 0.84
        #endregion

        Assert.Equal(Conformity.Undecidable, verdict);
        Assert.Equal(DecisionZone.ConditionalAccept, zone);
        Assert.Equal(48.6, accepted!.Lower!.Value.NewtonMeters, 1e-12);
        Assert.Equal(51.4, accepted.Upper!.Value.NewtonMeters, 1e-12);

        // Φ(1), the other limit being twelve standard uncertainties away.
        Assert.Equal(0.8413447, conforming, 1e-7);
        Assert.Contains(decision.Reason, House.Repository.Read("docs", "guide", "accept-reject-or-cannot-tell.md").ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Rules_example()
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(48), Torque.FromNewtonMeters(52));

        #region rules
        var uncertainty = MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(1), coverageFactor: 2);       // TUR = 2/1 = 2
        var larger = MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(2.1), coverageFactor: 2);
        Torque? full = DecisionRule.IlacG8.GuardBandFor(window, uncertainty);                       // 1 N·m
        Torque? ratio = DecisionRule.RootSumSquare.GuardBandFor(window, uncertainty);               // 0.27 N·m
        Torque? solved = DecisionRule.FromProbability(0.95).GuardBandFor(window, uncertainty);      // 0.82 N·m
        Torque? none = DecisionRule.FromProbability(0.95).GuardBandFor(window, larger);           // null: narrower than 3.92 u
        DecisionRule agreed = DecisionRule.FromFactor(0.5);                                         // what the contract says
        #endregion

        Assert.Equal(1, full!.Value.NewtonMeters);
        Assert.Equal(2 - Math.Sqrt(3), ratio!.Value.NewtonMeters, 1e-12);
        Assert.Equal(1.645 / 2, solved!.Value.NewtonMeters, 1e-3);
        Assert.Null(none);
        Assert.Equal(0.5, agreed.GuardBandFactor);
    }

    [Fact]
    public void One_limit_example()
    {
        #region one-limit
        ToleranceWindow<Force> required = ToleranceWindow.AtLeast(Force.FromKilonewtons(72));
        var uncertainty = MeasurementUncertainty.Expanded(Force.FromKilonewtons(3), coverageFactor: 2);
        DecisionZone zone = required.ZoneOf(Force.FromKilonewtons(74), uncertainty, DecisionRule.IlacG8);       // ConditionalAccept: 75 kN is accepted
        Force? upper = required.Upper;                                                                          // null: there is none
        bool refused = DecisionRule.RootSumSquare.RequiresTwoLimits;                                            // true: its band comes from the width
        #endregion

        Assert.Equal(DecisionZone.ConditionalAccept, zone);
        Assert.Equal(DecisionZone.Accept, required.ZoneOf(Force.FromKilonewtons(75), uncertainty, DecisionRule.IlacG8));
        Assert.Null(upper);
        Assert.True(refused);
        Assert.Throws<ArgumentException>(() => required.ZoneOf(Force.FromKilonewtons(74), uncertainty, DecisionRule.RootSumSquare));
    }

    [Fact]
    public void Risk_example()
    {
        #region risks
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(48), Torque.FromNewtonMeters(52));
        var uncertainty = MeasurementUncertainty.Standard(Torque.FromNewtonMeters(0.3));        // as a budget gives it
        Prior<Torque> process = Prior.Normal(Torque.FromNewtonMeters(50.2), standardDeviation: Torque.FromNewtonMeters(0.8));

        SpecificRisk one = SpecificRisk.At(window, Torque.FromNewtonMeters(51.7), uncertainty, process);
        double wrongIfAccepted = one.Consumer;                                  // 0.04: the process says more likely 51.5
        GlobalRisk many = GlobalRisk.Of(window, window.AcceptanceWindow(Torque.FromNewtonMeters(0.6)), process, uncertainty);
        double badAndAccepted = many.Consumer;                                  // of all items
        double goodAndRejected = many.Producer;
        double ratio = TestUncertaintyRatio.OfTolerance(window, uncertainty);
        #endregion

        // By hand: weight 0.64/0.73, mean 51.515, deviation 0.281; 1 − Φ(1.726).
        Assert.InRange(wrongIfAccepted, 0.0420, 0.0424);
        Assert.InRange(badAndAccepted, 1e-5, 1e-3);
        Assert.InRange(goodAndRejected, 0.05, 0.15);
        Close.To(2 / 0.6, ratio);
    }

    [Fact]
    public void Guarantee_example()
    {
        #region guarantee
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400))
            .WithAdapter(Length.FromMillimeters(100), Angle.Zero)               // the fastener gets 1.25 times what the wrench shows
            .WithRange(Torque.FromNewtonMeters(20), Torque.FromNewtonMeters(200))
            .WithResolution(Torque.FromNewtonMeters(1))
            .WithAccuracy(Ratio.FromPercent(4));
        ToleranceWindow<Torque> required = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(150), Torque.FromNewtonMeters(175));
        var calibration = MeasurementUncertainty.Expanded(Ratio.FromPercent(1), coverageFactor: 2);

        GuaranteedSetting guaranteed = wrench.GuaranteedSettingFor(required, calibration);
        ToleranceWindow<Torque>? settings = guaranteed.Window;                  // 126 to 133 N·m
        ToleranceWindow<Torque> narrow = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(160), Torque.FromNewtonMeters(170));
        string why = wrench.GuaranteedSettingFor(narrow, calibration).Reason;
        #endregion

        Assert.Equal(126, settings!.Lower!.Value.NewtonMeters, 1e-9);
        Assert.Equal(133, settings.Upper!.Value.NewtonMeters, 1e-9);
        Assert.Contains(why, House.Repository.Read("docs", "guide", "accept-reject-or-cannot-tell.md").ReplaceLineEndings(" "), StringComparison.Ordinal);
    }
}
