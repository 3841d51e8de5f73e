using Fastening.Quality;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Uncertainty;

public class UncertaintyBudgetTests
{
    private static readonly double[] First = [1.02, 0.97, 1.10, 1.05, 0.99, 1.01];
    private static readonly double[] Second = [5.3, 5.9, 5.1, 5.5, 5.6, 5.4];

    /// <summary>Standard deviations of the densities by quadrature, which knows no divisor.</summary>
    [Fact]
    public void Divisors_are_the_standard_deviations_of_the_densities()
    {
        Close.To(DeviationOf(_ => 1), UncertaintyContribution.Rectangular("x", 7, 3).StandardUncertainty / 3, 1e-6);
        Close.To(DeviationOf(z => 1 - Math.Abs(z)), UncertaintyContribution.Triangular("x", 7, 3).StandardUncertainty / 3, 1e-6);
        Close.To(DeviationOf(z => Math.Min(1, (1 - Math.Abs(z)) / 0.6)), UncertaintyContribution.Trapezoidal("x", 7, 3, Ratio.FromPercent(40)).StandardUncertainty / 3, 1e-5);

        // x = a sin φ with φ even: the density has poles, the phase has none.
        double meanSquare = Enumerable.Range(0, 1000).Average(i => Math.Pow(Math.Sin(2 * Math.PI * (i + 0.5) / 1000), 2));
        Close.To(Math.Sqrt(meanSquare), UncertaintyContribution.Arcsine("x", 7, 3).StandardUncertainty / 3, 1e-12);
        Assert.Equal(0.1, UncertaintyContribution.FromCertificate("x", 7, 0.2, 2).StandardUncertainty);
        Close.To(50, UncertaintyContribution.Rectangular("x", 0, 1).WithDoubt(Ratio.FromPercent(10)).DegreesOfFreedom);
    }

    [Fact]
    public void Differences_find_the_sensitivities_of_the_calculus()
    {
        UncertaintyBudget budget = UncertaintyBudget.Of(
            "y", "", x => x["a"] * Math.Exp(x["b"]) / x["c"],
            UncertaintyContribution.Normal("a", 3, 0.1), UncertaintyContribution.Normal("b", 0.7, 0.2), UncertaintyContribution.Normal("c", -5, 0.3));
        double y = 3 * Math.Exp(0.7) / -5;

        Assert.Equal(y, budget.Estimate, 14);
        Close.To(y / 3, Sensitivity(budget, "a"), 1e-10);
        Close.To(y, Sensitivity(budget, "b"), 1e-10);
        Close.To(-y / -5, Sensitivity(budget, "c"), 1e-10);
        Close.To(Math.Abs(y) * Math.Sqrt(0.01 / 9 + 0.04 + 0.09 / 25), budget.StandardUncertainty, 1e-10);

        // Mean shift ½ (f_bb u_b² + f_cc u_c²) = y/2 (u_b² + 2 u_c²/c²).
        Close.To(y / 2 * (0.04 + 2 * 0.09 / 25), budget.MeanShift, 1e-7);
    }

    [Fact]
    public void Where_first_order_vanishes_the_second_counts_and_the_mean_shifts()
    {
        UncertaintyBudget square = UncertaintyBudget.Of("y", "", x => x["x"] * x["x"], UncertaintyContribution.Normal("x", 0, 0.3));

        // Of a normal x about 0: mean of x² is u², its standard deviation √2 u².
        Close.To(Math.Sqrt(2) * 0.09, square.StandardUncertainty, 1e-9);
        Close.To(0.09, square.MeanShift, 1e-9);
        Assert.Equal(0, square.WithOrder(UncertaintyOrder.First).StandardUncertainty, 12);
        Assert.Null(square.EffectiveDegreesOfFreedom);
        Assert.Contains("not normal", Assert.Throws<InvalidOperationException>(() => square.CoverageFactor(0.95)).Message, StringComparison.Ordinal);
        Close.To(2 * Math.Sqrt(2) * 0.09, square.ExpandedUncertaintyWithFactor(2), 1e-9);
    }

