using Fastening.Internals;

namespace Fastening;

/// <summary>Numbers of a source that are missing. The lines are to be sent again, or a person explains why none concerns this job.</summary>
public sealed class JobGap
{
    internal JobGap(string source, long first, long last)
    {
        Source = source;
        First = first;
        Last = last;
    }

    /// <summary>The source.</summary>
    public string Source { get; }

    /// <summary>The first number that is missing.</summary>
    public long First { get; }

    /// <summary>The last number that is missing.</summary>
    public long Last { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Source} #{First}{(Last > First ? Print.Text($" to #{Last}") : "")}");
}
