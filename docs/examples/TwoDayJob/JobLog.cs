using System.Globalization;
using Fastening;
using UnitsNet;

namespace TwoDayJob;

/// <summary>Reads the log: one entry a line, in the order in which the lines came in.</summary>
internal static class JobLog
{
    private const string Header = "time,source,sequence,kind,fastener,step,torque_nm,rotation_deg,of_source,of_sequence,to_sequence,person,seen,reason";

    public static IReadOnlyList<JobEntry> Read(string path)
    {
        var entries = new List<JobEntry>();
        int number = 0;
        bool begun = false;
        foreach (string line in File.ReadLines(path))
        {
            number++;
            if (line.Length == 0 || line[0] == '#') continue;
            if (begun) entries.Add(Entry(line, number));
            else if (line == Header) begun = true;
            else throw new FormatException($"line {number}: the header must be {Header}");
        }

        return entries.Count > 0 ? entries : throw new FormatException($"{path} holds no entry");
    }

    private static JobEntry Entry(string line, int number)
    {
        string[] cells = line.Split(',');
        if (cells.Length != 14) throw new FormatException($"line {number}: {cells.Length} cells, wanted 14; decimals have a point, and no cell holds a comma");
        try
        {
            return Entry(cells);
        }
        catch (Exception fault) when (fault is FormatException or ArgumentException or InvalidOperationException or OverflowException)
        {
            throw new FormatException($"line {number}: {fault.Message}", fault);
        }
    }

    private static JobEntry Entry(string[] cells)
    {
        DateTimeOffset time = DateTimeOffset.ParseExact(cells[0], "yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);
        (string source, long sequence) = (cells[1], Whole(cells[2]));
        (string fastener, string step, string ofSource, string person, string reason) = (cells[4], cells[5], cells[8], cells[11], cells[13]);
        JobEntry entry = cells[3] switch
        {
            "pulled" => JobEntry.Pulled(source, sequence, time, fastener),
            "loosened" => JobEntry.Loosened(source, sequence, time, fastener, reason),
            "skipped" => JobEntry.Skipped(source, sequence, time, fastener, reason),
            "replaced" => JobEntry.Replaced(source, sequence, time, fastener, reason),
            "accepted" => JobEntry.Accepted(source, sequence, time, fastener, person, reason, Whole(cells[12])),
            "withdrawn" => JobEntry.Withdrawn(source, sequence, time, ofSource, Whole(cells[9]), person, reason),
            "explained" => JobEntry.Explained(source, sequence, time, ofSource, Whole(cells[9]), Whole(cells[10]), person, reason),
            "noted" => JobEntry.Noted(source, sequence, time, reason),
            _ => throw new FormatException($"'{cells[3]}' is no kind of entry"),
        };
        if (step.Length > 0) entry = entry.AtStep(step);
        if (cells[6].Length > 0) entry = entry.WithTorque(Torque.FromNewtonMeters(Number(cells[6])));
        return cells[7].Length > 0 ? entry.WithRotation(Angle.FromDegrees(Number(cells[7]))) : entry;
    }

    private static long Whole(string cell) => long.Parse(cell, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);

    private static double Number(string cell) => double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
        ? number
        : throw new FormatException($"'{cell}' is no number");
}
