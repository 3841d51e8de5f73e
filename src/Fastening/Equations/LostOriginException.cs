namespace Fastening.Equations;

/// <summary>A fault of this library: a value went into an equation and nobody knows any more where it came from.</summary>
internal sealed class LostOriginException(string symbol, string equation)
    : InvalidOperationException($"{symbol} went into {equation} without its origin: this answer cannot be derived.");
