using Fastening.Quality;

namespace Fastening.Published.Tests;

/// <summary>NPL Report DEM-ES-011, section 9.2: the logarithm of a rectangular input.</summary>
public sealed class NplDemEs011 : PublishedSource
{
    private const int Draws = 4_000_000;

    private static readonly Dictionary<string, MonteCarloResult> Runs = [];

    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("npl-log", Logarithm)];

    private static double? Logarithm(PublishedRow row, string output)
    {
        UncertaintyBudget y = UncertaintyBudget.Of(
            "Y", "", x => Math.Log(x["X"]), UncertaintyContribution.Rectangular("X", (row["a"] + row["b"]) / 2, (row["b"] - row["a"]) / 2));
        return output switch
        {
            "GUM_y" => y.Estimate,
            "GUM_u" => y.StandardUncertainty,
            "GUM_upper95" => y.Estimate + y.ExpandedUncertainty(0.95),
            "MC_mean" => Run(row.Id, y).Mean,
            "MC_u" => Run(row.Id, y).StandardUncertainty,
            "MC_shortest95_lo" => Run(row.Id, y).ShortestInterval(0.95).Low,
            "MC_shortest95_hi" => Run(row.Id, y).ShortestInterval(0.95).High,
            _ => null,
        };
    }

    private static MonteCarloResult Run(string id, UncertaintyBudget budget)
    {
        lock (Runs) return Runs.TryGetValue(id, out MonteCarloResult? run) ? run : Runs[id] = new MonteCarlo().WithDraws(Draws).Run(budget);
    }
}
