using System.Text;

namespace Fastening.Equations;

/// <summary>Writes the plain name of a symbol with Greek letters, or as LaTeX.</summary>
internal static class SymbolNotation
{
    private static readonly Dictionary<string, string> Greek = new()
    {
        ["alpha"] = "α",
        ["beta"] = "β",
        ["gamma"] = "γ",
        ["delta"] = "δ",
        ["eta"] = "η",
        ["theta"] = "θ",
        ["kappa"] = "κ",
        ["lambda"] = "λ",
        ["mu"] = "µ",
        ["nu"] = "ν",
        ["pi"] = "π",
        ["rho"] = "ρ",
        ["sigma"] = "σ",
        ["tau"] = "τ",
        ["phi"] = "φ",
        ["omega"] = "ω",
        ["Delta"] = "Δ",
        ["Phi"] = "Φ",
    };

    public static string Pretty(string name)
    {
        (string stem, string subscript) = Split(name);
        return subscript.Length == 0 ? PrettyPart(stem) : PrettyPart(stem) + "_" + PrettyPart(subscript);
    }

    public static string Latex(string name)
    {
        (string stem, string subscript) = Split(name);
        string letter = LatexPart(stem, "mathit");
        return subscript.Length switch
        {
            0 => letter,
            1 => letter + "_" + subscript,
            _ => letter + "_{" + LatexPart(subscript, "mathrm") + "}",
        };
    }

    /// <summary>Words for a text beside a formula, with the signs that LaTeX takes for its own written out.</summary>
    public static string LatexWords(string words)
    {
        var text = new StringBuilder("\\text{");
        foreach (char sign in words)
        {
            text.Append(sign switch
            {
                '_' or '%' or '&' or '#' or '$' or '{' or '}' => "\\" + sign,
                '\\' => "\\textbackslash{}",
                '^' => "\\^{}",
                '~' => "\\~{}",
                'µ' => "$\\mu$",
                '·' => "$\\cdot$",
                _ => sign.ToString(),
            });
        }

        return text.Append('}').ToString();
    }

    private static string PrettyPart(string part) => Greek.TryGetValue(part, out string? greek) ? greek : part;

    private static string LatexPart(string part, string style) =>
        Greek.ContainsKey(part) ? "\\" + part : part.Length == 1 ? part : "\\" + style + "{" + part + "}";

    private static (string Stem, string Subscript) Split(string name)
    {
        string[] parts = name.Split(['_'], 2);
        return parts.Length == 1 ? (name, "") : (parts[0], parts[1]);
    }
}
