using System.Text;

namespace Fastening.Internals;

/// <summary>Reads the data files of the package: comma-separated text embedded in the assembly, <c>#</c> lines for provenance, one header line, no quotes.</summary>
internal static class DataFile
{
    public static IReadOnlyList<DataRow> Read(string name)
    {
        using Stream stream = typeof(DataFile).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidDataException($"The package has no data file {name}.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return Read(reader, name);
    }

    public static IReadOnlyList<DataRow> Read(TextReader reader, string name)
    {
        var rows = new List<DataRow>();
        string[]? columns = null;
        for (int line = 1; reader.ReadLine() is string text; line++)
        {
            if (text.Length == 0 || text[0] == '#') continue;
            string[] cells = text.Split(',');
            if (columns is null)
            {
                columns = cells;
                continue;
            }

            if (cells.Length != columns.Length || text.Contains('"'))
            {
                throw new InvalidDataException($"{name}, line {line}: expected {columns.Length} cells without quotes, found {cells.Length}.");
            }

            rows.Add(new DataRow(name, line, columns, cells));
        }

        return rows;
    }
}
