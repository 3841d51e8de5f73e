using Fastening.Quality;
using Fastening.Tests.House;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Fastening.Tests.Docs;

/// <summary>The code of docs/guide/from-torque-to-preload-how-sure.md, asserted; scatter against draws that share no code with the library.</summary>
public class HowSureExamples
{
    private const int Draws = 200_000;

    private static readonly FrictionRange Friction = new(new FrictionCoefficients(thread: 0.10, bearing: 0.09), new FrictionCoefficients(thread: 0.15, bearing: 0.14));

    private static PreloadBandInputs ExampleInputs => new PreloadBandInputs(
            TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), Friction.Low),
            new TorqueWrench(Length.FromMillimeters(400)).WithAccuracy(Ratio.FromPercent(4)).WithResolution(Torque.FromNewtonMeters(1))
                .WithAdapter(Length.FromMillimeters(80), Angle.FromDegrees(45)),
            Torque.FromNewtonMeters(137), Friction, FrictionCorrelation.Independent)
        .WithLeverLengthError(Length.FromMillimeters(10)).WithPullError(Angle.FromDegrees(3));

    [Fact]
    public void Budget_example()
    {
        #region preload-budget
        UncertaintyBudget budget = UncertaintyBudget.Of(
            "preload", "kN", x => x["torque (N·m)"] / (x["K"] * x["diameter (mm)"]),
            UncertaintyContribution.FromCertificate("torque (N·m)", 150, expandedUncertainty: 6, coverageFactor: 2),
            UncertaintyContribution.Rectangular("K", 0.17, halfWidth: 0.02),
            UncertaintyContribution.Normal("diameter (mm)", 16, standardUncertainty: 0.05));
        double preload = budget.Estimate;                                       // 55.1 kN
        double uncertainty = budget.StandardUncertainty;                        // 3.9 kN
        string heaviest = budget.Rows[0].Input.Name;                            // K, with 92 % of the variance
        string table = budget.ToMarkdown();                                     // value, u, distribution, sensitivity, weight
        #endregion

        // A product: the relative variances add (GUM 5.1.6).
        double torque = 3.0 / 150, factor = 0.02 / Math.Sqrt(3) / 0.17, diameter = 0.05 / 16, all = (torque * torque) + (factor * factor) + (diameter * diameter);
        Close.To(150 / (0.17 * 16), preload, 1e-12);
        Close.To(preload * Math.Sqrt(all), uncertainty, 1e-6);
        Assert.Equal("K", heaviest);
        Close.To(factor * factor / all, budget.Rows[0].Weight, 1e-6);
        Assert.InRange(budget.Rows[0].Weight, 0.915, 0.925);
        Assert.InRange(preload, 55.05, 55.15);
        Assert.InRange(uncertainty, 3.85, 3.95);
        Assert.Contains("| K | 0.17 |", table, StringComparison.Ordinal);
    }

    [Fact]
    public void Band_example()
    {
        #region preload-band
        var friction = new FrictionRange(
            low: new FrictionCoefficients(thread: 0.10, bearing: 0.09),
            high: new FrictionCoefficients(thread: 0.15, bearing: 0.14));
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), friction.Low);
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400))
            .WithAccuracy(Ratio.FromPercent(4))
            .WithResolution(Torque.FromNewtonMeters(1))
            .WithAdapter(Length.FromMillimeters(80), Angle.FromDegrees(45));
        PreloadBandInputs inputs = new PreloadBandInputs(model, wrench, setting: Torque.FromNewtonMeters(137), friction, FrictionCorrelation.Independent)
            .WithLeverLengthError(Length.FromMillimeters(10))
            .WithPullError(Angle.FromDegrees(3));

        PreloadBand band = PreloadBand.Evaluate(inputs);
        Range<Force> worst = band.WorstCase;                                    // 49.6 to 79.9 kN, α_A 1.61
        Range<Force> most = band.Statistical;                                   // 53.7 to 72.6 kN, α_A 1.35: 95 % of joints
        double tooLoose = band.ProbabilityBelow(Force.FromKilonewtons(52));     // 0.004
        double tooTight = band.ProbabilityAbove(Force.FromKilonewtons(75));     // 0.005
        string cause = band.Dominating.Name;                                    // µ_b, friction under the head
        #endregion

        // Every corner by hand: setting ± half a step, lever ± 10 mm, pull ± 3°, wrench ± 4 %, friction.
        Close.To(136.5 * RatioAt(410, 3) / 1.04 / Arm(0.15, 0.14), worst.Low.Kilonewtons, 1e-6);
        Close.To(137.5 * RatioAt(390, -3) / 0.96 / Arm(0.10, 0.09), worst.High.Kilonewtons, 1e-6);
        double[] drawn = Drawn(u => u(136.5, 137.5) * RatioAt(u(390, 410), u(-3, 3)) / (1 + u(-0.04, 0.04)) / Arm(u(0.10, 0.15), u(0.09, 0.14)));
        Assert.Equal(drawn[Draws / 40], most.Low.Kilonewtons, 0.1);
        Assert.Equal(drawn[Draws - (Draws / 40)], most.High.Kilonewtons, 0.1);
        Assert.Equal(drawn.Count(preload => preload < 52) / (double)Draws, tooLoose, 0.0006);
        Assert.Equal(drawn.Count(preload => preload > 75) / (double)Draws, tooTight, 0.0007);
        Assert.Equal("µ_b", cause);
        Assert.Equal(1.61, worst.HighOverLow!.Value, 0.005);
        Assert.Equal(1.35, most.HighOverLow!.Value, 0.005);
    }

    [Fact]
    public void Skew_example()
    {
        #region skew-of-friction
        NutFactorModel dry = TorquePreloadModel.FromNutFactor(0.19, Length.FromMillimeters(16));
        ToleranceWindow<Torque> torque = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(150), minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(4));
        PreloadBand band = PreloadBand.Evaluate(new PreloadBandInputs(dry, torque, lowNutFactor: 0.12, highNutFactor: 0.26));

        bool enough = band.IsFirstOrderEnough;                                  // false: u_κ/κ is 0.21
        double reach = band.Budget.ExpandedUncertainty(0.95);
        double firstOrderLow = band.Budget.Estimate - reach;                    // 29 kN, below the worst case of 34.6 kN
        double firstOrderHigh = band.Budget.Estimate + reach;                   // 70 kN
        Range<Force> drawn = band.Statistical;                                  // 36.3 to 76.0 kN
        double overload = band.ProbabilityAbove(Force.FromKilonewtons(72));     // 0.073
        #endregion

        // K below M/(F d) with K rectangular: linear in M, so the mean torque gives it exactly.
        Assert.Equal(((150 / (72 * 0.016 * 1000)) - 0.12) / 0.14, overload, 0.001);
        double firstOrderSays = 1 - Normal.CDF(band.Budget.Estimate, band.Budget.StandardUncertainty, 72);
        Assert.InRange(firstOrderSays, 0.01, 0.02);
        Assert.False(enough);
        Assert.Equal(0.04 / 0.19, band.RelativeArmUncertainty.DecimalFractions, 0.003);
        Assert.InRange(firstOrderLow, 28.2, 29.1);
        Assert.InRange(firstOrderHigh, 69.5, 70.6);
        Assert.Equal(144 / 16.0 / 0.26, band.WorstCase.Low.Kilonewtons, 1e-9);
        double[] independent = Drawn(u => u(144, 156) / (16 * u(0.12, 0.26)));
        Assert.Equal(independent[Draws / 40], drawn.Low.Kilonewtons, 0.15);
        Assert.Equal(independent[Draws - (Draws / 40)], drawn.High.Kilonewtons, 0.25);
    }

    [Fact]
    public void Rotation_example()
    {
        ScrewThread thread = ScrewThread.Parse("M20");
        FrictionRange friction = new(new FrictionCoefficients(0.10, 0.09), new FrictionCoefficients(0.16, 0.15));
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(thread, friction.Low);
        BoltCompliance bolt = BoltCompliance.Vdi2230(
            thread, Length.FromMillimeters(110), Length.FromMillimeters(46), Length.FromMillimeters(81), BoltHead.Hexagon, ElasticMaterial.Steel);
        ClampedStack parts = ClampedStack.Vdi2230Cone(
            [new ClampedLayer(Length.FromMillimeters(51), ElasticMaterial.GreyCastIron), new ClampedLayer(Length.FromMillimeters(30), ElasticMaterial.Steel)],
            Length.FromMillimeters(28.2), Length.FromMillimeters(22), Length.FromMillimeters(64), JointForm.ThroughBolt);
        var tightening = new RotationTightening(new Joint(bolt, parts), model, Torque.FromNewtonMeters(80), model.WithFriction(friction.High).PermittedPreload(PropertyClass.Parse("8.8").StrengthFor(thread), utilisation: Ratio.FromPercent(90)));

        #region band-by-rotation
        ToleranceWindow<Torque> snug = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(80), minus: Ratio.FromPercent(15), plus: Ratio.FromPercent(15));
        ToleranceWindow<Angle> rotation = ToleranceWindow.FromDeviations(Angle.FromDegrees(28), Angle.FromDegrees(3), Angle.FromDegrees(3));
        PreloadBand turned = PreloadBand.Evaluate(new PreloadBandInputs(model, snug, friction, FrictionCorrelation.Independent)
            .WithRotation(tightening, rotation, complianceError: Ratio.FromPercent(10), ScatterShape.Rectangular));

        FrictionTorqueModel middle = model.WithFriction(new FrictionCoefficients(thread: 0.13, bearing: 0.12));
        ToleranceWindow<Torque> sameGoal = ToleranceWindow.FromDeviations(middle.TorqueFor(turned.Nominal), minus: Ratio.FromPercent(5), plus: Ratio.FromPercent(5));
        PreloadBand torqued = PreloadBand.Evaluate(new PreloadBandInputs(model, sameGoal, friction, FrictionCorrelation.Independent));

        double? byRotation = turned.Statistical.HighOverLow;               // 1.31
        double? byTorque = torqued.Statistical.HighOverLow;                // 1.42
        string cause = turned.Dominating.Name;                                  // the rotation
        double yields = turned.ProbabilityAbove(tightening.ElasticLimit);       // 0.003
        #endregion

        Assert.Equal(1.31, byRotation!.Value, 0.01);
        Assert.Equal(1.42, byTorque!.Value, 0.01);
        Assert.Equal("rotation (°)", cause);
        Assert.InRange(yields, 0.0015, 0.0035);
        double compliance = bolt.MetersPerNewton + parts.MetersPerNewton;
        double[] drawn = Drawn(u => (u(68, 92) / Arm20(u(0.10, 0.16), u(0.09, 0.15))) + (u(25, 31) / 360 * 2.5e-3 / (compliance * u(0.9, 1.1)) / 1e3));
        Assert.Equal(drawn[Draws - (Draws / 40)] / drawn[Draws / 40], byRotation.Value, 0.01);
        Assert.True(byTorque > byRotation + 0.1);

        double Arm20(double ofThread, double ofBearing) =>
            model.WithFriction(new FrictionCoefficients(ofThread, ofBearing)).TorqueFor(Force.FromKilonewtons(1)).NewtonMeters;
    }

    [Fact]
    public void Monte_Carlo_example()
    {
        PreloadBandInputs inputs = ExampleInputs;

        #region same-whatever-the-threads
        MonteCarlo stated = new MonteCarlo().WithDraws(200_000).WithSeed(7);
        PreloadBand alone = PreloadBand.Evaluate(inputs, stated.WithThreads(1));
        PreloadBand many = PreloadBand.Evaluate(inputs, stated.WithThreads(8));
        bool same = alone.Statistical.High.Newtons == many.Statistical.High.Newtons;  // true, to the last bit
        PreloadBand another = PreloadBand.Evaluate(inputs, stated.WithSeed(8)); // differs within the sampling error
        #endregion

        Assert.True(same);
        Assert.True(alone.Draws.Values.Span.SequenceEqual(many.Draws.Values.Span));
        Assert.NotEqual(alone.Statistical.High, another.Statistical.High);
        Assert.Equal(alone.Statistical.High.Kilonewtons, another.Statistical.High.Kilonewtons, 0.15);
    }

    [Fact]
    public void The_page_gives_the_figures_of_the_pump_cover()
    {
        string page = Repository.Read("docs", "guide", "from-torque-to-preload-how-sure.md");
        string printed = Repository.Read("docs", "examples", "pump-cover.expected.txt");
        string quoted = page[(page.IndexOf("```\n", StringComparison.Ordinal) + 4)..];
        foreach (string line in quoted[..quoted.IndexOf("```", StringComparison.Ordinal)].Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            Assert.Contains(line, printed, StringComparison.Ordinal);
        }
    }

    /// <summary>N·m/kN of an M16 hexagon bolt on a medium hole, by hand (ISO 16047, linear form).</summary>
    private static double Arm(double ofThread, double ofBearing) =>
        (2 / (2 * Math.PI)) + (ofThread * (16 - (0.75 * Math.Sqrt(3) / 2 * 2)) / 2 / Math.Cos(Math.PI / 6)) + (ofBearing * (22.49 + 17.5) / 4);

    /// <summary>Torque ratio of 80 mm at 45° on a lever, by hand.</summary>
    private static double RatioAt(double lever, double pull) =>
        1 + (80 * Math.Cos((45 + pull) * Math.PI / 180) / (lever * Math.Cos(pull * Math.PI / 180)));

    private static double[] Drawn(Func<Func<double, double, double>, double> draw)
    {
        var random = new Random(3);
        double[] values = [.. Enumerable.Range(0, Draws).Select(_ => draw((low, high) => low + ((high - low) * random.NextDouble())))];
        Array.Sort(values);
        return values;
    }
}
