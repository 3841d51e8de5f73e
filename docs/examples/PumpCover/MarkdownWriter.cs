using System.Text;
using Fastening.Equations;

namespace PumpCover;

/// <summary>The sheet as a Markdown file.</summary>
internal sealed class MarkdownWriter : ISheetWriter
{
    private readonly StringBuilder _text = new();

    public void Title(string text) => Block($"# {text}");

    public void Heading(string text) => Block($"## {text}");

    public void Paragraph(string text) => Block(text);

    public void Numbered(IEnumerable<string> items) => Block(string.Join('\n', items.Select((item, index) => $"{index + 1}. {item}")));

    public void Bullets(IEnumerable<string> items) => Block(string.Join('\n', items.Select(item => $"- {item}")));

    public void Table(string[] headings, IEnumerable<string[]> rows)
    {
        string rule = Row(headings.Select(heading => heading.EndsWith(' ') ? "---:" : "---"));
        Block(string.Join('\n', [Row(headings), rule, .. rows.Select(Row)]));
    }

    public void Work(string title, IReadOnlyList<(int Number, DerivationStep Step)> steps)
    {
        Block($"### {title}");
        Table(
            ["step ", "what", "equation", "with numbers", "result", "source"],
            steps.Select(item => new[]
            {
                $"{item.Number}", item.Step.Equation.Result.Meaning, $"`{item.Step.Equation.Pretty}`", item.Step.Substituted, item.Step.ResultText,
                item.Step.Equation.Source,
            }));
    }

    public override string ToString() => _text.ToString().TrimEnd('\n') + "\n";

    private static string Row(IEnumerable<string> cells) => $"| {string.Join(" | ", cells.Select(cell => cell.Trim().Replace("|", "\\|")))} |";

    private void Block(string text) => _text.Append(text).Append("\n\n");
}
