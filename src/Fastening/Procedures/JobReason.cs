namespace Fastening;

/// <summary>One thing to say of an entry of a job's log. The numbers are part of the contract: a record may hold them.</summary>
/// <remarks>Up to 19 they follow the criteria: four for each <see cref="CriterionMeasure"/>, in the order missing, below, unsure, above. The effect of each is <see cref="TighteningProgram.EffectOf"/>.</remarks>
public enum JobReason
{
    /// <summary>The step asks for a torque and the pull states none.</summary>
    TorqueMissing = 0,

    /// <summary>The torque is below its window.</summary>
    TorqueBelow = 1,

    /// <summary>The torque is so near a limit that the decision rule does not accept it.</summary>
    TorqueUnsure = 2,

    /// <summary>The torque is above its window.</summary>
    TorqueAbove = 3,

    /// <summary>The step asks for a rotation, and how far the fastener has turned in it is not known.</summary>
    TurnMissing = 4,

    /// <summary>The fastener has turned less than the step asks for.</summary>
    TurnBelow = 5,

    /// <summary>The fastener has turned further than the step permits.</summary>
    TurnAbove = 7,

    /// <summary>The step asks how far this pull has moved the fastener, and the pull does not state it.</summary>
    MoveMissing = 8,

    /// <summary>This pull has moved the fastener less than asked for.</summary>
    MoveBelow = 9,

    /// <summary>This pull has moved the fastener further than permitted.</summary>
    MoveAbove = 11,

    /// <summary>The step limits the rate, and the pull lacks the rotation or the time it took.</summary>
    RateMissing = 12,

    /// <summary>Turned faster than the step permits.</summary>
    RateAbove = 15,

    /// <summary>The step asks for firm contact, and the entry does not state whether there is any.</summary>
    ContactMissing = 16,

    /// <summary>The entry states that the parts are not in firm contact.</summary>
    ContactBelow = 17,

    /// <summary>The torque stayed below the threshold from which rotation counts.</summary>
    ThresholdNotReached = 20,

    /// <summary>The step is not open yet: an earlier one is not finished.</summary>
    StepNotReached = 21,

    /// <summary>The order of the step names another fastener next.</summary>
    NotNext = 22,

    /// <summary>The fastener must be loosened first, and was not.</summary>
    NotLoosened = 23,

    /// <summary>The program has no such step, or the step does not tighten this fastener.</summary>
    UnknownStep = 24,

    /// <summary>Another entry holds this number of the source: a counter began again, or two sources share a name.</summary>
    NumberReused = 25,

    /// <summary>The entry was withdrawn: it proves nothing, and still warns.</summary>
    Withdrawn = 26,

    /// <summary>Pulled harder than the steps of the fastener up to its open one allow.</summary>
    PulledTooHigh = 27,

    /// <summary>The clocks do not tell whether this entry came before or after another one on the same fastener.</summary>
    OrderUnsure = 28,

    /// <summary>The fastener may have been turned, and how far is not known.</summary>
    TurnUnknown = 29,

    /// <summary>Pulled with a torque that nobody stated, where the torque is limited.</summary>
    TorqueUnknown = 30,

    /// <summary>Pulled above the highest torque that the program allows on the fastener.</summary>
    BeyondTorqueLimit = 31,

    /// <summary>Turned further than all steps of the fastener together allow.</summary>
    BeyondTurnLimit = 32,

    /// <summary>Loosened more often than the program permits.</summary>
    LoosenedTooOften = 33,

    /// <summary>A person decided without knowing all that is in the log by now.</summary>
    DecisionOutdated = 34,

    /// <summary>Pulled again from rest after a pull that stopped short: the torque that restarts a bolt is not its tightening torque.</summary>
    Restarted = 35,

    /// <summary>The fastener was done in this step before.</summary>
    PulledAgain = 36,

    /// <summary>The fastener had been skipped in this step.</summary>
    WasSkipped = 37,

    /// <summary>The clock of the source was set back.</summary>
    ClockWentBack = 38,

    /// <summary>The program has no such fastener.</summary>
    UnknownFastener = 39,

    /// <summary>A fastener that is done is not skipped.</summary>
    AlreadyDone = 40,

    /// <summary>What it withdraws is itself a withdrawal, which stays.</summary>
    NothingWithdrawn = 41,
}
