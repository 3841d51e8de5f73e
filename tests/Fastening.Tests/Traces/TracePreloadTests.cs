using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>Preload two ways and the friction between them, on a curve made from a joint and a friction that are known.</summary>
public class TracePreloadTests
{
    private const double Friction = 0.13, SnugAngle = 120, Prevailing = 6;

    private static readonly ScrewThread Thread = ScrewThread.Parse("M12");
    private static readonly BearingSurface Bearing = BearingSurface.ForHexagonHead(Thread);

    private static readonly Joint Joint = new(
        BoltCompliance.Vdi2230(Thread, [BoltSection.OfDiameter(Length.FromMillimeters(40), Length.FromMillimeters(10.4))], BoltHead.Hexagon, ElasticMaterial.Steel),
        ClampedStack.Vdi2230Cone(
            [new ClampedLayer(Length.FromMillimeters(15), ElasticMaterial.Steel), new ClampedLayer(Length.FromMillimeters(25), ElasticMaterial.GreyCastIron)],
            Length.FromMillimeters(16.6), Length.FromMillimeters(13.5), Length.FromMillimeters(40), JointForm.ThroughBolt));

    /// <summary>Preload per degree by hand: P/(360°·(δ_S + δ_P)).</summary>
    private static readonly double NewtonsPerDegree = 0.00175 / 360 / Joint.MetersPerNewton;

    /// <summary>Torque per preload by hand, linear form: P/2π + µ (d₂/(2 cos 30°) + D_b/2).</summary>
    private static readonly double Arm =
        0.00175 / (2 * Math.PI) + Friction * (Thread.PitchDiameter.Meters / (2 * Math.Cos(Math.PI / 6)) + Bearing.EffectiveDiameter.Meters / 2);

    private static readonly double[] Angles = [.. Enumerable.Range(0, 1800).Select(i => i * 0.1), .. Enumerable.Range(1, 30).Select(i => 179.9 - i * 0.1)];
    private static readonly double[] Forces = [.. Angles.Select((a, i) => i < 1800 ? NewtonsPerDegree * Math.Max(a - SnugAngle, 0) : NewtonsPerDegree * 59.9)];
    private static readonly double[] Torques = [.. Forces.Select((f, i) => i < 1800 ? Prevailing + Arm * f : 0)];

    [Fact]
    public void Both_ways_give_the_preload_of_the_curve_and_say_where_they_do_not_hold()
    {
        TraceAnalysis analysis = Read();
        double[] byTorque = new double[Angles.Length], byRotation = new double[Angles.Length];
        analysis.PreloadsFromTorque(TorquePreloadModel.FromFriction(Thread, Bearing, FrictionCoefficients.Uniform(Friction)).WithPrevailing(analysis.RunDown!.Torque), byTorque);
        analysis.PreloadsFromRotation(Joint, Force.Zero, byRotation);
        for (int i = 0; i < 1800; i++) Assert.Equal(Forces[i], byTorque[i], 1e-3 * Forces[1799]);
        for (int i = 1210; i < 1800; i++) Assert.Equal(Forces[i], byRotation[i], 1e-3 * Forces[1799]);
        Assert.All(byRotation.Take(1195), x => Assert.True(double.IsNaN(x)));
        Assert.All(byTorque.Skip(1800).Concat(byRotation.Skip(1800)), x => Assert.True(double.IsNaN(x)));
    }

    [Fact]
    public void Slope_and_stiffness_imply_the_friction() =>
        Assert.Equal(Friction, Read().FrictionFrom(Joint, Thread, Bearing)!.Value, 1e-3);

    [Fact]
    public void Slope_and_measured_force_imply_the_friction()
    {
        Assert.Null(Read().FrictionFrom(Thread, Bearing));
        TraceAnalysis analysis = Trace().WithForces(Forces).Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(6)));
        Assert.Equal(Friction, analysis.FrictionFrom(Thread, Bearing)!.Value, 1e-3);
        Assert.Null(Trace().WithForces(new double[Angles.Length]).Analyze(analysis.Options).FrictionFrom(Thread, Bearing));
    }

    [Fact]
    public void A_false_zero_of_the_torque_does_not_move_the_friction()
    {
        double[] shifted = [.. Torques.Select(m => m + 3)];
        TraceAnalysis analysis = TighteningTrace.FromSamples(Times(), Angles, shifted).Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(6)));
        Assert.Equal(Friction, analysis.FrictionFrom(Joint, Thread, Bearing)!.Value, 1e-3);
    }

    [Fact]
    public void Spans_of_another_length_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Read().PreloadsFromRotation(Joint, Force.Zero, new double[3]));
        Assert.Throws<ArgumentException>(() => Read().PreloadsFromTorque(TorquePreloadModel.FromNutFactor(0.2, Length.FromMillimeters(12)), new double[3]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Read().PreloadsFromRotation(Joint, Force.FromNewtons(-1), new double[Angles.Length]));
    }

    private static double[] Times() => [.. Angles.Select((_, i) => 0.01 * i)];

    private static TighteningTrace Trace() => TighteningTrace.FromSamples(Times(), Angles, Torques);

    private static TraceAnalysis Read() => Trace().Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(6)));
}
