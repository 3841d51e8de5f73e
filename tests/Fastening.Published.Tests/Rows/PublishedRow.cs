using System.Reflection;
using System.Text.Json;

namespace Fastening.Published.Tests;

/// <summary>One row of a published table: its inputs, and the values printed for them.</summary>
public sealed class PublishedRow
{
    private readonly JsonElement _inputs;

    private PublishedRow(JsonElement row)
    {
        Id = row.GetProperty("id").GetString()!;
        Source = row.GetProperty("source").GetString()!;
        FromMemory = row.GetProperty("from_memory").GetBoolean();
        Note = row.TryGetProperty("note", out JsonElement note) ? note.GetString()! : "";
        _inputs = row.GetProperty("inputs");
        Values =
        [
            .. row.GetProperty("outputs").EnumerateObject().SelectMany(output => Flatten(row, output.Name, output.Name, output.Value)),
        ];
    }

    /// <summary>Every row of every data file, in their order.</summary>
    public static IReadOnlyList<PublishedRow> All { get; } =
    [
        .. new[]
        {
            "threads", "bolt-strength", "hot-strength", "engagement", "torque-preload", "assembly-stress", "preload-scatter", "adapters", "bolt-sequence", "joint-stiffness", "rotation",
            "measurement", "errata",
        }
            .SelectMany(file => Read(file + ".json")).Select(row => new PublishedRow(row)),
    ];

    public string Id { get; }

    public string Source { get; }

    /// <summary>Recalled, not read in a text: a regression value.</summary>
    public bool FromMemory { get; }

    public string Note { get; }

    public IReadOnlyList<PublishedValue> Values { get; }

    /// <summary>A numeric input; the unit is in its name.</summary>
    public double this[string input] => _inputs.GetProperty(input).GetDouble();

    /// <summary>An input that is a list of numbers.</summary>
    public double[] Numbers(string input) => [.. _inputs.GetProperty(input).EnumerateArray().Select(number => number.GetDouble())];

    public string Text(string input) => _inputs.GetProperty(input).GetString()!;

    /// <summary>The elements of a data file.</summary>
    internal static IEnumerable<JsonElement> Read(string file)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(file)!;
        return [.. JsonDocument.Parse(stream).RootElement.EnumerateArray()];
    }

    private IEnumerable<PublishedValue> Flatten(JsonElement row, string root, string path, JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => value.EnumerateObject().SelectMany(p => Flatten(row, root, $"{path}[{p.Name}]", p.Value)),
        JsonValueKind.Array => value.EnumerateArray().SelectMany((element, i) => Flatten(row, root, $"{path}[{i}]", element)),
        _ => [new PublishedValue(this, row, root, path, value)],
    };
}
