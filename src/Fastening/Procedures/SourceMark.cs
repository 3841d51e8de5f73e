namespace Fastening;

/// <summary>The last entry of a source.</summary>
internal readonly record struct SourceMark(long Sequence, DateTimeOffset Time);
