namespace Fastening;

/// <summary>What a check came to.</summary>
public enum CheckOutcome
{
    /// <summary>Something that the check needs was not stated; nothing is known.</summary>
    NotAssessed,

    /// <summary>More is asked than is there.</summary>
    Fails,

    /// <summary>What is there reaches what is asked, without any margin beyond it.</summary>
    Holds,
}
