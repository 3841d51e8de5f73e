using System.Globalization;
using System.Text.Json;
using Xunit.Abstractions;

namespace Fastening.Published.Tests;

/// <summary>One printed value, with the unit of its last digit and the tolerance that belongs to it.</summary>
public sealed class PublishedValue : IXunitSerializable
{
    /// <summary>A printed rule has no digits; what is computed for it is the greatest relative deviation from it.</summary>
    private const double RuleTolerance = 1e-12;

    /// <summary>What stands for the missing end of a range; what is computed for it is 0 when the library has none either.</summary>
    internal const string Open = "open";

    internal PublishedValue(PublishedRow row, JsonElement data, string root, string path, JsonElement value)
    {
        Row = row;
        Root = root;
        Output = path;
        Printed = value.ValueKind switch
        {
            JsonValueKind.String => value.GetString()!,
            JsonValueKind.Null => Open,
            _ => value.GetRawText(),
        };
        bool isNumber = value.ValueKind == JsonValueKind.Number;
        Number = value.ValueKind switch
        {
            JsonValueKind.Number => value.GetDouble(),
            JsonValueKind.True => 1,
            _ => 0,
        };
        Unit = Find(data, "unit", path) ?? (isNumber ? UnitOfLastDigit(Printed) : RuleTolerance);
        Tolerance = Find(data, "tolerance", root) ?? (isNumber ? Unit / 2 : RuleTolerance);
        Corrected = Find(data, "corrected", path);
        Erratum = data.TryGetProperty("not_reproduced", out JsonElement errata) && errata.TryGetProperty(path, out JsonElement reason)
            ? reason.GetString()
            : null;
    }

    public PublishedRow Row { get; private set; } = null!;

    /// <summary>Name of the output in the data file; the unit is in it.</summary>
    public string Root { get; private set; } = "";

    /// <summary>Name of the value: the output, with the keys or the index inside it.</summary>
    public string Output { get; private set; } = "";

    /// <summary>The value as printed.</summary>
    public string Printed { get; private set; } = "";

    public double Number { get; private set; }

    /// <summary>One unit of the last printed digit.</summary>
    public double Unit { get; private set; }

    public double Tolerance { get; private set; }

    /// <summary>Why the printed value does not follow from its own inputs; null when it does.</summary>
    public string? Erratum { get; private set; }

    /// <summary>The value printed elsewhere for a known misprint.</summary>
    public double? Corrected { get; private set; }

    public double ResidualInUnits(double computed) => (computed - Number) / Unit;

    /// <summary>Within the tolerance; an erratum must stay more than half a unit of its last digit away.</summary>
    public void Compare(double computed)
    {
        string figures = string.Create(
            CultureInfo.InvariantCulture,
            $"{this}: computed {computed:G9}, {ResidualInUnits(computed):+0.000;-0.000} units of the last digit, "
                + $"tolerance {Tolerance:G4}. {Row.Note} {(Corrected is null ? "" : "Printed elsewhere: ")}{Corrected}");
        if (Erratum is null)
        {
            Assert.True(Math.Abs(computed - Number) <= Tolerance * (1 + 1e-9) + 1e-12 * Math.Abs(Number), figures);
            return;
        }

        Assert.True(Math.Abs(computed - Number) > Unit / 2, figures);
        if (Corrected is double corrected) Assert.True(Math.Abs(computed - corrected) <= Unit, figures);
    }

    public override string ToString() =>
        $"{Row.Id} {Output} = {Printed}{(Row.FromMemory ? " (from memory)" : "")}"
        + $"{(Erratum is null ? "" : $" (erratum: {Erratum})")}; {Row.Source}";

    /// <summary>For xunit, which carries a value from discovery to the run by its names.</summary>
    [Obsolete("For xunit.", error: true)]
    public PublishedValue()
    {
    }

    void IXunitSerializable.Serialize(IXunitSerializationInfo info)
    {
        info.AddValue(nameof(Row), Row.Id);
        info.AddValue(nameof(Output), Output);
    }

    void IXunitSerializable.Deserialize(IXunitSerializationInfo info)
    {
        string id = info.GetValue<string>(nameof(Row)), output = info.GetValue<string>(nameof(Output));
        PublishedValue value = PublishedRow.All.Single(row => row.Id == id).Values.Single(v => v.Output == output);
        (Row, Root, Output, Printed) = (value.Row, value.Root, value.Output, value.Printed);
        (Number, Unit, Tolerance, Erratum, Corrected) = (value.Number, value.Unit, value.Tolerance, value.Erratum, value.Corrected);
    }

    private static double? Find(JsonElement row, string property, string output)
    {
        if (!row.TryGetProperty(property, out JsonElement found) || found.ValueKind == JsonValueKind.Null) return null;
        if (found.ValueKind == JsonValueKind.Number) return found.GetDouble();
        return found.TryGetProperty(output, out JsonElement own) || found.TryGetProperty("*", out own) ? own.GetDouble() : null;
    }

    private static double UnitOfLastDigit(string number)
    {
        int point = number.IndexOf('.', StringComparison.Ordinal);
        return point < 0 ? 1 : Math.Pow(10, point + 1 - number.Length);
    }
}
