using System.Globalization;
using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>One reading as the log has it: the unit stays as entered; what was not measured stays empty.</summary>
internal sealed record Reading(int Line, int Bolt, Entered<Torque> Shown, Angle? Rotation, Duration? Duration, string Time, DateTimeOffset Instant)
{
    private const int Columns = 6;
    private const double Most = 1e7;

    private static readonly string[] TimeFormats =
        ["yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz", "yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF'Z'"];

    public static Reading Parse(LogLine line)
    {
        if (line.Text.StartsWith('#')) throw new LineRefusedException("comments (#) may stand above the header only: below it a reading could vanish in one");
        string[] cells = CsvCells.Of(line.Text) ?? throw new LineRefusedException("a quotation mark is not closed, or stands inside a cell");
        if (cells.Length != Columns)
        {
            string hint = cells.Length > Columns ? "; is a decimal comma among them? Write a decimal point" : "";
            throw new LineRefusedException($"{Show.Count(cells.Length, "column")} instead of {Columns} ({ReadingLog.Header}){hint}");
        }

        return new Reading(
            line.Number, ParseBolt(cells[0]), ParseTorque(cells[1], cells[2]),
            ParseOptional(cells[3], "rotation_deg") is double degrees ? Angle.FromDegrees(degrees) : null,
            ParseOptional(cells[4], "duration_s") is double seconds ? UnitsNet.Duration.FromSeconds(seconds) : null,
            cells[5], ParseTime(cells[5]));
    }

    private static int ParseBolt(string cell) => int.TryParse(cell, NumberStyles.None, CultureInfo.InvariantCulture, out int bolt)
        ? bolt
        : throw new LineRefusedException($"bolt is '{cell}'; it must be a whole number");

    private static Entered<Torque> ParseTorque(string number, string unit)
    {
        if (number.Length == 0) throw new LineRefusedException("torque is empty; write what the wrench showed");
        return Entered.Parse<Torque>(number, unit);
    }

    private static double? ParseOptional(string cell, string column)
    {
        if (cell.Length == 0) return null;
        const NumberStyles style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        return double.TryParse(cell, style, CultureInfo.InvariantCulture, out double value) && value is >= 0 and <= Most
            ? value
            : throw new LineRefusedException($"{column} is '{cell}'; it must be a number from 0 to {Most:0} with a decimal point, or empty when not measured");
    }

    private static DateTimeOffset ParseTime(string cell) =>
        DateTimeOffset.TryParseExact(cell, TimeFormats, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset instant)
            ? instant
            : throw new LineRefusedException($"time is '{cell}'; it must be a date and time with its offset, such as 2026-03-03T08:15:00+01:00");
}
