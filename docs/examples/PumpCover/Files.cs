using System.Text;

namespace PumpCover;

/// <summary>Which files are read and written.</summary>
internal sealed record Files(string Job, string Readings, string Folder)
{
    private const string Home = "docs/examples";

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public string Sheet => InFolder($"{Path.GetFileNameWithoutExtension(Job)}-sheet.md");

    public string Chart => InFolder($"{Path.GetFileNameWithoutExtension(Job)}-readings.svg");

    public string Band => InFolder($"{Path.GetFileNameWithoutExtension(Job)}-band.svg");

    public static Files Of(string[] args) => args.Length switch
    {
        0 => new($"{Home}/pump-cover.json", $"{Home}/pump-cover-readings.csv", $"{Home}/out"),
        2 => new(args[0], args[1], $"{Home}/out"),
        3 => new(args[0], args[1], args[2]),
        _ => throw new InputRefusedException(
            $"{Show.Count(args.Length, "argument")}; give none, or: job.json readings.csv [output folder]"),
    };

    /// <summary>Writes the sheet and the pictures; without a chart, one of an earlier run is removed: beside the new sheet it would mislead.</summary>
    public void Write(string sheet, string band, string? chart)
    {
        try
        {
            Directory.CreateDirectory(Folder);
            File.WriteAllText(Sheet, sheet, Utf8);
            File.WriteAllText(Band, band, Utf8);
            if (chart is null) File.Delete(Chart);
            else File.WriteAllText(Chart, chart, Utf8);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new InputRefusedException($"the output cannot be written to {Folder}: {fault.Message}");
        }
    }

    private string InFolder(string name) => $"{Folder.TrimEnd('/', '\\')}/{name}";
}
