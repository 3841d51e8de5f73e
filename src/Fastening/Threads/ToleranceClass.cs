using Fastening.Internals;

namespace Fastening;

/// <summary>Reads the end of a designation: tolerance class and LH, both optional and without effect on basic dimensions.</summary>
/// <remarks>LH stands last, except in ISO 2903, which puts it before the class of a trapezoidal thread; there both are read.</remarks>
internal static class ToleranceClass
{
    private static readonly string[] MetricPositions = ["e", "f", "g", "h", "az", "ax"];
    private static readonly string[] TrapezoidalPositions = ["c", "e", "h"];

    public static bool TryEnd(TextCursor cursor, ThreadProfile profile)
    {
        if (cursor.AtEnd) return true;

        bool leftHand = profile == ThreadProfile.IsoTrapezoidal && TryLeftHand(ref cursor);
        TextCursor start = cursor;
        if (!TryClassSeparator(ref cursor, profile) || !TryClass(ref cursor, profile)) cursor = start;
        return cursor.AtEnd || (!leftHand && TryLeftHand(ref cursor) && cursor.AtEnd);
    }

    private static bool TryLeftHand(ref TextCursor cursor)
    {
        TextCursor start = cursor;
        TrySeparator(ref cursor);
        if (cursor.TryWord("LH")) return true;
        cursor = start;
        return false;
    }

    private static bool TryClass(ref TextCursor cursor, ThreadProfile profile) => profile switch
    {
        ThreadProfile.IsoMetric => TryMetric(ref cursor, MetricPositions),
        ThreadProfile.IsoTrapezoidal => TryMetric(ref cursor, TrapezoidalPositions),
        ThreadProfile.Acme => TryAcme(ref cursor),
        _ => TryUnified(ref cursor),
    };

    /// <summary>A metric class follows a hyphen: in "M1 6g" the space may be all that is left of a digit.</summary>
    private static bool TryClassSeparator(ref TextCursor cursor, ThreadProfile profile)
    {
        if (profile != ThreadProfile.IsoMetric) return TrySeparator(ref cursor);
        cursor.TrySpaces();
        bool hyphen = cursor.TryHyphen();
        cursor.TrySpaces();
        return hyphen;
    }

    private static bool TrySeparator(ref TextCursor cursor)
    {
        bool spaces = cursor.TrySpaces();
        bool hyphen = cursor.TryHyphen();
        cursor.TrySpaces();
        return spaces || hyphen;
    }

    /// <summary>ISO 965: 6g, 5g6g, 6H/6g, and 6az, 6AZ, 6AX of hot dip galvanized threads; ISO 2903: 7e, 7H/7e.</summary>
    private static bool TryMetric(ref TextCursor cursor, string[] positions) =>
        TryMetricMember(ref cursor, positions) && (!cursor.Try('/') || TryMetricMember(ref cursor, positions));

    private static bool TryMetricMember(ref TextCursor cursor, string[] positions)
    {
        if (!TryGradeAndPosition(ref cursor, positions)) return false;
        if (char.IsDigit(cursor.Next)) return TryGradeAndPosition(ref cursor, positions);
        return true;
    }

    private static bool TryGradeAndPosition(ref TextCursor cursor, string[] positions)
    {
        if (!cursor.TryWhole(out long grade) || grade is < 3 or > 9) return false;
        foreach (string position in positions)
        {
            if (cursor.TryWord(position)) return true;
        }

        return false;
    }

    /// <summary>ASME B1.1: 1A, 2A, 3A and 1B, 2B, 3B.</summary>
    private static bool TryUnified(ref TextCursor cursor) =>
        cursor.TryWhole(out long grade) && grade is >= 1 and <= 3 && (cursor.TryWord("A") || cursor.TryWord("B"));

    /// <summary>ASME B1.5, general purpose: 2G, 3G, 4G. The centralizing classes (2C) belong to other diameters.</summary>
    private static bool TryAcme(ref TextCursor cursor) => cursor.TryWhole(out long grade) && grade is >= 2 and <= 4 && cursor.TryWord("G");
}
