namespace Fastening;

/// <summary>A set of reasons in the bits of an integer, the bit of a reason being its number.</summary>
internal readonly struct ReasonSet(int bits)
{
    private const int Count = (int)JobReason.NumberUsedByAnother + 1;

    private readonly int _bits = bits;

    public static ReasonSet Of(params JobReason[] reasons)
    {
        ReasonSet set = default;
        foreach (JobReason reason in reasons) set = set.With(reason);
        return set;
    }

    /// <summary>What a reading says by itself, outside any job.</summary>
    public static ReasonSet OfReading { get; } = new((1 << (int)JobReason.StepNotReached) - 1);

    public bool IsEmpty => _bits == 0;

    public ReasonSet With(JobReason reason) => new(_bits | 1 << (int)reason);

    public ReasonSet When(bool holds, JobReason reason) => holds ? With(reason) : this;

    public ReasonSet And(ReasonSet other) => new(_bits | other._bits);

    public ReasonSet Without(ReasonSet other) => new(_bits & ~other._bits);

    public bool Has(JobReason reason) => (_bits & 1 << (int)reason) != 0;

    public bool Meets(ReasonSet other) => (_bits & other._bits) != 0;

    /// <summary>The worst that the reasons allow, where some of them reject and the others are remarks.</summary>
    public JobVerdict VerdictWhere(ReasonSet rejecting) =>
        Meets(rejecting) ? JobVerdict.Rejected : IsEmpty ? JobVerdict.Accepted : JobVerdict.Flagged;

    public IReadOnlyList<JobReason> ToList()
    {
        if (IsEmpty) return [];
        var reasons = new List<JobReason>();
        for (int i = 0; i < Count; i++)
        {
            if (Has((JobReason)i)) reasons.Add((JobReason)i);
        }

        return reasons.AsReadOnly();
    }
}
