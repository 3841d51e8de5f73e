namespace Fastening;

/// <summary>The verdict on a reading. The numbers are part of the contract: batches compute them.</summary>
public enum Conformity : byte
{
    /// <summary>No verdict: the reading is not a finite number.</summary>
    Undefined = 0,

    /// <summary>Below the lower limit.</summary>
    Below = 1,

    /// <summary>Between the limits, or equal to one.</summary>
    Within = 2,

    /// <summary>Above the upper limit.</summary>
    Above = 3,

    /// <summary>So near to a limit that the uncertainty of the reading forbids a verdict; only decisions with uncertainty give it.</summary>
    Undecidable = 4,
}
