using Fastening.Tests.House;

namespace Fastening.Tests.Answers;

/// <summary>The names that parameters had when the record was first written: what is drawn for them goes by these.</summary>
internal static class ParameterNames
{
    private static readonly Lazy<Dictionary<string, string[]>> First = new(Read);

    /// <summary>By the signature without names; null for a member that the record does not hold.</summary>
    public static string[]? Of(string signature) => First.Value.GetValueOrDefault(signature);

    public static string Join(string signature, string[] names)
    {
        int open = signature.IndexOf('(', StringComparison.Ordinal);
        if (open < 0) return signature;
        string[] types = Split(signature[(open + 1)..^1]);
        return $"{signature[..open]}({string.Join(", ", types.Zip(names, (type, name) => $"{type} {name}"))})";
    }

    /// <summary>Split at the commas that stand in no brackets.</summary>
    private static string[] Split(string list)
    {
        var parts = new List<string>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i < list.Length; i++)
        {
            depth += list[i] is '<' or '(' ? 1 : list[i] is '>' or ')' ? -1 : 0;
            if (list[i] != ',' || depth > 0) continue;
            parts.Add(list[start..i]);
            start = i + 2;
        }

        if (list.Length > 0) parts.Add(list[start..]);
        return [.. parts];
    }

    private static Dictionary<string, string[]> Read()
    {
        var names = new Dictionary<string, string[]>(StringComparer.Ordinal);
        if (!File.Exists(Path.Combine([Repository.Root, .. AnswerRecord.Path]))) return names;
        foreach (string key in AnswerRecord.Read(Repository.Read(AnswerRecord.Path)).Keys)
        {
            string call = key.Split(" | ")[0];
            int open = call.IndexOf('(', StringComparison.Ordinal);
            if (open < 0) continue;
            string[] parameters = Split(call[(open + 1)..^1]);
            names[$"{call[..open]}({string.Join(", ", parameters.Select(p => p[..p.LastIndexOf(' ')]))})"] = [.. parameters.Select(p => p[(p.LastIndexOf(' ') + 1)..])];
        }

        return names;
    }
}
