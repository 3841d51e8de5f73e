using Fastening.Internals;

namespace Fastening;

/// <summary>Reads the end of a designation: tolerance class and LH, both optional and without effect on basic dimensions.</summary>
/// <remarks>LH stands last; where a standard puts it before the class both are read.</remarks>
internal static class ToleranceClass
{
    public static bool TryEnd(TextCursor cursor, ThreadStandard standard)
    {
        if (cursor.AtEnd) return true;

        bool leftHand = standard.LeftHandPrecedesClass && TryLeftHand(ref cursor);
        TextCursor start = cursor;
        if (!TryClassSeparator(ref cursor, standard) || !standard.TryToleranceClass(ref cursor)) cursor = start;
        return cursor.AtEnd || (!leftHand && TryLeftHand(ref cursor) && cursor.AtEnd);
    }

    /// <summary>A class of metric form for one thread or a pair: 6g, 5g6g, 6H/6g.</summary>
    public static bool TryGradesAndPositions(ref TextCursor cursor, string[] positions) =>
        TryMember(ref cursor, positions) && (!cursor.Try('/') || TryMember(ref cursor, positions));

    private static bool TryLeftHand(ref TextCursor cursor)
    {
        TextCursor start = cursor;
        cursor.TrySeparator();
        if (cursor.TryWord("LH")) return true;
        cursor = start;
        return false;
    }

    private static bool TryClassSeparator(ref TextCursor cursor, ThreadStandard standard)
    {
        if (!standard.ClassFollowsHyphen) return cursor.TrySeparator();
        cursor.TrySpaces();
        bool hyphen = cursor.TryHyphen();
        cursor.TrySpaces();
        return hyphen;
    }

    private static bool TryMember(ref TextCursor cursor, string[] positions)
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
}
