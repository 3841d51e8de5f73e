namespace Fastening;

/// <summary>How an engaged thread fails under tension.</summary>
public enum EngagementFailure
{
    /// <summary>The bolt breaks in its stress cross-section; it is seen at once, and only the bolt is replaced.</summary>
    BoltBreaks = 0,

    /// <summary>The thread of the bolt strips.</summary>
    ExternalThreadStrips = 1,

    /// <summary>The thread of the nut or of the tapped hole strips.</summary>
    InternalThreadStrips = 2,
}
