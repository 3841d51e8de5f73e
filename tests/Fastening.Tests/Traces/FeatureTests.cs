namespace Fastening.Tests.Traces;

/// <summary>Thirty features, two hundred curves each: what is read wrong says so.</summary>
public class FeatureTests
{
    private const int MostSilent = 5;

    [Fact]
    public void At_most_five_of_six_thousand_are_silently_wrong()
    {
        Assert.Equal(6000, FeatureCounts.All.Values.Sum(counts => counts.Sum()));
        Assert.InRange(FeatureCounts.Total(ReadingOutcome.SilentlyWrong), 0, MostSilent);
    }

    [Fact]
    public void Few_are_not_read_and_few_are_wrong()
    {
        Assert.InRange(FeatureCounts.Total(ReadingOutcome.NotRead), 0, 20);
        Assert.InRange(FeatureCounts.Total(ReadingOutcome.WrongDoubted), 0, 300);
    }

    [Theory]
    [InlineData(nameof(TraceFeature.None))]
    [InlineData(nameof(TraceFeature.LetGoRigid))]
    [InlineData(nameof(TraceFeature.LetGoWoundUp))]
    [InlineData(nameof(TraceFeature.OneWildAngle))]
    [InlineData(nameof(TraceFeature.RatchetFixed))]
    [InlineData(nameof(TraceFeature.RatchetWoundUp))]
    [InlineData(nameof(TraceFeature.RatchetBack))]
    [InlineData(nameof(TraceFeature.Pause))]
    public void What_only_looks_bad_is_read_right_without_a_doubt(string feature) => Assert.Equal(FeatureCounts.Each, Count(Enum.Parse<TraceFeature>(feature), ReadingOutcome.Right));

    [Theory]
    [InlineData(nameof(TraceFeature.LooseningPositive))]
    [InlineData(nameof(TraceFeature.LooseningNegative))]
    [InlineData(nameof(TraceFeature.LeftHand))]
    [InlineData(nameof(TraceFeature.FallingAngle))]
    [InlineData(nameof(TraceFeature.ConstantTorque))]
    [InlineData(nameof(TraceFeature.Stripping))]
    [InlineData(nameof(TraceFeature.ZeroTorque))]
    public void What_cannot_be_told_is_always_doubted(string feature)
    {
        Assert.Equal(0, Count(Enum.Parse<TraceFeature>(feature), ReadingOutcome.Right));
        Assert.Equal(0, Count(Enum.Parse<TraceFeature>(feature), ReadingOutcome.SilentlyWrong));
    }

    [Fact]
    public void The_judge_tells_wrong_from_right()
    {
        FeaturedTrace known = FeaturedTrace.Random(TraceFeature.None, 0);
        TraceAnalysis analysis = known.Trace.Analyze(FeaturedTrace.Options);
        Assert.Equal(ReadingOutcome.Right, known.Truth.Judge(analysis));
        foreach (ReadingTruth other in new[]
        {
            known.Truth with { Slope = known.Truth.Slope * 1.06 }, known.Truth with { Snug = known.Truth.Snug + 3 }, known.Truth with { RunningTorque = known.Truth.RunningTorque + 0.03 * known.Truth.Peak },
            known.Truth with { Yield = (known.Truth.Yield ?? known.Truth.ShutOff) - 7 }, known.Truth with { ShutOff = known.Truth.ShutOff + 3 }, known.Truth with { IsTightening = false },
        })
        {
            Assert.Equal(ReadingOutcome.SilentlyWrong, other.Judge(analysis));
        }
    }

    [Fact]
    public void Two_thousand_known_curves_have_no_doubt() => Assert.All(KnownTrace.All, known => Assert.Equal(TraceDoubts.None, known.Analysis.Doubts));

    private static int Count(TraceFeature feature, ReadingOutcome outcome) => FeatureCounts.All[feature][(int)outcome];
}
