using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>Correlation coefficients between the inputs of a measurement, and how they are known.</summary>
internal sealed class CorrelationMatrix
{
    private const double Slack = 1e-12;

    private readonly UncertaintyContribution[] _inputs;
    private readonly double[,] _stated;
    private readonly bool[,] _known;

    public CorrelationMatrix(UncertaintyContribution[] inputs)
        : this(inputs, new double[inputs.Length, inputs.Length], new bool[inputs.Length, inputs.Length])
    {
    }

    private CorrelationMatrix(UncertaintyContribution[] inputs, double[,] stated, bool[,] known)
    {
        _inputs = inputs;
        _stated = stated;
        _known = known;
    }

    /// <summary>Whether a coefficient other than zero was stated for the input.</summary>
    public bool IsStated(int i) => Enumerable.Range(0, _inputs.Length).Any(j => _stated[i, j] != 0);

    /// <summary>Whether one of those was stated without saying that the uncertainties were found independently.</summary>
    public bool IsDoubtful(int i) => Enumerable.Range(0, _inputs.Length).Any(j => _stated[i, j] != 0 && !_known[i, j]);

    /// <summary>The coefficient between two inputs, stated or from their joint readings.</summary>
    public double this[int i, int j]
    {
        get
        {
            if (i == j) return 1;
            JointReadings? joint = _inputs[i].Joint;
            if (joint is null || joint != _inputs[j].Joint) return _stated[i, j];
            double scale = _inputs[i].StandardUncertainty * _inputs[j].StandardUncertainty;
            return scale > 0 ? joint.Covariance[_inputs[i].Place, _inputs[j].Place] / scale : 0;
        }
    }

    public CorrelationMatrix With(IReadOnlyList<(string First, string Second, double Coefficient)> correlations, bool known)
    {
        double[,] stated = (double[,])_stated.Clone();
        bool[,] knownToo = (bool[,])_known.Clone();
        foreach ((string first, string second, double coefficient) in Guard.NotNull(correlations))
        {
            int i = IndexOf(first, nameof(correlations)), j = IndexOf(second, nameof(correlations));
            if (i == j) throw new ArgumentException($"{first} is correlated with itself, 1; state pairs of different inputs.", nameof(correlations));
            Domains.Correlation.Check(coefficient, "", nameof(correlations));
            stated[i, j] = stated[j, i] = coefficient;
            knownToo[i, j] = knownToo[j, i] = known;
        }

        var matrix = new CorrelationMatrix(_inputs, stated, knownToo);
        if (matrix.Root([.. Enumerable.Range(0, _inputs.Length)]) is null)
        {
            throw new ArgumentException("correlations contradict each other: their matrix is not positive semidefinite.", nameof(correlations));
        }

        return matrix;
    }

    /// <summary>Cholesky's lower triangle of the rows and columns of some inputs; null when there is none. Coefficients of ±1 are allowed.</summary>
    public double[,]? Root(int[] places)
    {
        var root = new double[places.Length, places.Length];
        for (int j = 0; j < places.Length; j++)
        {
            double pivot = 1;
            for (int k = 0; k < j; k++) pivot -= root[j, k] * root[j, k];
            if (pivot < -Slack) return null;
            root[j, j] = pivot > Slack ? Math.Sqrt(pivot) : 0;
            for (int i = j + 1; i < places.Length; i++)
            {
                double rest = this[places[i], places[j]];
                for (int k = 0; k < j; k++) rest -= root[i, k] * root[j, k];
                if (root[j, j] > 0) root[i, j] = rest / root[j, j];
                else if (Math.Abs(rest) > Math.Sqrt(Slack)) return null;
            }
        }

        return root;
    }

    private int IndexOf(string name, string parameter)
    {
        int index = Array.FindIndex(_inputs, input => input.Name == name);
        if (index < 0) throw new ArgumentException($"{parameter} name {name}, which is no input.", parameter);
        if (_inputs[index].Joint is not null)
        {
            throw new ArgumentException($"{name} comes from joint readings, which hold its correlations.", parameter);
        }

        return index;
    }
}
