using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Reasons in words, with the figures that they rest on where a pull gives them.</summary>
internal static class FactText
{
    public static string For(JobReason reason, bool isWatched, TighteningStep? step, PullFigures? figures)
    {
        if (step is null || figures is not PullFigures pull) return Plain(reason);
        if (reason == JobReason.ThresholdNotReached) return Against("torque", pull.Torque, "below the threshold,", step.ThresholdTorque, "N·m");
        if (reason > JobReason.ContactBelow) return Plain(reason);
        var measure = (CriterionMeasure)((int)reason / 4);
        Criterion? criterion = step.Criteria.FirstOrDefault(one => one.Measure == measure && one.IsWatched == isWatched);
        return criterion is null || measure == CriterionMeasure.Contact ? Plain(reason) : Measured(criterion, (int)reason % 4, pull.Of(measure));
    }

    private static string Measured(Criterion criterion, int side, double value)
    {
        (string what, string unit) = criterion.Measure switch
        {
            CriterionMeasure.Torque => ("torque", Si.BaseUnit<Torque>()),
            CriterionMeasure.Turn => ("rotation", Si.BaseUnit<Angle>()),
            CriterionMeasure.Move => ("rotation of this pull", Si.BaseUnit<Angle>()),
            _ => ("rate of rotation", Si.BaseUnit<RotationalSpeed>()),
        };
        return side switch
        {
            0 => $"the {what} is not known",
            1 => Against(what, value, "below", criterion.Lower, unit),
            3 => Against(what, value, "above", criterion.Upper, unit),
            _ => $"{what} {Short(value, unit)} is too near a limit of {criterion}",
        };
    }

    private static string Plain(JobReason reason) => reason switch
    {
        JobReason.TorqueMissing => "the torque is not known",
        JobReason.TorqueBelow => "the torque is below its window",
        JobReason.TorqueUnsure => "the torque is too near a limit",
        JobReason.TorqueAbove => "the torque is above its window",
        JobReason.TurnMissing => "the rotation is not known",
        JobReason.TurnBelow => "the rotation is below its window",
        JobReason.TurnAbove => "the rotation is above its window",
        JobReason.MoveMissing => "the rotation of this pull is not known",
        JobReason.MoveBelow => "the rotation of this pull is below its window",
        JobReason.MoveAbove => "the rotation of this pull is above its window",
        JobReason.RateMissing => "the rate of rotation is not known",
        JobReason.RateAbove => "the rate of rotation is above its limit",
        JobReason.ContactMissing => "firm contact is not stated",
        JobReason.ContactBelow => "the parts are not in firm contact",
        JobReason.ThresholdNotReached => "the torque is below the threshold",
        JobReason.StepNotReached => "an earlier step is not finished",
        JobReason.NotNext => "another fastener is next",
        JobReason.NotLoosened => "it must be loosened first",
        JobReason.UnknownStep => "the fastener has no such step",
        JobReason.NumberReused => "sequence conflict: another entry holds this number",
        JobReason.Withdrawn => "it was withdrawn",
        JobReason.PulledTooHigh => "torque higher than its steps allow so far",
        JobReason.OrderUnsure => "the clocks do not tell its place in time",
        JobReason.TurnUnknown => "it may have turned, and how far is not known",
        JobReason.TorqueUnknown => "it was pulled with a torque that is not known",
        JobReason.BeyondTorqueLimit => "torque above the highest that the program allows",
        JobReason.BeyondTurnLimit => "turned further than all its steps allow",
        JobReason.LoosenedTooOften => "loosened more often than the program permits",
        JobReason.DecisionOutdated => "the decision was made without what the log says by now",
        JobReason.Restarted => "pulled again from rest after it stopped short",
        JobReason.PulledAgain => "done in this step before",
        JobReason.WasSkipped => "had been skipped in this step",
        JobReason.ClockWentBack => "the clock of the source was set back",
        JobReason.UnknownFastener => "the program has no such fastener",
        JobReason.AlreadyDone => "it is done in this step, and is not skipped",
        JobReason.NothingWithdrawn => "a withdrawal cannot be withdrawn",
        _ => reason.ToString(),
    };

    /// <summary>Six digits, and more only where the two numbers would look alike.</summary>
    private static string Against(string what, double value, string side, double limit, string unit)
    {
        string shown = Short(value, unit), permitted = Short(limit, unit);
        return $"{what} {(shown == permitted ? Print.Number(value, unit) : shown)} is {side} {permitted}";
    }

    private static string Short(double value, string unit) => Print.Number(value, unit, "G6");
}
