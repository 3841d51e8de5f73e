namespace Fastening;

/// <summary>Where a fastener stands in a step.</summary>
public enum FastenerStatus
{
    /// <summary>The step does not tighten it.</summary>
    NotInStep = 0,

    /// <summary>Not tightened yet, or loosened since.</summary>
    Open = 1,

    /// <summary>Done: a reading was accepted.</summary>
    Done = 2,

    /// <summary>Its last reading was not accepted.</summary>
    Rejected = 3,

    /// <summary>Left out, with a reason.</summary>
    Skipped = 4,
}
