namespace PumpCover;

/// <summary>A line with its number in the file.</summary>
internal sealed record LogLine(int Number, string Text);
