using Fastening.Internals;

namespace Fastening;

/// <summary>The content of a designation: standard and size, and as much of pitch and series as is written.</summary>
/// <remarks>
/// Whether the thread exists is for the standard to say (<see cref="ThreadStandard.Find"/>).
/// A tolerance class (6g, 2A) and LH are read and left out: dimensions here are basic, and a left hand changes only the sense of rotation.
/// </remarks>
internal readonly struct ThreadDesignation(
    ThreadStandard standard, long diameter, long pitch, long numberedDiameter = 0, string? series = null, long lead = 0)
{
    public ThreadStandard Standard { get; } = standard;

    /// <summary>Millionths of a millimetre, or of an inch for an inch thread.</summary>
    public long Diameter { get; } = diameter;

    /// <summary>Pitch in millionths of a millimetre, or millionths of a thread per inch; 0 when not written.</summary>
    public long Pitch { get; } = pitch;

    /// <summary>What a bare whole number means as a numbered size, as in 10-32 UNF; otherwise 0.</summary>
    public long NumberedDiameter { get; } = numberedDiameter;

    public string? Series { get; } = series;

    /// <summary>Lead in millionths of a millimetre; 0 where designations are written without it.</summary>
    public long Lead { get; } = lead;

    /// <summary>Number of starts; 0 when the lead is no multiple of the pitch.</summary>
    public int Starts => Lead == 0 ? 1 : Lead % Pitch == 0 ? (int)Math.Min(Lead / Pitch, int.MaxValue) : 0;

    /// <summary>Asks the standards in turn; no text is a designation of two.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, out ThreadDesignation designation)
    {
        var cursor = new TextCursor(text.Trim());
        foreach (ThreadStandard standard in ThreadStandard.All)
        {
            if (standard.TryRead(cursor, out designation)) return true;
        }

        designation = default;
        return false;
    }
}
