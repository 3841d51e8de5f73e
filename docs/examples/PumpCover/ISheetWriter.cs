using Fastening.Equations;

namespace PumpCover;

/// <summary>What a sheet is made of; written as plain text for the console and as Markdown for the file.</summary>
internal interface ISheetWriter
{
    void Title(string text);

    void Heading(string text);

    void Paragraph(string text);

    void Numbered(IEnumerable<string> items);

    void Bullets(IEnumerable<string> items);

    /// <summary>A table; a column whose heading ends in a space is set flush right.</summary>
    void Table(string[] headings, IEnumerable<string[]> rows);

    void Work(string title, IReadOnlyList<(int Number, DerivationStep Step)> steps);
}
