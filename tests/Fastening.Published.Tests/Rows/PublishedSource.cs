namespace Fastening.Published.Tests;

/// <summary>A published source: the tables taken from it, and the test of every value that they compute against print.</summary>
public abstract class PublishedSource
{
    public abstract IReadOnlyList<PublishedTable> Tables { get; }

    [Theory]
    [PublishedValues]
    public void Print_and_library_agree(PublishedValue value) =>
        value.Compare(Tables.Single(table => table.Covers(value)).Compute(value)!.Value);
}
