using Fastening.Quality;

namespace Fastening.Published.Tests;

/// <summary>A worked example of NIST (its row names the manual): the Stefan–Boltzmann constant, many decades between the sensitivities.</summary>
public sealed class NistStefanBoltzmann : PublishedSource
{
    private const double MolarMassConstant = 1e-3;
    private const double SpeedOfLight = 299_792_458;

    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("stefan-nist", Constant)];

    private static double? Constant(PublishedRow row, string output)
    {
        UncertaintyBudget sigma = UncertaintyBudget.Of(
            "σ", "W/(m²·K⁴)",
            x => 32 * Math.Pow(Math.PI, 5) * x["h"] * Math.Pow(x["R"], 4) * Math.Pow(x["R_inf"], 4)
                / (15 * Math.Pow(x["A_e"] * MolarMassConstant, 4) * Math.Pow(SpeedOfLight, 6) * Math.Pow(x["α"], 8)),
            UncertaintyContribution.Normal("h", row["h"], row["u_h"]),
            UncertaintyContribution.Normal("R", row["R"], row["u_R"]),
            UncertaintyContribution.Normal("R_inf", row["Rinf"], row["u_Rinf"]),
            UncertaintyContribution.Normal("A_e", row["e_mass_u"], row["u_e"]),
            UncertaintyContribution.Normal("α", row["alpha"], row["u_alpha"]));
        return output switch
        {
            "sigma" => sigma.Estimate,
            "u" => sigma.StandardUncertainty,
            "I99[0]" => sigma.Estimate - sigma.ExpandedUncertainty(0.99),
            "I99[1]" => sigma.Estimate + sigma.ExpandedUncertainty(0.99),
            "I68[0]" => sigma.Estimate - sigma.ExpandedUncertainty(0.68),
            "I68[1]" => sigma.Estimate + sigma.ExpandedUncertainty(0.68),
            _ => null,
        };
    }
}