    /// <summary>x₁² + x₂² of two correlated normal inputs: variance 4u²(x₁² + x₂² + 2 r x₁ x₂) + 4u⁴(1 + r²), exact.</summary>
    [Theory]
    [InlineData(0, 0, 0.9)]
    [InlineData(0.05, 0.02, 0.9)]
    [InlineData(0.05, 0.02, -0.4)]
    [InlineData(0.01, 0, 0)]
    public void Second_order_is_exact_for_a_sum_of_squares(double x1, double x2, double r)
    {
        const double U = 0.005;
        UncertaintyBudget budget = UncertaintyBudget.Of(
            "y", "", x => x["1"] * x["1"] + x["2"] * x["2"], UncertaintyContribution.Normal("1", x1, U), UncertaintyContribution.Normal("2", x2, U))
            .WithCorrelations(("1", "2", r)).WithOrder(UncertaintyOrder.Second);
        Close.To(Math.Sqrt(4 * U * U * (x1 * x1 + x2 * x2 + 2 * r * x1 * x2) + 4 * Math.Pow(U, 4) * (1 + r * r)), budget.StandardUncertainty, 1e-6);
        Close.To(2 * U * U, budget.MeanShift, 1e-6);
        Close.To(1, budget.Rows.Sum(row => row.Weight), 1e-9);
    }

    /// <summary>The same figures by another way: combine the readings first, then treat them as one column.</summary>
    [Fact]
    public void Joint_readings_count_as_one_component()
    {
        UncertaintyBudget together = UncertaintyBudget.Of("y", "", x => 2 * x["a"] - 3 * x["b"], UncertaintyContribution.FromJointReadings(("a", First), ("b", Second)));
        UncertaintyContribution combined = UncertaintyContribution.FromReadings("y", [.. First.Zip(Second, (a, b) => 2 * a - 3 * b)]);

        Close.To(combined.Value, together.Estimate);
        Close.To(combined.StandardUncertainty, together.StandardUncertainty, 1e-9);
        Close.To(5, together.EffectiveDegreesOfFreedom!.Value, 1e-9);
        UncertaintyBudget apart = UncertaintyBudget.Of(
            "y", "", x => 2 * x["a"] - 3 * x["b"], UncertaintyContribution.FromReadings("a", First), UncertaintyContribution.FromReadings("b", Second));
        Assert.True(apart.StandardUncertainty < 0.99 * together.StandardUncertainty);
    }

    /// <summary>u_c = u_1 + u_2 for r = 1: relative variance of the sum of two independent estimates, ν = 1/(2 relvar).</summary>
    [Theory]
    [InlineData(1.0, 8.0, 1.0, 8.0)]
    [InlineData(1.0, 5.0, 3.0, 20.0)]
    public void Known_correlations_leave_degrees_of_freedom(double u1, double nu1, double u2, double nu2)
    {
        UncertaintyContribution a = UncertaintyContribution.Normal("a", 0, u1).WithDegreesOfFreedom(nu1);
        UncertaintyContribution b = UncertaintyContribution.Normal("b", 0, u2).WithDegreesOfFreedom(nu2);
        UncertaintyBudget sum = UncertaintyBudget.Of("y", "", x => x["a"] + x["b"], a, b);
        double relativeVariance = (u1 * u1 / (2 * nu1) + u2 * u2 / (2 * nu2)) / Math.Pow(u1 + u2, 2);

        Close.To(1 / (2 * relativeVariance), sum.WithKnownCorrelations(("a", "b", 1)).EffectiveDegreesOfFreedom!.Value, 1e-9);
        Close.To(u1 + u2, sum.WithKnownCorrelations(("a", "b", 1)).StandardUncertainty, 1e-9);
        Close.To(Math.Abs(u1 - u2), sum.WithKnownCorrelations(("a", "b", -1)).StandardUncertainty, 1e-9, scale: u1);
        Assert.Null(sum.WithCorrelations(("a", "b", 1)).EffectiveDegreesOfFreedom);
        Assert.Contains("a has finite", sum.WithCorrelations(("a", "b", 0.3)).WhyNoDegreesOfFreedom, StringComparison.Ordinal);
    }

