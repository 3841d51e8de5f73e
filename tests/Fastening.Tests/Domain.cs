using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace Fastening.Tests;

/// <summary>An ISO metric or unified thread with asymmetric friction and bearing: the joint of a property test.</summary>
public sealed record AnyJoint(double DiameterMm, double PitchMm, double OuterMm, double InnerMm, double ThreadFriction, double BearingFriction, double SeatDegrees)
{
    public ScrewThread Thread => ScrewThread.IsoMetric(Length.FromMillimeters(DiameterMm), Length.FromMillimeters(PitchMm));

    public BearingSurface Bearing => BearingSurface.Cone(Length.FromMillimeters(OuterMm), Length.FromMillimeters(InnerMm), Angle.FromDegrees(SeatDegrees));

    public FrictionCoefficients Friction => new(ThreadFriction, BearingFriction);

    public FrictionTorqueModel Model => TorquePreloadModel.FromFriction(Thread, Bearing, Friction);
}

/// <summary>A preload between 10 N and 10 MN, log-uniform.</summary>
public sealed record AnyPreload(double Newtons)
{
    public Force Force => Force.FromNewtons(Newtons);
}

/// <summary>A torque between 0.01 N·m and 1 MN·m, log-uniform.</summary>
public sealed record AnyTorque(double NewtonMeters)
{
    public Torque Torque => Torque.FromNewtonMeters(NewtonMeters);
}

/// <summary>A wrench with one to three adapters whose chain keeps a positive torque ratio, pulled out of square.</summary>
public sealed record AnyWrench(double LeverMm, IReadOnlyList<(double LengthMm, double Degrees)> Chain, double PullDegrees)
{
    public TorqueWrench Wrench => Chain.Aggregate(
        new TorqueWrench(Length.FromMillimeters(LeverMm)).WithPullOffSquare(Angle.FromDegrees(PullDegrees)),
        (wrench, adapter) => wrench.WithAdapter(Length.FromMillimeters(adapter.LengthMm), Angle.FromDegrees(adapter.Degrees)));
}

/// <summary>Generators over the engineering domain: log-uniform, no symmetric inputs, registered for every domain type.</summary>
public static class Domain
{
    public static Arbitrary<AnyJoint> Joints() => Arb.From(
        from d in LogUniform(2, 100)
        from pitchShare in Uniform(0.03, 0.2)
        from inner in Uniform(1.02, 1.2)
        from ring in Uniform(1.1, 1.9)
        from thread in LogUniform(0.03, 0.5)
        from bearing in LogUniform(0.03, 0.5)
        from seat in Uniform(60, 180)
        select new AnyJoint(d, d * pitchShare, d * inner * ring, d * inner, thread, bearing, seat));

    public static Arbitrary<AnyPreload> Preloads() => Arb.From(LogUniform(10, 1e7).Select(x => new AnyPreload(x)));

    public static Arbitrary<AnyTorque> Torques() => Arb.From(LogUniform(0.01, 1e6).Select(x => new AnyTorque(x)));

    public static Arbitrary<AnyWrench> Wrenches() => Arb.From(
        from lever in LogUniform(150, 1500)
        from count in Gen.Choose(1, 3)
        from chain in Gen.ListOf(from share in LogUniform(0.05, 0.3) from angle in Uniform(-180, 180) select (lever * share, angle), count)
        from pull in Uniform(-12, 12)
        select new AnyWrench(lever, [.. chain], pull));

    public static Gen<double> Uniform(double low, double high) =>
        Gen.Choose(0, 1 << 30).Select(n => low + (high - low) * (n / (double)(1 << 30)));

    public static Gen<double> LogUniform(double low, double high) => Uniform(Math.Log(low), Math.Log(high)).Select(Math.Exp);
}
