namespace Fastening;

/// <summary>Numbers that stand for texts and facts, the same on every machine and in every run: decisions are kept with them.</summary>
internal static class Fingerprint
{
    private const ulong Odd = 0x9E3779B97F4A7C15;

    // Two rounds of multiplication and shift spread every bit over all others; this is no protection against forgery.
    public static ulong Mix(ulong facts, ulong fact)
    {
        ulong mixed = (facts ^ fact) * Odd;
        mixed = (mixed ^ mixed >> 29) * 0xBF58476D1CE4E5B9;
        return mixed ^ mixed >> 32;
    }

    public static ulong Mix(ulong facts, double number) => Mix(facts, (ulong)BitConverter.DoubleToInt64Bits(number));

    public static ulong Of(string? text)
    {
        if (text is null) return Odd;
        ulong hash = (ulong)text.Length;
        foreach (char c in text) hash = (hash ^ c) * 0x100000001B3;
        return Mix(Odd, hash);
    }

    /// <summary>An entry as it bears on its fastener: who, when, what and how much, and what was seen in it.</summary>
    public static ulong Of(JobEntry entry, ulong source, LineFlags flags, ReasonSet serious)
    {
        PullFigures pull = entry.Figures;
        ulong fact = Mix(source, (ulong)entry.Sequence);
        fact = Mix(fact, (ulong)entry.Ticks);
        fact = Mix(fact, ((ulong)entry.Kind << 8 | (ulong)flags) ^ serious.Bits << 16);
        if (entry.Kind != JobEntryKind.Pulled) return fact;
        fact = Mix(Mix(fact, pull.Torque), pull.Move);
        fact = Mix(Mix(fact, pull.Time), pull.Contact);
        return entry.Step is null ? fact : Mix(fact, Of(entry.Step));
    }

    /// <summary>All that an entry says, to put two entries of one number in an order that does not depend on which came first.</summary>
    public static ulong OfContent(JobEntry entry)
    {
        ulong hash = Of(entry, Of(entry.Source), LineFlags.None, default);
        foreach (string? text in new[] { entry.Fastener, entry.Step, entry.Tool, entry.Operator, entry.Reason, entry.OfSource }) hash = Mix(hash, Of(text));
        hash = Mix(Mix(hash, (ulong)(entry.OfSequence ?? -1)), (ulong)(entry.ToSequence ?? -1));
        hash = Mix(Mix(hash, (ulong)(entry.Seen ?? 0)), (ulong)entry.Time.Offset.Ticks);
        hash = Mix(hash, entry.TorqueAtTool is UnitsNet.Torque shown ? Internals.Si.Of(shown) : double.NaN);
        hash = Mix(hash, Of($"{entry.Torque?.Unit} {entry.TorqueAtTool?.Unit} {entry.Rotation?.Unit} {entry.Duration?.Unit} {entry.IsReadInMotion}"));
        return hash;
    }
}
