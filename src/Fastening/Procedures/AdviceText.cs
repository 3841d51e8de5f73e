namespace Fastening;

/// <summary>What to do next about a reason.</summary>
internal static class AdviceText
{
    public const string Loosen = "loosen it and begin again with its first step";

    public const string LoosenAndLook = "loosen it, let a person look at it, and enter Accepted or Replaced";

    public static string For(JobReason reason, JobEffect effect, bool isWatched)
    {
        if (isWatched) return "look at the trace or the bolt";
        bool loosens = effect.HasFlag(JobEffect.Loosen), isLookedAt = effect.HasFlag(JobEffect.LookAt);
        if (reason == JobReason.DecisionOutdated) return "look again, and decide with what is known now";
        if (loosens && isLookedAt) return LoosenAndLook;
        if (loosens) return Loosen;
        if (!isLookedAt) return Own(reason);
        return effect.HasFlag(JobEffect.Reject)
            ? "let a person look at it and enter Accepted or Replaced; then pull it again"
            : "let a person look at it, and enter Accepted or Replaced";
    }

    private static string Own(JobReason reason) => reason switch
    {
        JobReason.TorqueMissing => "pull it again and state the torque",
        JobReason.TorqueBelow => "loosen it and tighten it in one pull, or pull on and read the torque in motion",
        JobReason.TorqueUnsure => "pull it again, or measure with less uncertainty",
        JobReason.TurnMissing => "measure the rotation of every pull",
        JobReason.TurnBelow => "turn it further",
        JobReason.MoveMissing => "pull it again and measure how far it moves",
        JobReason.MoveBelow => "pull it again; when it does not move, look at thread and nut",
        JobReason.RateMissing => "pull it again and state rotation and time",
        JobReason.RateAbove => "pull it again, slower",
        JobReason.ContactMissing => "look, and state whether the parts are in firm contact",
        JobReason.ContactBelow => "tighten until the parts are in firm contact",
        JobReason.ThresholdNotReached => "pull it again, past the threshold",
        JobReason.StepNotReached => "finish the earlier step, then pull it again",
        JobReason.NotNext => "pull it again in its turn",
        JobReason.NotLoosened => Loosen,
        JobReason.UnknownStep => "withdraw the line and enter it with the right step",
        JobReason.NumberReused => "give the restarted counter a new source name, and replay the log",
        JobReason.Restarted => "loosen it and tighten it in one pull, or state that the torque was read in motion",
        JobReason.ClockWentBack => "check the clock of the source",
        JobReason.UnknownFastener => "withdraw the line and enter it with the right fastener",
        JobReason.AlreadyDone => "loosen it first if it is to be left out",
        _ => "",
    };
}
