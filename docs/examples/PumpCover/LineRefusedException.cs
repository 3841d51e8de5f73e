namespace PumpCover;

/// <summary>One line of the log cannot be judged; the others are.</summary>
internal sealed class LineRefusedException(string message) : Exception(message);
