namespace PumpCover;

/// <summary>
/// The lines of a log, nothing left out: every line is the header, a comment, empty, judged or reported. Comments stand before the header
/// only: below it, a # before a reading would make the reading vanish.
/// </summary>
internal sealed record ReadingLog(string File, IReadOnlyList<LogLine> Lines, int Comments, int Empty)
{
    public const string Header = "bolt,torque,unit,rotation_deg,duration_s,time";

    public int Total => 1 + Lines.Count + Comments + Empty;

    public static ReadingLog Read(string file)
    {
        string[] texts = InputFile.ReadText(file).TrimEnd().Split('\n');
        List<LogLine> lines = [];
        int comments = 0, empty = 0;
        bool headed = false;
        for (int i = 0; i < texts.Length; i++)
        {
            string text = texts[i].Trim();
            if (text.Length == 0) empty++;
            else if (headed) lines.Add(new LogLine(i + 1, text));
            else if (text.StartsWith('#')) comments++;
            else if (CsvCells.Of(text) is string[] cells && string.Join(',', cells) == Header) headed = true;
            else throw new InputRefusedException($"{file}: line {i + 1} is '{Quote(text)}'; the first line that is no comment (#) must be '{Header}'.");
        }

        return headed
            ? new ReadingLog(file, lines, comments, empty)
            : throw new InputRefusedException($"{file}: the header is missing; it must be '{Header}'.");
    }

    private static string Quote(string text)
    {
        string line = string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c));
        return line.Length <= 60 ? line : line[..60] + "…";
    }
}
