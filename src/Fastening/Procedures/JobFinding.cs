namespace Fastening;

/// <summary>One thing that was said of an entry or a fastener: the reason, what it does, and in words what to do about it.</summary>
public sealed class JobFinding
{
    internal JobFinding(JobReason reason, JobEffect effect, bool isWatched, string fact)
    {
        Reason = reason;
        Effect = effect;
        IsWatched = isWatched;
        Fact = fact;
        Advice = AdviceText.For(reason, effect, isWatched);
    }

    /// <summary>The reason.</summary>
    public JobReason Reason { get; }

    /// <summary>What it does in the program of the job.</summary>
    public JobEffect Effect { get; }

    /// <summary>Whether a criterion gave it that only watches.</summary>
    public bool IsWatched { get; }

    /// <summary>What was found, with the figures.</summary>
    public string Fact { get; }

    /// <summary>What to do next; empty where there is nothing to do.</summary>
    public string Advice { get; }

    /// <inheritdoc />
    public override string ToString() => Advice.Length == 0 ? Fact : $"{Fact}: {Advice}";

    /// <summary>Every reason as a finding, by number.</summary>
    internal static IReadOnlyList<JobFinding> ListOf(
        ReasonSet reasons, EffectTable effects, TighteningStep? step, PullFigures? figures, Func<JobReason, string?>? named = null) =>
        Array.AsReadOnly(reasons.ToList().Select(found => new JobFinding(
            found.Reason,
            found.IsWatched ? JobEffect.Remark : effects[found.Reason],
            found.IsWatched,
            named?.Invoke(found.Reason) ?? FactText.For(found.Reason, found.IsWatched, step, figures))).ToArray());

    /// <summary>The verdict in a sentence, and what to do: each advice once.</summary>
    internal static string Sentence(JobVerdict verdict, IReadOnlyList<JobFinding> findings)
    {
        string word = verdict switch
        {
            JobVerdict.Ignored => "ignored: a repeat",
            JobVerdict.Accepted => "accepted",
            JobVerdict.Remarked => "accepted with a remark",
            JobVerdict.NeedsReplay => "older than the lines that the run holds: replay the log",
            _ => "rejected",
        };
        if (findings.Count == 0) return word;
        bool isGraver = findings.Any(found => found.Advice == AdviceText.LoosenAndLook);
        string advice = string.Join("; ", findings.OrderByDescending(found => found.Effect & ~JobEffect.Remark).Select(found => found.Advice)
            .Where(text => text.Length > 0 && !(isGraver && text == AdviceText.Loosen)).Distinct());
        return $"{word}: {string.Join("; ", findings.Select(found => found.Fact))}{(advice.Length == 0 ? "" : $". To do: {advice}")}";
    }
}
