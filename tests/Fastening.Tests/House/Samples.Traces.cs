using UnitsNet;

namespace Fastening.Tests.House;

/// <content>Valid values for traces.</content>
internal static partial class Samples
{
    /// <summary>A free run, a rise of half a newton-metre per degree, a plateau.</summary>
    private static IEnumerable<KeyValuePair<Type, object>> Traces()
    {
        double[] degrees = [.. Enumerable.Range(0, 600).Select(i => i / 4.0)];
        double[] torques = [.. degrees.Select(x => 1 + 0.5 * Math.Min(Math.Max(x - 40, 0), 60))];
        double[] forces = [.. torques.Select(x => 400 * (x - 1))];
        TraceOptions options = TraceOptions.SnugByProjection(Angle.FromDegrees(8));
        TighteningTrace trace = TighteningTrace.FromSamples(degrees, degrees, torques).WithForces(forces);
        TraceAnalysis analysis = trace.Analyze(options);
        yield return new(typeof(double[]), degrees);
        yield return new(typeof(TighteningTrace), trace);
        yield return new(typeof(TraceOptions), options);
        yield return new(typeof(RotationalStiffness), RotationalStiffness.FromNewtonMetersPerDegree(57));
        yield return new(typeof(TraceAnalysis), analysis);
        yield return new(typeof(ElasticRegion), analysis.ElasticRegion!);
        yield return new(typeof(RotationRateMonitor), new RotationRateMonitor(
            RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(30)), Duration.FromSeconds(0.5), 16));
    }

    private static IEnumerable<KeyValuePair<(Type, string), object>> TraceNames()
    {
        var analysis = (TraceAnalysis)Instances[typeof(TraceAnalysis)];
        yield return new((typeof(TracePoint), "from"), analysis.Snug!);
        yield return new((typeof(TracePoint), "to"), analysis.ShutOff);
        yield return new((typeof(int), "capacity"), 16);
        yield return new((typeof(TraceRemarkKind), "kind"), TraceRemarkKind.StickSlip);
    }
}
