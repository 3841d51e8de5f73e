using System.Globalization;
using System.Text;

namespace Fastening.Tests.Traces;

/// <summary>The tables of the verification page that count how records with features and measured runs are read.</summary>
internal static class ReadingTables
{
    private static readonly double[] Windows = [5, 8, 12, 20];

    public static void Features(StringBuilder page)
    {
        page.Append("# Known curves with a feature\n\nTwo hundred curves for each of thirty features (`tests/Fastening.Tests/Traces/TraceFeature.cs`), with 4 to 15 samples per degree and 0.6 % noise,\n");
        page.Append("read with a smoothing window of 8°. *Wrong*: slope off by more than 5 % (coarse sampling 8 %), snug by 2.5° (4° where the feature moves it), yield by\n");
        page.Append("6° (8° with wind-up), run-down torque by 2 % of the peak torque, shut-off by 2°, a yield missed or false, or a finding on a record that is no\n");
        page.Append("tightening. A yield less than half a window before the end may be given or left out. *Silently*: no remark doubts that finding; wanted at most 5.\n");
        page.Append("A record that is no tightening and gives no finding counts as right.\n\n");
        page.Append("| feature | right | right, doubted | wrong, doubted | not read | silently wrong |\n|---|---:|---:|---:|---:|---:|\n");
        foreach ((TraceFeature feature, int[] counts) in FeatureCounts.All) Row(page, Spaced($"{feature}"), counts);
        Row(page, "all", [.. Enumerable.Range(0, 5).Select(i => FeatureCounts.Total((ReadingOutcome)i))]);
        page.Append('\n');
    }

    public static void Measured(StringBuilder page)
    {
        page.Append("All seventy-three runs under `tests/Fastening.Tests/Data/measured` are analysed; none has a known truth. A written rule says what no reader of the\n");
        page.Append("picture would sign (`tests/Fastening.Tests/Traces/Misreading.cs`; it sees medians of 2° of rotation and shares no code with the analysis): (a) at\n");
        page.Append("snug, or where the run-down ends, over a third of the rise is made; (b) between 8° and 24° past a yield the torque rises for 10° by at least 0.7\n");
        page.Append("of the elastic slope to above the torque at yield; (c) the line holds under a quarter of the rise, or half the samples of its region lie off by\n");
        page.Append("a tenth of its gain. The 29 loosened runs say so and are not read.\n\n");
        page.Append("| smoothing window | read | (a) or (b), doubted or not | with (c) | misread without a doubt | snug and slope undoubted |\n|---|---:|---:|---:|---:|---:|\n");
        foreach (MeasuredCount count in Windows.Select(MeasuredCount.At))
        {
            page.Append(CultureInfo.InvariantCulture, $"| {count.Window}° | {count.Read} | {count.Misread} | {count.WithLine} | {count.Silent} | {count.Undoubted} |\n");
        }

        page.Append('\n');
    }

    private static void Row(StringBuilder page, string name, int[] counts) => page.Append(CultureInfo.InvariantCulture, $"| {name} | {string.Join(" | ", counts)} |\n");

    private static string Spaced(string name) => string.Concat(name.Select((c, i) => char.IsUpper(c) && i > 0 ? $" {char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
}
