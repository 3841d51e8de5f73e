using System.Globalization;
using System.Text;

namespace Fastening.Internals;

/// <summary>Foreign text made fit for a message: short, printable, in quotes.</summary>
internal static class Quoted
{
    private const int Longest = 40;

    public static string Text(string foreign)
    {
        var shown = new StringBuilder(Longest + 3).Append('\'');
        foreach (char c in foreign.Length > Longest ? foreign.Substring(0, Longest) : foreign) shown.Append(IsPrintable(c) ? c : '?');
        if (foreign.Length > Longest) shown.Append('…');
        return shown.Append('\'').ToString();
    }

    private static bool IsPrintable(char c) => CharUnicodeInfo.GetUnicodeCategory(c) is not (
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse
        or UnicodeCategory.OtherNotAssigned or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
}
