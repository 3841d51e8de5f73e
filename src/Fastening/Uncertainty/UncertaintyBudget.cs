using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>How uncertain the result of a measurement or calculation is, and which input makes it so, after the GUM.</summary>
/// <remarks>
/// JCGM 100:2008: law of propagation (§5.1.2, §5.2.2), Welch–Satterthwaite (G.4.1), coverage factor (G.6.4). Sensitivities are those that
/// the inputs bring, else central differences. The measurement function runs when a figure is first needed, never before.
/// </remarks>
/// <example><code>UncertaintyBudget power = UncertaintyBudget.Of("P", "W", x => x["V"] * x["I"],
///     UncertaintyContribution.Normal("V", 230, 0.6), UncertaintyContribution.Rectangular("I", 4.1, 0.05));
/// Console.WriteLine(power.ToMarkdown());
/// double expanded = power.ExpandedUncertainty(coverageProbability: 0.95);</code></example>
public sealed partial class UncertaintyBudget
{
    private readonly UncertaintyContribution[] _inputs;
    private readonly Lazy<BudgetEvaluation> _evaluation;
    private readonly bool _isLinear;

    private UncertaintyBudget(
        string result,
        string unit,
        Func<InputValues, double> function,
        UncertaintyContribution[] inputs,
        CorrelationMatrix correlations,
        UncertaintyOrder order,
        bool isLinear)
    {
        Result = result;
        Unit = unit;
        Function = function;
        _inputs = inputs;
        Inputs = Array.AsReadOnly(inputs);
        Correlations = correlations;
        Order = order;
        _isLinear = isLinear;
        _evaluation = new(() => new BudgetEvaluation(inputs, function, correlations, order, isLinear));
    }

    /// <summary>Name of the result.</summary>
    public string Result { get; }

    /// <summary>Unit of the result, as a label; empty for a pure number.</summary>
    public string Unit { get; }

    /// <summary>The inputs, in the order of the measurement function.</summary>
    public IReadOnlyList<UncertaintyContribution> Inputs { get; }

    /// <summary>How far the function is expanded.</summary>
    public UncertaintyOrder Order { get; }

    /// <summary>The result at the best values of the inputs. The mean of the result lies <see cref="MeanShift"/> beside it.</summary>
    public double Estimate => _evaluation.Value.Estimate;

    /// <summary>½ Σ f_ij r_ij u_i u_j: by how much the mean of the result exceeds the estimate, to second order. It is not added.</summary>
    public double MeanShift => _evaluation.Value.MeanShift;

    /// <summary>Combined standard uncertainty u_c, in the unit of the result.</summary>
    public double StandardUncertainty => _evaluation.Value.StandardUncertainty;

    /// <summary>The combined standard uncertainty with the second-order terms of every pair of inputs, for comparison.</summary>
    public double StandardUncertaintyToSecondOrder => _evaluation.Value.UncertaintyWithSecondOrder;

    /// <summary>
    /// Effective degrees of freedom ν_eff, not rounded; positive infinity when every uncertainty is known exactly. Null where
    /// Welch–Satterthwaite does not hold: see <see cref="WhyNoDegreesOfFreedom"/>.
    /// </summary>
    public double? EffectiveDegreesOfFreedom => _evaluation.Value.DegreesOfFreedom;

    /// <summary>Why there are no effective degrees of freedom; null when there are.</summary>
    public string? WhyNoDegreesOfFreedom => _evaluation.Value.WhyNoDegreesOfFreedom;

    /// <summary>The inputs by weight, the heaviest first.</summary>
    public IReadOnlyList<UncertaintyBudgetRow> Rows => _evaluation.Value.Rows;

    internal Func<InputValues, double> Function { get; }

    internal CorrelationMatrix Correlations { get; }

    internal UncertaintyContribution[] InputArray => _inputs;

    /// <summary>The same function for many draws at once; null when there is only the one for a single draw.</summary>
    internal IColumnFunction? Columns { get; private init; }

    /// <summary>A budget of a measurement function.</summary>
    /// <param name="result">Name of the result.</param>
    /// <param name="unit">Its unit, as a label; may be empty.</param>
    /// <param name="function">The result from the inputs, by name or by their order. Monte Carlo calls it from several threads at once.</param>
    /// <param name="inputs">The inputs, each with a name of its own.</param>
    /// <returns>The budget.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no input, or two have the same name.</exception>
    /// <example><code>UncertaintyBudget stress = UncertaintyBudget.Of("σ", "MPa", x => x["F (N)"] / x["A_s (mm²)"],
    ///     UncertaintyContribution.Normal("F (N)", 55_100, 1_900), UncertaintyContribution.Rectangular("A_s (mm²)", 156.7, 1.4));     // comes to 352 MPa, u_c = 12 MPa</code></example>
    public static UncertaintyBudget Of(
        string result, string unit, Func<InputValues, double> function, params IReadOnlyList<UncertaintyContribution> inputs)
    {
        UncertaintyContribution[] checkedInputs = Check(inputs);
        return new(
            Guard.NotNull(result), Guard.NotNull(unit), Guard.NotNull(function), checkedInputs, new(checkedInputs), UncertaintyOrder.SecondWhereFirstVanishes, false);
    }

