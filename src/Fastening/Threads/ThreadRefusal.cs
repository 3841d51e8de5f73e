using Fastening.Internals;

namespace Fastening;

/// <summary>Says why a text is refused as a designation, and what to write instead.</summary>
internal static class ThreadRefusal
{
    private const int LongestExplained = 60;
    private const string UseIsoMetric = "for a thread outside the standard use ScrewThread.IsoMetric(diameter, pitch)";
    private const string UseUnified = "for a special thread use ScrewThread.Unified(diameter, threadsPerInch)";
    private const string FromProfile = "is given by its diameters with ScrewThread.FromProfile";
    private const string Buttress = "a buttress thread is given by its diameters and its load flank (3° in metric standards, 7° in ASME B1.9) with ScrewThread.FromProfile";
    private const string Pipe = "a pipe thread is made to seal and is not read; as a bolt thread it " + FromProfile;
    private const string Examples = "write for example M16, M16x1.5, 1/2-13 UNC or #10-32 UNF, with a decimal point and without a unit";

    /// <summary>Other notations by a mark in the text: at its start, or anywhere. The longer mark stands before the one it contains.</summary>
    private static readonly (string Mark, bool Anywhere, string Hint)[] OtherNotations =
    [
        ("MJ", true, "a thread with enlarged root " + FromProfile),
        ("UNJ", true, "a thread with enlarged root " + FromProfile),
        ("UNS", true, UseUnified),
        ("BUTT", true, Buttress),
        ("STUB", true, "a stub Acme thread " + FromProfile),
        ("ACME", true, "write an Acme thread with its threads per inch, as in 1 1/2-4 ACME; for several starts use ScrewThread.Acme"),
        ("TR", false, "write a trapezoidal thread with its pitch, as in Tr40x7, and with several starts lead before pitch, as in Tr40x14 (P7)"),
        ("PH", true, "a thread with several starts " + FromProfile),
        ("NPT", true, Pipe),
        ("NPS", true, Pipe),
        ("BSP", true, Pipe),
        ("G", false, Pipe),
        ("RC", false, Pipe),
        ("RP", false, Pipe),
        ("RD", false, "a round thread " + FromProfile),
        ("R", false, Pipe),
        ("BS", true, "a Whitworth thread " + FromProfile),
        ("W", false, "a Whitworth thread " + FromProfile),
        ("S", false, Buttress),
    ];

    public static string Explain(string text)
    {
        if (text.Trim().Length == 0) return $"The designation is empty; {Examples}.";
        string shown = Quoted.Text(text);
        if (text.Length > LongestExplained) return $"{shown} is not a thread designation: it is too long; {Examples}.";

        bool isRead = ThreadDesignation.TryRead(text, out ThreadDesignation wanted);
        if (isRead && wanted.Profile is ThreadProfile.IsoTrapezoidal or ThreadProfile.Acme) return PowerScrewRefusal.Explain(shown, wanted);
        if (isRead && SizesOf(wanted).Count > 0) return ExplainPitch(shown, wanted);
        if (DesignationRepair.Of(text) is string repaired) return $"{shown} is not a thread designation: {repaired}.";
        if (isRead) return ExplainSize(shown, wanted);
        return $"{shown} is not a thread designation; {HintFor(text) ?? Examples}.";
    }

    private static List<ThreadSize> SizesOf(in ThreadDesignation wanted)
    {
        var sizes = new List<ThreadSize>();
        if (ThreadCatalogue.Default.SizeOf(wanted.Profile, wanted.Diameter) is ThreadSize size) sizes.Add(size);
        if (ThreadCatalogue.Default.SizeOf(wanted.Profile, wanted.NumberedDiameter) is ThreadSize numbered) sizes.Add(numbered);
        return sizes;
    }

