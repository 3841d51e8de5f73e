namespace Fastening;

/// <summary>
/// A set of reasons in the bits of an integer: the required criteria from bit 0, the watched ones from bit 20, all others from bit 40.
/// </summary>
internal readonly record struct ReasonSet(ulong Bits)
{
    private const int Watched = 20;

    public static ReasonSet Required { get; } = new((1UL << Watched) - 1);

    public static ReasonSet OfWatched { get; } = new(Required.Bits << Watched);

    public bool IsEmpty => Bits == 0;

    public static ReasonSet Of(JobReason reason) => new(1UL << (int)reason << (reason < JobReason.ThresholdNotReached ? 0 : Watched));

    public static ReasonSet Of(params JobReason[] reasons)
    {
        ReasonSet set = default;
        foreach (JobReason reason in reasons) set |= Of(reason);
        return set;
    }

    /// <summary>What a criterion finds: four reasons for each measure.</summary>
    public static ReasonSet Of(CriterionMeasure measure, int side, bool isWatched) => new(1UL << (4 * (int)measure + side + (isWatched ? Watched : 0)));

    public static ReasonSet operator |(ReasonSet one, ReasonSet other) => new(one.Bits | other.Bits);

    public static ReasonSet operator &(ReasonSet one, ReasonSet other) => new(one.Bits & other.Bits);

    public bool Has(JobReason reason) => Meets(Of(reason));

    public bool Meets(ReasonSet other) => (Bits & other.Bits) != 0;

    public ReasonSet Without(ReasonSet other) => new(Bits & ~other.Bits);

    public ReasonSet When(bool holds, JobReason reason) => holds ? this | Of(reason) : this;

    /// <summary>The reasons by number, and whether a watched criterion gave them.</summary>
    public IEnumerable<(JobReason Reason, bool IsWatched)> ToList()
    {
        for (int bit = 0; bit < 64; bit++)
        {
            if ((Bits >> bit & 1) != 0) yield return (bit < Watched ? (JobReason)bit : (JobReason)(bit - Watched), bit is >= Watched and < 2 * Watched);
        }
    }
}
