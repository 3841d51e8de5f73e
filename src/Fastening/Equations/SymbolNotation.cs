namespace Fastening.Equations;

/// <summary>Writes the plain name of a symbol with Greek letters, or as LaTeX.</summary>
internal static class SymbolNotation
{
    private static readonly Dictionary<string, string> Greek = new()
    {
        ["alpha"] = "α", ["beta"] = "β", ["gamma"] = "γ", ["delta"] = "δ", ["theta"] = "θ", ["kappa"] = "κ", ["lambda"] = "λ",
        ["mu"] = "µ", ["nu"] = "ν", ["pi"] = "π", ["rho"] = "ρ", ["sigma"] = "σ", ["tau"] = "τ", ["phi"] = "φ", ["omega"] = "ω",
        ["Delta"] = "Δ", ["Phi"] = "Φ",
    };

    public static string Pretty(string name)
    {
        (string stem, string subscript) = Split(name);
        string letter = Greek.TryGetValue(stem, out string? greek) ? greek : stem;
        return subscript.Length == 0 ? letter : letter + "_" + subscript;
    }

    public static string Latex(string name)
    {
        (string stem, string subscript) = Split(name);
        string letter = Greek.ContainsKey(stem) ? "\\" + stem : stem.Length == 1 ? stem : "\\mathit{" + stem + "}";
        return subscript.Length == 0 ? letter : letter + "_{\\mathrm{" + subscript.Replace("_", ",") + "}}";
    }

    private static (string Stem, string Subscript) Split(string name)
    {
        string[] parts = name.Split(['_'], 2);
        return parts.Length == 1 ? (name, "") : (parts[0], parts[1]);
    }
}
