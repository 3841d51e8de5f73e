using System.Text.RegularExpressions;

namespace PumpCover;

/// <summary>The cells of one line, plain or in quotation marks (RFC 4180; a cell does not run over the end of its line).</summary>
internal static partial class CsvCells
{
    /// <summary>The cells, trimmed; null when a quotation mark is not closed or stands inside a cell.</summary>
    public static string[]? Of(string line)
    {
        List<string> cells = [];
        Match match;
        int at = 0;
        do
        {
            match = Cell().Match(line, at);
            if (!match.Success) return null;
            cells.Add((match.Groups["quoted"] is { Success: true } quoted ? quoted.Value.Replace("\"\"", "\"") : match.Groups["plain"].Value).Trim());
            at = match.Index + match.Length;
        }
        while (match.Groups["more"].Success);

        return [.. cells];
    }

    [GeneratedRegex("""\G\s*(?:"(?<quoted>(?:[^"]|"")*)"|(?<plain>[^",]*))\s*(?:(?<more>,)|\z)""", RegexOptions.CultureInvariant)]
    private static partial Regex Cell();
}
