using Fastening.Internals;

namespace Fastening;

/// <summary>Where a published value comes from, and how it came here.</summary>
/// <example><code>foreach (PublishedFriction row in FrictionGuidance.Coefficients.Where(row => row.Provenance.IsFromMemory)) Console.WriteLine(row);</code></example>
public sealed class Provenance
{
    private const string Memory = "from memory";

    internal Provenance(string source, string confidence = "", string note = "")
    {
        Source = source;
        Confidence = confidence;
        Note = note;
    }

    /// <summary>Document, edition and place.</summary>
    public string Source { get; }

    /// <summary>How it came here: <c>read</c>, <c>read in secondary source</c>, <c>several sources</c>, <c>from memory</c>; empty where <see cref="Source"/> states it.</summary>
    public string Confidence { get; }

    /// <summary>Whether it, or a part of it, was recalled and not read.</summary>
    public bool IsFromMemory => Confidence.Contains(Memory) || Source.Contains(Memory);

    /// <summary>A remark, conflicts with other sources included; empty when there is none.</summary>
    public string Note { get; }

    /// <summary>Of a row of a data file.</summary>
    internal static Provenance Of(DataRow row) => new(row["source"], row["confidence"], row["note"]);

    /// <inheritdoc />
    public override string ToString() => Confidence.Length == 0 ? Source : $"{Source}, {Confidence}";
}
