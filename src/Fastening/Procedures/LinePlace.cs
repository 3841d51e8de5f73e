namespace Fastening;

/// <summary>The place of a line in time, and from whom.</summary>
/// <param name="Source">The source by its number in the job.</param>
/// <param name="SourceHash">Its name as a number that is the same everywhere.</param>
/// <param name="Ticks">The place.</param>
/// <param name="Received">When the line came in; the greatest number where that was not stated.</param>
/// <param name="Flags">What the merge found.</param>
internal readonly record struct LinePlace(int Source, ulong SourceHash, long Ticks, long Received, LineFlags Flags);
