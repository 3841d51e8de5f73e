using Fastening.Quality;

namespace Fastening.Published.Tests;

/// <summary>Sandia ENGR224 (v2), slides 113 to 118: X-ray fluorescence, a ratio of three inputs with few degrees of freedom.</summary>
public sealed class SandiaEngr224 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("xrf-engr224", Fluorescence)];

    private static double? Fluorescence(PublishedRow row, string output)
    {
        UncertaintyBudget y = UncertaintyBudget.Of("Y", "", x => x["Yu"] * x["X1"] / x["X2"],
            UncertaintyContribution.Normal("X1", row["X1"], row["u1"]).WithDegreesOfFreedom(row["dof1"]),
            UncertaintyContribution.Normal("X2", row["X2"], row["u2"]).WithDegreesOfFreedom(row["dof2"]),
            UncertaintyContribution.Normal("Yu", row["Yu"], row["u3"]).WithDegreesOfFreedom(row["dof3"]));
        return output switch
        {
            "y" => y.Estimate,
            "u" => y.StandardUncertainty,
            "nu_eff" => y.EffectiveDegreesOfFreedom,
            "U95" => y.ExpandedUncertainty(0.95),
            _ => null,
        };
    }
}
