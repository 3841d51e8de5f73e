using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>How the lines of a log are put in order: how well the clocks agree, how the sources count, how many lines a run holds.</summary>
/// <example><code>JobOptions options = JobOptions.Default.WithClockTolerance(Duration.FromSeconds(30));</code></example>
public sealed class JobOptions
{
    private const int LongestTail = 1 << 24;

    private JobOptions()
    {
    }

    private JobOptions(JobOptions options)
    {
        TailLength = options.TailLength;
        ClockTolerance = options.ClockTolerance;
        ToleranceTicks = options.ToleranceTicks;
        Sources = options.Sources;
    }

    /// <summary>A tail of 4096 lines, clocks that agree within a second (common practice, no source), and sources that count.</summary>
    public static JobOptions Default { get; } = new();

    /// <summary>The least number of latest lines among which a run still puts a late one in its place; it holds up to twice as many.</summary>
    public int TailLength { get; private init; } = 4096;

    /// <summary>How far two clocks may differ. On one fastener, lines of two sources that are closer have no sure order.</summary>
    public Duration ClockTolerance { get; private init; } = Duration.FromSeconds(1);

    /// <summary>The declared sources.</summary>
    public IReadOnlyList<JobSource> Sources { get; private init; } = [];

    internal long ToleranceTicks { get; private init; } = TimeSpan.TicksPerSecond;

    /// <summary>States how many lines a run holds.</summary>
    /// <param name="lines">The number, 1 to 2²⁴.</param>
    /// <returns>New options.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lines"/> is outside its domain.</exception>
    /// <example><code>JobOptions small = JobOptions.Default.WithTailLength(256);</code></example>
    public JobOptions WithTailLength(int lines)
    {
        if (lines is < 1 or > LongestTail) Guard.RefuseAgainst(nameof(lines), lines, $"from 1 to {LongestTail}");
        return new(this) { TailLength = lines };
    }

    /// <summary>States how far two clocks may differ.</summary>
    /// <param name="tolerance">The difference, up to a day; 0 where all lines have one clock.</param>
    /// <returns>New options.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="tolerance"/> is outside its domain.</exception>
    /// <example><code>JobOptions loose = JobOptions.Default.WithClockTolerance(Duration.FromMinutes(2));</code></example>
    public JobOptions WithClockTolerance(Duration tolerance)
    {
        double seconds = Domains.ClockTolerance.Check(tolerance);
        return new(this) { ClockTolerance = tolerance, ToleranceTicks = (long)Math.Ceiling(seconds * TimeSpan.TicksPerSecond) };
    }

    /// <summary>Declares how sources number their entries, in place of what was declared before.</summary>
    /// <param name="sources">The sources, each once.</param>
    /// <returns>New options.</returns>
    /// <exception cref="ArgumentNullException">The list or a source is null.</exception>
    /// <exception cref="ArgumentException">A name stands twice.</exception>
    /// <example><code>JobOptions options = JobOptions.Default.WithSources(JobSource.Counting("wrench 7", first: 411));</code></example>
    public JobOptions WithSources(params JobSource[] sources)
    {
        JobSource[] copy = [.. Guard.NotNull(sources)];
        var names = new HashSet<string>(StringComparer.Ordinal);
        for (int i = 0; i < copy.Length; i++)
        {
            string name = Guard.NotNull(copy[i], $"sources[{i}]").Name;
            if (!names.Add(name)) throw new ArgumentException($"sources holds {Quoted.Text(name)} twice; each must stand once.", nameof(sources));
        }

        return new(this) { Sources = Array.AsReadOnly(copy) };
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"tail of {TailLength} lines, clocks within {ClockTolerance}, {Sources.Count} sources declared");
}