    /// <summary>A budget of a result that is known with the sensitivities of its inputs, but not as a function: y + Σ c (x − x̂).</summary>
    /// <param name="result">Name of the result.</param>
    /// <param name="unit">Its unit, as a label; may be empty.</param>
    /// <param name="estimate">The result at the best values.</param>
    /// <param name="inputs">The inputs, each with a name of its own and with its sensitivity.</param>
    /// <returns>The budget.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no input, two have the same name, or one has no sensitivity.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="estimate"/> is outside its domain.</exception>
    /// <example><code>UncertaintyBudget length = UncertaintyBudget.Linear("l", "mm", 62.14, UncertaintyContribution.Normal("reading (mm)", 62.14, 0.02).WithSensitivity(1),
    ///     UncertaintyContribution.Rectangular("temperature (K)", 0, 4).WithSensitivity(0.0007));</code></example>
    public static UncertaintyBudget Linear(string result, string unit, double estimate, params IReadOnlyList<UncertaintyContribution> inputs)
    {
        Domains.Number.Check(estimate);
        UncertaintyContribution[] checkedInputs = Check(inputs);
        if (Array.Find(checkedInputs, input => input.Sensitivity is null) is { } without)
        {
            throw new ArgumentException($"{without.Name} has no sensitivity; without a function every input needs one.", nameof(inputs));
        }

        double Function(InputValues x)
        {
            double sum = estimate;
            for (int i = 0; i < checkedInputs.Length; i++) sum += checkedInputs[i].Sensitivity!.Value * (x[i] - checkedInputs[i].Value);
            return sum;
        }

        return new(Guard.NotNull(result), Guard.NotNull(unit), Function, checkedInputs, new(checkedInputs), UncertaintyOrder.First, true);
    }

    /// <summary>The same budget with correlations between inputs.</summary>
    /// <param name="correlations">Names of two inputs and their coefficient r, −1 to 1; a pair already stated is replaced.</param>
    /// <returns>A new budget. An input among them with finite degrees of freedom leaves the result without: state k.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="correlations"/> is null.</exception>
    /// <exception cref="ArgumentException">An input is unknown or comes from joint readings, or the coefficients contradict each other.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A coefficient is outside −1 to 1.</exception>
    /// <example><code>budget.WithCorrelations(("µ_th", "µ_b", 0.5))</code></example>
    public UncertaintyBudget WithCorrelations(params IReadOnlyList<(string First, string Second, double Coefficient)> correlations) =>
        new(Result, Unit, Function, _inputs, Correlations.With(correlations, known: false), Order, _isLinear) { Columns = Columns };

    /// <summary>The same budget with correlations that are known, between inputs whose standard uncertainties were found independently.</summary>
    /// <param name="correlations">Names of two inputs and their coefficient r, −1 to 1; a pair already stated is replaced.</param>
    /// <returns>A new budget; its degrees of freedom count the correlations: ν = u_c⁴/Σ((c_i u_i Σ r_ij c_j u_j)²/ν_i), derived.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="correlations"/> is null.</exception>
    /// <exception cref="ArgumentException">An input is unknown or comes from joint readings, or the coefficients contradict each other.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A coefficient is outside −1 to 1.</exception>
    /// <example><code>budget = budget.WithKnownCorrelations(("µ_th", "µ_b", 0.5));</code></example>
    public UncertaintyBudget WithKnownCorrelations(params IReadOnlyList<(string First, string Second, double Coefficient)> correlations) =>
        new(Result, Unit, Function, _inputs, Correlations.With(correlations, known: true), Order, _isLinear) { Columns = Columns };

    /// <summary>The same budget, expanded to a stated order.</summary>
    /// <param name="order">First order only, or second-order terms too.</param>
    /// <returns>A new budget.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="order"/> is not a value of the enumeration.</exception>
    /// <example><code>double withSecondOrder = budget.WithOrder(UncertaintyOrder.Second).StandardUncertainty;</code></example>
    public UncertaintyBudget WithOrder(UncertaintyOrder order)
    {
        if (order is not (UncertaintyOrder.SecondWhereFirstVanishes or UncertaintyOrder.First or UncertaintyOrder.Second))
        {
            Guard.RefuseAgainst(nameof(order), (double)order, "a value of UncertaintyOrder");
        }

        return new(Result, Unit, Function, _inputs, Correlations, order, _isLinear) { Columns = Columns };
    }

