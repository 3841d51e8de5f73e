using System.Reflection;
using UnitsNet;

namespace Fastening.Tests.House;

/// <summary>Whether two objects hold the same, field by field, to the last bit.</summary>
internal static class DeepComparison
{
    /// <summary>The path to the first difference; null where there is none.</summary>
    public static string? Difference(object? one, object? other) => Difference(one, other, "", []);

    private static string? Difference(object? one, object? other, string path, HashSet<(object, object)> met)
    {
        if (ReferenceEquals(one, other)) return null;
        if (one is null || other is null || one.GetType() != other.GetType()) return $"{path}: {one ?? "none"} and {other ?? "none"}";
        Type type = one.GetType();
        switch (one)
        {
            case double number:
                return BitConverter.DoubleToInt64Bits(number) == BitConverter.DoubleToInt64Bits((double)other) ? null : $"{path}: {one} and {other}";
            case IQuantity quantity:
                var second = (IQuantity)other;
                return quantity.Unit.Equals(second.Unit) ? Difference((double)quantity.Value, (double)second.Value, path, met) : $"{path}: {one} and {other}";
            case string or Type or MethodBase or DateTimeOffset:
                return one.Equals(other) ? null : $"{path}: {one} and {other}";
            case Delegate call:
                return call.Method != ((Delegate)other).Method ? $"{path}: {call.Method}" : Difference(call.Target, ((Delegate)other).Target, path, met);
            case Array array:
                return Elements(array, (Array)other, path, met);
        }

        if (type.IsPrimitive || type.IsEnum) return one.Equals(other) ? null : $"{path}: {one} and {other}";
        if (!type.IsValueType && !met.Add((one, other))) return null;
        return FieldsOf(type).Select(field => Field(field, one, other, path, met)).FirstOrDefault(difference => difference is not null);
    }

    /// <summary>What is computed at first use may be there already in one and not yet in the other.</summary>
    private static string? Field(FieldInfo field, object one, object other, string path, HashSet<(object, object)> met)
    {
        object? first = field.GetValue(one), second = field.GetValue(other);
        bool isKept = !field.IsInitOnly && !field.FieldType.IsValueType && (first is null || second is null);
        return isKept ? null : Difference(first, second, $"{path}.{field.Name}", met);
    }

    private static string? Elements(Array one, Array other, string path, HashSet<(object, object)> met) => one.Length != other.Length
        ? $"{path}: {one.Length} and {other.Length}"
        : one.Cast<object?>().Zip(other.Cast<object?>(), (first, second) => Difference(first, second, $"{path}[]", met)).FirstOrDefault(difference => difference is not null);

    private static IEnumerable<FieldInfo> FieldsOf(Type type)
    {
        for (Type? level = type; level is not null && level != typeof(object); level = level.BaseType)
        {
            foreach (FieldInfo field in level.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)) yield return field;
        }
    }
}
