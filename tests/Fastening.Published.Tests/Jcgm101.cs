using Fastening.Quality;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>JCGM 101:2008: the additive examples of 9.2, the mass of 9.3, the comparison loss of 9.4, the gauge block of 9.5.</summary>
public sealed class Jcgm101 : PublishedSource
{
    private static readonly Lazy<MonteCarloResult> Rectangular = new(() => new MonteCarlo().WithDraws(4_000_000).Run(Sum(
        (name, _) => UncertaintyContribution.Rectangular(name, 0, Math.Sqrt(3)))));

    private static readonly UncertaintyBudget Mass = UncertaintyBudget.Of(
        "δm", "mg", x => (x["m_Rc"] + x["δm_Rc"]) * (1 + (x["ρ_a"] - 1.2) * (1 / x["ρ_W"] - 1 / x["ρ_R"])) - 100_000,
        UncertaintyContribution.Normal("m_Rc", 100_000, 0.050),
        UncertaintyContribution.Normal("δm_Rc", 1.234, 0.020),
        UncertaintyContribution.Rectangular("ρ_a", 1.20, 0.10),
        UncertaintyContribution.Rectangular("ρ_W", 8000, 1000),
        UncertaintyContribution.Rectangular("ρ_R", 8000, 50));

    private static readonly Lazy<MonteCarloResult> MassDraws = new(() => new MonteCarlo().WithDraws(4_000_000).Run(Mass));

    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("jcgm101-922", (row, output) => Gaussian(Sum((name, _) => UncertaintyContribution.Normal(name, 0, row["sd"])), output)),
        new("jcgm101-923", (_, output) => output switch
        {
            "u" => Rectangular.Value.StandardUncertainty,
            "half_width_MCM" => (Rectangular.Value.SymmetricInterval(0.95).High - Rectangular.Value.SymmetricInterval(0.95).Low) / 2,
            _ => null,
        }),
        new("jcgm101-mass", MassOf),
    ];

    /// <summary>
    /// 9.4: δY = X₁² + X₂² with x₂ = 0 and u = 0.005, in units of 10⁻⁶ as Tables 6 to 8 print them (from memory): estimate and standard
    /// uncertainty by first order, by second order, and by Monte Carlo, which is the exact one.
    /// </summary>
    [Theory]
    [InlineData(0.000, 0, 0, 0, 50, 50)]
    [InlineData(0.010, 0, 100, 100, 150, 112)]
    [InlineData(0.050, 0, 2500, 500, 2550, 502)]
    [InlineData(0.000, 0.9, 0, 0, 50, 67)]
    [InlineData(0.010, 0.9, 100, 100, 150, 121)]
    [InlineData(0.050, 0.9, 2500, 500, 2550, 505)]
    public void Comparison_loss(double x1, double r, double firstOrder, double firstOrderU, double mean, double u)
    {
        UncertaintyBudget loss = UncertaintyBudget.Of(
            "δY", "", x => x["X1"] * x["X1"] + x["X2"] * x["X2"], UncertaintyContribution.Normal("X1", x1, 0.005), UncertaintyContribution.Normal("X2", 0, 0.005))
            .WithCorrelations(("X1", "X2", r));
        UncertaintyBudget first = loss.WithOrder(UncertaintyOrder.First), second = loss.WithOrder(UncertaintyOrder.Second);
        MonteCarloResult draws = new MonteCarlo().Run(loss);

        Assert.Equal(firstOrder, Math.Round(first.Estimate * 1e6));
        Assert.Equal(firstOrderU, Math.Round(first.StandardUncertainty * 1e6));
        Assert.Equal(mean, Math.Round((second.Estimate + second.MeanShift) * 1e6));
        Assert.Equal(u, Math.Round(second.StandardUncertainty * 1e6));
        Assert.InRange(draws.Mean * 1e6, mean - 1.5, mean + 1.5);
        Assert.InRange(draws.StandardUncertainty * 1e6, u - 1.5, u + 1.5);
    }

    /// <summary>Mean and variance of the mass by the integrals of 1/ρ and 1/ρ² over rectangular densities; sampling error of 4·10⁶ draws.</summary>
    [Fact]
    public void Mass_by_draws_is_the_mass_by_integrals()
    {
        static double Mean(double low, double high) => Math.Log(high / low) / (high - low);
        double meanOfSquare = 1 / (7000.0 * 9000) + 1 / (7950.0 * 8050) - 2 * Mean(7000, 9000) * Mean(7950, 8050);
        double exact = Math.Sqrt(0.05 * 0.05 + 0.02 * 0.02 + 100_001.234 * 100_001.234 * (0.1 * 0.1 / 3) * meanOfSquare);
        Assert.InRange(MassDraws.Value.Mean, 1.234 - 4.5 * exact / 2000, 1.234 + 4.5 * exact / 2000);
        Assert.InRange(MassDraws.Value.StandardUncertainty, exact * (1 - 4.5 / 2000 / Math.Sqrt(2)), exact * (1 + 4.5 / 2000 / Math.Sqrt(2)));
        Assert.InRange(exact, 0.0754 - 2e-4, 0.0754 + 2e-4);
    }

    /// <summary>
    /// 9.5: limits of δα and δθ are doubtful by d (CTrap), four inputs are Student's t by their scale. Table 11 (from memory, not checked in
    /// the text): by draws 838 nm, 36 nm, [745, 932] nm with 99 %. The unrounded u by the moments of 6.4 of every input, multiplied out.
    /// </summary>
    [Fact]
    public void Gauge_block_with_limits_of_doubtful_width()
    {
        const double Length = 50_000_623;
        UncertaintyBudget block = UncertaintyBudget.Of(
            "δL", "nm", x => x["L_S"] + x["D"] + x["d1"] + x["d2"] - x["L_S"] * (x["δα"] * (x["θ0"] + x["Δ"]) + x["α_S"] * x["δθ"]) - 50e6,
            UncertaintyContribution.StudentByScale("L_S", Length, 25, 18),
            UncertaintyContribution.StudentByScale("D", 215, 6, 24),
            UncertaintyContribution.StudentByScale("d1", 0, 4, 5),
            UncertaintyContribution.StudentByScale("d2", 0, 7, 8),
            UncertaintyContribution.Rectangular("α_S", 11.5e-6, 2e-6),
            UncertaintyContribution.Normal("θ0", -0.1, 0.2),
            UncertaintyContribution.Arcsine("Δ", 0, 0.5),
            UncertaintyContribution.Rectangular("δα", 0, 1e-6).WithDoubt(Ratio.FromPercent(10)),
            UncertaintyContribution.Rectangular("δθ", 0, 0.05).WithDoubt(Ratio.FromPercent(50)));
        MonteCarloResult draws = new MonteCarlo().WithDraws(4_000_000).Run(block);
        Range<double> interval = draws.SymmetricInterval(0.99);

        static double Student(double scale, double freedom) => scale * scale * freedom / (freedom - 2);
        static double Doubtful(double half, double d) => half * half / 3 + d * d / 9;
        double lengthSquared = Length * Length + Student(25, 18);
        double exact = Math.Sqrt(
            Student(25, 18) + Student(6, 24) + Student(4, 5) + Student(7, 8)
            + lengthSquared * Doubtful(1e-6, 1e-7) * (0.1 * 0.1 + 0.2 * 0.2 + 0.5 * 0.5 / 2)
            + lengthSquared * (11.5e-6 * 11.5e-6 + 2e-6 * 2e-6 / 3) * Doubtful(0.05, 0.025));
        Assert.Equal(35.8, exact, 0.05);
        Assert.InRange(draws.StandardUncertainty, exact * 0.998, exact * 1.002);
        Assert.Equal(36, Math.Round(draws.StandardUncertainty));
        Assert.Equal(838, Math.Round(draws.Mean));
        Assert.Equal(932, Math.Round(interval.High));

        // Every term is symmetric about its mean, so that 744.2 belongs to 931.8: the 745 is the end of one run's shortest interval, which scatters by 1.
        Assert.InRange(interval.Low, 838 - (interval.High - 838) - 0.3, 838 - (interval.High - 838) + 0.3);
        Assert.InRange(interval.Low, 745 - 1, 745 + 1);
        Assert.Equal(32, Math.Round(block.WithOrder(UncertaintyOrder.First).StandardUncertainty));
    }

    private static UncertaintyBudget Sum(Func<string, int, UncertaintyContribution> input) =>
        UncertaintyBudget.Of("Y", "", x => x[0] + x[1] + x[2] + x[3], [.. Enumerable.Range(1, 4).Select(i => input($"X{i}", i))]);

    private static double? Gaussian(UncertaintyBudget budget, string output) => output switch
    {
        "u" => budget.StandardUncertainty,
        "half_width" => budget.ExpandedUncertainty(0.95),
        _ => null,
    };

    /// <summary>GUF1 is first order, GUF2 the default: second order where the first vanishes. Its coverage factor is stated, 1.96.</summary>
    private static double? MassOf(PublishedRow row, string output)
    {
        const double Normal95 = 1.959964;
        UncertaintyBudget budget = output.StartsWith("GUF1", StringComparison.Ordinal) ? Mass.WithOrder(UncertaintyOrder.First) : Mass;
        Range<double>? drawn = output.StartsWith("MCM[I95]", StringComparison.Ordinal) ? MassDraws.Value.ShortestInterval(0.95) : null;
        return output switch
        {
            "MCM[y_mg]" => MassDraws.Value.Mean,
            "MCM[u]" => MassDraws.Value.StandardUncertainty,
            "MCM[I95][0]" => drawn?.Low,
            "MCM[I95][1]" => drawn?.High,
            _ when output.EndsWith("[y_mg]", StringComparison.Ordinal) => budget.Estimate,
            _ when output.EndsWith("[u]", StringComparison.Ordinal) => budget.StandardUncertainty,
            _ when output.EndsWith("[I95][0]", StringComparison.Ordinal) => budget.Estimate - budget.ExpandedUncertaintyWithFactor(Normal95),
            _ when output.EndsWith("[I95][1]", StringComparison.Ordinal) => budget.Estimate + budget.ExpandedUncertaintyWithFactor(Normal95),
            _ => null,
        };
    }
}
