using System.Globalization;
using Fastening.Internals;

namespace Fastening;

/// <summary>The reasons in words, with the figures that they rest on.</summary>
internal static class ReasonText
{
    public static string Sentence(JobVerdict verdict, IEnumerable<string> reasons)
    {
        string word = verdict switch
        {
            JobVerdict.Ignored => "ignored",
            JobVerdict.Accepted => "accepted",
            JobVerdict.Flagged => "accepted, to be looked at",
            _ => "rejected",
        };
        string why = string.Join("; ", reasons);
        return why.Length == 0 ? word : $"{word}: {why}";
    }

    /// <summary>A reason that a step finds in a reading.</summary>
    public static string OfReading(JobReason reason, TighteningStep step, double torque, double rotation, double duration) => reason switch
    {
        JobReason.TorqueMissing => "the torque is missing",
        JobReason.TorqueBelow => Against("torque", torque, "below", step.TorqueWindow!.Limits.Lower, "N·m"),
        JobReason.TorqueAbove => Against("torque", torque, "above", step.TorqueWindow!.Limits.Upper, "N·m"),
        JobReason.ThresholdNotReached => Against("torque", torque, "below the threshold,", Si.Of(step.Threshold!.Value), "N·m"),
        JobReason.RotationMissing => "the rotation is missing",
        JobReason.RotationBelow => Against("rotation", rotation, "below", step.RotationWindow!.Limits.Lower, "°"),
        JobReason.RotationAbove => Against("rotation", rotation, "above", step.RotationWindow!.Limits.Upper, "°"),
        JobReason.TooFast => $"{Short(rotation, "°")} in {Short(duration, "s")} is too fast, {step.RateLimit}",
        JobReason.RateUnknown => "the rate is unknown: the rotation or the time it took is missing",
        _ => InJob(reason),
    };

    /// <summary>A reason that the job finds, whatever the reading.</summary>
    public static string InJob(JobReason reason) => reason switch
    {
        JobReason.StepNotReached => "an earlier step is not finished",
        JobReason.FastenerNotNext => "another fastener is next",
        JobReason.AlreadyDone => "done in this step before",
        JobReason.MustBeLoosened => "it is to be loosened first, and was not",
        JobReason.WasSkipped => "had been skipped in this step",
        JobReason.UnknownFastener => "the program has no such fastener",
        JobReason.UnknownStep => "the program has no such step",
        JobReason.FastenerNotInStep => "the step does not tighten this fastener",
        JobReason.NothingToUndo => "the last entry is of another source, changed no fastener, or is an undo",
        JobReason.SequenceNotNew => "the sequence number is not new: a repeat, or too late",
        JobReason.TimeWentBack => "the clock of the source went back",
        JobReason.RotationUncounted => "it was turned, and that turn does not count",
        JobReason.PulledTooHigh => "it was pulled higher than it may be so far",
        JobReason.NumberUsedByAnother => "another entry has used its number: the source counts anew, or two have one name",
        _ => throw new InvalidOperationException($"The reason {reason} is one of a reading."),
    };

    /// <summary>Six digits, and more only where the two numbers would look alike.</summary>
    private static string Against(string what, double value, string side, double limit, string unit)
    {
        string shown = Short(value, unit), permitted = Short(limit, unit);
        return $"{what} {(shown == permitted ? Interval.Format(value, unit) : shown)} is {side} {permitted}";
    }

    private static string Short(double value, string unit)
    {
        string number = value.ToString("G6", CultureInfo.InvariantCulture);
        return unit == "°" ? number + unit : number + " " + unit;
    }
}
