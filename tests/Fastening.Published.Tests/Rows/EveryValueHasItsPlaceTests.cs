using System.Reflection;

namespace Fastening.Published.Tests;

/// <summary>Nothing is lost: a value is computed by exactly one source, or stands in Data/not-covered.json with the reason.</summary>
public sealed class EveryValueHasItsPlaceTests
{
    private static readonly (string Rows, string[] Outputs, string Reason)[] NotCovered =
    [
        .. PublishedRow.Read("not-covered.json").Select(entry => (
            entry.GetProperty("rows").GetString()!,
            entry.GetProperty("outputs").EnumerateArray().Select(output => output.GetString()!).ToArray(),
            entry.GetProperty("reason").GetString()!)),
    ];

    private static readonly PublishedTable[] Tables =
    [
        .. Assembly.GetExecutingAssembly().GetTypes()
            .Where(type => !type.IsAbstract && type.IsAssignableTo(typeof(PublishedSource)))
            .SelectMany(type => ((PublishedSource)Activator.CreateInstance(type)!).Tables),
    ];

    private static readonly PublishedValue[] Values = [.. PublishedRow.All.SelectMany(row => row.Values)];

    [Fact]
    public void Each_value_is_computed_once_or_listed_once() =>
        Assert.Empty(
            from value in Values
            let tables = Tables.Count(table => table.Covers(value))
            let entries = NotCovered.Count(entry => Lists(entry, value))
            where tables + entries != 1
            select $"{value}: {tables} tables, {entries} entries");

    [Fact]
    public void Each_entry_of_the_list_is_still_needed() =>
        Assert.Empty(NotCovered.Where(entry => !Array.Exists(Values, value => Lists(entry, value))).Select(entry => entry.Rows));

    [Fact]
    public void Each_entry_of_the_list_has_a_reason() => Assert.DoesNotContain(NotCovered, entry => entry.Reason.Length < 10);

    [Fact]
    public void Each_table_has_rows() => Assert.DoesNotContain(Tables, table => !table.Values.Any());

    [Fact]
    public void Ids_are_unique() => Assert.Equal(PublishedRow.All.Count, PublishedRow.All.Select(row => row.Id).Distinct().Count());

    private static bool Lists((string Rows, string[] Outputs, string Reason) entry, PublishedValue value) =>
        value.Row.Id.StartsWith(entry.Rows, StringComparison.Ordinal)
        && (entry.Outputs.Contains("*") || entry.Outputs.Contains(value.Root));
}
