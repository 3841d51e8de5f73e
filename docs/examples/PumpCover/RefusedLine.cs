namespace PumpCover;

/// <summary>A line that was not judged, and why; the bolt where it can be told.</summary>
internal sealed record RefusedLine(LogLine Line, int? Bolt, string Reason);
