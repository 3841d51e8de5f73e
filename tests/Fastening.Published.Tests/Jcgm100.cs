using Fastening.Quality;

namespace Fastening.Published.Tests;

/// <summary>JCGM 100:2008 (GUM): the end gauge of H.1, the impedance of H.2, the factors of G.4.1.</summary>
public sealed class Jcgm100 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("gum-h1", EndGauge),
        new("gum-h2", Impedance),
        new("gum-g4", Product),
    ];

    private static double? EndGauge(PublishedRow row, string output)
    {
        UncertaintyBudget l = UncertaintyBudget.Of("l", "nm", x => x["l_s"] + x["d"] - x["l_s"] * (x["δα"] * x["θ"] + x["α_s"] * x["δθ"]),
            UncertaintyContribution.Normal("l_s", row["ls_mm"] * 1e6, row["u_ls_nm"]).WithDegreesOfFreedom(row["dof_ls"]),
            UncertaintyContribution.Normal("d", row["d_nm"], row["u_d_nm"]).WithDegreesOfFreedom(row["dof_d"]),
            UncertaintyContribution.Normal("α_s", row["alpha_s"], row["u_alpha_s"]),
            UncertaintyContribution.Normal("θ", row["theta"], row["u_theta"]),
            UncertaintyContribution.Rectangular("δα", 0, 1e-6).WithDegreesOfFreedom(row["dof_dalpha"]),
            UncertaintyContribution.Rectangular("δθ", 0, 0.05).WithDegreesOfFreedom(row["dof_dtheta"]));
        return output switch
        {
            "l_mm" => l.Estimate / 1e6,
            "uc_nm" => l.StandardUncertainty,
            "uc2_nm2" => l.StandardUncertainty * l.StandardUncertainty,
            "nu_eff" => l.EffectiveDegreesOfFreedom,
            "nu_used" => Math.Floor(l.EffectiveDegreesOfFreedom!.Value),
            "k99" => l.CoverageFactor(0.99),
            "U99_nm" => l.ExpandedUncertainty(0.99),
            _ => null,
        };
    }

    private static double? Impedance(PublishedRow row, string output)
    {
        IReadOnlyList<UncertaintyContribution> read = UncertaintyContribution.FromJointReadings(
            ("V", row.Numbers("V")), ("I", row.Numbers("I_A")), ("φ", row.Numbers("phi_rad")));
        UncertaintyBudget r = UncertaintyBudget.Of("R", "Ω", x => x["V"] / x["I"] * Math.Cos(x["φ"]), read);
        UncertaintyBudget x = UncertaintyBudget.Of("X", "Ω", v => v["V"] / v["I"] * Math.Sin(v["φ"]), read);
        UncertaintyBudget z = UncertaintyBudget.Of("Z", "Ω", v => v["V"] / v["I"], read);
        return output switch
        {
            "R_ohm" => r.Estimate,
            "X_ohm" => x.Estimate,
            "Z_ohm" => z.Estimate,
            "u_R" => r.StandardUncertainty,
            "u_X" => x.StandardUncertainty,
            "u_Z" => z.StandardUncertainty,
            "r_RX" => r.CorrelationWith(x),
            "r_RZ" => r.CorrelationWith(z),
            "r_XZ" => x.CorrelationWith(z),
            _ => null,
        };
    }

    private static double? Product(PublishedRow row, string output)
    {
        double[] u = row.Numbers("rel_u_pct"), n = row.Numbers("n");
        UncertaintyBudget y = UncertaintyBudget.Linear(
            "y", "%", 0,
            [.. u.Select((part, i) => UncertaintyContribution.Normal($"X{i + 1}", 0, part).WithDegreesOfFreedom(n[i] - 1).WithSensitivity(1))]);
        return output switch
        {
            "uc_pct" => y.StandardUncertainty,
            "nu_eff" => y.EffectiveDegreesOfFreedom,
            // ν_eff is 18.99, which the text rounds to 19 rather than truncates.
            "t95" => y.InterpolatedCoverageFactor(0.95),
            "U95_pct" => y.ExpandedUncertaintyWithFactor(y.InterpolatedCoverageFactor(0.95)),
            _ => null,
        };
    }

    /// <summary>H.1.7: with the second-order terms 34 nm in place of 32 nm (from memory).</summary>
    [Fact]
    public void Second_order_terms_of_the_end_gauge()
    {
        UncertaintyBudget l = UncertaintyBudget.Of("l", "nm", x => x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]),
            UncertaintyContribution.Normal("l_s", 50_000_623, 25), UncertaintyContribution.Normal("d", 215, 9.7), UncertaintyContribution.Normal("δα", 0, 0.58e-6),
            UncertaintyContribution.Normal("θ", -0.1, 0.41), UncertaintyContribution.Normal("α_s", 11.5e-6, 1.2e-6), UncertaintyContribution.Normal("δθ", 0, 0.029));
        Assert.Equal(32, Math.Round(l.StandardUncertainty));
        Assert.Equal(34, Math.Round(l.WithOrder(UncertaintyOrder.Second).StandardUncertainty));
        Assert.Contains("second-order terms would raise", l.ToString(), StringComparison.Ordinal);
    }
}
