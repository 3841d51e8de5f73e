using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>A recorded curve, the curve behind it, and what the analysis made of it.</summary>
internal sealed record KnownTrace(int Number, KnownCurve Curve, Recorder Recorder, TighteningTrace Trace, TraceAnalysis Analysis)
{
    public const double Window = 10;

    private static readonly Lazy<IReadOnlyList<KnownTrace>> TwoThousand = new(() => [.. Enumerable.Range(0, 2000).Select(Random)]);

    /// <summary>The two thousand of the verification page, made once.</summary>
    public static IReadOnlyList<KnownTrace> All => TwoThousand.Value;

    public double SnugError => Analysis.Snug!.Angle!.Value.Degrees - Curve.Snug;

    public double SlopeError => Analysis.ElasticRegion!.Slope.NewtonMetersPerDegree / Curve.Slope - 1;

    public double OnsetError => Analysis.YieldOnset!.Angle!.Value.Degrees - Curve.YieldOnset(Analysis.Options.SlopeFraction.DecimalFractions);

    public static KnownTrace Random(int number)
    {
        var dice = new Dice((ulong)number);
        KnownCurve curve = KnownCurve.Random(dice);
        Recorder recorder = Recorder.Random(dice);
        TighteningTrace trace = recorder.Record(curve, dice);
        return new KnownTrace(number, curve, recorder, trace, trace.Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(Window))));
    }
}
