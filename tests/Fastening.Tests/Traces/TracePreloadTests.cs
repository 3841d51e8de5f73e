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

    /// <summary>The tool winds up by 1° for every 10 N·m, and the bolt twists under the torque in its thread: angles as a tool shows them.</summary>
    [Theory]
    [InlineData(0.13)]
    [InlineData(0.31)]
    [InlineData(0.04)]
    public void Slope_and_stiffness_imply_the_friction_through_twist_and_wind_up(double friction)
    {
        RotationalStiffness tool = RotationalStiffness.FromNewtonMetersPerDegree(10);
        TighteningTrace trace = Wound(friction, windUpDegreesPerNewtonMeter: 0.1);
        TraceOptions options = TraceOptions.SnugByProjection(Angle.FromDegrees(6));
        Assert.Equal(friction, trace.WithoutWindUp(tool).Analyze(options).FrictionFrom(Joint, Bearing)!.Value, 1e-3 * friction);
        Assert.True(trace.Analyze(options).FrictionFrom(Joint, Bearing) < 0.9 * friction);
        Assert.Equal(SnugAngle, trace.WithoutWindUp(tool).Analyze(options).Snug!.Angle!.Value.Degrees, 0.2);
    }

    [Fact]
    public void Friction_comes_back_in_the_convention_that_is_asked_for()
    {
        TighteningTrace trace = Wound(0.13, windUpDegreesPerNewtonMeter: 0);
        TraceAnalysis analysis = trace.Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(6)));
        double exact = analysis.FrictionFrom(Joint, Bearing, TorqueConvention.PowerScrew)!.Value;
        double linear = analysis.FrictionFrom(Joint, Bearing)!.Value;
        Assert.NotEqual(linear, exact);

        // The slope of a rotation tightening with the twist of the bolt is another route: there the friction is given and the slope comes out.
        foreach ((double µ, TorqueConvention convention) in new[] { (exact, TorqueConvention.PowerScrew), (linear, TorqueConvention.Iso16047) })
        {
            FrictionTorqueModel model = TorquePreloadModel.FromFriction(Thread, Bearing, FrictionCoefficients.Uniform(µ)).WithConvention(convention);
            RotationTightening tightening = new RotationTightening(Joint, model, Torque.FromNewtonMeters(20), Force.FromKilonewtons(90)).WithBoltTwist();
            Assert.Equal(tightening.ElasticSlope.NewtonMetersPerDegree, analysis.ElasticRegion!.Slope.NewtonMetersPerDegree, 1e-9);
        }
    }

    [Fact]
    public void A_bar_is_taken_off_by_its_stiffness_and_parts_in_series_one_after_the_other()
    {
        CoaxialExtension bar = CoaxialExtension.Round(Length.FromMillimeters(300), Length.FromMillimeters(16), Pressure.FromGigapascals(79));
        TighteningTrace once = Trace().WithoutWindUp(bar.Stiffness);

        // By hand: π d⁴/32 = 6434 mm⁴, l/(G J) = 5.9023e-4 rad/(N·m) = 0.033818 °/(N·m).
        double perNewtonMeter = 0.3 / (79e9 * Math.PI / 32 * Math.Pow(0.016, 4)) * 180 / Math.PI;
        for (int i = 0; i < Angles.Length; i += 50) Assert.Equal(Angles[i] - Torques[i] * perNewtonMeter, once.AnglesDegrees.Span[i], 1e-9);
        TighteningTrace twice = once.WithoutWindUp(bar.Stiffness), half = Trace().WithoutWindUp(bar.Stiffness / 2);
        for (int i = 0; i < Angles.Length; i += 50) Assert.Equal(half.AnglesDegrees.Span[i], twice.AnglesDegrees.Span[i], 1e-9);
        Assert.Equal(Angles[1500], Trace().AnglesDegrees.Span[1500]);
    }

    [Fact]
    public void Wind_up_without_angles_or_of_no_stiffness_is_refused()
    {
        RotationalStiffness stiff = RotationalStiffness.FromNewtonMetersPerDegree(57);
        Assert.Throws<InvalidOperationException>(() => TighteningTrace.FromTorques(Times(), Torques).WithoutWindUp(stiff));
        Assert.Throws<ArgumentOutOfRangeException>(() => Trace().WithoutWindUp(RotationalStiffness.FromNewtonMetersPerDegree(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Trace().WithoutWindUp(-stiff));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => TighteningTrace.FromSamples(Times(), Angles, Torques.Select(m => m * 1e7).ToArray()).WithoutWindUp(RotationalStiffness.FromNewtonMetersPerDegree(0.01)));
    }

    [Fact]
    public void A_rotation_that_twist_alone_takes_up_tells_no_friction()
    {
        double[] hard = [.. Torques.Select((m, i) => i < 1800 ? m * 400 : 0)];
        TraceAnalysis analysis = TighteningTrace.FromSamples(Times(), Angles, hard).Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(6)));
        Assert.NotNull(analysis.ElasticRegion);
        Assert.Null(analysis.FrictionFrom(Joint, Bearing));
    }

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
        Assert.Equal(Read().FrictionFrom(Joint, Bearing)!.Value, analysis.FrictionFrom(Joint, Bearing)!.Value, 1e-12);
    }

    [Fact]
    public void Spans_of_another_length_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Read().PreloadsFromRotation(Joint, Force.Zero, new double[3]));
        Assert.Throws<ArgumentException>(() => Read().PreloadsFromTorque(TorquePreloadModel.FromNutFactor(0.2, Length.FromMillimeters(12)), new double[3]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Read().PreloadsFromRotation(Joint, Force.FromNewtons(-1), new double[Angles.Length]));
    }

    /// <summary>Forwards by hand, linear form: θ = F·360°/P·δ + twist·F·λ + wind-up·M, with λ = P/2π + µ d₂/(2 cos 30°) the arm in the thread.</summary>
    private static TighteningTrace Wound(double friction, double windUpDegreesPerNewtonMeter)
    {
        double threadArm = 0.00175 / (2 * Math.PI) + friction * Thread.PitchDiameter.Meters / (2 * Math.Cos(Math.PI / 6));
        double arm = threadArm + friction * Bearing.EffectiveDiameter.Meters / 2;
        double twist = 0.04 / (Joint.Bolt.Material!.ShearModulus.Pascals * Math.PI / 32 * Math.Pow(0.0104, 4)) * 180 / Math.PI;
        double[] forces = [.. Enumerable.Range(0, 2200).Select(i => i < 1200 ? 0 : (i - 1200) * 40.0)];
        double[] torques = [.. forces.Select(f => Prevailing + arm * f)];
        double[] angles = [.. forces.Select((f, i) => Math.Min(i, 1200) * 0.1 + f / NewtonsPerDegree + twist * threadArm * f + windUpDegreesPerNewtonMeter * torques[i])];
        return TighteningTrace.FromSamples(Enumerable.Range(0, 2200).Select(i => 0.01 * i).ToArray(), angles, torques);
    }

    private static double[] Times() => [.. Angles.Select((_, i) => 0.01 * i)];

    private static TighteningTrace Trace() => TighteningTrace.FromSamples(Times(), Angles, Torques);

    private static TraceAnalysis Read() => Trace().Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(6)));
}
