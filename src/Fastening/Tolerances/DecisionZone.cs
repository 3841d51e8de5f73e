namespace Fastening;

/// <summary>Where a reading stands when its uncertainty counts (ILAC-G8:09/2019, non-binary statements; from memory).</summary>
public enum DecisionZone : byte
{
    /// <summary>No decision: the reading is not a finite number.</summary>
    Undefined = 0,

    /// <summary>Inside the acceptance window.</summary>
    Accept = 1,

    /// <summary>Inside the limits, but so near to one that the agreed rule does not accept it.</summary>
    ConditionalAccept = 2,

    /// <summary>Beyond a limit, but so near that the agreed rule does not call it rejected.</summary>
    ConditionalReject = 3,

    /// <summary>Beyond a limit by more than the guard band.</summary>
    Reject = 4,
}
