using Fastening.Internals;

namespace Fastening;

/// <summary>Says why a text is refused as a designation, and what to write instead.</summary>
internal static class ThreadRefusal
{
    private const int LongestExplained = 60;
    private const string FromProfile = "is given by its diameters with ScrewThread.FromProfile";
    private const string Buttress = "a buttress thread is given by its diameters and its load flank (3° in metric standards, 7° in ASME B1.9) with ScrewThread.FromProfile";
    private const string Pipe = "a pipe thread is made to seal and is not read; as a bolt thread it " + FromProfile;
    private const string Examples = "write for example M16, M16x1.5, 1/2-13 UNC or #10-32 UNF, with a decimal point and without a unit";

    /// <summary>The marks of the standards that are read, then of others.</summary>
    private static readonly NotationHint[] Hints =
    [
        .. ThreadStandard.All.SelectMany(standard => standard.Hints),
        new("BUTT", Anywhere: true, Buttress),
        new("PH", Anywhere: true, "a thread with several starts " + FromProfile),
        new("NPT", Anywhere: true, Pipe),
        new("NPS", Anywhere: true, Pipe),
        new("BSP", Anywhere: true, Pipe),
        new("G", Anywhere: false, Pipe),
        new("RC", Anywhere: false, Pipe),
        new("RP", Anywhere: false, Pipe),
        new("RD", Anywhere: false, "a round thread " + FromProfile),
        new("R", Anywhere: false, Pipe),
        new("BS", Anywhere: true, "a Whitworth thread " + FromProfile),
        new("W", Anywhere: false, "a Whitworth thread " + FromProfile),
        new("S", Anywhere: false, Buttress),
    ];

    public static string Explain(string text)
    {
        if (text.Trim().Length == 0) return $"The designation is empty; {Examples}.";
        string shown = Quoted.Text(text);
        if (text.Length > LongestExplained) return $"{shown} is not a thread designation: it is too long; {Examples}.";

        bool isRead = ThreadDesignation.TryRead(text.AsSpan(), out ThreadDesignation wanted);
        if (isRead && wanted.Standard.HasSizeOf(wanted)) return wanted.Standard.Explain(shown, wanted);
        if (DesignationRepair.Of(text) is string repaired) return $"{shown} is not a thread designation: {repaired}.";
        return isRead ? wanted.Standard.Explain(shown, wanted) : $"{shown} is not a thread designation; {HintFor(text) ?? Examples}.";
    }

    private static string? HintFor(string text)
    {
        string upper = text.Trim().ToUpperInvariant();
        return Array.Find(Hints, hint => hint.Fits(upper)).Hint;
    }
}