    [Fact]
    public void Coefficients_that_contradict_each_other_are_refused_together_not_one_by_one()
    {
        UncertaintyBudget budget = UncertaintyBudget.Of(
            "y", "", x => x[0] + x[1] + x[2],
            UncertaintyContribution.Normal("a", 0, 1), UncertaintyContribution.Normal("b", 0, 2), UncertaintyContribution.Normal("c", 0, 3));

        Close.To(6, budget.WithCorrelations(("a", "b", 1), ("a", "c", 1), ("b", "c", 1)).StandardUncertainty, 1e-9);
        Assert.Contains("contradict", Refusal(() => budget.WithCorrelations(("a", "b", 0.9), ("a", "c", 0.9), ("b", "c", -0.9))), StringComparison.Ordinal);
        Assert.Contains("contradict", Refusal(() => budget.WithCorrelations(("a", "b", 1), ("a", "c", 1), ("b", "c", 0.9))), StringComparison.Ordinal);
        Assert.Contains("no input", Refusal(() => budget.WithCorrelations(("a", "d", 0.1))), StringComparison.Ordinal);
        Assert.Contains("itself", Refusal(() => budget.WithCorrelations(("a", "a", 0.1))), StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => budget.WithCorrelations(("a", "b", 1.01)));
    }

    /// <summary>A debugger and a log call ToString: it tells what is known, and that the function refuses.</summary>
    [Fact]
    public void The_text_of_a_budget_whose_function_refuses_says_so()
    {
        UncertaintyContribution x = UncertaintyContribution.Normal("x", -3, 0.1), k = UncertaintyContribution.Rectangular("k", 2, 0.5).WithSensitivity(4);
        foreach ((Func<InputValues, double> function, string why) in new (Func<InputValues, double>, string)[]
        {
            (_ => throw new ArgumentOutOfRangeException("diameter", "diameter is -3 mm; it must be at least 0 mm."), "diameter is -3 mm"),
            (v => Math.Log(v["x"]), "gives NaN at the best values"),
        })
        {
            UncertaintyBudget budget = UncertaintyBudget.Of("y", "mm", function, x, k);
            foreach (string text in new[] { budget.ToString(), budget.ToMarkdown() })
            {
                Assert.StartsWith("y (mm): no result, the measurement function refuses: ", text, StringComparison.Ordinal);
                Assert.Contains(why, text, StringComparison.Ordinal);
                Assert.Contains("0.2887", text, StringComparison.Ordinal);
                Assert.Contains("rectangular", text, StringComparison.Ordinal);
            }

            Assert.ThrowsAny<Exception>(() => budget.Estimate);
        }
    }

    [Property]
    public void Scaling_the_result_scales_the_uncertainty_and_order_does_not_matter(byte a, byte b, byte c)
    {
        double u1 = 0.01 + a, u2 = 0.02 + b, u3 = 0.03 + c;
        UncertaintyContribution x = UncertaintyContribution.Normal("x", 2, u1).WithDegreesOfFreedom(3);
        UncertaintyContribution y = UncertaintyContribution.Rectangular("y", -3, u2).WithDegreesOfFreedom(7);
        UncertaintyContribution z = UncertaintyContribution.Triangular("z", 5, u3);
        UncertaintyBudget plain = UncertaintyBudget.Of("f", "", v => 2 * v["x"] - v["y"] + 7 * v["z"], x, y, z);
        UncertaintyBudget scaled = UncertaintyBudget.Of("f", "", v => -1e6 * (2 * v["x"] - v["y"] + 7 * v["z"]), z, x, y);

        Close.To(1e6 * plain.StandardUncertainty, scaled.StandardUncertainty, 1e-9);
        Close.To(plain.EffectiveDegreesOfFreedom!.Value, scaled.EffectiveDegreesOfFreedom!.Value, 1e-8);
        Assert.Equal(plain.Rows.Select(row => row.Input.Name), scaled.Rows.Select(row => row.Input.Name));
        Close.To(1, plain.Rows.Sum(row => row.Weight), 1e-12);
    }

    [Fact]
    public void Tiny_and_huge_numbers_stay_in_range()
    {
        UncertaintyBudget tiny = UncertaintyBudget.Linear(
            "y", "", 1e-45,
            UncertaintyContribution.Normal("a", 0, 3e-50).WithDegreesOfFreedom(5).WithSensitivity(1e-40),
            UncertaintyContribution.Normal("b", 0, 4e-50).WithDegreesOfFreedom(9).WithSensitivity(1e-40));
        UncertaintyBudget huge = UncertaintyBudget.Linear(
            "y", "", 1e45,
            UncertaintyContribution.Normal("a", 0, 3e49).WithDegreesOfFreedom(5).WithSensitivity(1e50),
            UncertaintyContribution.Normal("b", 0, 4e49).WithDegreesOfFreedom(9).WithSensitivity(1e50));
        Close.To(5e-90, tiny.StandardUncertainty);
        Close.To(5e99, huge.StandardUncertainty);
        Close.To(625 / (81.0 / 5 + 256.0 / 9), tiny.EffectiveDegreesOfFreedom!.Value);
        Close.To(625 / (81.0 / 5 + 256.0 / 9), huge.EffectiveDegreesOfFreedom!.Value);
    }

