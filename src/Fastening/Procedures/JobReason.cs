namespace Fastening;

/// <summary>One thing to say of an entry. The numbers are part of the contract: a record may hold them.</summary>
public enum JobReason
{
    /// <summary>The step needs a torque and the reading has none.</summary>
    TorqueMissing = 0,

    /// <summary>The torque is below its window.</summary>
    TorqueBelow = 1,

    /// <summary>The torque is above its window: the fastener must be loosened.</summary>
    TorqueAbove = 2,

    /// <summary>The torque stayed below the threshold from which rotation counts.</summary>
    ThresholdNotReached = 3,

    /// <summary>The step needs a rotation and the reading has none.</summary>
    RotationMissing = 4,

    /// <summary>The rotation is below its window.</summary>
    RotationBelow = 5,

    /// <summary>The rotation is above its window; where rotation is required the fastener must be loosened.</summary>
    RotationAbove = 6,

    /// <summary>Turned faster than the step permits.</summary>
    TooFast = 7,

    /// <summary>The step limits the rate, and the reading lacks the rotation or the time it took.</summary>
    RateUnknown = 8,

    /// <summary>The step is not open yet: an earlier one is not finished.</summary>
    StepNotReached = 9,

    /// <summary>The order of the step names another fastener next: the wrong fastener was tightened.</summary>
    FastenerNotNext = 10,

    /// <summary>The fastener was done in this step before.</summary>
    AlreadyDone = 11,

    /// <summary>The fastener holds too much, or an unknown rotation, and was not loosened since.</summary>
    MustBeLoosened = 12,

    /// <summary>The fastener had been skipped in this step; now it is tightened.</summary>
    WasSkipped = 13,

    /// <summary>The program has no such fastener.</summary>
    UnknownFastener = 14,

    /// <summary>The program has no such step.</summary>
    UnknownStep = 15,

    /// <summary>The step does not tighten this fastener.</summary>
    FastenerNotInStep = 16,

    /// <summary>The last entry was of another source, changed no fastener, or was an undo: nothing is undone.</summary>
    NothingToUndo = 17,

    /// <summary>The sequence number is not greater than the last one of the source: a repeat, or an entry that came too late.</summary>
    SequenceNotNew = 18,

    /// <summary>The time is before that of the source's last entry; the entry counts, its clock is to be looked at.</summary>
    TimeWentBack = 19,

    /// <summary>
    /// The fastener was turned where a step requires rotation, and the turn does not count: out of its turn, with the torque missing, when it was done
    /// already, in another step or one that it does not have, when an earlier reading of the step said more, or before it was made snug. How far it
    /// has turned in all is not known any more: it must be loosened.
    /// </summary>
    RotationUncounted = 20,

    /// <summary>
    /// Pulled higher than it may be: in a step that the fastener does not have above the windows of all its own, or before its step above the window
    /// of the one that is next for it. It must be loosened.
    /// </summary>
    PulledTooHigh = 21,

    /// <summary>
    /// The sequence number was used already, and the entry is later than all of its source, so it is no repeat: a counter that began anew, or two
    /// sources of one name. The entry does not count; number the source apart and go through the log again.
    /// </summary>
    NumberUsedByAnother = 22,
}
