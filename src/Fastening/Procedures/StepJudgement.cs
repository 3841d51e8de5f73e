namespace Fastening;

/// <summary>The verdict of a step on one reading, outside any job.</summary>
/// <example><code>StepJudgement judgement = step.Judge(Torque.FromNewtonMeters(62), Angle.FromDegrees(97), duration: null);
/// if (judgement.Verdict == JobVerdict.Rejected) Console.WriteLine(judgement);    // rejected: rotation 97° is above 95°</code></example>
public sealed class StepJudgement
{
    private readonly string _text;

    internal StepJudgement(TighteningStep step, ReasonSet reasons, double torque, double rotation, double duration)
    {
        Verdict = reasons.VerdictWhere(step.Rejecting);
        Reasons = reasons.ToList();
        _text = ReasonText.Sentence(Verdict, Reasons.Select(reason => ReasonText.OfReading(reason, step, torque, rotation, duration)));
    }

    /// <summary>Accepted, flagged or rejected.</summary>
    public JobVerdict Verdict { get; }

    /// <summary>Every reason, by number.</summary>
    public IReadOnlyList<JobReason> Reasons { get; }

    /// <inheritdoc />
    public override string ToString() => _text;
}
