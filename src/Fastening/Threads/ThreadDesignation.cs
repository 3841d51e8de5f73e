using Fastening.Internals;

namespace Fastening;

/// <summary>The content of a designation: profile and size, and as much of pitch and series as is written.</summary>
/// <remarks>
/// Whether the thread exists is for the catalogue to say; a trapezoidal or Acme thread is computed from its numbers.
/// A tolerance class (6g, 2A) and LH are read and left out: dimensions here are basic, and a left hand changes only the sense of rotation.
/// After a hyphen a metric designation carries its class (ISO 965-1), so M16-1.5 is not read as a pitch.
/// </remarks>
internal readonly struct ThreadDesignation
{
    public const string Coarse = "coarse", Fine = "fine", Unc = "UNC", Unf = "UNF", Unef = "UNEF", Un = "UN", Acme = "ACME";

    private ThreadDesignation(ThreadProfile profile, long diameter, long numberedDiameter, long pitch, string? series, long lead = 0)
    {
        Profile = profile;
        Diameter = diameter;
        NumberedDiameter = numberedDiameter;
        Pitch = pitch;
        Series = series;
        Lead = lead;
    }

    public ThreadProfile Profile { get; }

    /// <summary>Millionths of a millimetre, or of an inch for a unified thread.</summary>
    public long Diameter { get; }

    /// <summary>What a bare whole number means as a numbered size, as in 10-32 UNF; otherwise 0.</summary>
    public long NumberedDiameter { get; }

    /// <summary>Pitch in millionths of a millimetre, or millionths of a thread per inch; 0 when not written.</summary>
    public long Pitch { get; }

    public string? Series { get; }

    /// <summary>Lead of a trapezoidal thread in millionths of a millimetre; 0 for the other profiles, which are written without it.</summary>
    public long Lead { get; }

    /// <summary>Number of starts; 0 when the lead is no multiple of the pitch.</summary>
    public int Starts => Lead == 0 ? 1 : Lead % Pitch == 0 ? (int)Math.Min(Lead / Pitch, int.MaxValue) : 0;

    public static bool TryRead(ReadOnlySpan<char> text, out ThreadDesignation designation)
    {
        var cursor = new TextCursor(text.Trim());
        if (cursor.TryWord("M")) return TryReadMetric(cursor, out designation);
        return cursor.TryWord("Tr") ? TryReadTrapezoidal(cursor, out designation) : TryReadInch(cursor, out designation);
    }

    private static bool TryReadMetric(TextCursor cursor, out ThreadDesignation designation)
    {
        designation = default;
        cursor.TrySpaces();
        if (!cursor.TryDecimal(out long diameter)) return false;

        long pitch = 0;
        TextCursor afterDiameter = cursor;
        cursor.TrySpaces();
        if (cursor.Try('x') || cursor.Try('X') || cursor.Try('×'))
        {
            cursor.TrySpaces();
            if (!cursor.TryDecimal(out pitch) || pitch == 0) return false;
        }
        else
        {
            cursor = afterDiameter;
        }

        designation = new ThreadDesignation(ThreadProfile.IsoMetric, diameter, 0, pitch, pitch == 0 ? Coarse : null);
        return ToleranceClass.TryEnd(cursor, ThreadProfile.IsoMetric);
    }

    /// <summary>ISO 2903: Tr 40 x 7, and with several starts Tr 40 x 14 (P7), the lead before the pitch; brackets may be left out.</summary>
    private static bool TryReadTrapezoidal(TextCursor cursor, out ThreadDesignation designation)
    {
        designation = default;
        cursor.TrySpaces();
        if (!cursor.TryDecimal(out long diameter)) return false;

        cursor.TrySpaces();
        if (!cursor.Try('x') && !cursor.Try('X') && !cursor.Try('×')) return false;

        cursor.TrySpaces();
        if (!cursor.TryDecimal(out long lead) || lead == 0) return false;

        long pitch = lead;
        TextCursor afterLead = cursor;
        cursor.TrySpaces();
        bool bracket = cursor.Try('(');
        if (cursor.TryWord("P"))
        {
            cursor.TrySpaces();
            if (!cursor.TryDecimal(out pitch) || pitch == 0 || (bracket && !cursor.Try(')'))) return false;
        }
        else
        {
            cursor = afterLead;
        }

        designation = new ThreadDesignation(ThreadProfile.IsoTrapezoidal, diameter, 0, pitch, null, lead);
        return ToleranceClass.TryEnd(cursor, ThreadProfile.IsoTrapezoidal);
    }

    /// <summary>A unified thread, or an Acme thread if the word is there, before the size or after the threads per inch.</summary>
    private static bool TryReadInch(TextCursor cursor, out ThreadDesignation designation)
    {
        designation = default;
        bool acme = cursor.TryWord(Acme);
        cursor.TrySpaces();
        bool isNumber = cursor.Next is '#' or 'N' or 'n';
        if (!UnifiedSize.TryRead(ref cursor, out long diameter, out long numberedDiameter)) return false;

        TextCursor afterSize = cursor;
        cursor.TrySpaces();
        if (!cursor.TryHyphen() || !TryThreadsPerInch(ref cursor, out long threadsPerInch))
        {
            threadsPerInch = 0;
            cursor = afterSize;
        }

        TextCursor beforeSeries = cursor;
        cursor.TrySpaces();
        cursor.TryHyphen();
        cursor.TrySpaces();
        string? series = acme ? null : ReadSeries(ref cursor);
        if (series is null) cursor = beforeSeries;

        acme |= series == Acme;
        ThreadProfile profile = acme ? ThreadProfile.Acme : ThreadProfile.Unified;
        designation = new ThreadDesignation(profile, diameter, acme ? 0 : numberedDiameter, threadsPerInch, series);
        return ToleranceClass.TryEnd(cursor, profile) && !(acme && (isNumber || threadsPerInch == 0));
    }

    /// <summary>13, 4.5 or 4 1/2.</summary>
    private static bool TryThreadsPerInch(ref TextCursor cursor, out long threadsPerInch)
    {
        cursor.TrySpaces();
        if (!cursor.TryDecimal(out threadsPerInch) || threadsPerInch == 0) return false;

        TextCursor afterNumber = cursor;
        if (cursor.TrySpaces() && UnifiedSize.TryFraction(ref cursor, out long fraction)) threadsPerInch += fraction;
        else cursor = afterNumber;
        return true;
    }

    /// <summary>UNC, UNF, UNEF, UN or ACME; the R of a rounded root (UNRC) states what is assumed for every thread.</summary>
    private static string? ReadSeries(ref TextCursor cursor)
    {
        if (cursor.TryWord(Acme)) return Acme;
        if (!cursor.TryWord("UN")) return null;
        cursor.TryWord("R");
        if (cursor.TryWord("C")) return Unc;
        if (cursor.TryWord("EF")) return Unef;
        return cursor.TryWord("F") ? Unf : Un;
    }
}
