namespace PumpCover;

/// <summary>One thing to say against a reading, with its reason.</summary>
internal sealed record Finding(FindingKind Kind, string Reason);
