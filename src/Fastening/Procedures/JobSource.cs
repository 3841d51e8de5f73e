using Fastening.Internals;

namespace Fastening;

/// <summary>How a source numbers its entries, and so whether a lost line shows.</summary>
/// <remarks>A source that is not declared counts: it has every number from the first that was seen. That is the safe side, since a gap keeps a job from conforming.</remarks>
/// <example><code>JobOptions options = JobOptions.Default.WithSources(JobSource.Counting("wrench 7", first: 411), JobSource.Sparse("shared controller"));</code></example>
public sealed class JobSource
{
    private JobSource(string name, long? first, bool isSparse)
    {
        Name = name;
        First = first;
        IsSparse = isSparse;
    }

    /// <summary>The name of the source.</summary>
    public string Name { get; }

    /// <summary>The first number that belongs to this job; null for a source with free numbers.</summary>
    public long? First { get; }

    /// <summary>Whether numbers may be missing without a line being lost.</summary>
    public bool IsSparse { get; }

    /// <summary>A source that counts: a number that is missing between the first and the last is a line that is lost.</summary>
    /// <param name="name">The name of the source.</param>
    /// <param name="first">The first number that belongs to this job.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="first"/> is negative.</exception>
    /// <example><code>JobSource wrench = JobSource.Counting("wrench 7", first: 411);</code></example>
    public static JobSource Counting(string name, long first)
    {
        if (first < 0) Guard.RefuseAgainst(nameof(first), first, "at least 0");
        return new(Naming.Check(name), first, isSparse: false);
    }

    /// <summary>A source whose numbers only increase, as one that serves several jobs. A lost line of it does not show.</summary>
    /// <param name="name">The name of the source.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <example><code>JobSource shared = JobSource.Sparse("shared controller");</code></example>
    public static JobSource Sparse(string name) => new(Naming.Check(name), null, isSparse: true);

    /// <inheritdoc />
    public override string ToString() => IsSparse ? $"{Name}, free numbers: lost lines do not show" : Print.Text($"{Name}, counting from {First}");
}
