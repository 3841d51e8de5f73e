namespace Fastening;

/// <summary>How an engaged thread fails under tension.</summary>
public enum EngagementFailure
{
    /// <summary>The bolt breaks in its stress cross-section, even one of the greatest tensile strength; it is seen at once, and only the bolt is replaced.</summary>
    BoltBreaks = 0,

    /// <summary>The thread of the bolt strips.</summary>
    ExternalThreadStrips = 1,

    /// <summary>The thread of the nut or of the tapped hole strips.</summary>
    InternalThreadStrips = 2,

    /// <summary>A bolt of the least tensile strength breaks, one of the greatest strips a thread: which it is depends on the bolt.</summary>
    DependsOnBolt = 3,
}
