namespace Fastening;

/// <summary>What a pull did to the rotation of its fastener past snug.</summary>
internal enum TurnFact
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>It turned the fastener, by as much as was measured.</summary>
    Counts = 1,

    /// <summary>It may have turned the fastener, and how far the fastener has turned in all is not known.</summary>
    Unknown = 2,
}
