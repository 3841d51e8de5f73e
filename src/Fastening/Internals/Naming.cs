using System.Runtime.CompilerServices;

namespace Fastening.Internals;

/// <summary>Names, sources and reasons as the user gives them: none empty, and in a list none twice.</summary>
internal static class Naming
{
    public static string Check(string value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (string.IsNullOrWhiteSpace(Guard.NotNull(value, name))) throw new ArgumentException($"{name} is empty; it must have a text.", name);
        return value;
    }

    /// <summary>A private copy of a list of names.</summary>
    public static string[] CheckAll(IReadOnlyList<string> values, [CallerArgumentExpression(nameof(values))] string name = "")
    {
        if (Guard.NotNull(values, name).Count == 0) throw new ArgumentException($"{name} is empty; it must name at least one fastener.", name);
        string[] copy = new string[values.Count];
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (int i = 0; i < copy.Length; i++)
        {
            copy[i] = Check(values[i], $"{name}[{i}]");
            if (!seen.Add(copy[i])) throw new ArgumentException($"{name} holds {Quoted.Text(copy[i])} twice; each must stand once.", name);
        }

        return copy;
    }
}
