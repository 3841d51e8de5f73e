using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>D. Deaver (papers for NCSL, 1990s), NCSL RP-10, M. Dobbert (NCSL International 2008): width of the acceptance window over that of the tolerance window.</summary>
public sealed class GuardBandFactors : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("guardband-factors", (row, output) => Factor(RuleOf(output), row["TUR"]))];

    private static double Factor(DecisionRule rule, double ratio)
    {
        Torque uncertainty = Torque.FromNewtonMeters(2), half = uncertainty * ratio, target = Torque.FromNewtonMeters(50);
        ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(target, half, half);
        ToleranceWindow<Torque> accepted = window.Decide(target, MeasurementUncertainty.Expanded(uncertainty, 2), rule).AcceptanceWindow!;
        return (accepted.Upper!.Value - accepted.Lower!.Value) / (window.Upper!.Value - window.Lower!.Value);
    }

    private static DecisionRule RuleOf(string output) => output switch
    {
        "rss" => DecisionRule.RootSumSquare,
        "one_minus_1_over_TUR" => DecisionRule.FullUncertainty,
        "rp10" => DecisionRule.NcslRp10,
        _ => DecisionRule.ManagedRisk,
    };
}
