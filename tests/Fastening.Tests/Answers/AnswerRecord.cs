using System.Reflection;
using Fastening.Equations;
using Fastening.Tests.Equations;

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
        var asked = new HashSet<string>(StringComparer.Ordinal);
        var folds = new SortedDictionary<string, Fold>(StringComparer.Ordinal);
        foreach (Member member in Member.All()) Ask(member, asked, folds);
        foreach (Equation equation in EquationCatalogue.All) Ask(equation, folds);
        return folds;
    }

    private static void Ask(Member member, HashSet<string> asked, SortedDictionary<string, Fold> folds)
    {
        string signature = member.Signature;
        (Type Type, string Name)[] parameters = member.Parameters;
        if (member.Info is PropertyInfo property) AnswerReader.Note(property);
        string[] called = ParameterNames.Of(signature) ?? [.. parameters.Select(parameter => parameter.Name)];
        string key = ParameterNames.Join(signature, called);
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

            object?[] arguments = member.DrawArguments($"{signature} {n}", draw);
            Answer(key, n, () => AnswerReader.Leaves(member.Ask(receiver, arguments), member.Depth), folds);
        }
    }

    private static void Answer(string key, int n, Func<IEnumerable<(string Path, object? Leaf)>> ask, SortedDictionary<string, Fold> folds)
    {
        Fold OfPath(string path)
        {
            string full = FormerNames.OfAnswer(path.Length == 0 ? key : $"{key} | {path}");
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
}
