using System.Text;
using Fastening.Internals;

namespace Fastening.Equations;

/// <summary>Makes a derivation of what was heard: the entries on which the answer rests, given values first, and words where the symbols alone would mislead.</summary>
internal static class DerivationOrder
{
    public static Derivation Of(Recording heard, int answer)
    {
        WorkEntry[] entries = [.. heard.Entries];
        bool[] counts = Reached(entries, answer);
        Symbol?[] symbols = SymbolsOf(entries, counts);
        var given = new List<DerivationInput>();
        var steps = new List<DerivationStep>();
        int[] numbers = new int[entries.Length];
        for (int i = 0; i <= answer; i++)
        {
            if (!counts[i]) continue;
            WorkEntry entry = entries[i];
            if (entry.Equation is null)
            {
                given.Add(new DerivationInput(Words(entry.Name!), symbols[i], entry.Value, entry.Quantity));
                continue;
            }

            steps.Add(new DerivationStep(entry.Equation, entry.Values, entry.Value, Notes(entry, entries, counts, symbols, numbers)));
            numbers[i] = steps.Count;
        }

        WorkEntry last = entries[answer];
        return new Derivation(Capital(last.Equation?.Result.Meaning ?? Words(last.Name!)), last.Value, [.. given], [.. steps]);
    }

    /// <summary>The entries on which the answer rests.</summary>
    private static bool[] Reached(WorkEntry[] entries, int answer)
    {
        bool[] counts = new bool[entries.Length];
        counts[answer] = true;
        for (int i = answer; i >= 0; i--)
        {
            if (!counts[i]) continue;
            foreach (int input in entries[i].Inputs) counts[input] = true;
        }

        return counts;
    }

    /// <summary>A step has the symbol of its result, a given value that of the first input that it goes into.</summary>
    private static Symbol?[] SymbolsOf(WorkEntry[] entries, bool[] counts)
    {
        var symbols = new Symbol?[entries.Length];
        for (int i = 0; i < entries.Length; i++)
        {
            if (!counts[i] || entries[i].Equation is not Equation equation) continue;
            symbols[i] = equation.Result;
            for (int k = 0; k < entries[i].Inputs.Length; k++) symbols[entries[i].Inputs[k]] ??= equation.Inputs[k];
        }

        return symbols;
    }

    /// <summary>Where an input takes the value of another symbol, or its symbol stands for several values of this derivation, the step says which.</summary>
    private static string[] Notes(WorkEntry step, WorkEntry[] entries, bool[] counts, Symbol?[] symbols, int[] numbers)
    {
        var notes = new List<string>();
        for (int k = 0; k < step.Inputs.Length; k++)
        {
            Symbol symbol = step.Equation!.Inputs[k];
            int origin = step.Inputs[k];
            Symbol source = symbols[origin]!;
            bool isRenamed = source.Name != symbol.Name;
            if (!isRenamed && !HasSeveral(symbol, entries, counts, symbols)) continue;
            string from = entries[origin].Equation is null
                ? (isRenamed ? source.Pretty + ", " : "") + Words(entries[origin].Name!)
                : (isRenamed ? source.Pretty + " of step " : "that of step ") + Print.Number(numbers[origin]);
            string note = $"{symbol.Pretty} = {from}";
            if (!notes.Contains(note)) notes.Add(note);
        }

        return [.. notes];
    }

    private static bool HasSeveral(Symbol symbol, WorkEntry[] entries, bool[] counts, Symbol?[] symbols)
    {
        int found = 0;
        for (int i = 0; i < entries.Length; i++)
        {
            if (counts[i] && symbols[i]?.Name == symbol.Name && ++found == 2) return true;
        }

        return false;
    }

    /// <summary>The name of a parameter as words: <c>axialLoad</c> is <c>axial load</c>.</summary>
    private static string Words(string name)
    {
        var words = new StringBuilder();
        for (int i = 0; i < name.Length; i++)
        {
            bool isHump = i > 0 && char.IsLower(name[i - 1]) && char.IsUpper(name[i]) && i + 1 < name.Length && char.IsLower(name[i + 1]);
            if (isHump) words.Append(' ').Append(char.ToLowerInvariant(name[i]));
            else words.Append(name[i]);
        }

        return words.ToString();
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words.Substring(1);
}
