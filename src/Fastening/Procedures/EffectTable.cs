using Fastening.Internals;

namespace Fastening;

/// <summary>The one table from reason to effect: four sets, one for each effect. A program may hold a changed copy.</summary>
internal sealed class EffectTable
{
    private readonly JobEffect[] _effects = new JobEffect[(int)JobReason.NothingWithdrawn + 1];

    private EffectTable()
    {
        foreach (JobReason reason in All) _effects[(int)reason] = DefaultOf(reason);
        Fill();
    }

    private EffectTable(EffectTable table, JobReason reason, JobEffect effect)
    {
        _effects = (JobEffect[])table._effects.Clone();
        _effects[(int)reason] = effect;
        Fill();
    }

    public ReasonSet Rejecting { get; private set; }

    public ReasonSet Loosening { get; private set; }

    public ReasonSet LookedAt { get; private set; }

    /// <summary>What a decision must have seen.</summary>
    public ReasonSet Serious => Loosening | LookedAt;

    public JobEffect this[JobReason reason] => _effects[(int)reason];

    /// <summary>Written out, since ahead of time no enumeration lists itself on both targets.</summary>
    public static JobReason[] All { get; } =
    [
        JobReason.TorqueMissing, JobReason.TorqueBelow, JobReason.TorqueUnsure, JobReason.TorqueAbove, JobReason.TurnMissing,
        JobReason.TurnBelow, JobReason.TurnAbove, JobReason.MoveMissing, JobReason.MoveBelow, JobReason.MoveAbove,
        JobReason.RateMissing, JobReason.RateAbove, JobReason.ContactMissing, JobReason.ContactBelow, JobReason.ThresholdNotReached,
        JobReason.StepNotReached, JobReason.NotNext, JobReason.NotLoosened, JobReason.UnknownStep, JobReason.NumberReused,
        JobReason.Withdrawn, JobReason.PulledTooHigh, JobReason.OrderUnsure, JobReason.TurnUnknown, JobReason.TorqueUnknown,
        JobReason.BeyondTorqueLimit, JobReason.BeyondTurnLimit, JobReason.LoosenedTooOften, JobReason.DecisionOutdated, JobReason.Restarted,
        JobReason.PulledAgain, JobReason.WasSkipped, JobReason.ClockWentBack, JobReason.UnknownFastener, JobReason.AlreadyDone,
        JobReason.NothingWithdrawn,
    ];

    // After the list of all reasons, from which it is filled.
    public static EffectTable Default { get; } = new();

    public static JobReason Known(JobReason reason)
    {
        if (Array.IndexOf(All, reason) < 0) Guard.RefuseAgainst(nameof(reason), (int)reason, "one of the reasons");
        return reason;
    }

    public EffectTable With(JobReason reason, JobEffect effect)
    {
        JobEffect least = DefaultOf(reason);
        bool isKnown = effect is > JobEffect.None and <= (JobEffect.Remark | JobEffect.Reject | JobEffect.Loosen | JobEffect.LookAt);
        bool stillRejects = !least.HasFlag(JobEffect.Reject) || effect.HasFlag(JobEffect.Reject);
        bool stillHolds = (least & (JobEffect.Loosen | JobEffect.LookAt)) == 0 || (effect & (JobEffect.Loosen | JobEffect.LookAt)) != 0;
        if (!isKnown) Guard.RefuseAgainst(nameof(effect), (int)effect, "made of Remark, Reject, Loosen and LookAt");
        if (stillRejects && stillHolds) return new(this, reason, effect);
        throw new ArgumentException(
            $"effect is {effect} for {reason}, which by itself has {least}. What rejects must go on rejecting, and what asks for a loosening or a look must go on asking for one of the two.",
            nameof(effect));
    }

    public JobEffect Of(ReasonSet reasons)
    {
        JobEffect effect = JobEffect.None;
        foreach ((JobReason reason, bool isWatched) in reasons.ToList()) effect |= isWatched ? JobEffect.Remark : this[reason];
        return effect;
    }

    public JobVerdict VerdictOn(ReasonSet reasons) =>
        reasons.Meets(Rejecting) ? JobVerdict.Rejected : reasons.IsEmpty ? JobVerdict.Accepted : JobVerdict.Remarked;

    private static JobEffect DefaultOf(JobReason reason) => reason switch
    {
        JobReason.TorqueAbove or JobReason.TurnAbove or JobReason.PulledTooHigh => JobEffect.Reject | JobEffect.Loosen,
        JobReason.MoveAbove or JobReason.OrderUnsure => JobEffect.Reject | JobEffect.LookAt,
        JobReason.TurnUnknown or JobReason.TorqueUnknown or JobReason.BeyondTorqueLimit or JobReason.BeyondTurnLimit =>
            JobEffect.Reject | JobEffect.Loosen | JobEffect.LookAt,
        JobReason.LoosenedTooOften or JobReason.DecisionOutdated => JobEffect.LookAt,
        JobReason.Restarted or JobReason.PulledAgain or JobReason.WasSkipped or JobReason.ClockWentBack or JobReason.NothingWithdrawn => JobEffect.Remark,
        _ => JobEffect.Reject,
    };

    private void Fill()
    {
        foreach (JobReason reason in All)
        {
            var one = ReasonSet.Of(reason);
            if (this[reason].HasFlag(JobEffect.Reject)) Rejecting |= one;
            if (this[reason].HasFlag(JobEffect.Loosen)) Loosening |= one;
            if (this[reason].HasFlag(JobEffect.LookAt)) LookedAt |= one;
        }
    }
}