    /// <summary>Coverage factor k = t((1 + p)/2, ν), with ν_eff truncated to the whole number below (JCGM 100:2008 G.6.4, H.1.6).</summary>
    /// <param name="coverageProbability">Coverage probability p, 0.001 to 0.999999: mostly 0.95.</param>
    /// <returns>k; of the normal distribution when ν_eff is infinite.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverageProbability"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">There are no effective degrees of freedom: state k.</exception>
    /// <example><code>double k = budget.CoverageFactor(coverageProbability: 0.95);     // 2.13 where ν_eff is 15.8: t of 15</code></example>
    public double CoverageFactor(double coverageProbability) =>
        Student(Domains.CoverageProbability.Check(coverageProbability), Math.Floor(DegreesOfFreedomOrRefusal() * (1 + Tolerance.Widening)));

    /// <summary>Coverage factor k = t((1 + p)/2, ν_eff) with ν_eff as it is, not whole.</summary>
    /// <param name="coverageProbability">Coverage probability p, 0.001 to 0.999999.</param>
    /// <returns>k.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverageProbability"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">There are no effective degrees of freedom: state k.</exception>
    /// <example><code>double k = budget.InterpolatedCoverageFactor(coverageProbability: 0.95);     // 2.12 where ν_eff is 15.8</code></example>
    public double InterpolatedCoverageFactor(double coverageProbability) =>
        Student(Domains.CoverageProbability.Check(coverageProbability), DegreesOfFreedomOrRefusal());

    /// <summary>Expanded uncertainty U = k u_c with the coverage factor of <see cref="CoverageFactor"/>.</summary>
    /// <param name="coverageProbability">Coverage probability p, 0.001 to 0.999999.</param>
    /// <returns>U, in the unit of the result.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverageProbability"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">There are no effective degrees of freedom: state k.</exception>
    /// <example><code>double expanded = budget.ExpandedUncertainty(coverageProbability: 0.95);</code></example>
    public double ExpandedUncertainty(double coverageProbability) => CoverageFactor(coverageProbability) * StandardUncertainty;

    /// <summary>Expanded uncertainty with a stated coverage factor: U = k u_c.</summary>
    /// <param name="coverageFactor">k, 0.01 to 100.</param>
    /// <returns>U, in the unit of the result.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverageFactor"/> is outside its domain.</exception>
    /// <example><code>double expanded = budget.ExpandedUncertaintyWithFactor(coverageFactor: 2);</code></example>
    public double ExpandedUncertaintyWithFactor(double coverageFactor) => Domains.CoverageFactor.Check(coverageFactor) * StandardUncertainty;

    /// <summary>Correlation coefficient of two results that rest on the same inputs (JCGM 100:2008 H.2.3).</summary>
    /// <param name="other">A budget of the same inputs and correlations, in the same order.</param>
    /// <returns>r, −1 to 1, to first order; 0 when one of them is certain.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    /// <exception cref="ArgumentException">The inputs differ.</exception>
    /// <example><code>double r = resistance.CorrelationWith(reactance);     // both of the same volts, amperes and radians</code></example>
    public double CorrelationWith(UncertaintyBudget other)
    {
        if (!Guard.NotNull(other)._inputs.SequenceEqual(_inputs))
        {
            throw new ArgumentException("other has other inputs; both results must rest on the same.", nameof(other));
        }

        BudgetEvaluation mine = _evaluation.Value, its = other._evaluation.Value;
        double scale = Math.Sqrt(mine.CovarianceWith(mine)) * Math.Sqrt(its.CovarianceWith(its));
        return scale > 0 ? mine.CovarianceWith(its) / scale : 0;
    }

    internal UncertaintyBudget WithColumns(IColumnFunction columns) =>
        new(Result, Unit, Function, _inputs, Correlations, Order, _isLinear) { Columns = columns };

    private static UncertaintyContribution[] Check(IReadOnlyList<UncertaintyContribution> inputs)
    {
        UncertaintyContribution[] copy = [.. Guard.NotNull(inputs)];
        if (copy.Length == 0) throw new ArgumentException("inputs has no input; a budget needs one or more.", nameof(inputs));
        var names = new HashSet<string>();
        foreach (UncertaintyContribution input in copy)
        {
            if (!names.Add(Guard.NotNull(input, nameof(inputs)).Name))
            {
                throw new ArgumentException($"inputs has two called {input.Name}; each needs a name of its own.", nameof(inputs));
            }
        }

        return copy;
    }

    private static double Student(double coverageProbability, double degreesOfFreedom) => double.IsInfinity(degreesOfFreedom)
        ? -NormalCurve.Quantile((1 - coverageProbability) / 2)
        : StudentCurve.FromCoverage(coverageProbability, degreesOfFreedom);

    private double DegreesOfFreedomOrRefusal()
    {
        double degreesOfFreedom = EffectiveDegreesOfFreedom ?? throw new InvalidOperationException(
            $"No coverage factor follows for {Result}: {WhyNoDegreesOfFreedom}. State k with ExpandedUncertaintyWithFactor, or use MonteCarlo.");
        return degreesOfFreedom >= 1 ? degreesOfFreedom : throw new InvalidOperationException(Print.Text(
            $"{Result} has {degreesOfFreedom:0.##} effective degrees of freedom; below 1 there is no coverage factor. Take more readings, or state k."));
    }
}
