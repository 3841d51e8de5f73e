using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>What one input does to the uncertainty of the result.</summary>
/// <example><code>UncertaintyBudgetRow first = budget.Rows[0];
/// Console.WriteLine($"{first.Input.Name} makes {first.Weight:P0} of the variance");</code></example>
public sealed class UncertaintyBudgetRow
{
    internal UncertaintyBudgetRow(UncertaintyContribution input, double sensitivity, double weight)
    {
        Input = input;
        Sensitivity = sensitivity;
        Part = sensitivity * input.StandardUncertainty;
        Weight = weight;
    }

    /// <summary>The input.</summary>
    public UncertaintyContribution Input { get; }

    /// <summary>Sensitivity coefficient c = ∂f/∂x at the best values.</summary>
    public double Sensitivity { get; }

    /// <summary>c·u, in the unit of the result, with its sign.</summary>
    public double Part { get; }

    /// <summary>
    /// Share of the variance of the result: (c u)²/u_c² for an independent input; with correlations c_i u_i Σ r_ij c_j u_j/u_c², which may
    /// be negative. Second-order terms of a pair are shared half and half. The weights add up to 1, or are all 0 when nothing is uncertain.
    /// </summary>
    public double Weight { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Input.Name}: c·u {Part:G4}, weight {Si.Ratio(Weight):0.0}");
}