    [Fact]
    public void What_has_no_uncertainty_has_none()
    {
        UncertaintyBudget certain = UncertaintyBudget.Of("y", "", x => 3 * x[0], UncertaintyContribution.Normal("x", 2, 0));
        Assert.Equal(0, certain.StandardUncertainty);
        Assert.Equal(0, certain.Rows[0].Weight);
        Assert.Equal(double.PositiveInfinity, certain.EffectiveDegreesOfFreedom);
        Assert.Equal(0, certain.ExpandedUncertainty(0.95));
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        UncertaintyContribution x = UncertaintyContribution.Normal("x", 1, 0.1);
        Assert.Contains("two called x", Refusal(() => UncertaintyBudget.Of("y", "", v => v[0], x, x)), StringComparison.Ordinal);
        Assert.Contains("no input", Refusal(() => UncertaintyBudget.Of("y", "", v => 1)), StringComparison.Ordinal);
        Assert.Contains("no sensitivity", Refusal(() => UncertaintyBudget.Linear("y", "", 1, x)), StringComparison.Ordinal);
        Assert.Contains("2 or more", Refusal(() => UncertaintyContribution.FromReadings("x", [1])), StringComparison.Ordinal);
        Assert.Contains("as many", Refusal(() => UncertaintyContribution.FromJointReadings(("a", [1, 2]), ("b", [1, 2, 3]))), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => UncertaintyContribution.FromReadings("x", [1, 2]).WithDegreesOfFreedom(3));
        Assert.Throws<InvalidOperationException>(() => UncertaintyBudget.Of("y", "", v => Math.Log(-v[0]), x).Estimate);
        Assert.Throws<ArgumentException>(() => UncertaintyBudget.Of("y", "", v => v["z"], x).Estimate);
        Assert.Throws<ArgumentOutOfRangeException>(() => default(InputValues)[0]);
        UncertaintyBudget few = UncertaintyBudget.Of("y", "", v => v[0] + v[1], UncertaintyContribution.Normal("a", 0, 1).WithDegreesOfFreedom(1), UncertaintyContribution.Normal("b", 0, 0.0));
        Assert.Equal(12.706, few.CoverageFactor(0.95), 3);
    }

    [Fact]
    public void The_table_is_the_same_in_a_culture_with_decimal_commas() => CommaCulture.Run(() =>
    {
        UncertaintyBudget budget = UncertaintyBudget.Of(
            "F", "kN", x => x["M"] / x["κ"], UncertaintyContribution.Normal("M", 150, 3), UncertaintyContribution.Rectangular("κ", 2.6, 0.4));
        string[] lines = budget.ToMarkdown().Split('\n');
        Assert.Equal("F = 57.6923077 kN, u_c = 5.253 kN, ν_eff ∞", lines[0]);
        Assert.Equal("| κ | 2.6 | 0.2309 | rectangular | ∞ | -22.19 | -5.124 | 95.2 % |", lines[4]);
        Assert.Equal("| M | 150 | 3 | normal | ∞ | 0.3846 | 1.154 | 4.8 % |", lines[5]);
        Assert.Contains("κ dominates and is rectangular", budget.ToString(), StringComparison.Ordinal);
        Assert.Contains("input  value", budget.ToString(), StringComparison.Ordinal);
    });

    private static double Sensitivity(UncertaintyBudget budget, string name) => budget.Rows.Single(row => row.Input.Name == name).Sensitivity;

    private static string Refusal(Func<object> call) => Assert.ThrowsAny<ArgumentException>(call).Message;

    private static double DeviationOf(Func<double, double> density)
    {
        const int N = 20_000;
        double[] points = [.. Enumerable.Range(0, N).Select(i => -1 + (i + 0.5) * 2 / N)];
        return Math.Sqrt(points.Sum(z => z * z * density(z)) / points.Sum(density));
    }
}
