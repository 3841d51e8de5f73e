using Fastening.Tests.Traces;
using UnitsNet;

namespace Fastening.Tests.Docs;

/// <summary>The code of the page on traces, run on an invented curve of which everything is known.</summary>
public class TraceExamples
{
    private static readonly KnownCurve Curve = TracePages.DemoCurve;

    private static readonly TighteningTrace Recorded = new Recorder { DegreesPerSecond = 60 }.Record(Curve, new Dice(1));
    private readonly double[] seconds = Recorded.TimesSeconds.ToArray();
    private readonly double[] degrees = Recorded.AnglesDegrees.ToArray();
    private readonly double[] newtonMeters = Recorded.TorquesNewtonMeters.ToArray();

    [Fact]
    public void Reading()
    {
        #region read-trace
        TighteningTrace trace = TighteningTrace.FromSamples(seconds, degrees, newtonMeters);
        TraceAnalysis analysis = trace.Analyze(TraceOptions.SnugByProjection(smoothingWindow: Angle.FromDegrees(8)));
        Angle snug = analysis.Snug!.Angle!.Value;
        RotationalStiffness slope = analysis.ElasticRegion!.Slope;
        TracePoint? yieldOnset = analysis.YieldOnset;
        Torque prevailing = analysis.RunDown!.Torque;
        #endregion

        Assert.Equal(Curve.Snug, snug.Degrees, 0.5);
        Assert.Equal(1.3, slope.NewtonMetersPerDegree, 0.02);
        Assert.Equal(Curve.YieldOnset(0.5), yieldOnset!.Angle!.Value.Degrees, 2.0);
        Assert.Equal(6, prevailing.NewtonMeters, 0.3);

        #region trace-options
        TraceOptions options = TraceOptions.SnugAtTorque(Torque.FromNewtonMeters(20), smoothingWindow: Angle.FromDegrees(8))
            .WithSlopeFraction(Ratio.FromDecimalFractions(2.0 / 3))
            .WithYieldOffset(Angle.FromDegrees(3))
            .WithStickSlip(peakToPeak: Torque.FromNewtonMeters(5))
            .WithReversal(Angle.FromDegrees(1))
            .WithTorqueDrop(Torque.FromNewtonMeters(5));
        foreach (TraceRemark remark in trace.Analyze(options).Remarks) Console.WriteLine(remark);
        #endregion

        Assert.Equal(TraceRemarkKind.Yield, Assert.Single(trace.Analyze(options).Remarks).Kind);
        Assert.Equal(TraceDoubts.None, trace.Analyze(options).Doubts);
        Assert.Equal(20, trace.Analyze(options).Snug!.Torque.NewtonMeters, 1e-9);
    }

    [Fact]
    public void Doubts()
    {
        TraceAnalysis analysis = Recorded.Analyze(TraceOptions.SnugByProjection(smoothingWindow: Angle.FromDegrees(8)));

        #region trace-doubts
        TraceDoubts doubts = analysis.Doubts;
        bool snugMayBeUsed = analysis.Snug is not null && (doubts & TraceDoubts.Snug) == 0;
        bool yieldCannotBeTold = analysis.YieldOnset is null && (doubts & TraceDoubts.Yield) != 0;
        foreach (TraceRemark remark in analysis.Remarks.Where(r => r.Doubts != TraceDoubts.None)) Console.WriteLine(remark);
        #endregion

        Assert.True(snugMayBeUsed);
        Assert.False(yieldCannotBeTold);
    }

