namespace Fastening;

/// <summary>The last entry of a source, and the latest time of any, which a clock set back does not lower.</summary>
internal readonly record struct SourceMark(long Sequence, DateTimeOffset Time, DateTimeOffset Latest);
