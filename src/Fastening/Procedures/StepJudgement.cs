namespace Fastening;

/// <summary>The verdict of a step on one reading, outside any job.</summary>
/// <example><code>StepJudgement judgement = step.Judge(Torque.FromNewtonMeters(62), Angle.FromDegrees(97), duration: null);
/// if (judgement.Verdict == JobVerdict.Rejected) Console.WriteLine(judgement);    // rejected: rotation 97° is above 95°: loosen it and start again with its first step</code></example>
public sealed class StepJudgement
{
    private readonly string _text;

    internal StepJudgement(TighteningStep step, ReasonSet reasons, in PullFigures figures)
    {
        Verdict = EffectTable.Default.VerdictOn(reasons);
        Findings = JobFinding.ListOf(reasons, EffectTable.Default, step, figures);
        _text = JobFinding.Sentence(Verdict, Findings);
    }

    /// <summary>Accepted, accepted with a remark, or rejected.</summary>
    public JobVerdict Verdict { get; }

    /// <summary>Every finding, by number.</summary>
    public IReadOnlyList<JobFinding> Findings { get; }

    /// <inheritdoc />
    public override string ToString() => _text;
}
