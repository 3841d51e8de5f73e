namespace Fastening.Tests.Traces;

/// <summary>How the two hundred records of each feature were read, counted once.</summary>
internal static class FeatureCounts
{
    public const int Each = 200;

    private static readonly Lazy<IReadOnlyDictionary<TraceFeature, int[]>> Counted = new(() => Enum.GetValues<TraceFeature>().ToDictionary(feature => feature, CountsOf));

    /// <summary>For each feature the number of records by <see cref="ReadingOutcome"/>.</summary>
    public static IReadOnlyDictionary<TraceFeature, int[]> All => Counted.Value;

    public static int Total(ReadingOutcome outcome) => All.Values.Sum(counts => counts[(int)outcome]);

    private static int[] CountsOf(TraceFeature feature)
    {
        int[] counts = new int[Enum.GetValues<ReadingOutcome>().Length];
        for (int number = 0; number < Each; number++) counts[(int)FeaturedTrace.Random(feature, number).Outcome]++;
        return counts;
    }
}
