using System.Text;
using Fastening.Internals;

namespace Fastening.Quality;

/// <content>The table of a budget, the heaviest input first; the same in every culture.</content>
public sealed partial class UncertaintyBudget
{
    /// <summary>What the figures do not say by themselves: a lost first order, a shifted mean, a dominating input that is not normal.</summary>
    public IReadOnlyList<string> Remarks
    {
        get
        {
            var remarks = new List<string>();
            double u = StandardUncertainty, second = StandardUncertaintyToSecondOrder;
            if (second > 1.05 * u) remarks.Add($"second-order terms would raise u_c from {Short(u)} to {Short(second)}: WithOrder(UncertaintyOrder.Second)");
            if (_evaluation.Value.SecondOrderShare > 1e-9) remarks.Add("second-order terms count: the result is not normal");
            if (Math.Abs(MeanShift) > 0.05 * u && u > 0) remarks.Add($"the mean lies {Short(MeanShift)} beside the estimate");
            if (_evaluation.Value.Unknown.Count > 0) remarks.Add($"no second differences about {string.Join(", ", _evaluation.Value.Unknown)}");
            if (Rows[0].Weight > 0.5 && Rows[0].Input.Distribution is not (UncertaintyDistribution.Normal or UncertaintyDistribution.StudentByScale
                or UncertaintyDistribution.Readings or UncertaintyDistribution.JointReadings))
            {
                remarks.Add($"{Rows[0].Input.Name} dominates and is {Rows[0].Input.Shape}: for a coverage interval use MonteCarlo");
            }

            if (WhyNoDegreesOfFreedom is string reason) remarks.Add($"no effective degrees of freedom: {reason}");
            return remarks.AsReadOnly();
        }
    }

    /// <summary>The result and a row for each input, as plain text; where the measurement function refuses, that and what is known of the inputs.</summary>
    public override string ToString()
    {
        string? refusal = WhyNoResult();
        string[][] rows = [["input", "value", "u", "distribution", "ν", "c", "c·u", "weight"], .. refusal is null ? Rows.Select(Cells) : _inputs.Select(Cells)];
        int[] widths = [.. Enumerable.Range(0, rows[0].Length).Select(column => rows.Max(row => row[column].Length))];
        var text = new StringBuilder(refusal ?? Summary).Append('\n');
        foreach (string[] row in rows)
        {
            text.Append(string.Join("  ", row.Select((cell, column) => column is 0 or 3 ? cell.PadRight(widths[column]) : cell.PadLeft(widths[column]))).TrimEnd());
            text.Append('\n');
        }

        if (refusal is not null) return text.ToString();
        foreach (string remark in Remarks) text.Append("! ").Append(remark).Append('\n');
        return text.ToString();
    }

    /// <summary>The result and a row for each input, as a Markdown table; where the measurement function refuses, that and what is known of the inputs.</summary>
    /// <example><code>Console.WriteLine(budget.ToMarkdown());</code></example>
    public string ToMarkdown()
    {
        string? refusal = WhyNoResult();
        var text = new StringBuilder(refusal ?? Summary)
            .Append("\n\n| input | value | u | distribution | ν | c | c·u | weight |\n|---|---:|---:|---|---:|---:|---:|---:|\n");
        foreach (string[] row in refusal is null ? Rows.Select(Cells) : _inputs.Select(Cells)) text.Append("| ").Append(string.Join(" | ", row)).Append(" |\n");
        if (refusal is not null) return text.ToString();
        foreach (string remark in Remarks) text.Append("\n* ").Append(remark);
        return Remarks.Count > 0 ? text.Append('\n').ToString() : text.ToString();
    }

    private string Summary =>
        $"{Result} = {Long(Estimate)}{(Unit.Length == 0 ? "" : " " + Unit)}, u_c = {Short(StandardUncertainty)}{(Unit.Length == 0 ? "" : " " + Unit)}, "
        + $"ν_eff {(EffectiveDegreesOfFreedom is double freedom ? Freedom(freedom) : "not defined")}";

    /// <summary>Debuggers and logs print this text; they must not fail because the user's function does, in whatever way.</summary>
    private string? WhyNoResult()
    {
        try
        {
            _ = _evaluation.Value;
            return null;
        }
        catch (Exception refusal) when (refusal is not OutOfMemoryException)
        {
            string unit = Unit.Length == 0 ? "" : $" ({Unit})";
            return $"{Result}{unit}: no result, the measurement function refuses: {refusal.Message.Split('\n')[0].TrimEnd()}";
        }
    }

    private static string[] Cells(UncertaintyBudgetRow row) =>
        [.. Cells(row.Input).Take(5), Short(row.Sensitivity), Short(row.Part), Print.Text($"{Si.Ratio(row.Weight):0.0}")];

    private static string[] Cells(UncertaintyContribution input) =>
    [
        input.Name,
        Long(input.Value),
        Short(input.StandardUncertainty),
        input.Shape,
        Freedom(input.DegreesOfFreedom),
        input.Sensitivity is double sensitivity ? Short(sensitivity) : "?",
        input.Sensitivity is double known ? Short(known * input.StandardUncertainty) : "?",
        "?",
    ];

    private static string Freedom(double value) => double.IsInfinity(value) ? "∞" : Print.Number(value, "", "0.#");

    private static string Short(double value) => Print.Number(value, "", "G4");

    private static string Long(double value) => Print.Number(value, "", "G9");
}
