using Fastening.Equations;
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
        var friction = new FrictionRange(
            low: new FrictionCoefficients(thread: 0.10, bearing: 0.09),
            high: new FrictionCoefficients(thread: 0.16, bearing: 0.14));
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(thread, friction.Low);
        TorquePreloadRange range = TorquePreloadRange.OfFriction(model, friction);     // no prevailing torque

        // The torque at which no friction in the range stresses the bolt above 0.9 of its yield strength, and a window that ends there.
        Torque permitted = range.PermittedTorque(PropertyClass.Parse("8.8").StrengthFor(thread), utilisation: Ratio.FromPercent(90));
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(permitted / 1.04, minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(4));
        Range<Force> preload = range.PreloadRangeAt(window);                           // 51.4 to 82.9 kN

        // The same torque through an adapter that points 45° away from the handle.
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400))
            .WithAdapter(Length.FromMillimeters(75), Angle.FromDegrees(45));
        ToleranceWindow<Torque>? setting = wrench.SettingWindowFor(window).RoundInward(Torque.FromNewtonMeters(0.5));
        Conformity verdict = setting!.Classify(Torque.FromNewtonMeters(145));
        #endregion

        // VDI 2230-1:2015 Table A1 (from memory) gives 82.9 kN at µ 0.10 for M16 8.8; the chain is checked against its parts.
        // The least by hand: κ = 0.318310 + 0.16·14.7010/(2 cos 30°) + 0.14·19.995/2 = 3.07591 mm; 171.38/1.04·0.96/κ = 51.43 kN.
        Close.To(82.9, preload.High.Kilonewtons, 0.0006);
        Assert.Equal(51.43, preload.Low.Kilonewtons, 0.01);
        Close.To(model.TorqueFor(preload.High).NewtonMeters, permitted.NewtonMeters);
        Close.To(1 + 75 * Math.Sqrt(0.5) / 400, wrench.TorqueRatio);
        Assert.Equal(Conformity.Within, verdict);
    }

    [Fact]
    public void Derivation_example()
    {
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.12, bearing: 0.10));

        #region show-the-work
        string work = Derivation.Of(() => model.TorqueFor(Force.FromKilonewtons(70))).ToString();     // also ToMarkdown() and ToLatex()
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
    public void Prevailing_example()
    {
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.10, bearing: 0.09));

        #region both-ranges
        var friction = new FrictionRange(
            low: new FrictionCoefficients(thread: 0.10, bearing: 0.09),
            high: new FrictionCoefficients(thread: 0.16, bearing: 0.14));
        TorquePreloadRange nut = TorquePreloadRange.OfFriction(model, friction)
            .WithPrevailing(low: Torque.Zero, high: Torque.FromNewtonMeters(30));   // a locking nut, and one that has lost it
        BoltStrength strength = PropertyClass.Parse("8.8").StrengthFor(model.Thread);

        Torque permitted = nut.PermittedTorque(strength, utilisation: Ratio.FromPercent(90));     // 171 N·m, not the 192 N·m of 30 N·m counted on
        Range<Force> preload = nut.PreloadRangeAt(ToleranceWindow.FromDeviations(permitted / 1.04, minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(4)));     // 41.7 to 82.9 kN
        BoltStress stress = BoltStress.HighestAt(nut, Torque.FromNewtonMeters(192));    // 645 MPa: above the yield strength of 640 MPa
        #endregion

        Assert.Equal(171.4, permitted.NewtonMeters, 0.05);
        Assert.Equal(82.9, preload.High.Kilonewtons, 0.05);
        Assert.Equal((permitted.NewtonMeters / 1.04 * 0.96 - 30) / 3.07591, preload.Low.Kilonewtons, 0.01);
        Assert.Equal(41.7, preload.Low.Kilonewtons, 0.05);
        Assert.Equal(645, stress.VonMises.Megapascals, 0.5);
        Assert.True(stress.VonMises > strength.YieldStrength);
    }

    [Fact]
    public void Convention_example()
    {
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.12, bearing: 0.10));

        #region name-the-convention
        Torque linear = model.TorqueFor(Force.FromKilonewtons(70));             // ISO 16047, the default
        Torque printed = model.WithConvention(TorqueConvention.Vdi2230).TorqueFor(Force.FromKilonewtons(70));
        Torque exact = model.WithConvention(TorqueConvention.Iso16047.WithForm(TorqueForm.Exact)).TorqueFor(Force.FromKilonewtons(70));
        BearingSurface collar = model.WithConvention(TorqueConvention.Shigley).Bearing;     // 1.25 d in place of the ring of the head
        #endregion

        Assert.True(linear < printed && linear < exact);
        Assert.InRange(printed / linear, 1.001, 1.004);
        Assert.Equal("effective diameter 20 mm (1.25 d)", collar.ToString());
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