    private static string ExplainPitch(string shown, in ThreadDesignation wanted)
    {
        List<ThreadSize> sizes = SizesOf(wanted);
        if (wanted.Profile == ThreadProfile.IsoMetric)
        {
            string pitches = Enumerate(sizes[0].Threads.Select(ShowPitch), "and");
            string fault = wanted.Pitch == 0
                ? $"no coarse pitch, only {pitches} mm; write {Enumerate(Names(sizes), "or")}"
                : $"the pitches {pitches} mm, not {Show(wanted.Pitch)} mm; {UseIsoMetric}";
            return $"{shown}: ISO 261 gives {sizes[0].Name} {fault}.";
        }

        return IsOpen(sizes, wanted)
            ? $"{shown} leaves the thread open; state the series and the threads per inch: {Enumerate(Names(sizes).Concat(MetricReadings(wanted)), "or")}."
            : $"{shown} is not in the catalogue of ASME B1.1 threads (UNC, UNF, UNEF, 8-UN, 12-UN, 16-UN), "
                + $"which has {Enumerate(Names(sizes), "and")}; {UseUnified}.";
    }

    private static bool IsOpen(List<ThreadSize> sizes, ThreadDesignation wanted) =>
        sizes.Any(size => size.Threads.Any(thread => thread.Fits(wanted.Pitch, wanted.Series)));

    private static string ExplainSize(string shown, in ThreadDesignation wanted)
    {
        bool metric = wanted.Profile == ThreadProfile.IsoMetric;
        IReadOnlyList<ThreadSize> sizes = metric ? ThreadCatalogue.Default.Metric : ThreadCatalogue.Default.Unified;
        long diameter = wanted.Diameter;
        ThreadSize? below = sizes.LastOrDefault(size => size.Diameter < diameter);
        ThreadSize? above = sizes.FirstOrDefault(size => size.Diameter > diameter);
        string other = metric ? UseIsoMetric : UseUnified;
        if (below is null || above is null)
        {
            string standard = metric ? "ISO 261" : "ASME B1.1";
            return $"{shown} is outside the catalogue of {standard} threads, {sizes[0].Name} to {sizes[sizes.Count - 1].Name}; {other}.";
        }

        string fault = metric ? $"ISO 261 has no M{Show(diameter)}" : $"the catalogue of ASME B1.1 threads has no size of {Show(diameter)} in";
        return $"{shown}: {fault}; the nearest are {below.Name} and {above.Name}; {other}.";
    }

    /// <summary>A bare 8 may mean M8 as well as #8.</summary>
    private static IEnumerable<string> MetricReadings(ThreadDesignation wanted) =>
        wanted.NumberedDiameter != 0 && wanted.Pitch == 0 && wanted.Series is null
        && ThreadCatalogue.Default.SizeOf(ThreadProfile.IsoMetric, wanted.Diameter) is ThreadSize size
            ? [size.Name]
            : [];

    private static string? HintFor(string text)
    {
        string upper = text.Trim().ToUpperInvariant();
        foreach ((string mark, bool anywhere, string hint) in OtherNotations)
        {
            int place = upper.IndexOf(mark, StringComparison.Ordinal);
            if (place >= 0 && (anywhere || (place == 0 && IsFollowedByNumber(upper, mark.Length)))) return hint;
        }

        return null;
    }

    private static bool IsFollowedByNumber(string text, int place)
    {
        while (place < text.Length && text[place] == ' ') place++;
        return place < text.Length && text[place] is >= '0' and <= '9';
    }

    private static IEnumerable<string> Names(IEnumerable<ThreadSize> sizes) => sizes.SelectMany(size => size.Threads).Select(t => t.Thread.Designation);

    private static string ShowPitch(CatalogueThread thread) => Show(thread.Pitch) + (thread.Series == ThreadDesignation.Coarse ? " (coarse)" : "");

    private static string Show(long millionths) => Print.Number(millionths / (double)TextCursor.Million);

    private static string Enumerate(IEnumerable<string> items, string conjunction)
    {
        string[] all = items.ToArray();
        return all.Length == 1 ? all[0] : $"{string.Join(", ", all, 0, all.Length - 1)} {conjunction} {all[all.Length - 1]}";
    }
}
