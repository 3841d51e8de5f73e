using Fastening.Internals;

namespace Fastening;

/// <summary>Guesses what was meant by a text that is nearly a designation.</summary>
/// <remarks>One slip after another is undone until there is such a thread.</remarks>
internal static class DesignationRepair
{
    private static readonly string[] Units = ["millimeters", "millimetres", "mm", "inches", "inch", "in.", "in", "\"", "″", "”"];

    private static readonly (string Fault, Func<string, string> Undo)[] Slips =
    [
        ("the decimal sign is a point", text => text.Replace(',', '.')),
        ("a designation carries no unit", WithoutUnit),
        ("the threads per inch follow a hyphen", text => IsUnified(text) ? text.Replace('x', '-').Replace('×', '-') : text),
        ("a metric designation starts with M", text => text[0] is >= '0' and <= '9' ? "m" + text : text),
        ("the pitch follows an x", text => text[0] is 'm' or 't' ? text.Replace('-', 'x') : text),
    ];

    /// <summary>The faults and the designation to write; null when no guess leads to a thread.</summary>
    public static string? Of(string text)
    {
        string candidate = text.Trim().ToLowerInvariant();
        var faults = new List<string>();
        foreach ((string fault, Func<string, string> undo) in Slips)
        {
            string undone = undo(candidate);
            if (undone == candidate || undone.Length == 0) continue;

            candidate = undone;
            faults.Add(fault);
            if (ThreadDesignation.TryRead(candidate, out ThreadDesignation wanted) && ScrewThread.Of(wanted) is ScrewThread thread)
            {
                return $"{string.Join(" and ", faults)}; write {Quoted.Text(thread.Designation)}";
            }
        }

        return null;
    }

    private static bool IsUnified(string text) => text[0] == '#' || text.IndexOf('/') > 0;

    private static string WithoutUnit(string text)
    {
        foreach (string unit in Units) text = text.Replace(unit, "");
        return text;
    }
}
