using Fastening.Internals;

namespace Fastening;

/// <summary>A value that is possible but outside the range in which such values are published: calculated with, and remarked.</summary>
/// <remarks>A slipped decimal or a wrong unit often looks like this. The value need not be wrong: check its origin.</remarks>
/// <example><code>foreach (PlausibilityRemark remark in new FrictionCoefficients(thread: 1.2, bearing: 0.10).Remarks) Console.WriteLine(remark);
/// // thread friction 1.2 is outside 0.04 to 0.45 (VDI 2230-1:2015 Table A5 …)</code></example>
public sealed class PlausibilityRemark
{
    private readonly PlausibleRange _range;

    internal PlausibilityRemark(PlausibleRange range, double value)
    {
        _range = range;
        Value = value;
    }

    /// <summary>What the value is.</summary>
    public PlausibilityKind Kind => _range.Kind;

    /// <summary>The value, in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>Low end of the range, in <see cref="Unit"/>.</summary>
    public double Low => _range.Low;

    /// <summary>High end of the range, in <see cref="Unit"/>.</summary>
    public double High => _range.High;

    /// <summary>Unit of the numbers; empty for a pure number.</summary>
    public string Unit => _range.Unit;

    /// <summary>Where the ends come from, or <c>common practice, no source</c>.</summary>
    public string Source => _range.Source;

    /// <inheritdoc />
    public override string ToString() =>
        $"{Brief} is outside {Print.Number(Low)} to {Print.Number(High, Unit)} ({Source}); check it";

    internal string Brief => $"{_range.Name} {Print.Number(Value, Unit)}";

    /// <summary>The remarks as part of the text of an object; empty when there are none.</summary>
    internal static string Mention(IReadOnlyList<PlausibilityRemark> remarks) =>
        remarks.Count == 0 ? "" : $" [unusual: {string.Join(", ", remarks.Select(remark => remark.Brief))}]";

    /// <summary>Without an allocation when both values are inside.</summary>
    internal static IReadOnlyList<PlausibilityRemark> Of(PlausibleRange first, double firstValue, PlausibleRange second, double secondValue) =>
        (first.Contains(firstValue), second.Contains(secondValue)) switch
        {
            (true, true) => [],
            (false, true) => Array.AsReadOnly([new PlausibilityRemark(first, firstValue)]),
            (true, false) => Array.AsReadOnly([new PlausibilityRemark(second, secondValue)]),
            _ => Array.AsReadOnly([new PlausibilityRemark(first, firstValue), new PlausibilityRemark(second, secondValue)]),
        };

    /// <summary>Without an allocation when the value is inside.</summary>
    internal static IReadOnlyList<PlausibilityRemark> Of(PlausibleRange range, double value) =>
        range.Contains(value) ? [] : Array.AsReadOnly([new PlausibilityRemark(range, value)]);

    /// <summary>Each remark once. Without an allocation when one list is empty.</summary>
    internal static IReadOnlyList<PlausibilityRemark> Join(IReadOnlyList<PlausibilityRemark> first, IReadOnlyList<PlausibilityRemark> second) =>
        first.Count == 0 ? second : second.Count == 0 ? first : Union(first, second);

    private static System.Collections.ObjectModel.ReadOnlyCollection<PlausibilityRemark> Union(IReadOnlyList<PlausibilityRemark> first, IReadOnlyList<PlausibilityRemark> second) =>
        Array.AsReadOnly([.. first, .. second.Where(remark => !first.Any(remark.Repeats))]);

    private bool Repeats(PlausibilityRemark other) => Kind == other.Kind && Value.Equals(other.Value);
}
