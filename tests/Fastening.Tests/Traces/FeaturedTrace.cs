using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>A known curve with one feature, as recorded, and what is true of it.</summary>
internal sealed record FeaturedTrace(TraceFeature Feature, int Number, TighteningTrace Trace, ReadingTruth Truth)
{
    public const double Window = 8;

    public static TraceOptions Options { get; } = TraceOptions.SnugByProjection(Angle.FromDegrees(Window));

    public ReadingOutcome Outcome => Truth.Judge(Trace.Analyze(Options));

    public static FeaturedTrace Random(TraceFeature feature, int number) => new FeatureRecorder(feature, new Dice((ulong)(100_000 * ((int)feature + 1) + number))).Record(number);
}
