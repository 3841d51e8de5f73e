using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>The law of propagation of uncertainty, worked out once for a budget (JCGM 100:2008 §5.1, §5.2, G.4).</summary>
internal sealed class BudgetEvaluation
{
    /// <summary>A pair of inputs whose first-order parts are both below this share of its second-order part has lost its first order.</summary>
    private const double Vanishing = 0.1;

    private readonly UncertaintyContribution[] _inputs;
    private readonly CorrelationMatrix _correlations;
    private readonly double[] _sensitivities;
    private readonly double[] _parts;
    private readonly double[] _shares;
    private readonly double _scale;

    public BudgetEvaluation(
        UncertaintyContribution[] inputs, Func<InputValues, double> function, CorrelationMatrix correlations, UncertaintyOrder order, bool isLinear)
    {
        _inputs = inputs;
        _correlations = correlations;
        var derivatives = new NumericalDerivatives(inputs, function);
        Estimate = Finite(derivatives.Value(), "at the best values of its inputs");
        _sensitivities = [.. inputs.Select((input, i) =>
            input.Sensitivity ?? Finite(derivatives.First(i), $"about the best value of {input.Name}, or no slope there; give its sensitivity"))];
        _parts = [.. inputs.Select((input, i) => _sensitivities[i] * input.StandardUncertainty)];
        double[,] second = isLinear ? new double[inputs.Length, inputs.Length] : SecondParts(derivatives);
        _scale = Largest(second);
        double[] firstOrder = [.. inputs.Select((_, i) => FirstOrderVariance(i))];
        double[] chosen = SecondOrderVariances(second, order);
        double variance = firstOrder.Sum() + chosen.Sum();
        StandardUncertainty = _scale * Math.Sqrt(Math.Max(variance, 0));
        SecondOrderShare = variance > 0 ? chosen.Sum() / variance : 0;
        UncertaintyWithSecondOrder = _scale * Math.Sqrt(Math.Max(firstOrder.Sum() + SecondOrderVariances(second, UncertaintyOrder.Second).Sum(), 0));
        MeanShift = Trace(second) / 2;
        _shares = [.. firstOrder.Select((part, i) => variance > 0 ? part / variance : 0)];
        Rows = Array.AsReadOnly(inputs.Select((input, i) =>
            new UncertaintyBudgetRow(input, _sensitivities[i], variance > 0 ? (firstOrder[i] + chosen[i]) / variance : 0))
            .OrderByDescending(row => Math.Abs(row.Weight)).ToArray());
        WhyNoDegreesOfFreedom = Why();
        DegreesOfFreedom = WhyNoDegreesOfFreedom is null ? WelchSatterthwaite() : null;
    }

    public double Estimate { get; }

    public double MeanShift { get; }

    public double StandardUncertainty { get; }

    public double UncertaintyWithSecondOrder { get; }

    public double SecondOrderShare { get; }

    /// <summary>Inputs about whose best values the function has no second differences.</summary>
    public List<string> Unknown { get; } = [];

    public IReadOnlyList<UncertaintyBudgetRow> Rows { get; }

    public string? WhyNoDegreesOfFreedom { get; }

    public double? DegreesOfFreedom { get; }

    /// <summary>Covariance of two results of the same inputs.</summary>
    public double CovarianceWith(BudgetEvaluation other)
    {
        double sum = 0;
        for (int i = 0; i < _parts.Length; i++)
        {
            for (int j = 0; j < _parts.Length; j++) sum += _parts[i] * _correlations[i, j] * other._parts[j];
        }

        return sum;
    }

    private static double Finite(double value, string where) => Domains.Number.Contains(value)
        ? value
        : throw new InvalidOperationException(Print.Text($"The measurement function gives {value} {where}."));

    private double[,] SecondParts(NumericalDerivatives derivatives)
    {
        var parts = new double[_inputs.Length, _inputs.Length];
        for (int i = 0; i < _inputs.Length; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double part = derivatives.SecondPart(i, j);
                bool isKnown = Domains.Number.Contains(part);
                if (!isKnown && !Unknown.Contains(_inputs[i].Name)) Unknown.Add(_inputs[i].Name);
                parts[i, j] = parts[j, i] = isKnown ? part : 0;
            }
        }

        return parts;
    }

    /// <summary>Variances are kept relative to the largest part, so that neither tiny nor huge units leave the range of doubles.</summary>
    private double Largest(double[,] second) =>
        Math.Max(_parts.Select(Math.Abs).Concat(second.Cast<double>().Select(Math.Abs)).Max() is var largest and > 0 ? largest : 1, double.Epsilon);

    private double FirstOrderVariance(int i)
    {
        double sum = 0;
        for (int j = 0; j < _parts.Length; j++) sum += _correlations[i, j] * (_parts[j] / _scale);
        return _parts[i] / _scale * sum;
    }

    /// <summary>½ tr((S R)²) by input, S_ij = f_ij u_i u_j: exact for normal inputs; for independent ones ½ Σ (f_ij u_i u_j)².</summary>
    private double[] SecondOrderVariances(double[,] second, UncertaintyOrder order)
    {
        int n = _parts.Length;
        var product = new double[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int k = 0; k < n; k++)
            {
                if (!Counts(second[i, k], i, k, order)) continue;
                for (int j = 0; j < n; j++) product[i, j] += second[i, k] / _scale * _correlations[k, j];
            }
        }

        return [.. Enumerable.Range(0, n).Select(i => Enumerable.Range(0, n).Sum(j => product[i, j] * product[j, i]) / 2)];
    }

    private bool Counts(double second, int i, int j, UncertaintyOrder order) => order switch
    {
        UncertaintyOrder.First => false,
        UncertaintyOrder.Second => true,
        _ => Math.Max(Math.Abs(_parts[i]), Math.Abs(_parts[j])) < Vanishing * Math.Abs(second),
    };

    private double Trace(double[,] second)
    {
        double sum = 0;
        for (int i = 0; i < _parts.Length; i++)
        {
            for (int j = 0; j < _parts.Length; j++) sum += second[i, j] * _correlations[i, j];
        }

        return sum;
    }

    private string? Why()
    {
        if (SecondOrderShare > 1e-9) return "second-order terms count, and with them the result is not normal";
        for (int i = 0; i < _inputs.Length; i++)
        {
            if (_correlations.IsDoubtful(i) && !double.IsInfinity(_inputs[i].DegreesOfFreedom))
            {
                return $"{_inputs[i].Name} has finite degrees of freedom and a correlation of which it is not said that it is known and "
                    + "that the uncertainties were found independently (WithKnownCorrelations)";
            }
        }

        return null;
    }

    /// <summary>Joint readings are one component; ν = 1/Σ (share²/ν) with share_i = c_i u_i Σ r_ij c_j u_j/u_c².</summary>
    private double WelchSatterthwaite()
    {
        double sum = _inputs.Select((input, i) => (input, Share: _shares[i]))
            .GroupBy(x => (object?)x.input.Joint ?? x.input)
            .Sum(component => Math.Pow(component.Sum(x => x.Share), 2) / component.First().input.DegreesOfFreedom);
        return sum > 0 ? 1 / sum : double.PositiveInfinity;
    }
}
