using Fastening.Internals;

namespace Fastening;

/// <summary>Guesses what was meant by a text that is nearly a designation.</summary>
/// <remarks>One slip after another is undone until there is such a thread.</remarks>
internal static class DesignationRepair
{
    private static readonly string[] Units = ["millimeters", "millimetres", "mm", "inches", "inch", "in.", "in", "\"", "″", "”"];

    /// <summary>Slips in any designation, then those of each standard.</summary>
    private static readonly DesignationSlip[] Slips =
    [
        new("the decimal sign is a point", text => text.Replace(',', '.')),
        new("a designation carries no unit", WithoutUnit),
        .. ThreadStandard.All.AsEnumerable().Reverse().SelectMany(standard => standard.Slips),
    ];

    /// <summary>The faults and the designation to write; null when no guess leads to a thread.</summary>
    public static string? Of(string text)
    {
        string candidate = text.Trim().ToLowerInvariant();
        var faults = new List<string>();
        foreach (DesignationSlip slip in Slips)
        {
            string undone = slip.Undo(candidate);
            if (undone == candidate || undone.Length == 0) continue;

            candidate = undone;
            faults.Add(slip.Fault);
            if (ScrewThread.TryParse(candidate, out ScrewThread? thread))
            {
                return $"{string.Join(" and ", faults)}; write {Quoted.Text(thread.Designation)}";
            }
        }

        return null;
    }

    private static string WithoutUnit(string text)
    {
        foreach (string unit in Units) text = text.Replace(unit, "");
        return text;
    }
}
