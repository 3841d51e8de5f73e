using System.Text;
using Fastening.Equations;

namespace PumpCover;

/// <summary>The sheet for the console.</summary>
internal sealed class PlainTextWriter : ISheetWriter
{
    private const int Width = 118;

    private static readonly string[] Units = ["N·m", "kN", "MPa", "mm", "mm²", "%", "s"];

    private readonly StringBuilder _text = new();

    public void Title(string text) => Line(text).Line(new string('=', text.Length));

    public void Heading(string text) => Blank().Line(text).Line(new string('-', text.Length));

    public void Paragraph(string text) => Wrap("", "", text);

    public void Numbered(IEnumerable<string> items)
    {
        int number = 0;
        foreach (string item in items) Wrap($"{++number,2}. ", "    ", item);
    }

    public void Bullets(IEnumerable<string> items)
    {
        foreach (string item in items) Wrap("  - ", "    ", item);
    }

    public void Table(string[] headings, IEnumerable<string[]> rows)
    {
        string[][] all = [headings, .. rows];
        int[] widths = [.. headings.Select((_, column) => all.Max(row => row[column].Trim().Length))];
        foreach (string[] row in all)
        {
            IEnumerable<string> cells = row.Select((cell, column) =>
                headings[column].EndsWith(' ') ? cell.Trim().PadLeft(widths[column]) : cell.Trim().PadRight(widths[column]));
            Line("  " + string.Join("  ", cells));
        }

        Blank();
    }

    public void Work(string title, IReadOnlyList<(int Number, DerivationStep Step)> steps)
    {
        Blank().Line(title);
        foreach ((int number, DerivationStep step) in steps)
        {
            Line($"{number,4}. {step.Equation.Pretty}   ({step.Equation.Result.Meaning})   [{step.Equation.Source}]");
            Line($"      = {step.Substituted} = {step.ResultText}");
        }
    }

    public override string ToString() => _text.ToString();

    /// <summary>Words between which a line may break: a number stays with its unit.</summary>
    private static List<string> Unbroken(string text)
    {
        List<string> words = [];
        foreach (string word in text.Split(' '))
        {
            bool afterNumber = words.Count > 0 && words[^1].Length > 0 && char.IsDigit(words[^1][^1]);
            if (afterNumber && Units.Contains(word.TrimEnd('.', ',', ';', ':', ')'))) words[^1] += " " + word;
            else words.Add(word);
        }

        return words;
    }

    private PlainTextWriter Blank() => _text is [.., '\n', '\n'] ? this : Line("");

    private PlainTextWriter Line(string text)
    {
        _text.Append(text.TrimEnd()).Append('\n');
        return this;
    }

    private void Wrap(string first, string others, string text)
    {
        string line = first;
        bool begun = false;
        foreach (string word in Unbroken(text))
        {
            if (begun && line.Length + 1 + word.Length > Width)
            {
                Line(line);
                (line, begun) = (others, false);
            }

            line += begun ? " " + word : word;
            begun = true;
        }

        Line(line);
    }
}