    [Fact]
    public void Preload_and_friction()
    {
        ScrewThread thread = ScrewThread.Parse("M12");
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(thread, FrictionCoefficients.Uniform(0.12));
        var joint = new Joint(
            BoltCompliance.Vdi2230(thread, [BoltSection.OfDiameter(Length.FromMillimeters(40), Length.FromMillimeters(10.4))], BoltHead.Hexagon, ElasticMaterial.Steel),
            ClampedStack.Vdi2230Cone(
                [new ClampedLayer(Length.FromMillimeters(40), ElasticMaterial.Steel)],
                Length.FromMillimeters(16.6), Length.FromMillimeters(13.5), Length.FromMillimeters(40), JointForm.ThroughBolt));
        TighteningTrace trace = Recorded;
        TraceOptions options = TraceOptions.SnugByProjection(Angle.FromDegrees(8));

        #region trace-friction
        RotationalStiffness tool = RotationalStiffness.FromNewtonMetersPerDegree(200 / 3.5);        // it was seen to wind up 3.5° at 200 N·m
        TraceAnalysis analysis = trace.WithoutWindUp(tool).Analyze(options);
        double[] byTorque = new double[trace.Count], byRotation = new double[trace.Count];
        analysis.PreloadsFromTorque(model.WithPrevailing(analysis.RunDown!.Torque), byTorque);
        analysis.PreloadsFromRotation(joint, snugPreload: Force.Zero, byRotation);
        double? friction = analysis.FrictionFrom(joint, model.Bearing);
        #endregion

        // Elastic slope by hand, solved for µ: s = κ/(2π δ/P + c λ), κ = λ + µ D_b/2, λ = P/2π + µ d₂/(2 cos 30°), c the twist of the bolt.
        double slope = analysis.ElasticRegion!.Slope.NewtonMetersPerRadian, pitch = 0.00175 / (2 * Math.PI);
        double twist = 0.04 / (ElasticMaterial.Steel.ShearModulus.Pascals * Math.PI / 32 * Math.Pow(0.0104, 4));
        double inThread = thread.PitchDiameter.Meters / (2 * Math.Cos(Math.PI / 6)), perFriction = inThread + model.Bearing.EffectiveDiameter.Meters / 2;
        double byHand = (slope * (joint.MetersPerNewton / pitch + twist * pitch) - pitch) / (perFriction - slope * twist * inThread);
        Assert.Equal(byHand, friction!.Value, 1e-9);
        int middle = (analysis.ElasticRegion.Start.Index + analysis.ElasticRegion.End.Index) / 2;
        Assert.True(byTorque[middle] > 0 && byRotation[middle] > 0);
    }

    [Fact]
    public void The_rate_from_snug_on()
    {
        TighteningTrace trace = Recorded;
        RotationRateLimit limit = RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(70));

        #region rate-from-snug
        TraceAnalysis analysis = trace.Analyze(TraceOptions.SnugAtTorque(Torque.FromNewtonMeters(20), smoothingWindow: Angle.FromDegrees(8)));
        RotationRateCheck check = limit.Check(trace, Duration.FromSeconds(0.5), analysis.Snug!, analysis.ShutOff);
        TighteningTrace pastSnug = trace.Slice(analysis.Snug!, analysis.ShutOff);       // the same part, for anything else
        TighteningTrace lastSecond = trace[^250..];                                     // by samples
        #endregion

        Assert.Equal(limit.Check(pastSnug, Duration.FromSeconds(0.5)).ToString(), check.ToString());
        Assert.Equal(250, lastSecond.Count);
    }

    [Fact]
    public void Watching_the_rate()
    {
        RotationRateLimit limit = RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(70));

        #region rate-monitor
        Duration window = limit.SmallestSafeWindow(angleResolution: Angle.FromDegrees(0.25), samplingInterval: Duration.FromMilliseconds(1.2), margin: Ratio.FromPercent(10));
        var monitor = new RotationRateMonitor(limit, window, capacity: 1000);
        for (int i = 0; i < seconds.Length; i++) monitor.TryAdd(Duration.FromSeconds(seconds[i]), Angle.FromDegrees(degrees[i]));
        RotationRateCheck check = monitor.Check();
        #endregion

        Assert.Equal(limit.Check(Recorded, window).HighestRate, check.HighestRate);
        Assert.True(check.Conforms);
    }
}
