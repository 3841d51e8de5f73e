using System.Reflection;
using Fastening.Equations;
using Fastening.Tests.Equations;
using Fastening.Tests.House;

namespace Fastening.Tests.Answers;

/// <summary>The answers of the library as it is now, and those that were written down.</summary>
internal static class AnswerRecord
{
    private const int Draws = 64;

    private static readonly Lazy<SortedDictionary<string, Fold>> Walked = new(Walk);

    /// <summary>The keys of the library as it is now.</summary>
    public static IReadOnlyDictionary<string, Fold> Now => Walked.Value;

    public static string[] Path { get; } = ["tests", "Fastening.Tests", "Data", "answers.txt"];

    /// <summary>Key to hashes and counts, of a file written earlier.</summary>
    public static Dictionary<string, string[]> Read(string text) => text.Split('\n')
        .Where(line => line.Length > 0 && line[0] != '#')
        .Select(line => line.Split('\t'))
        .ToDictionary(parts => parts[0], parts => parts[1..], StringComparer.Ordinal);

    public static string Line(string key, Fold fold) => $"{key}\t{fold.Exact}\t{fold.Rounded}\t{fold.Answered}/{fold.Refused}";

    /// <summary>Whether the functions of the C library give the bits they gave where the record was written.</summary>
    public static string Probe()
    {
        var fold = new Fold();
        var draw = new Draw("probe");
        for (int i = 0; i < 2000; i++)
        {
            double x = draw.Between(0.01, 3);
            double[] values = [Math.Sin(x), Math.Cos(x), Math.Tan(x), Math.Atan(x), Math.Asin(x / 4), Math.Acos(x / 4), Math.Exp(x), Math.Log(x), Math.Pow(x, 1.7), Math.Cbrt(x), Math.Sqrt(x)];
            foreach (double value in values) fold.Answer(i, value);
        }

        return fold.Exact;
    }

    private static SortedDictionary<string, Fold> Walk()
    {
        Dictionary<string, string[]> names = ParameterNames();
        var asked = new HashSet<string>(StringComparer.Ordinal);
        var folds = new SortedDictionary<string, Fold>(StringComparer.Ordinal);
        foreach (Member member in Member.All()) Ask(member, names, asked, folds);
        foreach (Equation equation in EquationCatalogue.All) Ask(equation, folds);
        return folds;
    }

    private static void Ask(Member member, Dictionary<string, string[]> names, HashSet<string> asked, SortedDictionary<string, Fold> folds)
    {
        string signature = member.Signature;
        ParameterInfo[] parameters = member.Parameters;
        if (member.Info is PropertyInfo property) AnswerReader.Note(property);
        string[] called = names.TryGetValue(signature, out string[]? first) && first.Length == parameters.Length ? first : [.. parameters.Select(parameter => parameter.Name ?? "value")];
        string key = WithNames(signature, called);
        if (!asked.Add(key)) return;
        int draws = member.HasReceiver || parameters.Length > 0 ? Draws : 1;
        for (int n = 0; n < draws; n++)
        {
            var draw = new Draw($"{signature} {n}");
            object? receiver = null;
            if (member.HasReceiver)
            {
                object[] receivers = [.. RandomObjects.Pool(member.Subject).Where(member.Info.DeclaringType!.IsInstanceOfType).Where(one => one.GetType() == member.Info.ReflectedType)];
                if (parameters.Length == 0 && n >= receivers.Length) break;
                int chosen = parameters.Length == 0 ? n : draw.Next(receivers.Length);
                receiver = receivers[chosen] is RotationRateMonitor ? RandomObjects.Make(member.Subject, chosen) : receivers[chosen];
            }

            object?[] arguments = Together.For(signature, draw) ?? [.. parameters.Select((parameter, i) => Arguments.For(parameter.ParameterType, called[i], new Draw($"{signature} {n} {i}")))];
            Answer(key, n, () => AnswerReader.Leaves(member.Ask(receiver, arguments), member.Depth), folds);
        }
    }

    private static void Answer(string key, int n, Func<IEnumerable<(string Path, object? Leaf)>> ask, SortedDictionary<string, Fold> folds)
    {
        Fold OfPath(string path)
        {
            string full = path.Length == 0 ? key : $"{key} | {path}";
            return folds.TryGetValue(full, out Fold? kept) ? kept : folds[full] = new Fold();
        }

        try
        {
            foreach ((string path, object? leaf) in ask())
            {
                if (leaf is Exception refusal) OfPath(path).Refuse(n, refusal);
                else OfPath(path).Answer(n, leaf);
            }
        }
        catch (TargetInvocationException wrapped)
        {
            OfPath("").Refuse(n, wrapped.InnerException!);
        }
    }

    private static void Ask(Equation equation, SortedDictionary<string, Fold> folds)
    {
        Fold fold = folds[$"equation {equation.Id}"] = new Fold();
        var draw = new Draw(equation.Id);
        for (int n = 0; n < Draws; n++)
        {
            double[] values = EquationCatalogue.Sample(equation, new Random(draw.Next(int.MaxValue)));
            fold.Answer(n, equation.Invoke(values));
        }
    }

    /// <summary>First names of parameters, by signature: the draws go by them.</summary>
    private static Dictionary<string, string[]> ParameterNames()
    {
        var names = new Dictionary<string, string[]>(StringComparer.Ordinal);
        if (!File.Exists(System.IO.Path.Combine([Repository.Root, .. Path]))) return names;
        foreach (string key in Read(Repository.Read(Path)).Keys)
        {
            string call = key.Split(" | ")[0];
            int open = call.IndexOf('(', StringComparison.Ordinal);
            if (open < 0) continue;
            string[] parameters = Parameters(call[(open + 1)..^1]);
            names[$"{call[..open]}({string.Join(", ", parameters.Select(p => p[..p.LastIndexOf(' ')]))})"] = [.. parameters.Select(p => p[(p.LastIndexOf(' ') + 1)..])];
        }

        return names;
    }

    private static string WithNames(string signature, string[] names)
    {
        int open = signature.IndexOf('(', StringComparison.Ordinal);
        if (open < 0) return signature;
        string[] types = Parameters(signature[(open + 1)..^1]);
        return $"{signature[..open]}({string.Join(", ", types.Zip(names, (type, name) => $"{type} {name}"))})";
    }

    /// <summary>Split at the commas that stand in no brackets.</summary>
    private static string[] Parameters(string list)
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
}
