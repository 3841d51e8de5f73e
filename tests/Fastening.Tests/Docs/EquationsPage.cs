using System.Text;
using Fastening.Equations;
using Fastening.Tests.Equations;

namespace Fastening.Tests.Docs;

/// <summary>docs/equations.md, written from the equations themselves.</summary>
internal static class EquationsPage
{
    public static string Write()
    {
        var page = new StringBuilder(
            """
            # The equations

            Generated from the library (see DEVELOPERS.md); a test fails when this page differs. Each line is a public method on SI doubles in
            `Fastening.Equations` and, beside it, the record that this page prints. "From memory" marks a source recalled and not read; "derived"
            means worked out here and checked by an independent route in the tests.

            """);
        foreach (IGrouping<string, Equation> group in EquationCatalogue.All.GroupBy(e => e.Id.Split('.')[0]))
        {
            page.Append("\n## ").Append(char.ToUpperInvariant(group.Key[0])).Append(group.Key.AsSpan(1)).Append("\n\n| id | equation | holds where | source |\n|---|---|---|---|\n");
            foreach (Equation e in group)
            {
                string where = e.Where is null ? "" : $"`{e.Where} > 0`";
                page.Append("| `").Append(e.Id).Append("` | $").Append(e.Latex).Append("$ | ").Append(where).Append(" | ").Append(e.Source).Append(" |\n");
            }
        }

        page.Append("\n## Symbols\n\n| symbol | in the text | meaning | SI unit | printed in |\n|---|---|---|---|---|\n");
        foreach (Symbol symbol in typeof(Symbols).GetProperties().Select(p => (Symbol)p.GetValue(null)!))
        {
            page.Append("| $").Append(symbol.Latex).Append("$ | `").Append(symbol.Name).Append("` | ").Append(symbol.Meaning).Append(" | ")
                .Append(symbol.Unit.Si).Append(" | ").Append(symbol.Unit.Shop).Append(" |\n");
        }

        return page.ToString().ReplaceLineEndings("\n");
    }
}
