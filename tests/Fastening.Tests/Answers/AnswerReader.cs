using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;
using UnitsNet;

namespace Fastening.Tests.Answers;

/// <summary>Takes an answer apart into numbers, quantities, truths and choices; texts are left out.</summary>
internal static class AnswerReader
{
    private const int Elements = 40;

    private static readonly ConcurrentDictionary<string, bool> Read = new(StringComparer.Ordinal);

    /// <summary>Every leaf of an answer with its path: nothing for the answer itself, <c>Checks[].Safety</c> within an object.</summary>
    public static IEnumerable<(string Path, object? Leaf)> Leaves(object? answer, int depth) => Leaves(answer, "", depth);

    public static bool IsText(Type type)
    {
        Type bare = type.IsGenericType && typeof(IEnumerable).IsAssignableFrom(type) ? type.GetGenericArguments()[0] : type;
        return bare == typeof(string) || typeof(Delegate).IsAssignableFrom(bare) || bare == typeof(Type);
    }

    /// <summary>The properties of an object that are read.</summary>
    public static IEnumerable<PropertyInfo> PropertiesOf(Type type) => type
        .GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(property => property.GetIndexParameters().Length == 0 && !property.PropertyType.IsByRefLike && !IsText(property.PropertyType))
        .OrderBy(property => FormerNames.OfMember(TypeNames.Now(type), property.Name), StringComparer.Ordinal);

    public static string NameOf(PropertyInfo property) => $"{property.DeclaringType!.Name.Split('`')[0]}.{property.Name}";

    public static bool WasRead(string property) => Read.ContainsKey(property);

    /// <summary>A property asked for itself counts as read.</summary>
    public static void Note(PropertyInfo property) => Read[NameOf(property)] = true;

    private static IEnumerable<(string Path, object? Leaf)> Leaves(object? value, string path, int depth)
    {
        switch (value)
        {
            case null or double or int or long or ulong or bool or Enum or IQuantity or DateTimeOffset:
                return [(path, value)];
            case string or Delegate or Type:
                return [];
            case ReadOnlyMemory<double> column:
                return Enumerable.Range(0, Elements).Select(i => ($"{path}[]", (object?)(column.IsEmpty ? null : column.Span[(int)((long)i * column.Length / Elements)])));
            case IEnumerable many:
                object?[] elements = [.. many.Cast<object?>()];
                return elements.Take(Elements).SelectMany(element => Leaves(element, $"{path}[]", depth)).Prepend(($"{path}[].Count", elements.Length));
        }

        Type type = value.GetType();
        if (type.Name.StartsWith("ValueTuple", StringComparison.Ordinal))
        {
            return type.GetFields().SelectMany(field => Leaves(field.GetValue(value), $"{path}.{field.Name}", depth));
        }

        return depth == 0 || type.Assembly != typeof(ScrewThread).Assembly ? [] : PropertiesOf(type).SelectMany(property => Property(value, property, path, depth));
    }

    private static IEnumerable<(string Path, object? Leaf)> Property(object value, PropertyInfo property, string path, int depth)
    {
        string name = $"{path}.{FormerNames.OfMember(TypeNames.Now(value.GetType()), property.Name)}";
        Note(property);
        try
        {
            return Leaves(property.GetValue(value), name, depth - 1);
        }
        catch (TargetInvocationException wrapped)
        {
            return [(name, wrapped.InnerException)];
        }
    }
}
