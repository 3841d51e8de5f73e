namespace Fastening;

/// <summary>What a check came to.</summary>
public enum CheckOutcome
{
    /// <summary>Something that the check needs was not stated; nothing is known.</summary>
    NotAssessed,

    /// <summary>More is required than is available.</summary>
    Fails,

    /// <summary>The available value reaches the required one; no margin is added.</summary>
    Holds,
}
