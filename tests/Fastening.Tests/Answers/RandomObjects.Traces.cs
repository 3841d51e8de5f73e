namespace Fastening.Tests.Answers;

/// <content>Traces.</content>
internal static partial class RandomObjects
{
    private static (string Name, Func<Draw, object> Make)[] TraceMakers() =>
    [
        Maker("TighteningTrace", Trace),
        Maker("TraceOptions", Options),
        Maker("TraceAnalysis", draw => draw.Any<TighteningTrace>("TighteningTrace").Analyze(draw.Any<TraceOptions>("TraceOptions"))),
        Maker("ElasticRegion", draw => draw.Any<TraceAnalysis>("TraceAnalysis").ElasticRegion ?? throw new InvalidOperationException("no line in this one")),
        Maker("TracePoint", draw => draw.Any<TraceAnalysis>("TraceAnalysis").Peak),
        Maker("Double[]", draw =>
        {
            double value = 0;
            return Enumerable.Range(0, 300).Select(_ => value += draw.Between(0.1, 0.4)).ToArray();
        }),
    ];

    /// <summary>A free run, a rise, a plateau, with a little noise that is no noise of a generator of the runtime.</summary>
    private static TighteningTrace Trace(Draw draw)
    {
        double slope = draw.Between(0.3, 0.9);
        double snug = draw.Between(30, 50);
        double span = draw.Between(50, 80);
        double noise = draw.Between(0, 0.1);
        double[] degrees = [.. Enumerable.Range(0, 300).Select(i => i / 2.0)];
        double[] times = [.. degrees.Select(x => x / 30)];
        double[] torques = [.. degrees.Select(x => 1 + slope * Math.Min(Math.Max(x - snug, 0), span) + noise * draw.Next())];
        TighteningTrace trace = draw.Chance(0.85) ? TighteningTrace.FromSamples(times, degrees, torques) : TighteningTrace.FromTorques(times, torques);
        double factor = draw.Between(200, 500);
        return draw.Chance(0.6) ? trace.WithForces([.. torques.Select(x => factor * (x - 0.9))]) : trace;
    }

    private static TraceOptions Options(Draw draw)
    {
        TraceOptions options = draw.Chance(0.5) ? TraceOptions.SnugByProjection(draw.Degrees(6, 12)) : TraceOptions.SnugAtTorque(draw.NewtonMeters(5, 9), draw.Degrees(6, 12));
        if (draw.Chance(0.4)) options = options.WithRunningTorque(draw.NewtonMeters(0.5, 1.5));
        if (draw.Chance(0.4)) options = options.WithSlopeFraction(draw.Percent(30, 70));
        return draw.Chance(0.4) ? options.WithYieldOffset(draw.Degrees(1, 6)) : options;
    }
}
