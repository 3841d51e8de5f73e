using System.Reflection;
using Fastening.Equations;
using Xunit.Abstractions;

namespace Fastening.Tests.House;

/// <summary>Every answer of the public face derives, and every derivation keeps the rules, over random receivers and arguments. What cannot be derived is a list that only shrinks; its names are those of the answer record.</summary>
public class DerivationRuleTests(ITestOutputHelper output)
{
    private static readonly string[] ListPath = ["tests", "Fastening.Tests", "Data", "not-derived.txt"];

    private static readonly Lazy<(SortedSet<string> Derived, SortedDictionary<string, string> Not, SortedSet<string> Broken, int Derivations)> Walked = new(Walk);

    [Fact]
    public void Every_derivation_keeps_the_rules()
    {
        output.WriteLine($"{Walked.Value.Derivations} derivations of {Walked.Value.Derived.Count} answers; {Walked.Value.Not.Count} answers do not derive");
        Assert.True(Walked.Value.Broken.Count == 0, string.Join('\n', Walked.Value.Broken.Take(80)));
    }

    [Fact]
    public void What_does_not_derive_is_listed_and_the_list_only_shrinks()
    {
        string file = Path.Combine([Repository.Root, .. ListPath]);
        string[] listed = File.Exists(file) ? [.. Repository.Read(ListPath).Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => line[0] != '#')] : [];
        if (Environment.GetEnvironmentVariable("FASTENING_WRITE_DOCS") == "1")
        {
            string[] left = [.. listed.Where(line => Walked.Value.Not.ContainsKey(line.Split('\t')[0]))];
            if (!File.Exists(file)) left = [.. Walked.Value.Not.Select(pair => $"{pair.Key}\t{pair.Value}")];
            File.WriteAllText(file, string.Join('\n', left) + "\n");
            listed = left;
        }

        string[] keys = [.. listed.Select(line => line.Split('\t')[0])];
        string[] missing = [.. Walked.Value.Not.Keys.Except(keys).Select(key => $"does not derive and is not listed: {key}: {Walked.Value.Not[key]}")];
        string[] idle = [.. keys.Except(Walked.Value.Not.Keys).Select(key => $"derives, or is gone; FASTENING_WRITE_DOCS=1 takes it off the list: {key}")];
        Assert.True(missing.Length + idle.Length == 0, string.Join('\n', missing.Concat(idle)));
    }

    [Fact]
    public void The_walk_derives_some_of_each_kind()
    {
        Assert.Contains("FrictionTorqueModel.TorqueFor(Force)", Walked.Value.Derived);
        Assert.Contains("ScrewThread.StressArea", Walked.Value.Derived);
        Assert.True(Walked.Value.Derivations > 3 * Walked.Value.Derived.Count);
    }

    private static (SortedSet<string> Derived, SortedDictionary<string, string> Not, SortedSet<string> Broken, int Derivations) Walk()
    {
        var derived = new SortedSet<string>(StringComparer.Ordinal);
        var not = new SortedDictionary<string, string>(StringComparer.Ordinal);
        var broken = new SortedSet<string>(StringComparer.Ordinal);
        int derivations = 0;
        ILookup<string, DerivableCall> inside = DerivableAnswers.All(isMadeInside: true).ToLookup(pair => pair.Key, pair => pair.Call);
        foreach (var outside in DerivableAnswers.All(isMadeInside: false).GroupBy(pair => pair.Key, pair => pair.Call))
        {
            (int count, string? failure, HashSet<string> wrong) = DeriveAll(outside);
            if (failure is not null) (count, failure, wrong) = DeriveAll(inside[outside.Key]) is { Failure: null } made ? made : (count, failure, wrong);
            broken.UnionWith(wrong.Select(rule => $"{outside.Key}: {rule}"));
            derivations += count;
            if (failure is not null) not[outside.Key] = failure;
            else if (count > 0) derived.Add(outside.Key);
        }

        return (derived, not, broken, derivations);
    }

    private static (int Count, string? Failure, HashSet<string> Broken) DeriveAll(IEnumerable<DerivableCall> calls)
    {
        var broken = new HashSet<string>(StringComparer.Ordinal);
        int count = 0;
        foreach (DerivableCall call in calls)
        {
            object? plain = Answer(call.Ask);
            if (plain is null) continue;
            try
            {
                Derivation work = Derivation.Of(call.Ask);
                broken.UnionWith(DerivationRules.BrokenBy(work, plain, call.Arguments));
                count++;
            }
            catch (TargetInvocationException wrapped)
            {
                return (count, wrapped.InnerException!.Message.Split('.')[0], []);
            }
            catch (InvalidOperationException)
            {
                return (count, "no derivation", []);
            }
        }

        return (count, null, broken);
    }

    /// <summary>The plain answer; null where there is none, or the call refuses.</summary>
    private static object? Answer(Func<object?> call)
    {
        try
        {
            return call();
        }
        catch (TargetInvocationException)
        {
            return null;
        }
    }
}
