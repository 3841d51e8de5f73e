using System.Globalization;
using Fastening;

namespace ReadATrace;

/// <summary>A trace as CSV: comments (#), the header, one sample a line. A line that cannot be read refuses the file by its number.</summary>
internal static class TraceFile
{
    private const string Header = "time_s,angle_deg,torque_nm";

    /// <summary>What the file says of itself before its header.</summary>
    public static string[] Comments(string file) => [.. File.ReadLines(file).TakeWhile(line => line.StartsWith('#')).Select(line => line.TrimStart('#', ' '))];

    public static TighteningTrace Read(string file)
    {
        List<double> times = [], angles = [], torques = [];
        bool headed = false;
        int number = 0;
        foreach (string line in File.ReadLines(file))
        {
            number++;
            string text = line.Trim();
            if (text.Length == 0 || text.StartsWith('#')) continue;
            if (headed) Add(text);
            else if (text == Header) headed = true;
            else throw new FormatException($"{file}, line {number}: the first line that is no comment must be '{Header}'");
        }

        return TighteningTrace.FromSamples(times.ToArray(), angles.ToArray(), torques.ToArray());

        void Add(string text)
        {
            string[] cells = text.Split(',');
            if (cells.Length != 3) throw new FormatException($"{file}, line {number}: {cells.Length} cells, wanted 3");
            times.Add(Number(cells[0]));
            angles.Add(Number(cells[1]));
            torques.Add(Number(cells[2]));
        }

        double Number(string cell) => double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? value
            : throw new FormatException($"{file}, line {number}: '{cell}' is no number");
    }
}
