namespace Fastening;

/// <summary>Why a setting may not suit a wrench.</summary>
[Flags]
public enum WrenchWarning
{
    /// <summary>Nothing to say.</summary>
    None = 0,

    /// <summary>The setting is below the declared range, where the wrench's accuracy is not stated.</summary>
    BelowRange = 1,

    /// <summary>The setting is above the declared range: it may damage the wrench or hurt its user.</summary>
    AboveRange = 2,

    /// <summary>The setting lies between two steps of the display; round it, inward for a limit.</summary>
    BetweenSteps = 4,

    /// <summary>There is an adapter: the fastener's torque depends on where the hand is and which way it pulls, even at a torque ratio of 1.</summary>
    HandPositionMatters = 8,

    /// <summary>The range was not stated, so it was not checked.</summary>
    RangeNotStated = 16,

    /// <summary>Lever length or torque ratio is outside what is usual: see <see cref="TorqueWrench.Remarks"/>.</summary>
    Unusual = 32,
}
