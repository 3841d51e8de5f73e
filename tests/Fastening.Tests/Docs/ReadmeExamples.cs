using UnitsNet;

namespace Fastening.Tests.Docs;

/// <summary>The code of README.md and the guide, asserted. The pages repeat the regions; a test compares them.</summary>
public class ReadmeExamples
{
    [Fact]
    public void First_example()
    {
        #region first-example
        ScrewThread thread = ScrewThread.Parse("M16");
        var range = new FrictionRange(
            low: new FrictionCoefficients(thread: 0.10, bearing: 0.09),
            high: new FrictionCoefficients(thread: 0.16, bearing: 0.14));
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(thread, range.Low);

        // The most the bolt may carry while it is tightened, and the torque that reaches it at the lowest friction.
        Force permitted = AssemblyStress.PermittedPreload(model, PropertyClass.Parse("8.8").StrengthFor(thread), utilisation: Ratio.FromPercent(90));
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(model.TorqueFor(permitted) / 1.04, minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(4));
        PreloadRange worst = model.PreloadRangeAt(window.Lower!.Value, range);

        // The same torque through an adapter that points 45° away from the handle.
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400))
            .WithAdapter(Length.FromMillimeters(75), Angle.FromDegrees(45));
        ToleranceWindow<Torque>? setting = wrench.SettingWindowFor(window).RoundInward(Torque.FromNewtonMeters(0.5));
        Conformity verdict = setting!.Classify(Torque.FromNewtonMeters(145));
        #endregion

        // VDI 2230-1:2015 Table A1 (from memory) gives 82.9 kN at µ 0.10 for M16 8.8; the chain is checked against its parts.
        Close.To(82.9, permitted.Kilonewtons, 0.0006);
        Close.To(model.TorqueFor(permitted).NewtonMeters, window.Upper!.Value.NewtonMeters);
        Assert.True(worst.Minimum < permitted * 0.7);
        Close.To(1 + 75 * Math.Sqrt(0.5) / 400, wrench.TorqueRatio);
        Assert.Equal(Conformity.Within, verdict);
    }

    [Fact]
    public void Derivation_example()
    {
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.12, bearing: 0.10));

        #region show-the-work
        string work = model.DeriveTorqueFor(Force.FromKilonewtons(70)).ToString();     // also ToMarkdown() and ToLatex()
        #endregion

        Assert.Contains("M = κ·F + M_p", work, StringComparison.Ordinal);
    }

    [Fact]
    public void Breakdown_example()
    {
        #region where-the-torque-goes
        FrictionTorqueModel model = TorquePreloadModel
            .ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.12, bearing: 0.10))
            .WithPrevailing(Torque.FromNewtonMeters(5));
        TorqueBreakdown parts = model.BreakdownAt(Torque.FromNewtonMeters(170));
        Ratio stretching = parts.PitchShare;                                    // 13 %: the rest is friction
        Torque toLoosen = model.LooseningTorqueAt(model.PreloadAt(parts.Total));
        #endregion

        Assert.InRange(stretching.DecimalFractions, 0.125, 0.14);
        Assert.InRange(toLoosen.NewtonMeters, 100, 170);
    }

    [Fact]
    public void Convention_example()
    {
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.12, bearing: 0.10));

        #region name-the-convention
        Torque linear = model.TorqueFor(Force.FromKilonewtons(70));             // ISO 16047, the default
        Torque printed = model.WithConvention(TorqueConvention.Vdi2230).TorqueFor(Force.FromKilonewtons(70));
        Torque exact = model.WithConvention(TorqueConvention.Iso16047.WithForm(TorqueForm.Exact)).TorqueFor(Force.FromKilonewtons(70));
        #endregion

        Assert.True(linear < printed && linear < exact);
        Assert.InRange(printed / linear, 1.001, 1.004);
    }

    [Fact]
    public void Adapter_example()
    {
        #region adapters
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400))
            .WithRange(Torque.FromNewtonMeters(40), Torque.FromNewtonMeters(200))
            .WithResolution(Torque.FromNewtonMeters(0.5))
            .WithAccuracy(Ratio.FromPercent(4))
            .WithAdapter(Length.FromMillimeters(60), Angle.FromDegrees(90))
            .WithAdapter(Length.FromMillimeters(75), Angle.FromDegrees(30));    // from the handle, not from the adapter before
        Torque setting = wrench.SettingFor(Torque.FromNewtonMeters(150));
        WrenchFit fit = wrench.FitOf(setting);                                  // warnings as data
        double perDegree = wrench.SensitivitiesAt(setting).PerAdapterAngle[1].NewtonMetersPerRadian * Math.PI / 180;
        #endregion

        Close.To(150 / (1 + 75 * Math.Sqrt(0.75) / 400), setting.NewtonMeters);
        Assert.True(fit.IsInRange && fit.Has(WrenchWarning.HandPositionMatters) && fit.Has(WrenchWarning.BetweenSteps));
        Close.To(-setting.NewtonMeters * 75 * 0.5 / 400 * Math.PI / 180, perDegree);
    }

    [Fact]
    public void Window_example()
    {
        #region windows
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(50), minus: Ratio.Zero, plus: Ratio.FromPercent(4));
        Conformity atTheLimit = window.Classify(Torque.FromNewtonMeters(52));   // Within: a reading equal to a limit conforms
        ToleranceWindow<Torque>? onTheDisplay = window.RoundInward(Torque.FromNewtonMeters(0.5));
        ToleranceWindow<Torque>? guarded = window.AcceptanceWindow(guardBand: Torque.FromNewtonMeters(1.5));    // null: nothing is left
        #endregion

        Assert.Equal(Conformity.Within, atTheLimit);
        Assert.Equal("50 (50 … 52) N·m", onTheDisplay!.ToString());
        Assert.Null(guarded);
    }

    [Fact]
    public void Rate_example()
    {
        double[] seconds = [0, 1, 2, 3], degrees = [0, 20, 90, 100], newtonMeters = [10, 30, 90, 120];

        #region rate
        RotationRateLimit limit = RotationRateLimit.FromTravel(Angle.FromDegrees(100), Duration.FromSeconds(4));
        RotationRateLimit slower = RotationRateLimit.FromRate(RotationalSpeed.FromRevolutionsPerMinute(3));
        bool stroke = limit.Check(Angle.FromDegrees(90), Duration.FromSeconds(3.7)).Conforms;
        TighteningTrace trace = TighteningTrace.FromSamples(seconds, degrees, newtonMeters);
        RotationRateCheck check = limit.Check(trace, window: Duration.FromSeconds(0.5));
        #endregion

        Assert.True(stroke);
        Assert.Equal("up to 70°/s over 0.5 s, limit 25°/s: too fast", check.ToString());
        Assert.Equal("at most 18°/s", slower.ToString());
    }

    [Fact]
    public void Unit_example()
    {
        #region shop-units
        Entered<Torque> reading = Entered.Parse<Torque>("118 ft-lb");
        Torque torque = reading.Quantity;                                       // 160 N·m
        string record = reading.ToString();                                     // "118 lbf·ft": kept as entered
        string sheet = ShopUnit.KilogramForceMeter.Format(torque, decimals: 1); // "16.3 kgf·m"
        bool ambiguous = Entered.TryParse<Torque>("118 lb", out _);             // false: lb is no torque
        #endregion

        Close.To(118 * 1.3558179483314004, torque.NewtonMeters);
        Assert.Equal("118 lbf·ft", record);
        Assert.Equal("16.3 kgf·m", sheet);
        Assert.False(ambiguous);
    }

    [Fact]
    public void Batch_example()
    {
        #region batches
        TorquePreloadModel model = TorquePreloadModel.FromNutFactor(0.18, Length.FromMillimeters(16));
        double[] torquesNewtonMeters = [150, 152, double.NaN, -3];
        double[] preloadsNewtons = new double[torquesNewtonMeters.Length];
        model.PreloadsAt(torquesNewtonMeters, preloadsNewtons);                 // NaN where a single call would refuse
        #endregion

        Close.To(150 / (0.18 * 0.016), preloadsNewtons[0]);
        Assert.True(double.IsNaN(preloadsNewtons[2]) && double.IsNaN(preloadsNewtons[3]));
    }
}
