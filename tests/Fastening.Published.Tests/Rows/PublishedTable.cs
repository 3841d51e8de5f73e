namespace Fastening.Published.Tests;

/// <summary>The rows whose ids begin alike, and how the library computes their values.</summary>
/// <param name="idPrefix">The beginning of the ids.</param>
/// <param name="compute">Row and output to computed value, in the output's unit; null for an output that the API does not offer.</param>
public sealed class PublishedTable(string idPrefix, Func<PublishedRow, string, double?> compute)
{
    public IEnumerable<PublishedValue> Values => PublishedRow.All.SelectMany(row => row.Values).Where(Covers);

    public bool Covers(PublishedValue value) => value.Row.Id.StartsWith(idPrefix, StringComparison.Ordinal) && Compute(value) is not null;

    public double? Compute(PublishedValue value) => compute(value.Row, value.Output);

    public override string ToString() => idPrefix;
}
