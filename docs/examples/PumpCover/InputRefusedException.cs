namespace PumpCover;

/// <summary>The job cannot be read as it stands: one clear sentence, nothing written, exit code 2.</summary>
internal sealed class InputRefusedException(string message) : Exception(message);
