using Fastening.Internals;

namespace Fastening;

/// <summary>Reads the end of a designation: tolerance class, then LH, both optional and without effect on basic dimensions.</summary>
internal static class ToleranceClass
{
    private static readonly string[] MetricPositions = ["e", "f", "g", "h", "az", "ax"];

    public static bool TryEnd(TextCursor cursor, ThreadProfile profile)
    {
        if (cursor.AtEnd) return true;

        TextCursor start = cursor;
        if (!TrySeparator(ref cursor) || !(profile == ThreadProfile.IsoMetric ? TryMetric(ref cursor) : TryUnified(ref cursor))) cursor = start;
        return cursor.AtEnd || (TrySeparator(ref cursor) && cursor.TryWord("LH") && cursor.AtEnd);
    }

    private static bool TrySeparator(ref TextCursor cursor)
    {
        bool spaces = cursor.TrySpaces();
        bool hyphen = cursor.TryHyphen();
        cursor.TrySpaces();
        return spaces || hyphen;
    }

    /// <summary>ISO 965: 6g, 5g6g, 6H/6g, and 6az, 6AZ, 6AX of hot dip galvanized threads.</summary>
    private static bool TryMetric(ref TextCursor cursor) =>
        TryMetricMember(ref cursor) && (!cursor.Try('/') || TryMetricMember(ref cursor));

    private static bool TryMetricMember(ref TextCursor cursor)
    {
        if (!TryGradeAndPosition(ref cursor)) return false;
        if (char.IsDigit(cursor.Next)) return TryGradeAndPosition(ref cursor);
        return true;
    }

    private static bool TryGradeAndPosition(ref TextCursor cursor)
    {
        if (!cursor.TryWhole(out long grade) || grade is < 3 or > 9) return false;
        foreach (string position in MetricPositions)
        {
            if (cursor.TryWord(position)) return true;
        }

        return false;
    }

    /// <summary>ASME B1.1: 1A, 2A, 3A and 1B, 2B, 3B.</summary>
    private static bool TryUnified(ref TextCursor cursor) =>
        cursor.TryWhole(out long grade) && grade is >= 1 and <= 3 && (cursor.TryWord("A") || cursor.TryWord("B"));
}
